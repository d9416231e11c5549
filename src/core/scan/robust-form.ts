import { type FormCoefficients, type FormModel, solveForm, writeForm } from './form-model'
import { bisquareWeight, huberWeight, robustSigma } from './robust-weights'

/** A robust fit of a form: coefficients, what is left over, and the weight of each place in the end. */
export interface RobustForm {
  readonly coefficients: FormCoefficients
  readonly formUm: Float64Array
  /** NaN where there is no value. */
  readonly residualUm: Float64Array
  readonly weights: Float64Array
  readonly sigmaUm: number
}

/** Steps of each kind at most. */
const mostSteps = 15

/** The two kinds of steps, and the change of σ, as a share of it, below which no further one is made. */
const first = { weightOf: huberWeight, settled: 2e-3 }
const last = { weightOf: bisquareWeight, settled: 1e-4 }

/** Residuals smaller than this, µm, are rounding: a form without any scatter is not divided by it. */
const leastSigmaUm = 1e-6

/**
 * A form by iteratively reweighted least squares, so that what stands out of it has little say and in the end none:
 * first by Huber's weights, whose solution does not hang on where it began, then by the bisquare, each with σ from the
 * median of the absolute residuals. Values in µm, NaN where there is a port. `start`: weights of a robust fit of nearly
 * the same form, in the place of the first part. Source of the steps: Holland and Welsch, Robust Regression Using
 * Iteratively Reweighted Least-Squares, Commun. Stat. A6 (1977).
 */
export function robustForm(model: FormModel, values: Float64Array, start?: Float64Array): RobustForm {
  const weights = new Float64Array(values.length)
  for (let i = 0; i < values.length; i++) weights[i] = Number.isNaN(values[i]) ? 0 : (start?.[i] ?? 1)
  const formUm = new Float64Array(values.length)
  const residualUm = new Float64Array(values.length)
  const scratch = new Float64Array(values.length)
  let coefficients = solveForm(model, values, weights)
  const judge = () => {
    writeForm(model, coefficients, formUm)
    for (let i = 0; i < values.length; i++) residualUm[i] = (values[i] ?? 0) - (formUm[i] ?? 0)
    return Math.max(leastSigmaUm, robustSigma(residualUm, scratch))
  }
  let sigmaUm = judge()
  for (const { weightOf, settled } of start ? [last] : [first, last]) {
    for (let step = 0; step < mostSteps; step++) {
      for (let i = 0; i < values.length; i++) {
        const residual = residualUm[i] ?? 0
        weights[i] = Number.isNaN(residual) ? 0 : weightOf(residual / sigmaUm)
      }
      coefficients = solveForm(model, values, weights)
      const before = sigmaUm
      sigmaUm = judge()
      if (Math.abs(sigmaUm - before) <= settled * before) break
    }
  }
  return { coefficients, formUm, residualUm, weights, sigmaUm }
}
