import type { BoreFinding, FittedOval, LevelFinding } from '../core/findings'
import { amountWithDoubt, degrees, depth, inMicrons, sizeWithDoubt } from './numbers'
import { words } from './words'

/** What the readings at one level say of its form, a sentence each; then what this gauge cannot see of it. */
export function sectionSentences(finding: BoreFinding, depthMm: number): string[] {
  const said = words.section
  const level = finding.levels.find((one) => one.depthMm === depthMm)
  const isRound = finding.gaugeKind === 'three-contact-micrometer'
  if (!level) return [said.notRead]
  return [
    said.mean(sizeWithDoubt(level.meanMm, level.meanExpandedMm)),
    ...(isRound ? [] : ovalSentences(level, ovalAt(finding, depthMm))),
    ...(level.land ? [said.land] : []),
    isRound ? said.threeContacts : said.twoContacts,
  ]
}

/** The oval of a level; of the widest with the doubt of having been chosen, as among the findings. */
export function ovalAt({ levels, widestOval }: BoreFinding, depthMm: number): FittedOval | undefined {
  if (widestOval?.depthMm === depthMm) return widestOval
  return levels.find((level) => level.depthMm === depthMm)?.fittedOval
}

function ovalSentences(
  { ovalAtLeastMm, axesDegrees }: LevelFinding,
  fittedOval: FittedOval | undefined,
): string[] {
  const said = words.section
  if (fittedOval) {
    const { ovalMm, expandedMm, longAxisDegrees, longAxisExpandedDegrees, atMostMm = 0, axes } = fittedOval
    const form =
      longAxisDegrees === undefined || longAxisExpandedDegrees === undefined
        ? said.ovalNone(inMicrons(atMostMm))
        : said.ovalAcross(
            amountWithDoubt(ovalMm, expandedMm),
            degrees(Math.round(longAxisDegrees) % 180),
            degrees(Math.ceil(longAxisExpandedDegrees)),
          )
    return axes === 3 ? [form, said.ovalThree] : [form]
  }
  if (axesDegrees.length === 1) return [said.oneAxis]
  return ovalAtLeastMm !== undefined && Math.round(ovalAtLeastMm * 1000) > 0
    ? [said.ovalAtLeast(inMicrons(ovalAtLeastMm))]
    : [said.ovalTwoUnseen]
}

/** A section as one text, for who does not see it. */
export function sectionText(finding: BoreFinding, depthMm: number): string {
  return [`${words.section.title(depth(depthMm))}.`, ...sectionSentences(finding, depthMm)].join(' ')
}
