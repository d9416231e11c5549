import { describe, expect, it } from 'vitest'
import { findingsOf } from '../../../src/job/selectors'
import { judged, proven, scenario, stationAt } from './scenario'

const job = scenario('C-wet-liner-diesel.json')
const land = { depthMm: 6, axisDegrees: 0 }
const peak = { depthMm: 18, axisDegrees: 0 }

/** The invented liner's most worn place at each visit, and its land, mm at 20 °C. */
const peaksMm = [130.01, 130.041, 130.074, 130.162]
const landMm = 130.01

/** What each visit proves, the first one first. */
const visits = job.bores
  .flatMap((bore) => bore.surveys)
  .map(({ id }) => {
    const { bores, earlier } = findingsOf(job)
    const finding = [...bores, ...earlier].find(({ surveyId }) => surveyId === id)
    if (!finding) throw new Error(`no finding for ${id}`)
    return finding
  })

describe('the invented wet liner', () => {
  it('is one bore with four surveys, each with a set-up and hours of its own', () => {
    expect(job.bores).toHaveLength(1)
    const surveys = job.bores.flatMap((bore) => bore.surveys)
    expect(surveys.map(({ hoursRun }) => hoursRun)).toEqual([0, 4200, 8900, 13600])
    expect(new Set(surveys.map(({ setUpId }) => setUpId)).size).toBe(4)
    const dates = surveys.map(({ date }) => date)
    expect([...dates].sort()).toEqual(dates)
    for (const { readings } of surveys) expect(readings).toHaveLength(14)
  })

  it('reads 12 µm large everywhere on the third visit, and on no other, until it is brought to 20 °C', () => {
    const correctionsUm = visits.map(({ stations }) =>
      stations.map(({ correctionMm }) => Math.round(correctionMm * 1000)),
    )
    expect(new Set(correctionsUm[2])).toEqual(new Set([-12]))
    for (const visit of [0, 1, 3]) {
      expect(correctionsUm[visit]?.every((um) => Math.abs(um) <= 1)).toBe(true)
    }
  })

  it('gives itself away by its land, which no ring touches', () => {
    const [, , third] = visits
    if (!third) throw new Error('no third visit')
    const { sizesMm, diameterMm, land: isLand } = stationAt(third, land)
    expect(isLand).toBe(true)
    const asReadMm = sizesMm.reduce((sum, size) => sum + size, 0) / sizesMm.length
    expect(asReadMm).toBeCloseTo(130.022, 2)
    expect(asReadMm - landMm).toBeGreaterThan(0.01)
    expect(Math.abs(diameterMm - landMm)).toBeLessThan(0.002)
  })

  it('has land and most worn place within their doubt of the liner that was invented, on every visit', () => {
    visits.forEach((finding, visit) => {
      const atPeak = stationAt(finding, peak)
      const atLand = stationAt(finding, land)
      expect(Math.abs(atPeak.diameterMm - (peaksMm[visit] ?? 0))).toBeLessThan(atPeak.expandedMm)
      expect(Math.abs(atLand.diameterMm - landMm)).toBeLessThan(atLand.expandedMm)
      // Warm or not, land and most worn place share the temperature: 64 µm apart on the third visit.
      const apartUm = 1000 * (atPeak.diameterMm - atLand.diameterMm)
      expect(Math.abs(apartUm - 1000 * ((peaksMm[visit] ?? 0) - landMm))).toBeLessThan(4)
    })
  })

  it('is judged on each visit and inside its wear limit on all, with less to spare each time', () => {
    expect(visits.map(({ verdict }) => verdict.known && verdict.verdict)).toEqual(Array(4).fill('inside'))
    const peaks = visits.map((finding) => stationAt(finding, peak).diameterMm)
    expect([...peaks].sort((a, b) => a - b)).toEqual(peaks)
  })

  it('is shown by its last visit, and raises no question on any', () => {
    const last = proven(job, 'liner')
    expect(last.verdict).toMatchObject({ known: true, verdict: 'inside', deciding: peak })
    expect(judged(last, 'ovality')).toMatchObject({ um: 52, verdict: 'inside' })
    expect(visits.flatMap(({ blunders }) => blunders)).toEqual([])
  })
})
