import { choleskyFactor, solvedBy } from '../statistics/cholesky'

/** Points of a wall whose axis runs nearly along z, in one unit. */
export interface CylinderPoints {
  readonly x: Float64Array
  readonly y: Float64Array
  readonly z: Float64Array
}

/** A cylinder about the line (x + leanX·z, y + leanY·z, z). */
export interface Cylinder {
  readonly x: number
  readonly y: number
  readonly leanX: number
  readonly leanY: number
  readonly radius: number
}

/** Steps at most; on a bore two or three are taken. */
const mostSteps = 200

/** A step that promises to take off less than this share of the squares is the last: rounding would hide what it gains. */
const leastGain = 1e-14

/**
 * The cylinder with the least sum of squared distances of the points from it (ISO 12180-1:2011, LSCY), by Gauss and
 * Newton's method on true distances from a leaning line, a step halved while it gains nothing. `start` is a cylinder
 * near it. Throws where the points do not hold the cylinder in place (points on fewer than two levels, or on one side).
 * Source of the distance: own derivation, d² = |v|² − (v·s)²/(1 + |s|²) for a place v across from the line with lean s.
 */
export function leastSquaresCylinder(
  points: CylinderPoints,
  start: Cylinder,
): { readonly cylinder: Cylinder; readonly squares: number } {
  const middle = meanOf(points.z)
  let cylinder = start
  let squares = squaresAbout(points, cylinder)
  for (let step = 0; step < mostSteps; step++) {
    const { step: by, gain } = stepFrom(points, cylinder, middle)
    if (gain <= leastGain * squares) {
      cylinder = moved(cylinder, by, 1, middle)
      break
    }
    const next = shortened(points, cylinder, by, squares, middle)
    if (!next) break
    cylinder = next.cylinder
    squares = next.squares
  }
  return { cylinder, squares }
}

/** Distance of a place from the axis of a cylinder. */
export function distanceFromAxis(cylinder: Cylinder, x: number, y: number, z: number): number {
  const { leanX, leanY } = cylinder
  const vx = x - cylinder.x - leanX * z
  const vy = y - cylinder.y - leanY * z
  const along = vx * leanX + vy * leanY
  return Math.sqrt(vx * vx + vy * vy - (along * along) / (1 + leanX * leanX + leanY * leanY))
}

function meanOf(values: Float64Array): number {
  let sum = 0
  for (const value of values) sum += value
  return sum / values.length
}

/**
 * The step in x and y at the middle of the length, both leans and the radius, and what it would take off the squares if
 * the residuals were linear.
 */
function stepFrom({ x, y, z }: CylinderPoints, cylinder: Cylinder, middle: number) {
  const { leanX, leanY } = cylinder
  const steep = 1 + leanX * leanX + leanY * leanY
  const normal = new Float64Array(25)
  const right = new Float64Array(5)
  // Sums of n, n·height and their products, one by one: a wall has a million places.
  let [xx, xy, yy, xxh, xyh, yyh, xxhh, xyhh, yyhh] = [0, 0, 0, 0, 0, 0, 0, 0, 0]
  let [sx, sy, sxh, syh, rx, ry, rxh, ryh, r] = [0, 0, 0, 0, 0, 0, 0, 0, 0]
  for (let i = 0; i < x.length; i++) {
    const height = z[i] ?? 0
    const vx = (x[i] ?? 0) - cylinder.x - leanX * height
    const vy = (y[i] ?? 0) - cylinder.y - leanY * height
    const q = (vx * leanX + vy * leanY) / steep
    const distance = Math.sqrt(vx * vx + vy * vy - q * q * steep)
    const nx = (vx - q * leanX) / distance
    const ny = (vy - q * leanY) / distance
    const h = height - middle + q
    const rest = distance - cylinder.radius
    const hx = nx * h
    const hy = ny * h
    xx += nx * nx
    xy += nx * ny
    yy += ny * ny
    xxh += nx * hx
    xyh += nx * hy
    yyh += ny * hy
    xxhh += hx * hx
    xyhh += hx * hy
    yyhh += hy * hy
    sx += nx
    sy += ny
    sxh += hx
    syh += hy
    rx += nx * rest
    ry += ny * rest
    rxh += hx * rest
    ryh += hy * rest
    r += rest
  }
  normal.set([xx, xy, xxh, xyh, sx], 0)
  normal.set([xy, yy, xyh, yyh, sy], 5)
  normal.set([xxh, xyh, xxhh, xyhh, sxh], 10)
  normal.set([xyh, yyh, xyhh, yyhh, syh], 15)
  normal.set([sx, sy, sxh, syh, x.length], 20)
  right.set([rx, ry, rxh, ryh, r])
  const by = scaledSolution(normal, right)
  return { step: by, gain: by.reduce((sum, entry, a) => sum + entry * (right[a] ?? 0), 0) }
}

/** Solves with every unknown in its own measure, so that a lean and a shift weigh alike. */
function scaledSolution(normal: Float64Array, right: Float64Array): Float64Array {
  const scale = right.map((_, a) => 1 / Math.sqrt(normal[6 * a] || 1))
  const scaled = normal.map((entry, at) => entry * (scale[Math.floor(at / 5)] ?? 1) * (scale[at % 5] ?? 1))
  const solved = solvedBy(
    choleskyFactor(scaled, 5),
    right.map((entry, a) => entry * (scale[a] ?? 1)),
  )
  return solved.map((entry, a) => entry * (scale[a] ?? 1))
}

function shortened(
  points: CylinderPoints,
  from: Cylinder,
  step: Float64Array,
  squares: number,
  middle: number,
) {
  for (let share = 1; share > 1e-6; share /= 2) {
    const cylinder = moved(from, step, share, middle)
    const found = squaresAbout(points, cylinder)
    if (found < squares) return { cylinder, squares: found }
  }
  return undefined
}

function moved(
  from: Cylinder,
  [dx = 0, dy = 0, leanX = 0, leanY = 0, radius = 0]: Float64Array,
  share: number,
  middle: number,
): Cylinder {
  return {
    x: from.x + share * (dx - leanX * middle),
    y: from.y + share * (dy - leanY * middle),
    leanX: from.leanX + share * leanX,
    leanY: from.leanY + share * leanY,
    radius: from.radius + share * radius,
  }
}

function squaresAbout({ x, y, z }: CylinderPoints, cylinder: Cylinder): number {
  let squares = 0
  for (let i = 0; i < x.length; i++) {
    const rest = distanceFromAxis(cylinder, x[i] ?? 0, y[i] ?? 0, z[i] ?? 0) - cylinder.radius
    squares += rest * rest
  }
  return squares
}
