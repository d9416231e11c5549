/**
 * A monotone cubic through points, made ready for many evaluations: knots strictly increasing, values, and
 * the slope at each knot (value unit per knot unit). With a period, the point after the last is the first.
 */
export interface MonotoneCubic {
  readonly knots: Float64Array
  readonly values: Float64Array
  readonly slopes: Float64Array
  readonly period: number | undefined
}

/**
 * Monotone piecewise cubic Hermite interpolant (PCHIP) through (knots, values). It passes through every
 * point exactly, is monotone between any two neighbours, and so never leaves the range of their values: it
 * invents no extreme. Slopes inside are the weighted harmonic mean of the two secants, 0 on a change of
 * sign; at the ends three-point and shape-preserving (0 where the sign would differ from the end secant's,
 * at most 3 secants). Two points: the straight line. One point: constant.
 *
 * Accuracy: rounding only. Sources: Fritsch and Butland, A Method for Constructing Local Monotone Piecewise
 * Cubic Interpolants, SIAM J. Sci. Stat. Comput. 5 (1984), for the slopes; Fritsch and Carlson, Monotone
 * Piecewise Cubic Interpolation, SIAM J. Numer. Anal. 17 (1980), for the conditions of monotony. Throws
 * where there is no point, a value is not finite, or knots do not increase.
 */
export function pchip(knots: ArrayLike<number>, values: ArrayLike<number>): MonotoneCubic {
  const curve = unsloped(knots, values, undefined)
  const last = curve.knots.length - 1
  if (last === 0) return curve
  for (let i = 1; i < last; i++) curve.slopes[i] = innerSlope(curve, i - 1, i)
  curve.slopes[0] = last === 1 ? secant(curve, 0) : endSlope(curve, 0, 1)
  curve.slopes[last] = last === 1 ? secant(curve, 0) : endSlope(curve, last - 1, last - 2)
  return curve
}

/**
 * The same around a closed turn: the point after the last is the first, one period on, and every slope is an
 * inner one. Two points: zero slopes at both, since the secants change sign. One point: constant. All knots
 * must lie within less than one period.
 */
export function periodicPchip(
  knots: ArrayLike<number>,
  values: ArrayLike<number>,
  period: number,
): MonotoneCubic {
  const curve = unsloped(knots, values, period)
  periodicSlopes(curve)
  return curve
}

/** Writes the slopes of a periodic curve again, for values that were changed in place. */
export function periodicSlopes(curve: MonotoneCubic): void {
  const count = curve.knots.length
  for (let i = 0; i < count; i++) curve.slopes[i] = innerSlope(curve, (i + count - 1) % count, i)
}

/**
 * Value of the curve at x. Before the first and past the last knot it is held constant; a periodic curve
 * takes x modulo its period. At a knot the value given there is returned exactly.
 */
export function valueAt(curve: MonotoneCubic, x: number): number {
  const wrapped = curve.period === undefined ? x : wrappedTo(curve, x, curve.period)
  const at = placeOn(curve, wrapped)
  return valueIn(curve, at.interval, at.share)
}

/** The interval that holds x (no periodic wrapping), and the share of the way through it, 0 to 1. */
export function placeOn(curve: MonotoneCubic, x: number): { interval: number; share: number } {
  const { knots } = curve
  const last = knots.length - 1
  if (!(x > get(knots, 0))) return { interval: 0, share: 0 }
  if (curve.period === undefined && x >= get(knots, last)) {
    return { interval: Math.max(0, last - 1), share: last === 0 ? 0 : 1 }
  }
  let low = 0
  let high = last + 1
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (get(knots, middle) <= x) low = middle
    else high = middle
  }
  return { interval: low, share: Math.min(1, (x - get(knots, low)) / width(curve, low)) }
}

/**
 * Value in an interval at a share of the way through it: the cubic Hermite form. The result is kept within
 * the two values of the interval, which a monotone cubic leaves by rounding only.
 */
export function valueIn(curve: MonotoneCubic, interval: number, share: number): number {
  const { values, slopes } = curve
  const from = get(values, interval)
  if (share === 0) return from
  const next = nextOf(curve, interval)
  const to = get(values, next)
  if (share === 1) return to
  const rest = 1 - share
  const start = get(slopes, interval) * rest - get(slopes, next) * share
  const cubic =
    from * rest * rest * (1 + 2 * share) +
    to * share * share * (1 + 2 * rest) +
    width(curve, interval) * share * rest * start
  return from < to ? Math.min(to, Math.max(from, cubic)) : Math.min(from, Math.max(to, cubic))
}

function unsloped(
  knots: ArrayLike<number>,
  values: ArrayLike<number>,
  period: number | undefined,
): MonotoneCubic {
  const count = knots.length
  if (count === 0 || values.length !== count) {
    throw new RangeError(
      `pchip: expected as many values as knots, at least one; got ${count} knots, ${values.length} values`,
    )
  }
  const curve: MonotoneCubic = {
    knots: Float64Array.from(knots),
    values: Float64Array.from(values),
    slopes: new Float64Array(count),
    period,
  }
  for (let i = 0; i < count; i++) {
    if (!Number.isFinite(curve.values[i])) {
      throw new RangeError(`pchip: expected a finite value at ${i}, got ${curve.values[i]}`)
    }
    const step = period === undefined && i === count - 1 ? 1 : width(curve, i)
    if (!(step > 0 && Number.isFinite(step) && Number.isFinite(curve.knots[i]))) {
      throw new RangeError(`pchip: expected knots that increase (within one period), got a step of ${step}`)
    }
  }
  return curve
}

function wrappedTo(curve: MonotoneCubic, x: number, period: number): number {
  const first = get(curve.knots, 0)
  // A knot must come back as itself, so nothing is taken off and put back on within the first turn.
  if (x >= first && x < first + period) return x
  const beyond = (x - first) % period
  return first + (beyond < 0 ? beyond + period : beyond)
}

function nextOf(curve: MonotoneCubic, interval: number): number {
  return interval + 1 === curve.knots.length ? 0 : interval + 1
}

/** Width of the interval that starts at a knot. */
function width(curve: MonotoneCubic, interval: number): number {
  const { knots, period } = curve
  if (interval + 1 < knots.length) return get(knots, interval + 1) - get(knots, interval)
  return (period ?? 0) + get(knots, 0) - get(knots, interval)
}

function secant(curve: MonotoneCubic, interval: number): number {
  return (get(curve.values, nextOf(curve, interval)) - get(curve.values, interval)) / width(curve, interval)
}

/** Weighted harmonic mean of the secants before and after a knot; 0 where they do not share a sign. */
function innerSlope(curve: MonotoneCubic, before: number, after: number): number {
  const left = secant(curve, before)
  const right = secant(curve, after)
  // Not left * right: the product of two tiny secants is 0.
  if (!((left > 0 && right > 0) || (left < 0 && right < 0))) return 0
  const leftWeight = 2 * width(curve, after) + width(curve, before)
  const rightWeight = width(curve, after) + 2 * width(curve, before)
  return (leftWeight + rightWeight) / (leftWeight / left + rightWeight / right)
}

/** Three-point slope at the outer end of an interval, from it and the one further in, kept in shape. */
function endSlope(curve: MonotoneCubic, end: number, further: number): number {
  const outer = secant(curve, end)
  const inner = secant(curve, further)
  const outerWidth = width(curve, end)
  const innerWidth = width(curve, further)
  const slope = ((2 * outerWidth + innerWidth) * outer - outerWidth * inner) / (outerWidth + innerWidth)
  if (Math.sign(slope) !== Math.sign(outer)) return 0
  if (Math.sign(outer) !== Math.sign(inner) && Math.abs(slope) > 3 * Math.abs(outer)) return 3 * outer
  return slope
}

function get(values: Float64Array, index: number): number {
  const value = values[index]
  if (value === undefined) throw new RangeError(`pchip: no knot ${index} among ${values.length}`)
  return value
}
