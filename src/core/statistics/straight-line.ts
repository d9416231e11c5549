import { scatter } from './scatter'

/** A straight line through points, with standard deviations from what it leaves over. */
export interface StraightLine {
  readonly intercept: number
  readonly slope: number
  readonly interceptDeviation: number
  readonly slopeDeviation: number
  readonly residualDeviation: number
  readonly degreesOfFreedom: number
}

/**
 * The straight line y = intercept + slope·x by least squares, all y alike in doubt, x without any. Needs three
 * points or more at two x or more; throws otherwise. Source: Draper & Smith, Applied Regression Analysis (3rd
 * ed. 1998), 1.2 to 1.4, with both coordinates taken from their means, which keeps the digits.
 */
export function straightLine(x: readonly number[], y: readonly number[]): StraightLine {
  const count = x.length
  if (count !== y.length || count < 3) throw new RangeError(`straightLine: ${count} x and ${y.length} y`)
  const { mean: meanX, squares: spread } = scatter(x)
  const { mean: meanY } = scatter(y)
  if (!(spread > 0)) throw new RangeError('straightLine: all x are equal')
  let products = 0
  for (let i = 0; i < count; i++) products += ((x[i] ?? 0) - meanX) * ((y[i] ?? 0) - meanY)
  const slope = products / spread
  let rest = 0
  for (let i = 0; i < count; i++) {
    const left = (y[i] ?? 0) - meanY - slope * ((x[i] ?? 0) - meanX)
    rest += left * left
  }
  const degreesOfFreedom = count - 2
  const residualDeviation = Math.sqrt(rest / degreesOfFreedom)
  return {
    intercept: meanY - slope * meanX,
    slope,
    interceptDeviation: residualDeviation * Math.sqrt(1 / count + (meanX * meanX) / spread),
    slopeDeviation: residualDeviation / Math.sqrt(spread),
    residualDeviation,
    degreesOfFreedom,
  }
}
