import { named } from '../conditions-of'
import type { BoreFinding, Difference } from '../findings'
import { readAlike } from '../gauge/read-alike'
import type { Measured } from '../measured'
import { clampingsApart } from './clampings-apart'
import { asMadeExpanded, difference } from './difference'

/**
 * One bore less another, or one survey of a bore less another of it, mm, by `difference`, with how much two
 * bores may differ as made (not for two surveys of one bore) and what was bolted to either where that differs.
 * Undefined where they have no station in common, and between two contacts and three.
 */
export function boreDifference(
  measured: Measured,
  one: BoreFinding,
  other: BoreFinding,
): Difference | undefined {
  if (!readAlike(one.gaugeKind, other.gaugeKind)) return undefined
  const boreOf = ({ boreId }: BoreFinding) => named(measured.bores, boreId, 'bore')
  const surveyOf = (finding: BoreFinding) => named(boreOf(finding).surveys, finding.surveyId, 'survey')
  const asMade =
    one.boreId === other.boreId ? undefined : asMadeExpanded(measured.spec, boreOf(one), boreOf(other))
  const found = difference(one.stations, other, asMade)
  const clampings = clampingsApart(surveyOf(one), surveyOf(other))
  return found && { ...found, ...(clampings ? { clampings } : {}) }
}
