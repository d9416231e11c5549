/** How values lie about their mean, in the unit of the values (squares in its square). */
export interface Scatter {
  readonly mean: number
  /** Sum of the squares of the deviations from the mean. */
  readonly squares: number
  readonly degreesOfFreedom: number
}

/**
 * Mean, and sum of squared deviations from it, of one value or more; throws for none. Two passes over values less
 * the first one, with what rounding left of the deviations' own sum taken out: the relative error of a standard
 * deviation stays below 1e-12 unless the values themselves cannot be told apart in doubles. Source: Chan, Golub
 * & LeVeque, The American Statistician 37 (1983), 242, the corrected two-pass algorithm.
 */
export function scatter(values: readonly number[]): Scatter {
  const [first] = values
  if (first === undefined) throw new RangeError('scatter: no values')
  const count = values.length
  let sum = 0
  for (const value of values) sum += value - first
  const offset = sum / count
  let squares = 0
  let rest = 0
  for (const value of values) {
    const deviation = value - first - offset
    squares += deviation * deviation
    rest += deviation
  }
  return {
    mean: first + offset + rest / count,
    squares: Math.max(0, squares - (rest * rest) / count),
    degreesOfFreedom: count - 1,
  }
}

/** Standard deviation of two values or more, n − 1 in the divisor; throws for fewer. Accuracy as `scatter`. */
export function standardDeviation(values: readonly number[]): number {
  const { squares, degreesOfFreedom } = scatter(values)
  if (degreesOfFreedom < 1) throw new RangeError('standardDeviation: one value has none')
  return Math.sqrt(squares / degreesOfFreedom)
}
