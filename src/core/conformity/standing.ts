import type { BoreFinding, BoreVerdict, Verdict } from '../findings'

/** How a bore stands to all of its limits: out of one, too close to one, inside of all, or not judged. */
export type Standing = 'out' | 'too-close' | 'inside' | 'none'

/**
 * How a bore stands to its limits of size, out-of-round and taper together: the worst of the three. A bore for
 * comparison is not judged, nor is one that is inside of what could be judged while a limit waits for the travel.
 * Own rule.
 */
export function standingOf({ role, verdict, ovality, taper }: Judged): Standing {
  if (role === 'for-comparison') return 'none'
  const verdicts: (Verdict | undefined)[] = [
    verdict.known ? verdict.verdict : undefined,
    ...[ovality[0], taper[0]].map((found) => (found?.known ? found.verdict : undefined)),
  ]
  if (verdicts.some((one) => one === 'above' || one === 'below')) return 'out'
  if (verdicts.includes('too-close')) return 'too-close'
  // A limit that could not be reckoned with may be the one that the bore is over.
  if ([ovality[0], taper[0]].some((found) => found?.limitOpen !== undefined)) return 'none'
  return verdicts.includes('inside') ? 'inside' : 'none'
}

/** The part of a finding that says how its bore stands. */
export type Judged = Pick<BoreFinding, 'role' | 'verdict' | 'ovality' | 'taper'>

/** Where a verdict lies about the two limits: between, beyond one, or across one. */
export const verdictPlaces = ['above', 'below', 'close-above', 'close-below', 'inside'] as const
export type VerdictPlace = (typeof verdictPlaces)[number]

/** How a bore stands that lies at a place; undefined is not judged. */
export function standingAt(place: VerdictPlace | undefined): Standing {
  if (place === undefined) return 'none'
  if (place === 'inside') return 'inside'
  return place === 'above' || place === 'below' ? 'out' : 'too-close'
}

/** Where a verdict on size lies; one too close to call lies across the limit that it leans to. */
export function verdictPlace(verdict: Extract<BoreVerdict, { known: true }>): VerdictPlace {
  if (verdict.verdict !== 'too-close') return verdict.verdict
  const leansBelow =
    verdict.lean === 'below' ||
    (verdict.lean === 'inside' && verdict.below.length > 0 && verdict.above.length === 0)
  return leansBelow ? 'close-below' : 'close-above'
}

/**
 * Where a bore lies by all of its limits together; undefined where it is not judged. Out-of-round and taper have
 * an upper limit only, so a bore that they decide lies above it or across it.
 */
export function standingPlace(judged: Judged): VerdictPlace | undefined {
  const standing = standingOf(judged)
  if (standing === 'none') return undefined
  if (standing === 'inside') return 'inside'
  const bySize = judged.verdict.known ? verdictPlace(judged.verdict) : undefined
  const isOut = bySize === 'above' || bySize === 'below'
  const isClose = bySize === 'close-above' || bySize === 'close-below'
  if (standing === 'out') return isOut ? bySize : 'above'
  return isClose ? bySize : 'close-above'
}

/**
 * The worst place among bores, undefined for one that is not judged: beyond a limit, across one, and inside only
 * where every one of them is.
 */
export function worstPlace(places: readonly (VerdictPlace | undefined)[]): VerdictPlace | undefined {
  const worst = verdictPlaces.find((place) => place !== 'inside' && places.includes(place))
  if (worst) return worst
  return places.length > 0 && places.every((place) => place === 'inside') ? 'inside' : undefined
}
