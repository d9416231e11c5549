import type { BoreFinding } from '../findings'
import type { SetUp } from '../measured'
import type { DecisionFacts } from './decision-facts'

/** Why the readings cannot be built on. */
export type ReadingsTrouble =
  | 'repeats-spread'
  | 'drift-with-order'
  | 'zero-moved'
  | 'slip-asked'
  | 'contact-changed'
  | 'no-setting-size'
  | 'no-direction-test'

/** A zero that moved by more than this share of what the limits leave between them decides more than the bore does. */
const zeroShare = 0.5

/**
 * What keeps a decision from being built on these readings, gravest first: open questions that may be slips, a gauge
 * that was not set or whose needle may count the other way, repeats that spread, a drift with the order of reading,
 * and a zero that moved by more than half of the width between the limits (common practice, no published source).
 * What was merely not recorded is in every ± and stops nothing.
 */
export function readingsTroubles(finding: BoreFinding, setUp: SetUp): ReadingsTrouble[] {
  const codes = finding.blunders.map(({ code }) => code)
  const isUnsteady = (code: string) => code === 'repeats-spread' || code === 'drift-with-order'
  return [
    ...(codes.some((code) => !isUnsteady(code)) ? (['slip-asked'] as const) : []),
    ...(['contact-changed', 'no-setting-size', 'no-direction-test'] as const).filter((reason) =>
      finding.provisional.includes(reason),
    ),
    ...(codes.includes('repeats-spread') ? (['repeats-spread'] as const) : []),
    ...(codes.includes('drift-with-order') ? (['drift-with-order'] as const) : []),
    ...(zeroMovedTooFar(finding, setUp) ? (['zero-moved'] as const) : []),
  ]
}

/** The fact made of the troubles; `none` where nothing with a size counts. */
export function readingsFact(finding: BoreFinding, setUp: SetUp): DecisionFacts['readings'] {
  if (!finding.stations.some(({ counted }) => counted)) return 'none'
  const [gravest] = readingsTroubles(finding, setUp)
  return gravest === undefined ? 'sound' : factOf[gravest]
}

const factOf: Readonly<Record<ReadingsTrouble, DecisionFacts['readings']>> = {
  'slip-asked': 'slip-asked',
  'contact-changed': 'not-set',
  'no-setting-size': 'not-set',
  'no-direction-test': 'not-set',
  'repeats-spread': 'unsteady',
  'drift-with-order': 'unsteady',
  'zero-moved': 'unsteady',
}

function zeroMovedTooFar({ pair }: BoreFinding, { zeroOpenUm, zeroCloseUm }: SetUp): boolean {
  if (pair?.minMm === undefined || pair.maxMm === undefined) return false
  if (zeroOpenUm === undefined || zeroCloseUm === undefined) return false
  return Math.abs(zeroCloseUm - zeroOpenUm) / 1000 > zeroShare * (pair.maxMm - pair.minMm)
}
