import { dot, inverseOf, type Vector } from '../form/three-by-three'
import { type Circle, type CirclePoints, type CircleResult, refused } from './circle-points'

/** Steps at most; on a bore two or three are taken. */
const mostSteps = 200

/** A step that promises to take off less than this share of the squares is the last: rounding would hide what it gains. */
const leastGain = 1e-14

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
    const { step: by, gain } = change
    if (gain <= leastGain * squares) {
      circle = moved(circle, by, 1)
      break
    }
    const next = shortened(points, circle, by, squares)
    if (!next) break
    circle = next.circle
    squares = next.squares
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

/**
 * The step of Gauss and Newton: the linear least squares of the residuals in a shift of the middle and of the radius,
 * and what it would take off their squares if they were linear.
 */
function stepFrom({ x, y }: CirclePoints, circle: Circle): { step: Vector; gain: number } | undefined {
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
  const right: Vector = [cr, sr, r]
  const [x1, y1, r1] = inverseOf([
    [cc, cs, c],
    [cs, ss, s],
    [c, s, x.length],
  ])
  const step: Vector = [dot(x1, right), dot(y1, right), dot(r1, right)]
  const gain = dot(step, right)
  return Number.isFinite(gain) ? { step, gain } : undefined
}

/** The circle after a step, halved until it is no worse; undefined where none is better. */
function shortened(points: CirclePoints, from: Circle, step: Vector, squares: number) {
  for (let share = 1; share > 1e-6; share /= 2) {
    const circle = moved(from, step, share)
    const found = squaresAbout(points, circle)
    if (found < squares) return { circle, squares: found }
  }
  return undefined
}

function moved(from: Circle, [dx, dy, dr]: Vector, share: number): Circle {
  return { x: from.x + share * dx, y: from.y + share * dy, radius: from.radius + share * dr }
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
