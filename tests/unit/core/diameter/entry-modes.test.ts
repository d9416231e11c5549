import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { entriesOf, entryFits, entryOf, roughSizeMm } from '../../../../src/core/diameter/entry'
import { closingZeroUm, readingReference } from '../../../../src/core/diameter/reading-reference'
import { gaugeKinds, type Measured, type SetUp } from '../../../../src/core/measured'
import { runCount } from '../../../proof/run-count'
import { findingOf, first, measuredBore, without } from '../measured-bore'
import { byDeviation, byDirectReading, byReverse, bySize, type TrueBench } from './measured-cylinder'

const within = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true })
const size = within(50, 130)
const bench: fc.Arbitrary<TrueBench> = size.chain((mm) =>
  fc.record({
    diametersMm: fc.array(fc.array(within(mm, mm + 0.3), { minLength: 2, maxLength: 2 }), {
      minLength: 3,
      maxLength: 3,
    }),
    wallPerK: within(10e-6, 24e-6),
    boreC: within(5, 40),
    standardPerK: within(9e-6, 13e-6),
    referenceC: within(5, 40),
    errorUm: within(-5, 5),
    larger: fc.constantFrom(1, -1),
    needleUm: within(-50, 50),
    shownMm: within(mm - 0.5, mm + 0.5),
  }),
)

function diameters(measured: Measured): number[] {
  return findingOf(measured).stations.map((s) => s.diameterMm)
}

describe('a cylinder', () => {
  it('measured by the reverse method and by deviation from a ring gives the same diameters, the true ones (seed 41)', () => {
    fc.assert(
      fc.property(
        bench,
        bench,
        (ringBench, { referenceC, errorUm, standardPerK, boreC, larger, shownMm }) => {
          // Another day: other temperatures, a micrometer with its own error, another gauge and another size.
          const ofDay = { referenceC, errorUm, standardPerK, boreC, larger }
          const { diametersMm } = ringBench
          const nearMm = (diametersMm[0]?.[0] ?? 0) + ((shownMm * 7) % 1) - 0.5
          const truth = diametersMm.flat()
          const byRing = diameters(byDeviation(ringBench))
          const reversed = diameters(byReverse({ ...ringBench, ...ofDay, shownMm: nearMm }))
          expect(byRing).toHaveLength(6)
          for (const [i, diameter] of truth.entries()) {
            expect(byRing[i]).toBeCloseTo(diameter, 9)
            expect(reversed[i]).toBeCloseTo(byRing[i] ?? 0, 9)
          }
        },
      ),
      { seed: 41, numRuns: runCount({ quick: 100, full: 20_000 }) },
    )
  })

  it('gives the same diameters read directly and written down as sizes of a set gauge (seed 42)', () => {
    fc.assert(
      fc.property(bench, (b) => {
        const direct = diameters(byDirectReading(b))
        const sizes = diameters(bySize(b))
        for (const [i, diameter] of b.diametersMm.flat().entries()) {
          expect(direct[i]).toBeCloseTo(diameter, 9)
          expect(sizes[i]).toBeCloseTo(diameter, 9)
        }
      }),
      { seed: 42, numRuns: runCount({ quick: 100, full: 20_000 }) },
    )
  })
})

describe('the reverse method', () => {
  const reverse = (setUp: Partial<SetUp> = {}) =>
    measuredBore(
      { levelsMm: [10], axesDegrees: [0], rows: [[12]] },
      {
        spec: { wearLimitMm: 80.2 },
        setUp: { entry: 'reverse', overContactsMm: 80.02, dialOverContactsUm: -3, ...setUp },
      },
    )

  it('counts from the micrometer over the contacts, whatever setting size and zeros are written down', () => {
    // 80.02 + 0.012 + 0.003 mm, all at 20 °C.
    for (const setUp of [{}, { settingSizeMm: 60 }, { zeroOpenUm: 5, zeroCloseUm: 9 }]) {
      expect(diameters(reverse(setUp))[0]).toBeCloseTo(80.035, 12)
    }
    expect(diameters(reverse({ largerIs: 'anticlockwise' }))[0]).toBeCloseTo(80.005, 12)
  })

  it('has readings without a size, and says so, until the gauge was measured over its contacts', () => {
    const { overContactsMm: _, ...setUp } = first(reverse().setUps)
    const open = { ...reverse(), setUps: [setUp] }
    const finding = findingOf(open)
    expect(finding.stations).toEqual([])
    expect(finding.verdict).toEqual({ known: false, why: 'no-size-over-contacts' })
    expect(finding.notes.map(({ code }) => code)).not.toContain('stations-not-read')
    const bores = open.bores.map((bore) => ({
      ...bore,
      surveys: bore.surveys.map((s) => ({ ...s, readings: [] })),
    }))
    expect(findingOf({ ...open, bores }).verdict).toEqual({ known: false, why: 'no-readings' })
  })

  it('takes 0 for a dial between the faces that was not recorded, marked assumed and provisional', () => {
    const { dialOverContactsUm: _, ...setUp } = first(reverse().setUps)
    const open = { ...reverse(), setUps: [setUp] }
    expect(diameters(open)[0]).toBeCloseTo(80.032, 12)
    expect(findingOf(open).provisional).toEqual(['no-dial-over-contacts'])
    const assumed = first(findingOf(open).stations).contributions.filter((part) => part.assumed)
    expect(assumed.map((part) => part.kind)).toEqual(['zero-reading'])
    expect(findingOf(reverse()).provisional).toEqual([])
  })

  it('needs the direction test and, because the gauge can drift, a closing look at the place of its zero', () => {
    const { largerIs: _, zeroCloseUm: __, ...setUp } = first(reverse().setUps)
    expect(findingOf({ ...reverse(), setUps: [setUp] }).provisional).toEqual([
      'no-closing-zero',
      'no-direction-test',
    ])
  })
})

describe('the closing zero', () => {
  const warmed: SetUp = {
    id: 's',
    gaugeId: 'g',
    standardId: 'r',
    entry: 'deviation',
    settingSizeMm: 80,
    largerIs: 'clockwise',
    zeroOpenUm: 1,
    zeroCloseUm: 1 + 80 * 11.5e-6 * 3 * 1000,
    referenceTemperatureC: 21,
    referenceTemperatureCloseC: 24,
  }

  it('is taken as if the ring had kept its temperature: 3 K more make 80 mm of steel 2.76 µm longer', () => {
    expect(closingZeroUm(warmed, 11.5e-6)).toBeCloseTo(1, 9)
    const mirrored: SetUp = { ...warmed, largerIs: 'anticlockwise', zeroCloseUm: 1 - 2.76 }
    expect(closingZeroUm(mirrored, 11.5e-6)).toBeCloseTo(1, 9)
    expect(readingReference(warmed, 11.5e-6)).toEqual({ sizeMm: 80, dialUm: expect.closeTo(1, 9) })
  })

  it('stands as read where a temperature is missing, or where the gauge was zeroed in the bore', () => {
    const { referenceTemperatureCloseC: _, ...unread } = warmed
    expect(closingZeroUm(unread, 11.5e-6)).toBe(warmed.zeroCloseUm)
    expect(closingZeroUm({ ...warmed, entry: 'reverse' }, 11.5e-6)).toBe(warmed.zeroCloseUm)
  })

  it('shows no drift, and moves no diameter, where only the ring warmed', () => {
    const rows = { levelsMm: [10], axesDegrees: [0], rows: [[12]] }
    const { id: _, gaugeId: __, standardId: ___, ...setUp } = warmed
    const station = first(findingOf(measuredBore(rows, { setUp })).stations)
    expect(station.contributions.find((part) => part.kind === 'drift-measured')?.signedMm).toBeCloseTo(0, 12)
    const still = { ...setUp, zeroCloseUm: 1, referenceTemperatureCloseC: 21 }
    expect(station.diameterMm).toBeCloseTo(diameters(measuredBore(rows, { setUp: still }))[0] ?? 0, 12)
  })
})

describe('the ways of writing readings down', () => {
  it('fit each kind of gauge that offers them, with a micrometer', () => {
    for (const kind of gaugeKinds) {
      expect(entriesOf(kind).length).toBeGreaterThan(0)
      for (const entry of entriesOf(kind))
        expect(entryFits(entry, kind, 'micrometer'), `${kind} ${entry}`).toBe(true)
    }
  })

  it('leave the reverse method to dial gauges and a micrometer, direct reading to internal instruments', () => {
    expect(entryFits('reverse', 'dial-0.01', 'ring')).toBe(false)
    expect(entryFits('reverse', 'air-plug', 'micrometer')).toBe(false)
    expect(entryFits('direct', 'dial-0.01', 'micrometer')).toBe(false)
    expect(gaugeKinds.filter((kind) => entryFits('direct', kind, 'ring'))).toEqual([
      'telescoping',
      'internal-micrometer-rods',
      'three-contact-micrometer',
    ])
  })

  it('count a size of an internal instrument as read directly', () => {
    expect(entryOf({ entry: 'size' }, { kind: 'telescoping' })).toBe('direct')
    expect(entryOf({ entry: 'size' }, { kind: 'dial-0.01' })).toBe('size')
    expect(entryOf({ entry: 'deviation' }, { kind: 'three-contact-micrometer' })).toBe('deviation')
  })
})

describe('an internal instrument checked in its ring', () => {
  const three = (setUp: Partial<SetUp>, errorUm?: number) =>
    without(
      measuredBore(
        { levelsMm: [10], axesDegrees: [0], rows: [[80.01]] },
        {
          gauge: { kind: 'three-contact-micrometer' },
          standard: { kind: 'micrometer', ...(errorUm === undefined ? {} : { errorUm }) },
          setUp: { entry: 'direct', ...setUp },
        },
      ),
      'zeroOpenUm',
    )

  it('has drifted by what it reads there afterwards less what it read too much before', () => {
    const station = first(findingOf(three({ zeroCloseUm: 5 }, 2)).stations)
    const drift = station.contributions.find((part) => part.kind === 'drift-measured')
    expect(drift?.signedMm).toBeCloseTo(0.003 / Math.sqrt(12), 12)
    expect(drift?.assumed).toBe(false)
    expect(station.diameterMm).toBeCloseTo(80.008, 12)
    expect(findingOf(three({ zeroCloseUm: 5 }, 2)).provisional).toEqual([])
  })
})

describe('the rough size of a bore', () => {
  it('is the setting, or what was measured over the contacts of a gauge zeroed in it', () => {
    const setUp = { id: 's', gaugeId: 'g', standardId: 'r', settingSizeMm: 50 } as const
    expect(roughSizeMm({ ...setUp, entry: 'deviation', overContactsMm: 72 })).toBe(50)
    expect(roughSizeMm({ ...setUp, entry: 'reverse', overContactsMm: 72 })).toBe(72)
    expect(roughSizeMm({ ...setUp, entry: 'reverse' })).toBe(50)
  })
})
