import { describe, expect, it } from 'vitest'
import { leastSquaresCircle } from '../../src/core/scan/least-squares-circle'
import { leastSquaresCylinder } from '../../src/core/scan/least-squares-cylinder'
import { minimumCircumscribedCircle } from '../../src/core/scan/minimum-circumscribed-circle'
import { maximumInscribedCircle, minimumZoneCircle } from '../../src/core/scan/zone-circles'
import circles from './data/circle-fits.json' with { type: 'json' }
import cylinders from './data/cylinder-fits.json' with { type: 'json' }

const pointsOf = (points: readonly (readonly number[])[]) => ({
  x: Float64Array.from(points, ([x]) => x ?? Number.NaN),
  y: Float64Array.from(points, ([, y]) => y ?? Number.NaN),
})

function expectNear(found: number, expected: number, tolerance: number): void {
  expect(Math.abs(found - expected)).toBeLessThanOrEqual(tolerance)
}

// Every level of a scan runs through these functions.
describe('least-squares circles against published fits', () => {
  // Least-Squares Fitting of Circles and Ellipses, BIT 34 (1994) 558–578: points found, printed fit from memory.
  it('agrees with the geometric fit of the six points of BIT 34 (1994) in the digits that it prints', () => {
    const circle = leastSquaresCircle(pointsOf(circles.bit34.points))
    if (!circle.known) throw new Error(circle.reason)
    expectNear(circle.x, 4.7398, 5e-5)
    expectNear(circle.y, 2.9835, 5e-5)
    expectNear(circle.radius, 4.7142, 5e-5)
    expectNear(circle.squares, 1.22759908, 1e-8)
  })

  // The SciPy Cookbook, Least squares circle: points found, printed fits from memory to about five digits.
  it.each(['cookbook1', 'cookbook2'] as const)(
    'agrees with the geometric fit of %s of the SciPy Cookbook',
    (name) => {
      const { points, leastSquares, squares } = circles[name]
      const circle = leastSquaresCircle(pointsOf(points))
      if (!circle.known) throw new Error(circle.reason)
      const [x = 0, y = 0, radius = 0] = leastSquares
      // On the short arc the digits of the reference end at 2e-6.
      expectNear(circle.x, x, 1e-5)
      expectNear(circle.y, y, 1e-5)
      expectNear(circle.radius, radius, 1e-5)
      expectNear(circle.squares, squares, 1e-6)
    },
  )
})

describe('circumscribed circles against a published test', () => {
  // A public geometry library's own test of smallest enclosing circles: exact centre and radius.
  it.each(['enclosing1', 'enclosing2'] as const)('agree exactly on %s', (name) => {
    const { points, circumscribed } = circles[name]
    const circle = minimumCircumscribedCircle(pointsOf(points))
    if (!circle.known) throw new Error(circle.reason)
    const [x = 0, y = 0, radius = 0] = circumscribed
    expectNear(circle.x, x, 1e-12)
    expectNear(circle.y, y, 1e-12)
    expectNear(circle.radius, radius, 1e-12)
  })
})

// Found by enumerating contacts and by a search from 300 starts, in SciPy; not published.
describe('minimum zone, inscribed and circumscribed circles against a search in SciPy', () => {
  it.each(['cookbook1', 'bore36'] as const)('agree on %s', (name) => {
    const set = circles[name]
    const points = pointsOf(
      'points' in set
        ? set.points
        : set.radiiMm.map((r, i) => [r * Math.cos((i * Math.PI) / 18), r * Math.sin((i * Math.PI) / 18)]),
    )
    const zone = minimumZoneCircle(points)
    const inscribed = maximumInscribedCircle(points)
    const circumscribed = minimumCircumscribedCircle(points)
    const least = leastSquaresCircle(points)
    if (!zone.known || !inscribed.known || !circumscribed.known || !least.known) throw new Error('no circle')
    expectNear(zone.outer - zone.inner, set.zoneWidth, 1e-10)
    expectNear(zone.x, set.zoneMiddle[0] ?? 0, 1e-9)
    expectNear(zone.y, set.zoneMiddle[1] ?? 0, 1e-9)
    expectNear(inscribed.inner, set.inscribed[2] ?? 0, 1e-10)
    expectNear(circumscribed.radius, set.circumscribed[2] ?? 0, 1e-10)
    expectNear(least.radius, set.leastSquares[2] ?? 0, 1e-8)
  })

  it('are refused on points that fit in a half-circle', () => {
    for (const { points } of [circles.bit34, circles.cookbook2]) {
      expect(minimumZoneCircle(pointsOf(points))).toEqual({ known: false, reason: 'gap-of-half-a-turn' })
      expect(maximumInscribedCircle(pointsOf(points))).toEqual({ known: false, reason: 'gap-of-half-a-turn' })
    }
  })
})

describe('least-squares cylinders against a published test', () => {
  // A public survey library's own test of fitted cylinders: R 19.16 ± 0.005 and s 0.03 ± 0.01 (n − 5), found.
  it('agrees with radius and scatter of the eight surveyed points', () => {
    const { points, direction, radius, squares, deviation } = cylinders.surveyed
    const { cylinder, squares: found } = fitAlong(points, direction)
    expectNear(cylinder.radius, 19.16, 0.005)
    expectNear(Math.sqrt(found / (points.length - 5)), 0.03, 0.01)
    // The digits beyond, from a fit in SciPy.
    expectNear(cylinder.radius, radius, 1e-5)
    expectNear(found, squares, 1e-7)
    expectNear(Math.sqrt(found / (points.length - 5)), deviation, 1e-5)
  })

  it('finds the cylinder that eight points of the same test lie on', () => {
    const { points, direction, radius } = cylinders.exact
    const { cylinder, squares } = fitAlong(points, direction)
    expectNear(cylinder.radius, radius, 1e-5)
    expect(squares).toBeLessThan(1e-12)
  })
})

/** Turns the points so that a rough direction of their axis lies along z, and fits from the circle across it. */
function fitAlong(points: readonly (readonly number[])[], direction: readonly number[]) {
  const unit = scaled(direction)
  const side = scaled(cross(unit, Math.abs(unit[0] ?? 0) < 0.9 ? [1, 0, 0] : [0, 1, 0]))
  const frame = [side, cross(unit, side), unit]
  const turned = points.map((point) => frame.map((axis) => dot(axis, point)))
  const across = leastSquaresCircle(pointsOf(turned))
  if (!across.known) throw new Error(across.reason)
  const z = Float64Array.from(turned, ([, , height]) => height ?? Number.NaN)
  return leastSquaresCylinder({ ...pointsOf(turned), z }, { ...across, leanX: 0, leanY: 0 })
}

const dot = (a: readonly number[], b: readonly number[]) =>
  a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0)

function cross(a: readonly number[], b: readonly number[]): number[] {
  const [ax = 0, ay = 0, az = 0] = a
  const [bx = 0, by = 0, bz = 0] = b
  return [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx]
}

function scaled(a: readonly number[]): number[] {
  const length = Math.sqrt(dot(a, a))
  return a.map((value) => value / length)
}
