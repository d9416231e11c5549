import { describe, expect, it } from 'vitest'
import type { CirclePoints } from '../../../../src/core/scan/circle-points'
import { leastSquaresCircle } from '../../../../src/core/scan/least-squares-circle'
import { minimumCircumscribedCircle } from '../../../../src/core/scan/minimum-circumscribed-circle'
import { maximumInscribedCircle, minimumZoneCircle } from '../../../../src/core/scan/zone-circles'
import { seededRandom } from '../../../proof/seeded-random'

type Point = readonly [number, number]

const pointsOf = (points: readonly Point[]): CirclePoints => ({
  x: Float64Array.from(points, ([x]) => x),
  y: Float64Array.from(points, ([, y]) => y),
})

const polar = (count: number, radius: (turn: number) => number): Point[] =>
  Array.from({ length: count }, (_, i) => {
    const turn = (2 * Math.PI * i) / count
    return [radius(turn) * Math.cos(turn), radius(turn) * Math.sin(turn)]
  })

function centreOf([a, b, c]: readonly Point[]): Point | undefined {
  if (!a || !b || !c) return undefined
  return meet(a, b, a, c)
}

/** Where the lines half way between a and b and between c and d meet. */
function meet(a: Point, b: Point, c: Point, d: Point): Point | undefined {
  const [p, q] = [b[0] - a[0], b[1] - a[1]]
  const [r, s] = [d[0] - c[0], d[1] - c[1]]
  const e = (b[0] ** 2 + b[1] ** 2 - a[0] ** 2 - a[1] ** 2) / 2
  const f = (d[0] ** 2 + d[1] ** 2 - c[0] ** 2 - c[1] ** 2) / 2
  const determinant = p * s - q * r
  return Math.abs(determinant) < 1e-12
    ? undefined
    : [(e * s - q * f) / determinant, (p * f - e * r) / determinant]
}

const distances = (points: readonly Point[], [x, y]: Point) =>
  points.map((p) => Math.hypot(p[0] - x, p[1] - y))

/** Middles that two or three contacts can hold: of three points, and where two lines half way between two meet. */
function middles(points: readonly Point[]): Point[] {
  const found: (Point | undefined)[] = []
  for (const [i, a] of points.entries()) {
    for (const [j, b] of points.entries()) {
      if (j <= i) continue
      for (const [k, c] of points.entries()) {
        if (k > j) found.push(centreOf([a, b, c]))
        for (const [l, d] of points.entries())
          if (k > i && k !== j && l > k && l !== j) found.push(meet(a, b, c, d))
      }
    }
  }
  return found.filter((middle) => middle !== undefined)
}

function rough(random: ReturnType<typeof seededRandom>, count: number, scatter: number): Point[] {
  return Array.from({ length: count }, (_, i) => {
    const turn = (2 * Math.PI * (i + random.rectangular(0.4))) / count
    const radius = 30 + random.normal(scatter)
    return [0.02 + radius * Math.cos(turn), -0.01 + radius * Math.sin(turn)]
  })
}

describe('reference circles against a search over all sets of contacts, without any linear step', () => {
  it.each([0.003, 0.05, 0.5])(
    'are the true minima at a scatter of %f in 30, 25 cases from seed 81',
    (scatter) => {
      const random = seededRandom(81)
      for (let i = 0; i < 25; i++) {
        const points = rough(random, 7 + (i % 4), scatter)
        const candidates = middles(points)
        const zones = candidates.map(
          (m) => Math.max(...distances(points, m)) - Math.min(...distances(points, m)),
        )
        const zone = minimumZoneCircle(pointsOf(points))
        expect(zone.known && zone.outer - zone.inner).toBeCloseTo(Math.min(...zones), 9)
        // So rough a circle holds several inscribed ones; a bore is a hundred times smoother.
        if (scatter > 0.1) continue
        const near = candidates.filter(([x, y]) => Math.hypot(x, y) < 10)
        const inscribed = maximumInscribedCircle(pointsOf(points))
        const largest = Math.max(...near.map((m) => Math.min(...distances(points, m))))
        expect(inscribed.known && inscribed.inner).toBeCloseTo(largest, 9)
      }
    },
  )

  it('the circumscribed one too, on points anywhere, 200 cases from seed 82', () => {
    const random = seededRandom(82)
    for (let i = 0; i < 200; i++) {
      const points = Array.from({ length: 3 + (i % 8) }, (): Point => [random.normal(5), random.normal(5)])
      const pairs = points.flatMap((a, j) =>
        points.slice(j + 1).map((b): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]),
      )
      const radii = [...middles(points), ...pairs].map((m) => Math.max(...distances(points, m)))
      const circle = minimumCircumscribedCircle(pointsOf(points))
      expect(circle.known && circle.radius).toBeCloseTo(Math.min(...radii), 10)
    }
  })
})

describe('reference circles of forms that are known', () => {
  it.each([2, 3, 4, 5])('find 2a about the middle for r = R + a·cos %iθ, by every circle', (lobes) => {
    const points = pointsOf(polar(240, (turn) => 30 + 0.01 * Math.cos(lobes * turn)))
    const least = leastSquaresCircle(points)
    const zone = minimumZoneCircle(points)
    const inscribed = maximumInscribedCircle(points)
    const circumscribed = minimumCircumscribedCircle(points)
    expect(least.known && Math.hypot(least.x, least.y)).toBeLessThan(1e-12)
    expect(zone.known && zone.outer - zone.inner).toBeCloseTo(0.02, 10)
    expect(circumscribed.known && circumscribed.radius).toBeCloseTo(30.01, 10)
    if (lobes > 2) expect(inscribed.known && inscribed.inner).toBeCloseTo(29.99, 10)
    // An oval lets a circle inside it slide along its length by the second order.
    else expect(inscribed.known && inscribed.inner).toBeCloseTo(29.99, 5)
  })

  it('find nothing in a perfect circle, however far off the middle it stands', () => {
    for (const off of [0, 0.05, 3]) {
      const points = pointsOf(polar(90, () => 30).map(([x, y]): Point => [x + off, y - 2 * off]))
      for (const circle of [minimumZoneCircle(points), maximumInscribedCircle(points)]) {
        expect(circle.known && circle.outer - circle.inner).toBeLessThan(1e-12)
        expect(circle.known && Math.hypot(circle.x - off, circle.y + 2 * off)).toBeLessThan(1e-9)
      }
      const circumscribed = minimumCircumscribedCircle(points)
      expect(circumscribed.known && circumscribed.radius).toBeCloseTo(30, 12)
      const least = leastSquaresCircle(points)
      expect(least.known && least.radius).toBeCloseTo(30, 12)
    }
  })

  it('keep their order: minimum zone is never wider than any other', () => {
    const random = seededRandom(83)
    for (let i = 0; i < 40; i++) {
      const points = rough(random, 36, 0.01)
      const given = pointsOf(points)
      const width = (circle: { x: number; y: number }) => {
        const all = distances(points, [circle.x, circle.y])
        return Math.max(...all) - Math.min(...all)
      }
      const zone = minimumZoneCircle(given)
      const others = [
        leastSquaresCircle(given),
        maximumInscribedCircle(given),
        minimumCircumscribedCircle(given),
      ]
      for (const other of others) {
        expect(zone.known && other.known && width(zone) <= width(other) + 1e-12).toBe(true)
      }
    }
  })
})

describe('reference circles that cannot be given', () => {
  const reason = (circle: { known: boolean; reason?: string }) => (circle.known ? 'known' : circle.reason)

  it('are refused where the points fit in a half-circle, and at half a turn exactly', () => {
    for (const [arc, expected] of [
      [170, 'gap-of-half-a-turn'],
      [180, 'gap-of-half-a-turn'],
      [190, 'known'],
    ] as const) {
      const points = pointsOf(
        Array.from({ length: 20 }, (_, i): Point => {
          const turn = ((arc * i) / 19) * (Math.PI / 180)
          return [30 * Math.cos(turn), 30 * Math.sin(turn)]
        }),
      )
      expect(reason(minimumZoneCircle(points))).toBe(expected)
      expect(reason(maximumInscribedCircle(points))).toBe(expected)
      // Least squares and the circle around need no points on the other side.
      expect(reason(leastSquaresCircle(points))).toBe('known')
      expect(reason(minimumCircumscribedCircle(points))).toBe('known')
    }
  })

  it('are refused for too few points and for points in a line', () => {
    expect(reason(leastSquaresCircle(pointsOf(polar(2, () => 1))))).toBe('too-few-values')
    expect(reason(minimumZoneCircle(pointsOf(polar(3, () => 1))))).toBe('too-few-values')
    expect(reason(minimumCircumscribedCircle(pointsOf([])))).toBe('too-few-values')
    const line = pointsOf([0, 1, 2, 3, 4].map((i): Point => [i, 2 * i]))
    expect(reason(leastSquaresCircle(line))).toBe('no-circle')
    expect(reason(minimumZoneCircle(line))).toBe('no-circle')
  })
})
