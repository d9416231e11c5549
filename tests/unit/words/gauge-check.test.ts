import { describe, expect, it } from 'vitest'
import type { GaugeAnswer, GaugeCheckFinding } from '../../../src/core/findings'
import { checkHeading, checkSentences } from '../../../src/words/gauge-check'
import { measuredBore } from '../core/measured-bore'

const scatter = {
  standardDeviationUm: 1.234,
  degreesOfFreedom: 9,
  lowUm: 0.849,
  highUm: 2.253,
  isBelowStep: false,
}
const band: GaugeAnswer = {
  boreId: 'b1',
  boreName: '1',
  repeats: 3,
  expandedMm: 0.0043,
  about: 'band',
  marginMm: 0.00371,
  bandMm: 0.012,
  shareOfBand: 0.617,
}
const check: GaugeCheckFinding = {
  gaugeId: 'gauge',
  index: 0,
  date: '2026-03-09',
  readings: 10,
  stepUm: 1,
  scatter,
  drift: { overCheckUm: -0.4, expandedUm: 1.1, standsOut: false },
  isInUse: false,
  answer: band,
}
const lastOf = (answer: GaugeAnswer) => checkSentences({ ...check, answer }).at(-1)
const { marginMm: _, ...never } = band

describe('what a check of a gauge shows, in words', () => {
  it('is scatter, drift, share of the band and what such a gauge can answer', () => {
    expect(checkSentences(check)).toEqual([
      '10 readings scatter by a standard deviation of 1.23 µm, known from 9 degrees of freedom: it lies between 0.8 µm and 2.3 µm in 95 of 100 such checks.',
      'From the first to the last they drift by −0.4 µm ± 1.1 µm: none that stands out.',
      'Six standard deviations of one reading, 7.4 µm, are 62 % of the 12 µm from the smallest to the largest new size.',
      'With this scatter a station of bore 1, read 3 times, is good to ± 5 µm, with everything else in its set-up.',
      'That can answer whether a bore is inside the 12 µm: readings 3.7 µm or more inside both limits are proven.',
    ])
  })

  it('says plainly what it cannot answer', () => {
    expect(lastOf(never)).toBe('That cannot answer whether a bore is inside the 12 µm: it takes ± 6 µm.')
    expect(lastOf({ ...band, about: 'wear' })).toMatch(
      /within 3\.7 µm of the limit: they stay too close to call/,
    )
    expect(lastOf({ ...never, about: 'nothing' })).toMatch(/no question yet/)
    const { answer: __, ...unused } = check
    expect(checkSentences(unused).at(-1)).toMatch(/No bore of this engine was measured with it/)
  })

  it('speaks of the step where that hides the scatter, of a drift that stands out, and of one reading alone', () => {
    const hidden = { ...check, scatter: { ...scatter, standardDeviationUm: 0, isBelowStep: true } }
    expect(checkSentences(hidden)[0]).toBe(
      '10 readings scatter by a standard deviation of 0 µm, less than the step of 1 µm can show; 0.3 µm counts instead.',
    )
    const drifting = { ...check, drift: { overCheckUm: 5, expandedUm: 0.7, standsOut: true } }
    expect(checkSentences(drifting)[1]).toMatch(
      /^From the first to the last they drift by \+5 µm ± 0\.7 µm\. That stands out/,
    )
    const alone = { gaugeId: 'gauge', index: 0, readings: 1, stepUm: 1, isInUse: false }
    expect(checkSentences(alone)).toEqual([
      'One reading does not show how a gauge repeats: two are needed, ten or more tell something.',
    ])
  })

  it('stands under the name of the gauge, with its day', () => {
    const lists = measuredBore({ levelsMm: [], axesDegrees: [], rows: [] })
    expect(checkHeading(check, lists)).toBe('Dial bore gauge 0.001, set by micrometer, 9 March 2026')
  })
})
