import { type FormModel, lineCovariance } from './form-model'
import type { RadialScan, ScanAxis } from './radial-scan'
import { type RobustForm, robustForm } from './robust-form'
import { bisquareInfluence } from './robust-weights'

/**
 * One straight axis through all levels of a scan: r = R(z) + (c₀ + c₁·z)·n(θ) + the harmonics 2 to 4, smooth along the
 * depth, fitted robustly, so that ports pull at nothing and scuffs at next to nothing. Linear in the distance e from
 * the spindle; what is left of the second order, e²/2R, is an oval and no shift.
 *
 * Doubt: (XᵀX)⁻¹ times the squared scatter of a robust fit, Σψ²/(n − p) over the squared mean of ψ′ (Huber, Robust
 * Statistics (1981), 7.6). It is the doubt from what the places scatter about the smooth form, each for itself.
 */
export function scanAxis(scan: RadialScan, model: FormModel): ScanAxis {
  const fit = robustForm(model, scan.radiiUm)
  const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = fit.coefficients.line
  const doubt = doubtOf(model, scan.radiiUm, fit)
  let farthestUm = 0
  for (const depth of scan.depthsMm) {
    farthestUm = Math.max(farthestUm, Math.hypot(x0 + depth * x1, y0 + depth * y1))
  }
  const { line } = model
  return {
    atDeckUm: { x: x0, y: y0 },
    leanUmPerMm: { x: x1, y: y1 },
    atDeckDoubtUm: { x: doubt[0] ?? 0, y: doubt[1] ?? 0 },
    ...(line === 4 ? { leanDoubtUmPerMm: { x: doubt[2] ?? 0, y: doubt[3] ?? 0 } } : {}),
    farthestUm,
  }
}

/** Standard uncertainties of the line's unknowns. */
function doubtOf(model: FormModel, values: Float64Array, { residualUm, sigmaUm }: RobustForm): number[] {
  const present = values.map((value) => (Number.isNaN(value) ? 0 : 1))
  let count = 0
  let squares = 0
  let slopes = 0
  for (const residual of residualUm) {
    if (Number.isNaN(residual)) continue
    const { psi, slope } = bisquareInfluence(residual / sigmaUm)
    count++
    squares += psi * psi
    slopes += slope
  }
  const unknowns = model.basis.size * 7 + model.line
  const scatter = squares / Math.max(1, count - unknowns) / (slopes / count) ** 2
  const covariance = lineCovariance(model, present)
  return Array.from(
    { length: model.line },
    (_, i) => Math.sqrt(scatter * (covariance[i * (model.line + 1)] ?? 0)) * sigmaUm,
  )
}
