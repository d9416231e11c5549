import type { Contribution, StationFinding } from '../findings'
import { chiSquaredQuantile } from '../statistics/chi-squared'
import { combine, expanded } from '../uncertainty/combine'
import type { RadialScan, ScanFit } from './radial-scan'
import { rowOf } from './scan-gaps'
import { radiusAt } from './two-contact'

/** A station that ties a scan to a size. */
export interface Tie {
  readonly depthMm: number
  readonly axisDegrees: number
  /** Half of its diameter less what the two radii there add up to, µm, and how far that is from the mean of all ties. */
  readonly addUm: number
  readonly departureUm: number
}

/** Why a station ties nothing. */
export type LooseReason =
  /** Not counted in its survey, or not read with two contacts. */
  | 'not-a-diameter'
  /** Above the first or below the last level of the scan. */
  | 'outside-the-scan'
  /** A port, or a place without a value, at either contact. */
  | 'in-a-gap'

export interface LooseStation {
  readonly depthMm: number
  readonly axisDegrees: number
  readonly reason: LooseReason
}

/** What to add to every radius of a scan about its axis, or that nothing ties it to a size. */
export type ScanSize =
  | {
      readonly known: true
      /** µm: radius at 20 °C = radius of the scan about its axis + this. */
      readonly addUm: number
      readonly standardUncertaintyUm: number
      readonly degreesOfFreedom: number
      /** U, two-sided 95 %. */
      readonly expandedUm: number
      readonly ties: readonly Tie[]
      readonly loose: readonly LooseStation[]
      /** False where the ties differ by more than their own doubts explain in 99 of 100 scans. */
      readonly tiesAgree: boolean
    }
  | { readonly known: false; readonly reason: 'no-tie'; readonly loose: readonly LooseStation[] }

/** Doubt of one radius of the probe, µm, standard uncertainties. */
export interface ProbeDoubt {
  readonly repeatabilityUm: number
  readonly repeatabilityDegreesOfFreedom: number
  readonly scaleUm: number
}

/**
 * The size of a scan from stations of a survey alone: half of the mean over the ties of D20 − [r(θ) + r(θ + 180°)],
 * radii about the axis taken between the four places around the station. A scan without a tie has a form and no size.
 *
 * Doubt: half of that of the mean of the ties' diameters with all that they share (`combine`; GUM, JCGM 100:2008,
 * 5.2.2), and the probe's own at two radii for each tie. The ties agree when Σ(departure/u)² with the stations' own
 * parts is below the 99 % point of χ² for one less than there are.
 */
export function sizeFromTies(
  scan: RadialScan,
  fit: ScanFit,
  stations: readonly StationFinding[],
  probe: ProbeDoubt,
): ScanSize {
  const loose: LooseStation[] = []
  const tied: { readonly station: StationFinding; readonly addUm: number }[] = []
  for (const station of stations) {
    const found = addedAt(scan, fit, station)
    const { depthMm, axisDegrees } = station
    if (typeof found === 'number') tied.push({ station, addUm: found })
    else loose.push({ depthMm, axisDegrees, reason: found })
  }
  if (tied.length === 0) return { known: false, reason: 'no-tie', loose }
  const addUm = tied.reduce((sum, tie) => sum + tie.addUm, 0) / tied.length
  const combined = combine(
    tied.map(({ station }, i) => ({
      factor: 1 / (2 * tied.length),
      contributions: [...station.contributions, ...contributionsOf(probe, i)],
    })),
  )
  return {
    known: true,
    addUm,
    standardUncertaintyUm: 1000 * combined.standardUncertainty,
    degreesOfFreedom: combined.degreesOfFreedom,
    expandedUm: 1000 * expanded(combined),
    ties: tied.map(({ station: { depthMm, axisDegrees }, addUm: own }) => ({
      depthMm,
      axisDegrees,
      addUm: own,
      departureUm: own - addUm,
    })),
    loose,
    tiesAgree: agree(tied, addUm, probe),
  }
}

/** Half of a station's diameter less what the radii at its two contacts add up to, µm; or why not. */
function addedAt(scan: RadialScan, fit: ScanFit, station: StationFinding): number | LooseReason {
  if (!station.counted || station.contactDegrees !== undefined) return 'not-a-diameter'
  const { depthsMm } = scan
  const below = depthsMm.findIndex((depth) => depth >= station.depthMm)
  const upper = depthsMm[0]
  if (below < 0 || upper === undefined || station.depthMm < upper) return 'outside-the-scan'
  const axis = ((station.axisDegrees % 180) + 180) % 180
  const sum = sumAt(scan, fit, station.depthMm, below, axis)
  return Number.isNaN(sum) ? 'in-a-gap' : (1000 * station.diameterMm - sum) / 2
}

function sumAt(scan: RadialScan, fit: ScanFit, depthMm: number, below: number, axis: number): number {
  const { depthsMm, anglesDegrees } = scan
  const at = (level: number) => {
    const row = rowOf(fit.aboutAxisUm, level, anglesDegrees.length)
    return sumOfTwo(anglesDegrees, row, axis)
  }
  const lower = depthsMm[below] ?? depthMm
  if (lower === depthMm) return at(below)
  const upper = depthsMm[below - 1] ?? depthMm
  const share = (depthMm - upper) / (lower - upper)
  return at(below - 1) * (1 - share) + at(below) * share
}

function sumOfTwo(anglesDegrees: readonly number[], row: Float64Array, axis: number): number {
  const radius = (angle: number) => {
    const found = anglesDegrees.findIndex((one) => one >= angle - 1e-6)
    return radiusAt(anglesDegrees, row, angle, found < 0 ? anglesDegrees.length : found)
  }
  return radius(axis) + radius(axis + 180)
}

/** What the probe brings to the sum of two radii, mm on the diameter. */
function contributionsOf(probe: ProbeDoubt, tie: number): Contribution[] {
  const part = (kind: Contribution['kind'], um: number, degreesOfFreedom: number): Contribution => ({
    kind,
    id: `scan ${kind} ${tie}`,
    scope: 'station',
    signedMm: (Math.SQRT2 * um) / 1000,
    degreesOfFreedom,
    estimate: `scan ${kind}`,
    assumed: false,
  })
  return [
    part('repeatability', probe.repeatabilityUm, probe.repeatabilityDegreesOfFreedom),
    part('scale', probe.scaleUm, Number.POSITIVE_INFINITY),
  ]
}

function agree(
  tied: readonly { readonly station: StationFinding; readonly addUm: number }[],
  addUm: number,
  { repeatabilityUm, scaleUm }: ProbeDoubt,
): boolean {
  if (tied.length < 2) return true
  const squares = tied.reduce((sum, { station, addUm: own }) => {
    const variance = (1000 * station.individualMm) ** 2 + 2 * (repeatabilityUm ** 2 + scaleUm ** 2)
    return sum + (4 * (own - addUm) ** 2) / variance
  }, 0)
  return squares <= chiSquaredQuantile(0.99, Math.min(500, tied.length - 1))
}
