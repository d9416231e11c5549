import {
  type Circle,
  type CirclePoints,
  type CircleResult,
  distancesFrom,
  isAllRound,
  refused,
  widestGap,
} from './circle-points'
import { leastSquaresCircle } from './least-squares-circle'
import { type Contact, type Directed, lowestCover, narrowestBand } from './narrowest-band'

/** Two circles about one middle, in the unit of the points. */
export interface ZoneCircles {
  readonly x: number
  readonly y: number
  readonly inner: number
  readonly outer: number
  /** Places on the outer circle (upper) and on the inner one (lower). */
  readonly contacts: readonly Contact[]
}

/** Rounds of the linear programme at most; on a bore two are made. */
const mostRounds = 100

/** A shift of this share of the radius leaves e²/2R of 5e-15 of it. */
const settled = 1e-7

/**
 * The two concentric circles with the least gap that hold all points between them (ISO 12181-1:2011, MZCI). Refused for
 * fewer than four points, and where the points fit in a half-circle, as after a gap of half a turn or more.
 *
 * The programme that is linear in the middle, d − n·c, is solved to its true minimum (`narrowestBand`), and made anew
 * about the middle it found until that gains nothing: the distances are exact. On a bore, whose form is small against
 * its radius, the first round is off by e²/2R, and there is one minimum. `about` is the least-squares circle, where it
 * is known already.
 */
export function minimumZoneCircle(
  points: CirclePoints,
  about: CircleResult<Circle> = leastSquaresCircle(points),
): CircleResult<ZoneCircles> {
  return zoned(points, about, 4, narrowestBand, ({ largest, smallest }) => largest - smallest)
}

/**
 * The largest circle with no point inside it, among those about a middle near that of the bore (ISO 12181-1:2011,
 * MICI); `outer` is the smallest circle about the same middle that holds all points. Refused as `minimumZoneCircle`
 * is, from three points on. There can be several of nearly one size: this is the one that the linear programme about
 * the least-squares middle leads to.
 */
export function maximumInscribedCircle(
  points: CirclePoints,
  about: CircleResult<Circle> = leastSquaresCircle(points),
): CircleResult<ZoneCircles> {
  return zoned(points, about, 3, largestInside, ({ smallest }) => -smallest)
}

function largestInside({ dimensions, directions, values }: Directed, near: readonly Contact[]) {
  const cover = lowestCover(
    { dimensions, directions: directions.map((d) => -d), values: values.map((v) => -v) },
    near.map(({ index }): Contact => ({ index, side: 'upper' })),
  )
  if (!cover) return undefined
  return { ...cover, contacts: cover.contacts.map(({ index }): Contact => ({ index, side: 'lower' })) }
}

function zoned(
  points: CirclePoints,
  start: CircleResult<Circle>,
  fewest: number,
  solve: (
    directed: Directed,
    near: readonly Contact[],
  ) => { readonly shift: Float64Array; readonly contacts: readonly Contact[] } | undefined,
  cost: (distances: { readonly largest: number; readonly smallest: number }) => number,
): CircleResult<ZoneCircles> {
  if (points.x.length < fewest) return refused('too-few-values')
  if (!start.known) return start
  if (!isAllRound(points, start) && widestGap(points, start) >= Math.PI * (1 - 1e-12)) {
    return refused('gap-of-half-a-turn')
  }
  let middle = { x: start.x, y: start.y }
  let least = cost(distancesFrom(points, middle))
  let contacts: readonly Contact[] = []
  for (let round = 0; round < mostRounds; round++) {
    const band = solve(linearised(points, middle, start.radius), contacts)
    if (!band) return refused('gap-of-half-a-turn')
    if (round === 0) contacts = band.contacts
    const next = shortened(points, middle, band.shift, least, cost)
    if (!next) break
    const moved = Math.hypot(next.middle.x - middle.x, next.middle.y - middle.y)
    middle = next.middle
    least = next.cost
    contacts = band.contacts
    // Another round would gain what this one left of the second order.
    if (moved <= settled * start.radius) break
  }
  const { largest, smallest } = distancesFrom(points, middle)
  return { known: true, ...middle, inner: smallest, outer: largest, contacts }
}

/** Distances from a middle less the radius, and the directions in which a shift of it takes them down. */
function linearised(
  { x, y }: CirclePoints,
  middle: { readonly x: number; readonly y: number },
  radius: number,
): Directed {
  const directions = new Float64Array(2 * x.length)
  const values = new Float64Array(x.length)
  for (let i = 0; i < x.length; i++) {
    const u = (x[i] ?? 0) - middle.x
    const v = (y[i] ?? 0) - middle.y
    const distance = Math.sqrt(u * u + v * v)
    values[i] = distance - radius
    directions[2 * i] = distance > 0 ? u / distance : 1
    directions[2 * i + 1] = distance > 0 ? v / distance : 0
  }
  return { dimensions: 2, directions, values }
}

/** The middle after a shift, halved until it is better; undefined where it is not. */
function shortened(
  points: CirclePoints,
  from: { readonly x: number; readonly y: number },
  shift: Float64Array,
  least: number,
  cost: (distances: { readonly largest: number; readonly smallest: number }) => number,
) {
  for (let share = 1; share > 1e-4; share /= 2) {
    const middle = { x: from.x + share * (shift[0] ?? 0), y: from.y + share * (shift[1] ?? 0) }
    const found = cost(distancesFrom(points, middle))
    if (found < least) return { middle, cost: found }
  }
  return undefined
}
