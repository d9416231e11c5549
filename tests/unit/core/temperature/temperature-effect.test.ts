import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { SetUp, Spec, Wall } from '../../../../src/core/measured'
import { type Circumstances, findingOf, first, measuredBore } from '../measured-bore'

const aluminium: Wall = { kind: 'plated-aluminium' }
const iron: Wall = { kind: 'grey-iron' }

function bore(sizeMm: number, setUp: Partial<SetUp>, given: Circumstances = {}) {
  const table = { levelsMm: [20], axesDegrees: [0], rows: [[sizeMm]] }
  return findingOf(
    measuredBore(table, {
      ...given,
      setUp: { settingSizeMm: Math.round(sizeMm), ...setUp },
    }),
  )
}

function effectOf(...given: Parameters<typeof bore>) {
  const { temperature } = bore(...given)
  if (!temperature) throw new Error('no effect')
  return temperature
}

describe('what temperature does to a reading', () => {
  it('is for bore and standard apart the length of each times its expansion and its distance from 20 °C', () => {
    const effect = effectOf(
      72,
      { boreTemperatureC: 30, referenceTemperatureC: 25 },
      { bore: { wall: aluminium } },
    )
    expect(1000 * effect.standardMm).toBeCloseTo(72 * 11.5 * 5 * 1e-3, 9)
    expect(1000 * effect.boreMm).toBeCloseTo(-72 * 23 * 10 * 1e-3, 2)
    expect(effect).toMatchObject({ boreC: 30, referenceC: 25, reference: 'micrometer', recorded: true })
  })

  it('adds up to the correction of a station but for what the micrometer reads too much (random, seed 63)', () => {
    const celsius = fc.double({ min: -5, max: 45, noNaN: true })
    fc.assert(
      fc.property(celsius, celsius, fc.integer({ min: -9, max: 9 }), (boreC, referenceC, errorUm) => {
        for (const entry of ['size', 'direct'] as const) {
          const finding = bore(
            80.034,
            { entry, boreTemperatureC: boreC, referenceTemperatureC: referenceC },
            {
              standard: { errorUm },
              ...(entry === 'direct' ? { gauge: { kind: 'internal-micrometer-rods' as const } } : {}),
            },
          )
          const { correctionMm } = first(finding.stations)
          expect(finding.temperature?.totalMm).toBeCloseTo(correctionMm + errorUm / 1000, 12)
        }
      }),
      { seed: 63, numRuns: 50 },
    )
  })

  it('has its own U: 1.34 µm for 86 mm of iron by two thermometers good to 1 K, 0.28 by one (own computation)', () => {
    const two = { boreThermometerId: 'a', referenceThermometerId: 'b' }
    const at20 = { boreTemperatureC: 20, referenceTemperatureC: 20 }
    const thermometers = [{ id: 'a' }, { id: 'b' }]
    const u = (setUp: Partial<SetUp>) =>
      (1000 * effectOf(86, { ...at20, ...setUp }, { thermometers, bore: { wall: iron } }).expandedMm) /
      1.95996
    expect(u(two)).toBeCloseTo(1.34, 2)
    expect(u({ boreThermometerId: 'a', referenceThermometerId: 'a' })).toBeCloseTo(Math.hypot(0.27, 0.086), 2)
  })

  it('is not recorded where a temperature is missing, and absent without a reading', () => {
    const table = { levelsMm: [20], axesDegrees: [0], rows: [[undefined]] }
    expect(findingOf(measuredBore(table)).temperature).toBeUndefined()
    const measured = measuredBore({ ...table, rows: [[80]] })
    const setUps = measured.setUps.map(({ boreTemperatureC: _, ...rest }) => rest)
    expect(findingOf({ ...measured, setUps }).temperature?.recorded).toBe(false)
  })
})

const codesOf = (finding: ReturnType<typeof bore>) => finding.notes.map(({ code }) => code)

describe('the notes on temperature', () => {
  const spec: Spec = { newMinMm: 80, newMaxMm: 80.02 }

  it('say that the temperatures alone keep a verdict open, and only where they do', () => {
    const sharp: Circumstances = {
      spec,
      gauge: { kind: 'air-plug' },
      standard: { kind: 'ring' },
      thermometers: [{ id: 'a', doubtK: 3 }, { id: 'b' }],
      bore: { wall: aluminium },
    }
    const two = { boreThermometerId: 'a', referenceThermometerId: 'b' }
    const open = bore(80.023, two, sharp)
    const [note] = open.notes.filter(({ code }) => code === 'temperature-decides')
    expect(open.verdict).toMatchObject({ verdict: 'too-close' })
    expect(note).toMatchObject({ verdict: 'above', expandedMm: first(open.stations).expandedMm })
    if (note?.code !== 'temperature-decides') throw new Error('no note')
    // Proven alone: the U that is left lies within the margin of 3 µm.
    expect(note.withoutMm).toBeLessThan(0.003)
    expect(codesOf(bore(80.01, two, sharp))).toContain('temperature-decides')
    expect(codesOf(bore(79.997, two, sharp))).toContain('temperature-decides')
    // Proven in spite of the temperatures, open without them, and without limits.
    expect(codesOf(bore(80.06, two, sharp))).not.toContain('temperature-decides')
    expect(codesOf(bore(80.02, two, sharp))).not.toContain('temperature-decides')
    expect(codesOf(bore(80.023, two, { ...sharp, spec: {} }))).not.toContain('temperature-decides')
    expect(
      codesOf(bore(80.023, two, { ...sharp, bore: { wall: aluminium, role: 'for-comparison' } })),
    ).not.toContain('temperature-decides')
  })

  it('warn of a correction of more than half of the width between the limits', () => {
    const correction = (boreTemperatureC: number) =>
      codesOf(
        bore(
          80.005,
          { boreTemperatureC, referenceTemperatureC: boreTemperatureC },
          { spec, bore: { wall: aluminium } },
        ),
      ).includes('correction-exceeds-half-band')
    // 80 mm · 11.5 per million and kelvin: 0.92 µm for each kelvin of both, against 10 µm.
    expect([30, 31, 9, 10].map(correction)).toEqual([false, true, true, false])
  })

  it('warn of a part and a standard more than 3 K apart as recorded, not where they were said to be equal', () => {
    const apart = (setUp: Partial<SetUp>) =>
      bore(80, { referenceTemperatureC: 20, ...setUp }).notes.filter(
        ({ code }) => code === 'part-and-standard-apart',
      )
    expect(apart({ boreTemperatureC: 23 })).toEqual([])
    expect(apart({ boreTemperatureC: 24 })).toEqual([{ code: 'part-and-standard-apart', differenceK: 4 }])
    expect(apart({ boreTemperatureC: 16 })).toEqual([{ code: 'part-and-standard-apart', differenceK: -4 }])
    expect(apart({ boreTemperatureC: 24, soakedTogether: true })).toEqual([])
  })
})
