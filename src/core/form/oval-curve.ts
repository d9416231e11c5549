import type { StationFinding } from '../findings'
import { ovalCoefficients } from './fitted-oval'

/** The oval of a level as a curve: D(θ) = mean + along·cos 2θ + across·sin 2θ, mm. */
export interface OvalCurve {
  readonly meanMm: number
  readonly alongMm: number
  readonly acrossMm: number
}

/**
 * The curve that `fittedOval` measures its oval on, least squares with weights 1/u² from the stations' own parts:
 * its largest less its smallest diameter is that oval. The mean follows from the first of the normal equations,
 * Σ w·(D − mean − a·cos 2θ − b·sin 2θ) = 0; on axes equally spaced it is the mean of the diameters. Undefined on
 * fewer than three axes. Accuracy: rounding only. Own derivation.
 */
export function ovalCurve(stations: readonly StationFinding[]): OvalCurve | undefined {
  const axes = new Set(stations.map((s) => ((s.axisDegrees % 180) + 180) % 180))
  if (axes.size < 3 || stations.some((s) => s.individualMm <= 0)) return undefined
  const about = stations.reduce((sum, s) => sum + s.diameterMm, 0) / stations.length
  const coefficients = ovalCoefficients(stations)
  let alongMm = 0
  let acrossMm = 0
  for (const [k, { diameterMm }] of stations.entries()) {
    alongMm += (coefficients[k]?.a ?? 0) * (diameterMm - about)
    acrossMm += (coefficients[k]?.b ?? 0) * (diameterMm - about)
  }
  let weights = 0
  let rest = 0
  for (const { axisDegrees, diameterMm, individualMm } of stations) {
    const twice = (2 * axisDegrees * Math.PI) / 180
    const weight = 1 / individualMm ** 2
    weights += weight
    rest += weight * (diameterMm - about - alongMm * Math.cos(twice) - acrossMm * Math.sin(twice))
  }
  return { meanMm: about + rest / weights, alongMm, acrossMm }
}

/** Diameter of the curve at an angle in rad, mm. */
export function ovalDiameter({ meanMm, alongMm, acrossMm }: OvalCurve, angleRad: number): number {
  return meanMm + alongMm * Math.cos(2 * angleRad) + acrossMm * Math.sin(2 * angleRad)
}
