import { aboutAxis } from './about-axis'
import { depthBasis } from './depth-basis'
import { type FormModel, smoothHarmonics } from './form-model'
import type { RadialScan, ScanFit, ScanFitOptions } from './radial-scan'
import { robustForm } from './robust-form'
import { scanAxis } from './scan-axis'
import { levelsAllRound } from './scan-gaps'
import { turnTable } from './turn-table'

/** Whether a scan shows where an axis is: some level with six values or more and without a gap of half a turn. */
export function canBeFitted(scan: RadialScan): boolean {
  return levelsAllRound(scan) > 0
}

/**
 * The straight axis of a scan, its radii about it, and the smooth form that they have: mean, first harmonic, oval,
 * three and four lobes, each smooth along the depth. Both are fitted robustly, ports being missing values, so that a
 * scuff stands out of the form instead of bending it. The lean needs two levels all round.
 *
 * Accuracy: see `scanAxis` for the axis and its doubt. Throws for a scan that is not laid out as `RadialScan` says, and
 * for one that `canBeFitted` refuses.
 */
export function fitScan(scan: RadialScan, options: ScanFitOptions): ScanFit {
  checkLayout(scan)
  const allRound = levelsAllRound(scan)
  if (allRound === 0) throw new RangeError('fitScan: expected a level that canBeFitted, got none')
  const model: Omit<FormModel, 'line'> = {
    depthsMm: scan.depthsMm,
    basis: depthBasis(scan.depthsMm),
    table: turnTable(scan.anglesDegrees, 2 * smoothHarmonics),
  }
  const { axis, weights: start } = scanAxis(scan, { ...model, line: allRound > 1 ? 4 : 2 })
  const aboutAxisUm = aboutAxis(scan, axis, options.nearDiameterMm)
  const { formUm, residualUm, weights, sigmaUm } = robustForm({ ...model, line: 0 }, aboutAxisUm, start)
  return { axis, aboutAxisUm, smooth: { formUm, residualUm, weights, sigmaUm } }
}

function checkLayout({ depthsMm, anglesDegrees, radiiUm }: RadialScan): void {
  const places = depthsMm.length * anglesDegrees.length
  if (radiiUm.length !== places) throw new RangeError(`fitScan: ${radiiUm.length} radii at ${places} places`)
  const rises = (values: readonly number[]) => values.every((v, i) => i === 0 || v > (values[i - 1] ?? v))
  if (!rises(depthsMm)) throw new RangeError('fitScan: expected depths that increase')
  const [first = 0] = anglesDegrees
  const last = anglesDegrees[anglesDegrees.length - 1] ?? 0
  if (!rises(anglesDegrees) || first < 0 || last >= 360) {
    throw new RangeError('fitScan: expected angles that increase from 0 to below 360')
  }
}
