import { inverseOf, type Vector } from '../form/three-by-three'
import { type Circle, type CirclePoints, type CircleResult, refused } from './circle-points'

/** Steps at most; on a bore two or three are taken. */
const mostSteps = 200

/**
 * The circle with the least sum of squared distances of the points from it along the radius: the reference of ISO
 * 12181-1:2011 (LSCI). Three points or more. By Gauss and Newton's method from the linear fit of Kåsa, a step halved
 * while it gains nothing; to rounding. Source: Gander, Golub and Strebel, Least-Squares Fitting of Circles and
 * Ellipses, BIT 34 (1994).
 */
export function leastSquaresCircle(
  points: CirclePoints,
): CircleResult<Circle & { readonly squares: number }> {
  if (points.x.length < 3) return refused('too-few-values')
  let circle = linearCircle(points)
  if (!circle) return refused('no-circle')
  let squares = squaresAbout(points, circle)
  for (let step = 0; step < mostSteps; step++) {
    const change = stepFrom(points, circle)
    if (!change) return refused('no-circle')
    const next = shortened(points, circle, change, squares)
    if (!next) break
    const settled = Math.hypot(...change) <= 1e-15 * circle.radius
    circle = next.circle
    squares = next.squares
    if (settled) break
  }
  return { known: true, ...circle, squares }
}

/** The circle whose squared distances from its middle come nearest to its squared radius: linear, a place to begin. */
function linearCircle({ x, y }: CirclePoints): Circle | undefined {
  const mean = { x: meanOf(x), y: meanOf(y) }
  let xx = 0
  let xy = 0
  let yy = 0
  let xs = 0
  let ys = 0
  for (let i = 0; i < x.length; i++) {
    const u = (x[i] ?? 0) - mean.x
    const v = (y[i] ?? 0) - mean.y
    xx += u * u
    xy += u * v
    yy += v * v
    xs += u * (u * u + v * v)
    ys += v * (u * u + v * v)
  }
  const determinant = xx * yy - xy * xy
  if (!(determinant > 1e-14 * (xx + yy) ** 2)) return undefined
  const a = (yy * xs - xy * ys) / determinant / 2
  const b = (xx * ys - xy * xs) / determinant / 2
  return { x: mean.x + a, y: mean.y + b, radius: Math.sqrt(a * a + b * b + (xx + yy) / x.length) }
}

function meanOf(values: Float64Array): number {
  let sum = 0
  for (const value of values) sum += value
  return sum / values.length
}

/** The step of Gauss and Newton: the linear least squares of the residuals in a shift of the middle and of the radius. */
function stepFrom({ x, y }: CirclePoints, circle: Circle): Vector | undefined {
  let cc = 0
  let cs = 0
  let ss = 0
  let c = 0
  let s = 0
  let cr = 0
  let sr = 0
  let r = 0
  for (let i = 0; i < x.length; i++) {
    const u = (x[i] ?? 0) - circle.x
    const v = (y[i] ?? 0) - circle.y
    const distance = Math.sqrt(u * u + v * v)
    if (distance === 0) continue
    const cosine = u / distance
    const sine = v / distance
    const rest = distance - circle.radius
    cc += cosine * cosine
    cs += cosine * sine
    ss += sine * sine
    c += cosine
    s += sine
    cr += cosine * rest
    sr += sine * rest
    r += rest
  }
  const inverse = inverseOf([
    [cc, cs, c],
    [cs, ss, s],
    [c, s, x.length],
  ])
  const step = inverse.map((row) => row[0] * cr + row[1] * sr + row[2] * r)
  const [dx = Number.NaN, dy = Number.NaN, dr = Number.NaN] = step
  return step.every(Number.isFinite) ? [dx, dy, dr] : undefined
}

/** The circle after a step, halved until it is no worse; undefined where none is better. */
function shortened(points: CirclePoints, from: Circle, [dx, dy, dr]: Vector, squares: number) {
  for (let share = 1; share > 1e-6; share /= 2) {
    const circle = { x: from.x + share * dx, y: from.y + share * dy, radius: from.radius + share * dr }
    const found = squaresAbout(points, circle)
    if (found < squares) return { circle, squares: found }
  }
  return undefined
}

function squaresAbout({ x, y }: CirclePoints, circle: Circle): number {
  let squares = 0
  for (let i = 0; i < x.length; i++) {
    const u = (x[i] ?? 0) - circle.x
    const v = (y[i] ?? 0) - circle.y
    const rest = Math.sqrt(u * u + v * v) - circle.radius
    squares += rest * rest
  }
  return squares
}
