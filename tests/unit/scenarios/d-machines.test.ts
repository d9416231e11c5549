import { describe, expect, it } from 'vitest'
import type { Spec } from '../../../src/core/measured'
import type { Job } from '../../../src/job/schema'
import { judged, proven, scenario, stationAt } from './scenario'

const compressor = scenario('D1-compressor.json')
const tube = scenario('D2-hydraulic-tube.json')

/** The invented barrel as it is: depth, upright and lying, µm over 200 mm at 20 °C. */
const barrelUm = [
  [15, 30, 28],
  [45, 78, 52],
  [80, 126, 70],
  [115, 120, 68],
  [150, 72, 48],
  [185, 28, 26],
] as const

function judgedBy(spec: Partial<Spec>): Job {
  return { ...compressor, spec: { ...compressor.spec, ...spec } }
}

describe('the invented compressor', () => {
  const finding = proven(compressor, 'cylinder')

  it('has diameters within their doubt of the barrel that was invented', () => {
    for (const [depthMm, upright, lying] of barrelUm) {
      for (const [axisDegrees, um] of [
        [0, upright],
        [90, lying],
      ] as const) {
        const { diameterMm, expandedMm } = stationAt(finding, { depthMm, axisDegrees })
        expect(Math.abs(diameterMm - (200 + um / 1000))).toBeLessThan(expandedMm)
      }
    }
  })

  it('has a largest and a smallest reading 0.105 mm apart, inside the 0.150 mm along the bore', () => {
    const read = finding.stations.flatMap(({ sizesMm }) => sizesMm)
    expect(Math.max(...read) - Math.min(...read)).toBeCloseTo(0.105, 6)
    expect(judged(finding, 'taper')).toMatchObject({ um: 101, verdict: 'inside' })
    expect(judged(finding, 'ovality')).toMatchObject({ um: 56, verdict: 'inside' })
    expect(finding.verdict).toMatchObject({ known: true, verdict: 'inside' })
    expect(finding.blunders).toEqual([])
  })

  it('is worn like a barrel, the upright axis the long one', () => {
    expect(finding.depthForm?.names).toEqual(['barrel'])
    expect(finding.ovality[0]).toMatchObject({
      larger: { depthMm: 80, axisDegrees: 0 },
      smaller: { depthMm: 80, axisDegrees: 90 },
    })
  })

  it('passes 0.090 mm from end to end and is not proven inside 0.090 mm along an axis: the rule decides', () => {
    const byEnds = judgedBy({ taperLimitMm: 0.09, taperRule: 'top-less-bottom-of-an-axis' })
    const alongAxis = judgedBy({ taperLimitMm: 0.09, taperRule: 'between-levels-of-an-axis' })
    expect(judged(proven(byEnds, 'cylinder'), 'taper')).toMatchObject({ um: 5, verdict: 'inside' })
    expect(judged(proven(alongAxis, 'cylinder'), 'taper')).toMatchObject({
      verdict: 'too-close',
      lean: 'above',
    })
  })

  it('raises a question when the third reading at the rust, told of in its note, is put back', () => {
    expect(compressor.note).toContain('200.215')
    const [bore] = compressor.bores
    const [survey] = bore?.surveys ?? []
    if (!bore || !survey) throw new Error('the compressor has no survey')
    const readings = survey.readings.map((reading) =>
      reading.depthMm === 80 && reading.axisDegrees === 0
        ? { ...reading, sizesMm: [...(reading.sizesMm ?? []), 200.215] }
        : reading,
    )
    const withRust = { ...compressor, bores: [{ ...bore, surveys: [{ ...survey, readings }] }] }
    expect(proven(withRust, 'cylinder').blunders).toMatchObject([
      { code: 'repeats-spread', place: { depthMm: 80, axisDegrees: 0 } },
    ])
  })

  it('tells of the rust in its note, in plain words', () => {
    expect(compressor.note).toMatch(/rust .* 140° to 220° between 60 and 110 mm/)
  })
})

describe('the invented hydraulic tube', () => {
  const finding = proven(tube, 'tube')

  it('was measured on three axes at six levels, once each', () => {
    const [survey] = tube.bores.flatMap(({ surveys }) => surveys)
    expect(survey?.axesDegrees).toEqual([0, 60, 120])
    expect(survey?.levelsMm).toHaveLength(6)
    expect(survey?.readings.every(({ sizesMm }) => sizesMm?.length === 1)).toBe(true)
  })

  it('is inside 80 H8 at every station, and round and straight', () => {
    // ISO 286-1: H8 from 50 to 80 mm is 0 to +46 µm.
    expect([tube.spec.newMinMm, tube.spec.newMaxMm]).toEqual([80, 80.046])
    expect(finding.stations.map(({ conformity }) => conformity?.verdict)).toEqual(Array(18).fill('inside'))
    expect(judged(finding, 'ovality').verdict).toBe('inside')
    expect(judged(finding, 'taper').verdict).toBe('inside')
    expect(finding.blunders).toEqual([])
  })

  it('has failed all the same, as its note says: a score that no axis crosses', () => {
    expect(tube.note).toMatch(/score .* 200° from 300 to 420 mm.*fingernail/)
    const axes = finding.stations.map(({ axisDegrees }) => axisDegrees)
    expect(axes.some((axis) => axis === 200 % 180)).toBe(false)
  })
})

describe('the surface of the invented machines', () => {
  it('can end them both, though every size is inside', () => {
    const [rust, pits] = proven(compressor, 'cylinder').surface
    const [score] = proven(tube, 'tube').surface
    expect(rust?.stop).toBeUndefined()
    expect(pits?.stop).toMatch(/^pits/)
    expect(score).toMatchObject({ stop: 'catches-nail', along: { mm: 120, from: 'place' } })
    expect(proven(tube, 'tube').verdict).toMatchObject({ known: true, verdict: 'inside' })
  })
})
