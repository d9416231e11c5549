import { type Circle, type CirclePoints, type CircleResult, refused } from './circle-points'

type Point = readonly [number, number]

/**
 * The smallest circle that holds all points (ISO 12181-1:2011, MCCI): the only one there is, and no linear
 * approximation. The circle of a few points is taken anew with the point that lies furthest outside, so that it grows
 * at each step and must end; of four points the circle is the smallest of those through two or three that holds them.
 * Accuracy: rounding. Source: Gärtner, Fast and Robust Smallest Enclosing Balls, ESA 1999, for the pivot.
 */
export function minimumCircumscribedCircle(
  points: CirclePoints,
): CircleResult<Circle & { readonly contacts: readonly number[] }> {
  const { x, y } = points
  if (x.length === 0) return refused('too-few-values')
  const at = (i: number): Point => [x[i] ?? 0, y[i] ?? 0]
  let support = [0]
  let circle: Circle = { x: x[0] ?? 0, y: y[0] ?? 0, radius: 0 }
  for (;;) {
    let furthest = -1
    let most = circle.radius * circle.radius * (1 + 4e-16)
    for (let i = 0; i < x.length; i++) {
      const u = (x[i] ?? 0) - circle.x
      const v = (y[i] ?? 0) - circle.y
      const square = u * u + v * v
      if (square > most) {
        most = square
        furthest = i
      }
    }
    if (furthest < 0 || support.includes(furthest)) break
    const grown = smallestOf([...support, furthest], at)
    if (!(grown.circle.radius > circle.radius)) break
    circle = grown.circle
    support = grown.support
  }
  return { known: true, ...circle, contacts: support }
}

/** The smallest circle of up to four points, with those that it passes through. */
function smallestOf(indices: readonly number[], at: (i: number) => Point) {
  let best: { circle: Circle; support: number[] } | undefined
  for (const support of choices(indices)) {
    const circle = circleThrough(support.map(at))
    if (!circle || (best && circle.radius >= best.circle.radius)) continue
    const holds = indices.every((i) => {
      const [x, y] = at(i)
      return Math.hypot(x - circle.x, y - circle.y) <= circle.radius * (1 + 1e-13)
    })
    if (holds) best = { circle, support }
  }
  if (!best) throw new Error('minimumCircumscribedCircle: no circle holds its points')
  return best
}

/** All twos and threes. */
function choices(indices: readonly number[]): number[][] {
  const chosen: number[][] = []
  for (const [i, one] of indices.entries()) {
    for (const [j, other] of indices.slice(i + 1).entries()) {
      chosen.push([one, other])
      for (const third of indices.slice(i + j + 2)) chosen.push([one, other, third])
    }
  }
  return chosen
}

function circleThrough([one, other, third]: readonly Point[]): Circle | undefined {
  if (!one || !other) return undefined
  const bx = other[0] - one[0]
  const by = other[1] - one[1]
  if (!third) return { x: one[0] + bx / 2, y: one[1] + by / 2, radius: Math.hypot(bx, by) / 2 }
  const cx = third[0] - one[0]
  const cy = third[1] - one[1]
  const twice = 2 * (bx * cy - by * cx)
  if (twice === 0) return undefined
  const b = bx * bx + by * by
  const c = cx * cx + cy * cy
  const ux = (cy * b - by * c) / twice
  const uy = (bx * c - cx * b) / twice
  return { x: one[0] + ux, y: one[1] + uy, radius: Math.hypot(ux, uy) }
}
