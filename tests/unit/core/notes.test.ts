import { describe, expect, it } from 'vitest'
import type { ReadingTable } from './measured-bore'
import { findingOf, first, measuredBore } from './measured-bore'

function codes(table: ReadingTable): string[] {
  return findingOf(measuredBore(table)).notes.map((note) => note.code)
}

const row = (n: number) => Array.from({ length: n }, () => 80.01)

describe('notes', () => {
  it('say what one, two and three axes leave open', () => {
    expect(codes({ levelsMm: [10], axesDegrees: [0], rows: [row(1)] })).toEqual([
      'one-axis-sees-no-oval',
      'two-contacts-see-even-lobes-only',
    ])
    expect(codes({ levelsMm: [10], axesDegrees: [0, 90], rows: [row(2)] })).toEqual([
      'two-axes-can-miss-an-oval',
      'two-contacts-see-even-lobes-only',
    ])
    expect(codes({ levelsMm: [10], axesDegrees: [0, 60, 120], rows: [row(3)] })).toEqual([
      'two-contacts-see-even-lobes-only',
    ])
  })

  it('name once the gaps along the depth that no reading reaches into, but not one of 16 mm', () => {
    const finding = findingOf(
      measuredBore({ levelsMm: [10, 26, 60, 80], axesDegrees: [0], rows: [row(1), row(1), row(1), row(1)] }),
    )
    expect(finding.notes.filter((note) => note.code === 'no-reading-between')).toEqual([
      {
        code: 'no-reading-between',
        gaps: [
          { fromDepthMm: 34, toDepthMm: 52 },
          { fromDepthMm: 68, toDepthMm: 72 },
        ],
      },
    ])
  })

  it('ask which is right where parts that were soaked together are recorded further apart than 0.6 K', () => {
    const table = { levelsMm: [10], axesDegrees: [0], rows: [row(1)] }
    const apart = (boreTemperatureC: number, soakedTogether = true) =>
      findingOf(
        measuredBore(table, { setUp: { boreTemperatureC, referenceTemperatureC: 20.4, soakedTogether } }),
      ).notes.filter(({ code }) => code === 'soaked-but-apart')
    expect(apart(22)).toEqual([
      { code: 'soaked-but-apart', boreC: 22, referenceC: 20.4, reference: 'micrometer' },
    ])
    expect(apart(19.7)).toHaveLength(1)
    // U (95 %) of the difference that such parts are taken to have: twice 0.3 K.
    expect(apart(21)).toEqual([])
    expect(apart(19.8)).toEqual([])
    expect(apart(22, false)).toEqual([])
  })

  it('list stations that were planned and not read, leaving out those at a port', () => {
    const belts = [{ id: 'b', name: 'belt', fromDepthMm: 40, toDepthMm: 50 }]
    const finding = findingOf(
      measuredBore(
        {
          levelsMm: [10, 45],
          axesDegrees: [0, 90],
          rows: [
            [80, undefined],
            [undefined, undefined],
          ],
        },
        { bore: { belts } },
      ),
    )
    expect(finding.notes).toContainEqual({
      code: 'stations-not-read',
      places: [{ depthMm: 10, axisDegrees: 90 }],
    })
  })

  it('name stations out of reach apart from those not read yet', () => {
    const measured = measuredBore({ levelsMm: [10, 20], axesDegrees: [0], rows: [[80], [undefined]] })
    const unreachable = [{ depthMm: 20, axisDegrees: 0 }]
    const bores = measured.bores.map((bore) => ({
      ...bore,
      surveys: bore.surveys.map((survey) => ({ ...survey, unreachable })),
    }))
    const { notes } = findingOf({ ...measured, bores })
    expect(notes).toContainEqual({ code: 'stations-out-of-reach', places: unreachable })
    expect(notes.map(({ code }) => code)).not.toContain('stations-not-read')
  })

  it('say once that a gauge cannot prove a band, with the doubt that could', () => {
    const spec = { newMinMm: 80, newMaxMm: 80.012 }
    const table = { levelsMm: [10, 20], axesDegrees: [0, 90], rows: [row(2), row(2)] }
    const blunt = findingOf(measuredBore(table, { spec, gauge: { kind: 'dial-0.01' } }))
    const [note, ...others] = blunt.notes.filter((n) => n.code === 'gauge-cannot-prove-band')
    expect(others).toEqual([])
    expect(note?.code === 'gauge-cannot-prove-band' && note.neededExpandedMm).toBeCloseTo(0.006, 12)
    expect(note?.code === 'gauge-cannot-prove-band' && note.expandedMm).toBeGreaterThan(0.006)
    expect(blunt.verdict).toMatchObject({ verdict: 'too-close' })
    const sharp = findingOf(
      measuredBore(table, { spec, gauge: { kind: 'air-plug' }, standard: { kind: 'ring' } }),
    )
    expect(sharp.notes.map((n) => n.code)).not.toContain('gauge-cannot-prove-band')
    const worn = findingOf(
      measuredBore(table, { spec: { ...spec, wearLimitMm: 80.02 }, gauge: { kind: 'dial-0.01' } }),
    )
    expect(worn.notes.map((n) => n.code)).not.toContain('gauge-cannot-prove-band')
    // Against one limit alone the same doubt leaves room to be proven inside.
    expect(first(worn.stations).conformity).toMatchObject({ verdict: 'inside' })
  })
})
