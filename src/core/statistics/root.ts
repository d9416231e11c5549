/**
 * The x between `low` and `high` at which a rising function reaches `target`, by the Illinois variant of
 * false position. The function must be below the target at `low` and above it at `high`; otherwise it
 * throws. Accurate to `tolerance` in x. Source: Dahlquist & Björck, Numerical Methods (1974), 6.4.
 */
export function risingRoot(
  of: (x: number) => number,
  target: number,
  low: number,
  high: number,
  tolerance: number,
): number {
  return rootBetween(of, target, { x: low, value: of(low) }, { x: high, value: of(high) }, tolerance)
}

/** A place with the value of the function there. */
interface Point {
  readonly x: number
  readonly value: number
}

function rootBetween(
  of: (x: number) => number,
  target: number,
  low: Point,
  high: Point,
  tolerance: number,
): number {
  let a = low.x
  let b = high.x
  let atA = low.value - target
  let atB = high.value - target
  if (!(atA <= 0 && atB >= 0)) throw new RangeError(`risingRoot: ${target} is not between the ends`)
  let lastSide = 0
  for (let step = 0; step < 200 && b - a > tolerance; step++) {
    const x = atB - atA > 0 ? a - (atA * (b - a)) / (atB - atA) : (a + b) / 2
    const inside = Math.min(Math.max(x, a + tolerance / 4), b - tolerance / 4)
    const at = of(inside) - target
    if (at === 0) return inside
    if (at < 0) {
      a = inside
      atA = at
      if (lastSide === -1) atB /= 2
      lastSide = -1
    } else {
      b = inside
      atB = at
      if (lastSide === 1) atA /= 2
      lastSide = 1
    }
  }
  return (a + b) / 2
}

/**
 * The x at which a distribution function on x ≥ 0 reaches p, accurate to `tolerance` in x. `low` and
 * `high` are a guess and are widened as needed. Solved on −ln(1 − probability), which is nearly straight
 * in the upper tail, so that few evaluations are needed. Throws for a guess that is not positive and finite.
 */
export function quantileOfDistribution(
  cdf: (x: number) => number,
  p: number,
  low: number,
  high: number,
  tolerance: number,
): number {
  if (!(low > 0 && high > low && Number.isFinite(high))) {
    throw new RangeError(`quantileOfDistribution: a guess from ${low} to ${high}`)
  }
  const tail = (x: number) => -Math.log(Math.max(1 - cdf(x), 1e-16))
  const target = -Math.log(1 - p)
  const at = (x: number): Point => ({ x, value: tail(x) })
  let from = at(low)
  let to: Point | undefined
  while (from.x > 0 && from.value > target) {
    to = from
    from = at(from.x > low / 1024 ? from.x / 2 : 0)
  }
  to ??= at(high)
  while (to.value < target && to.x < Number.MAX_VALUE / 4) {
    from = to
    to = at(to.x * 2)
  }
  return rootBetween(tail, target, from, to, tolerance)
}
