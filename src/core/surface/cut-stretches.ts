import type { CutPoint } from './grid-cuts'

/** An opening along a cut, in the cut's own measure, from < to. */
export interface CutOpening {
  readonly from: number
  readonly to: number
}

/** A piece of wall along a cut without an opening in it, all of it measured or none. */
export interface CutStretch {
  readonly hatched: boolean
  /** Two or more. */
  readonly points: readonly CutPoint[]
}

/**
 * The wall along a cut in pieces: what lies within an opening is left out, and a piece ends where wall that was
 * measured meets wall that was not. At the edge of an opening the wall is mixed linearly between the two points
 * beside it, as it is drawn; whether it was measured and whether it is proven are those of the point before. A
 * piece without length is left out. Own derivation.
 */
export function cutStretches(points: readonly CutPoint[], openings: readonly CutOpening[]): CutStretch[] {
  const stretches: { hatched: boolean; points: CutPoint[] }[] = []
  for (const [i, from] of points.entries()) {
    const to = points[i + 1]
    if (!to) break
    for (const [a, b] of closedParts(from.at, to.at, openings)) {
      const first = mixedAt(from, to, a)
      const second = mixedAt(from, to, b)
      const last = stretches.at(-1)
      const goesOn = last?.hatched === from.hatchedAfter && last.points.at(-1)?.at === a
      if (last && goesOn) last.points.push(second)
      else stretches.push({ hatched: from.hatchedAfter, points: [first, second] })
    }
  }
  return stretches
}

/** What openings leave of the way from a to b, as ends in order. */
function closedParts(a: number, b: number, openings: readonly CutOpening[]): (readonly [number, number])[] {
  let parts: (readonly [number, number])[] = [[a, b]]
  for (const { from, to } of openings) {
    parts = parts.flatMap(([start, end]) =>
      [[start, Math.min(end, from)] as const, [Math.max(start, to), end] as const].filter(
        ([first, last]) => last > first,
      ),
    )
  }
  return parts
}

function mixedAt(from: CutPoint, to: CutPoint, at: number): CutPoint {
  if (at === from.at) return from
  if (at === to.at) return to
  const share = (at - from.at) / (to.at - from.at)
  return { ...from, at, deviationUm: from.deviationUm + share * (to.deviationUm - from.deviationUm) }
}
