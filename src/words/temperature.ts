import type { TemperatureEffect } from '../core/findings'
import { inTenthsOfMicrons, plusMinusMicrons, temperature } from './numbers'
import { words } from './words'

/** Corrections below this are not worth a word, mm. */
const trifleMm = 0.00005

/** Whether bore or standard moves a reading at all; two that cancel out still do. */
export function isCorrected({ standardMm, boreMm }: TemperatureEffect): boolean {
  return Math.abs(standardMm) >= trifleMm || Math.abs(boreMm) >= trifleMm
}

/** By how much each reading is brought to 20 °C. */
export function effectSentence(effect: TemperatureEffect): string {
  const said = words.setUp.temperatureEffect
  return isCorrected(effect) ? said.sum(signed(effect.totalMm)) : said.none
}

/** The same where there is little room. */
export function effectInShort({ totalMm }: TemperatureEffect): string {
  return words.setUp.temperatureEffect.short(signed(totalMm))
}

/** What the bore and what the ring or micrometer make of it, and how well it is known. */
export function effectDetail(effect: TemperatureEffect): string {
  const { temperatureEffect: said, references } = words.setUp
  const { boreMm, boreC, standardMm, reference, referenceC, expandedMm, recorded } = effect
  return [
    ...(isCorrected(effect)
      ? [
          said.parts(
            signed(boreMm),
            temperature(boreC),
            signed(standardMm),
            references[reference],
            temperature(referenceC),
          ),
        ]
      : []),
    said.doubt(plusMinusMicrons(expandedMm)),
    ...(recorded ? [] : [said.notRecorded]),
  ].join(' ')
}

/** Both in one. */
export function effectSentences(effect: TemperatureEffect): string {
  return `${effectSentence(effect)} ${effectDetail(effect)}`
}

function signed(mm: number): string {
  return inTenthsOfMicrons(mm, { sign: true })
}
