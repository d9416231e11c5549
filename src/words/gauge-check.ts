import type { CheckScatter, GaugeAnswer, GaugeCheckFinding } from '../core/findings'
import type { Measured } from '../core/measured'
import { dayText } from './day-text'
import { gaugeName } from './instrument-names'
import { doubtNeeded, inHundredthsOfMicrons, inTenthsOfMicrons, percent, plusMinusMicrons } from './numbers'
import { words } from './words'

/** What a check shows, in sentences: scatter, drift, share of the band, and what such a gauge can answer. */
export function checkSentences(check: GaugeCheckFinding): string[] {
  const { scatter, drift, answer, stepUm, readings } = check
  const said = words.gaugeCheck
  if (!scatter) return [said.one]
  return [
    scatter.isBelowStep
      ? said.belowStep(readings, deviationText(scatter), fine(stepUm), fine(hiddenUm(stepUm)))
      : said.scatter(
          readings,
          deviationText(scatter),
          scatter.degreesOfFreedom,
          fine(scatter.lowUm),
          fine(scatter.highUm),
        ),
    ...(drift
      ? [
          said.drift[drift.standsOut ? 'standsOut' : 'none'](
            inTenthsOfMicrons(drift.overCheckUm / 1000, { sign: true }),
            fine(drift.expandedUm),
          ),
        ]
      : []),
    ...(answer ? answerSentences(answer, said) : [said.notUsed]),
  ]
}

/** A standard deviation with the digits it deserves: 1.23 µm. */
export function deviationText({ standardDeviationUm }: CheckScatter): string {
  return inHundredthsOfMicrons(standardDeviationUm / 1000)
}

/** The gauge of a check, and the day where it was recorded. */
export function checkHeading(check: GaugeCheckFinding, lists: Measured): string {
  const gauge = lists.gauges.find(({ id }) => id === check.gaugeId)
  if (!gauge) throw new Error(`checkHeading: no gauge ${check.gaugeId} in the job`)
  return words.gaugeCheck.of(
    gaugeName(gauge, lists),
    check.date === undefined ? undefined : dayText(check.date),
  )
}

/** How much of a band is left open, and what a station is worth, in the words of the check or of the study. */
interface AnswerWords {
  readonly share: (scatter: string, share: string, band: string) => string
  readonly good: (boreName: string, repeats: number, doubt: string) => string
}

/** What a gauge that scatters so answers of the limits of a bore it was used in. */
export function answerSentences(answer: GaugeAnswer, said: AnswerWords): string[] {
  const { bandMm, shareOfBand, boreName, repeats, expandedMm } = answer
  return [
    ...(bandMm === undefined || shareOfBand === undefined
      ? []
      : [
          said.share(
            inTenthsOfMicrons(shareOfBand * bandMm),
            percent(shareOfBand),
            inTenthsOfMicrons(bandMm),
          ),
        ]),
    said.good(boreName, repeats, plusMinusMicrons(expandedMm)),
    answerText(answer),
  ]
}

/** Whether such a gauge answers what the limits ask. */
function answerText({ about, marginMm, bandMm = 0 }: GaugeAnswer): string {
  const { answer } = words.gaugeCheck
  if (about === 'nothing') return answer.nothing
  if (about === 'band') {
    const band = inTenthsOfMicrons(bandMm)
    return marginMm === undefined
      ? answer.never(band, doubtNeeded(bandMm / 2) ?? words.notes.lessThanAnyGauge)
      : answer.band(fine(1000 * marginMm), band)
  }
  return answer[about](fine(1000 * (marginMm ?? 0)))
}

/** The standard deviation of what a step hides. */
function hiddenUm(stepUm: number): number {
  return stepUm / Math.sqrt(12)
}

function fine(um: number): string {
  return inTenthsOfMicrons(um / 1000)
}
