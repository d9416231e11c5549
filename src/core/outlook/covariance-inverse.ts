import { choleskyFactor, solvedBy } from '../statistics/cholesky'

/**
 * The inverse of a symmetric positive definite matrix. Throws for one that is not: sizes that share all of their
 * doubt cannot be told apart. Accurate to 1e-12 for the few surveys of a bore. Source: as for `choleskyFactor`.
 */
export function covarianceInverse(covariance: readonly (readonly number[])[]): number[][] {
  const size = covariance.length
  const factor = choleskyFactor(Float64Array.from(covariance.flat()), size)
  return covariance.map((_, column) => [
    ...solvedBy(
      factor,
      covariance.map((__, i) => (i === column ? 1 : 0)),
    ),
  ])
}
