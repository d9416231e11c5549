import { middleOfSurface } from '../surface-findings/surface-place'
import { withinTurn } from './mark-place'
import type { MarkPattern, ScanMark } from './scan-marks'

/** Streaks whose middles are so close lie on one side of the bore together, degrees. */
const together = 22
/** One side: all within so many degrees. */
const oneSide = 90
/** Both sides: within so many degrees of opposite. */
const opposite = 25
/**
 * Four corners: so many degrees from one to the next. Corners 35° to 55° from the thrust axis are 70° to 110° apart;
 * half a streak's width of doubt at either end.
 */
const leastApart = 62
const mostApart = 118
/** Corners are alike on both sides of the pin, within so many degrees. */
const alikeWithin = 22
/** All round: so many places with no wider gap between them. */
const placesAllRound = 5
const widestGapAllRound = 110

/**
 * How the marks of a scan lie together, as something to check. Streaks and patches make a side, both sides, four
 * corners or all round; a mark on the wall between two openings a bridge; bands stand for themselves. Lines within a
 * wider mark, and what lies along the edge of an opening, make no pattern of their own. An oval or lobed form leaves
 * no marks, and so makes none. Where the thrust axis lies is not asked: corners at ±α from it are at 90° − α from the
 * pin, so both give the same four. Source of the patterns: common practice, no published source.
 */
export function markPatterns(marks: readonly ScanMark[]): MarkPattern[] {
  const numbered = marks.map((mark, index) => ({ mark, index }))
  const bands = numbered.filter(({ mark }) => mark.shape === 'band' && !mark.bridge)
  const alone = numbered.filter(
    ({ mark }) => mark.shape !== 'band' && !mark.bridge && mark.within === undefined && !mark.besideOpening,
  )
  return [
    ...patternAround(placesOf(alone)),
    ...bridgesOf(numbered),
    ...(bands.length > 0 ? [{ kind: 'band' as const, marks: bands.map(({ index }) => index) }] : []),
  ]
}

interface Numbered {
  readonly mark: ScanMark
  readonly index: number
}

/** A direction in which marks lie, degrees. */
interface MarkedPlace {
  readonly atDegrees: number
  readonly marks: readonly number[]
}

/** Marks gathered by direction, clockwise: each within 22° of the one before belongs with it. */
function placesOf(numbered: readonly Numbered[]): MarkedPlace[] {
  const sorted = numbered
    .map(({ mark, index }) => ({
      at: middleOfSurface(mark).angleDegrees,
      index,
      weight: Math.abs(mark.heightUm),
    }))
    .sort((a, b) => a.at - b.at)
  if (sorted.length === 0) return []
  const gaps = sorted.map(({ at }, i) =>
    withinTurn(at - (sorted[(i + sorted.length - 1) % sorted.length]?.at ?? 0)),
  )
  const start = Math.max(
    0,
    gaps.findIndex((gap) => gap > together),
  )
  const groups: (typeof sorted)[] = []
  for (let i = 0; i < sorted.length; i++) {
    const one = sorted[(start + i) % sorted.length]
    if (!one) continue
    const last = groups[groups.length - 1]
    if (last && (gaps[(start + i) % sorted.length] ?? 0) <= together) last.push(one)
    else groups.push([one])
  }
  return groups
    .map((group) => ({ atDegrees: meanDirection(group), marks: group.map(({ index }) => index) }))
    .sort((a, b) => a.atDegrees - b.atDegrees)
}

function meanDirection(group: readonly { readonly at: number; readonly weight: number }[]): number {
  const first = group[0]?.at ?? 0
  let sum = 0
  let weights = 0
  for (const { at, weight } of group) {
    sum += weight * (withinTurn(at - first + 180) - 180)
    weights += weight
  }
  return withinTurn(first + (weights > 0 ? sum / weights : 0))
}

function patternAround(places: readonly MarkedPlace[]): MarkPattern[] {
  const marks = places.flatMap((place) => place.marks)
  const gaps = places.map(({ atDegrees }, i) =>
    places.length === 1 ? 360 : withinTurn((places[(i + 1) % places.length]?.atDegrees ?? 0) - atDegrees),
  )
  if (places.length === 0) return []
  if (Math.max(...gaps) >= 360 - oneSide)
    return [{ kind: 'one-side', atDegrees: middleOfAll(places, gaps), marks }]
  if (places.length >= placesAllRound && Math.max(...gaps) <= widestGapAllRound)
    return [{ kind: 'all-round', marks }]
  const corners = fourCorners(places, gaps)
  if (corners) return [corners]
  const sides = bothSides(places, gaps)
  return sides ? [sides] : []
}

/** The middle of the arc that holds all places. */
function middleOfAll(places: readonly MarkedPlace[], gaps: readonly number[]): number {
  const widest = gaps.indexOf(Math.max(...gaps))
  const first = places[(widest + 1) % places.length]?.atDegrees ?? 0
  return withinTurn(first + (360 - (gaps[widest] ?? 360)) / 2)
}

function fourCorners(places: readonly MarkedPlace[], gaps: readonly number[]): MarkPattern | undefined {
  const [a, b, c, d] = places.map(({ atDegrees }) => atDegrees)
  const [ab, bc, cd, da] = gaps
  if (a === undefined || b === undefined || c === undefined || d === undefined || places.length !== 4)
    return undefined
  if (ab === undefined || bc === undefined || cd === undefined || da === undefined) return undefined
  if (gaps.some((gap) => gap < leastApart || gap > mostApart)) return undefined
  const [apart, otherApart] = [Math.abs(ab - cd), Math.abs(bc - da)]
  if (Math.min(apart, otherApart) > alikeWithin) return undefined
  const pin = apart <= otherApart ? ([a + ab / 2, c + cd / 2] as const) : ([b + bc / 2, d + da / 2] as const)
  return {
    kind: 'four-corners',
    atDegrees: [a, b, c, d],
    pinDegrees: [withinTurn(pin[0]), withinTurn(pin[1])],
    marks: places.flatMap((place) => place.marks),
  }
}

/** Two groups, each on one side, opposite one another. */
function bothSides(places: readonly MarkedPlace[], gaps: readonly number[]): MarkPattern | undefined {
  const order = gaps.map((gap, i) => ({ gap, i })).sort((p, q) => q.gap - p.gap)
  const [first, second] = order
  if (!first || !second) return undefined
  const sideAfter = (from: number, to: number) => {
    const begin = places[(from + 1) % places.length]?.atDegrees ?? 0
    const reach = withinTurn((places[to]?.atDegrees ?? 0) - begin)
    return { at: withinTurn(begin + reach / 2), reach }
  }
  const one = sideAfter(first.i, second.i)
  const other = sideAfter(second.i, first.i)
  if (one.reach > oneSide / 2 || other.reach > oneSide / 2) return undefined
  if (Math.abs(withinTurn(other.at - one.at) - 180) > opposite) return undefined
  const atDegrees = one.at < other.at ? ([one.at, other.at] as const) : ([other.at, one.at] as const)
  return { kind: 'both-sides', atDegrees, marks: places.flatMap((place) => place.marks) }
}

function bridgesOf(numbered: readonly Numbered[]): MarkPattern[] {
  const bridges: MarkPattern[] = []
  for (const { mark, index } of numbered) {
    const { bridge, sign } = mark
    if (!bridge) continue
    bridges.push({ kind: 'bridge', sign, bridge, marks: [index] })
  }
  return bridges
}
