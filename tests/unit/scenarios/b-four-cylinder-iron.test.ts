import { describe, expect, it } from 'vitest'
import { mendBlunder } from '../../../src/job/mend'
import type { Job } from '../../../src/job/schema'
import { judged, proven, scenario, stationAt } from './scenario'

const mended = scenario('B-four-cylinder-iron.json')
const asTyped = scenario('B-four-cylinder-iron-as-typed.json')
const cylinders = ['cylinder-1', 'cylinder-2', 'cylinder-3', 'cylinder-4']

/** The invented block's third cylinder as it is, mm at 20 °C: the readings were made from it. */
const cylinder3Mm: readonly (readonly [depth: number, ...byAxis: readonly number[]])[] = [
  [4, 86.008, 86.008, 86.008, 86.008],
  [10, 86.098, 86.078, 86.052, 86.071],
  [40, 86.06, 86.05, 86.036, 86.048],
  [80, 86.034, 86.03, 86.024, 86.03],
  [125, 86.014, 86.013, 86.01, 86.013],
]

/** The invented block's largest diameter in each cylinder, mm at 20 °C. */
const largestMm = [86.052, 86.06, 86.098, 86.066]
const mostWorn = { depthMm: 10, axisDegrees: 0 }

function mendAll(job: Job): Job {
  const open = job.bores.flatMap(({ id }) => {
    const { surveyId, blunders } = proven(job, id)
    return blunders.map((blunder) => ({ id, surveyId, blunder }))
  })
  return open.reduce(
    (before, { id, surveyId, blunder }) =>
      'mend' in blunder ? mendBlunder(before, id, surveyId, blunder.mend) : before,
    job,
  )
}

/** A job's readings in the order of their places, whatever order they were written in. */
function readingsOf(job: Job) {
  return job.bores.map(({ surveys }) =>
    surveys.map(({ readings }) =>
      [...readings].sort((a, b) => a.depthMm - b.depthMm || a.axisDegrees - b.axisDegrees),
    ),
  )
}

describe('the invented four-cylinder block', () => {
  it('was measured in four cylinders with one setting of the gauge', () => {
    expect(mended.bores.map(({ name, role }) => [name, role])).toEqual(
      ['1', '2', '3', '4'].map((name) => [name, 'of-this-engine']),
    )
    expect(mended.setUps).toHaveLength(1)
    for (const { surveys } of mended.bores) {
      expect(surveys).toHaveLength(1)
      expect(surveys[0]?.readings).toHaveLength(20)
      expect(surveys[0]?.readings.every(({ sizesMm }) => sizesMm?.length === 2)).toBe(true)
    }
  })

  it('has diameters within their doubt of the block that was invented', () => {
    const finding = proven(mended, 'cylinder-3')
    for (const [depthMm, ...byAxis] of cylinder3Mm) {
      byAxis.forEach((trueMm, index) => {
        const { diameterMm, expandedMm } = stationAt(finding, { depthMm, axisDegrees: 45 * index })
        expect(Math.abs(diameterMm - trueMm), `${depthMm} mm, ${45 * index}°`).toBeLessThan(expandedMm)
      })
    }
    cylinders.forEach((id, index) => {
      const cylinder = proven(mended, id)
      expect(cylinder.largest).toEqual(mostWorn)
      const { diameterMm, expandedMm } = stationAt(cylinder, mostWorn)
      expect(Math.abs(diameterMm - (largestMm[index] ?? 0))).toBeLessThan(expandedMm)
    })
  })

  it('is inside its wear limit in every cylinder, and over its taper in the third alone', () => {
    const verdicts = cylinders.map((id) => {
      const finding = proven(mended, id)
      return [
        finding.verdict.known && finding.verdict.verdict,
        judged(finding, 'taper'),
        judged(finding, 'ovality'),
      ]
    })
    expect(verdicts).toMatchObject([
      ['inside', { um: 44, verdict: 'inside' }, { verdict: 'inside' }],
      ['inside', { um: 45, verdict: 'inside' }, { verdict: 'inside' }],
      ['inside', { um: 84, verdict: 'above' }, { um: 47, verdict: 'too-close', lean: 'inside' }],
      ['inside', { um: 55, verdict: 'too-close', lean: 'inside' }, { verdict: 'inside' }],
    ])
  })

  it('leaves its land out of taper and out-of-round', () => {
    for (const id of cylinders) {
      const { stations, levels } = proven(mended, id)
      expect(levels.filter(({ land }) => land).map(({ depthMm }) => depthMm)).toEqual([4])
      expect(stations.filter(({ land }) => land)).toHaveLength(4)
    }
  })

  it('raises no question about any reading', () => {
    expect(cylinders.flatMap((id) => proven(mended, id).blunders)).toEqual([])
  })
})

describe('the same block as typed', () => {
  it('raises a question for each of the two slips, and no other', () => {
    const asked = cylinders.map((id) => proven(asTyped, id).blunders)
    expect(asked).toMatchObject([
      [],
      [{ code: 'axes-swapped', depthMm: 40, axesDegrees: [0, 90] }],
      [],
      [{ code: 'whole-turn', place: { depthMm: 80, axisDegrees: 90 }, turns: 1 }],
    ])
  })

  it('reads over every limit in the fourth cylinder before it is mended', () => {
    const finding = proven(asTyped, 'cylinder-4')
    expect(finding.verdict).toMatchObject({ known: true, verdict: 'above' })
    expect(judged(finding, 'taper').verdict).toBe('above')
    expect(judged(finding, 'ovality').verdict).toBe('above')
  })

  it('is the mended block, reading for reading, once both questions are answered with mend', () => {
    expect(readingsOf(asTyped)).not.toEqual(readingsOf(mended))
    expect(readingsOf(mendAll(asTyped))).toEqual(readingsOf(mended))
  })
})
