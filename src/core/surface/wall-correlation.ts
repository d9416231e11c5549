/** Over this much of the depth the correlation of other walls falls to 0.48, mm. Fixed, own choice. */
export const correlationDepthMm = 20

/** Over this much of the turn it falls to 0.48, rad (30°). Fixed, own choice. */
export const correlationAround = Math.PI / 6

/**
 * Correlation of the diameter at two places on the wall: ρ(Δz/20 mm) · ρ(c/30°), with ρ(r) = (1 + √3·r)·exp(−√3·r)
 * and c the chord that stands for the angle between them: |sin Δθ| where two contacts make the wall at θ + 180°
 * that at θ (period π), 2·|sin(Δθ/2)| where they do not (period 2π). Depths in mm, angles in rad.
 *
 * ρ is the Matérn covariance of smoothness 3/2, positive definite in any number of dimensions (Rasmussen and
 * Williams, Gaussian Processes for Machine Learning, 2006, equation 4.17); the chord is a distance in the plane
 * of the circle, and a product of two such is one again (the same, 4.2.4). Accuracy: rounding.
 */
export function wallCorrelation(depthsApartMm: number, anglesApart: number, period: number): number {
  return correlationAlong(depthsApartMm) * correlationRound(anglesApart, period)
}

/** The part of `wallCorrelation` along the depth. */
export function correlationAlong(depthsApartMm: number): number {
  return matern(Math.abs(depthsApartMm) / correlationDepthMm)
}

/** The part of `wallCorrelation` around, for a wall that repeats after `period`, rad. */
export function correlationRound(anglesApart: number, period: number): number {
  const chord = (period / Math.PI) * Math.abs(Math.sin((anglesApart * Math.PI) / period))
  return matern(chord / correlationAround)
}

function matern(r: number): number {
  const scaled = Math.sqrt(3) * r
  return (1 + scaled) * Math.exp(-scaled)
}
