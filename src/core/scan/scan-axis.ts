import { type FormModel, lineInfluences } from './form-model'
import type { RadialScan, ScanAxis } from './radial-scan'
import { type RobustForm, robustForm } from './robust-form'
import { bisquareInfluence } from './robust-weights'

/** Errors within a patch of wall of this many degrees, and a third of the scan long, may hang together. */
const patchDegrees = 20
const patchesAlong = 3

/**
 * One straight axis through all levels of a scan: r = R(z) + (c₀ + c₁·z)·n(θ) + the harmonics 2 to 4, smooth along the
 * depth, fitted robustly, so that ports pull at nothing and scuffs at next to nothing. Linear in the distance e from
 * the spindle; what is left of the second order, e²/2R, is an oval and no shift.
 *
 * Doubt: what each place adds to a figure is its row of (XᵀX)⁻¹Xᵀ times σ·ψ over the mean of ψ′ (Huber, Robust
 * Statistics (1981), 7.6). Squared and added place by place that is the doubt of errors that have nothing to do with
 * each other; added up within patches of wall first, that of errors that hang together, as on the slope of a smear
 * (Liang and Zeger, Longitudinal Data Analysis Using Generalized Linear Models, Biometrika 73 (1986)). The larger is
 * given. Beside it the weights of the places in the end.
 */
export function scanAxis(
  scan: RadialScan,
  model: FormModel,
): { readonly axis: ScanAxis; readonly weights: Float64Array } {
  const fit = robustForm(model, scan.radiiUm)
  const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = fit.coefficients.line
  const doubt = doubtOf(model, scan, fit)
  let farthestUm = 0
  for (const depth of scan.depthsMm) {
    farthestUm = Math.max(farthestUm, Math.hypot(x0 + depth * x1, y0 + depth * y1))
  }
  const { line } = model
  const axis: ScanAxis = {
    atDeckUm: { x: x0, y: y0 },
    leanUmPerMm: { x: x1, y: y1 },
    atDeckDoubtUm: { x: doubt[0] ?? 0, y: doubt[1] ?? 0 },
    ...(line === 4 ? { leanDoubtUmPerMm: { x: doubt[2] ?? 0, y: doubt[3] ?? 0 } } : {}),
    farthestUm,
  }
  return { axis, weights: fit.weights }
}

/** Standard uncertainties of the line's unknowns. */
function doubtOf(model: FormModel, scan: RadialScan, { residualUm, sigmaUm }: RobustForm): number[] {
  const present = scan.radiiUm.map((radius) => (Number.isNaN(radius) ? 0 : 1))
  const scores = new Float64Array(present.length)
  let count = 0
  let slopes = 0
  for (let i = 0; i < residualUm.length; i++) {
    const residual = residualUm[i] ?? Number.NaN
    if (Number.isNaN(residual)) continue
    const { psi, slope } = bisquareInfluence(residual / sigmaUm)
    scores[i] = psi * sigmaUm
    slopes += slope
    count++
  }
  const unknowns = model.basis.size * 7 + model.line
  const factor = Math.sqrt(count / Math.max(1, count - unknowns)) / (slopes / count)
  const patchOf = patches(scan)
  return lineInfluences(model, present).map((influence) => {
    const together = new Float64Array((360 / patchDegrees) * patchesAlong)
    let apart = 0
    for (let i = 0; i < scores.length; i++) {
      const part = (scores[i] ?? 0) * (influence[i] ?? 0)
      apart += part * part
      const patch = patchOf[i] ?? 0
      together[patch] = (together[patch] ?? 0) + part
    }
    const patched = together.reduce((sum, part) => sum + part * part, 0)
    return factor * Math.sqrt(Math.max(apart, patched))
  })
}

/** The patch of wall that each place lies in. */
function patches({ depthsMm, anglesDegrees, radiiUm }: RadialScan): Uint8Array {
  const [top = 0] = depthsMm
  const span = (depthsMm[depthsMm.length - 1] ?? top) - top
  const patchOf = new Uint8Array(radiiUm.length)
  let at = 0
  for (const depth of depthsMm) {
    const along = span > 0 ? Math.min(patchesAlong - 1, Math.floor((patchesAlong * (depth - top)) / span)) : 0
    for (const angle of anglesDegrees) patchOf[at++] = Math.floor(angle / patchDegrees) * patchesAlong + along
  }
  return patchOf
}
