import type { FittedOval, StationFinding } from '../findings'
import { noncentralChiSquared2 } from '../statistics/noncentral-chi-squared'
import { risingRoot } from '../statistics/root'
import { squaredLengthQuantile } from '../statistics/squared-length'
import { studentQuantile } from '../statistics/student'
import { dot, inverseOf, type Matrix, normalMatrix, type Vector } from './three-by-three'

/** So much longer, in u, than it was found a vector is all but never: the bound lies below. */
const furthestOff = 6

/**
 * The oval of a level by least squares: D_k = D̄ + a·cos 2θ_k + b·sin 2θ_k, oval = 2·√(a² + b²) as a
 * difference of diameters in mm, its long axis at φ = ½·atan2(b, a). Undefined on fewer than three axes.
 * `among`: of how many levels this one was chosen because it is the widest; 1 for a level looked at by itself.
 *
 * Weights 1/u² from the stations' own parts; errors that they share move D̄ alone. Cov(a, b) from
 * (XᵀV⁻¹X)⁻¹, which for n axes equally spaced is u²·2/n on its diagonal, so that u(oval) = 2·u·√(2/n) and
 * u(φ) = u·√(2/n)/oval rad. The direction is named only if (a,b)·Cov⁻¹·(a,b)ᵀ exceeds the 95 % point of χ²
 * with two degrees (5.99; among g levels 0.95^(1/g); for finite ν 2·F(2, ν), which 10,000 simulated round bores
 * asked for: 5.99 named a direction in 8 % of them at ν = 20). Else the oval is bounded from above at one-sided
 * 95 %, by the noncentral χ² with two degrees and the larger principal u. Three axes leave no residual: a form of four lobes looks like an oval.
 * Own derivation, after the least-squares method of the GUM (JCGM 100:2008, H.3).
 */
export function fittedOval(stations: readonly StationFinding[], among = 1): FittedOval | undefined {
  if (!canBeFitted(stations)) return undefined
  const { a, b, covariance } = fit(stations)
  const ovalMm = 2 * Math.hypot(a, b)
  const { aa, ab, bb } = covariance
  const determinant = aa * bb - ab * ab
  const distance = (bb * a * a - 2 * ab * a * b + aa * b * b) / determinant
  const largestU = Math.sqrt((aa + bb) / 2 + Math.hypot((aa - bb) / 2, ab))
  const freedom = Math.min(...stations.map((s) => s.individualDegreesOfFreedom))
  const along = ovalMm > 0 ? { x: (2 * a) / ovalMm, y: (2 * b) / ovalMm } : { x: 1, y: 0 }
  const variance = along.x ** 2 * aa + 2 * along.x * along.y * ab + along.y ** 2 * bb
  const acrossVariance = along.y ** 2 * aa - 2 * along.x * along.y * ab + along.x ** 2 * bb
  // One of several levels, chosen because it is the widest, must stand out from all of them.
  const t = studentQuantile(1 - 0.025 / among, freedom)
  const named = squaredLengthQuantile(0.95 ** (1 / among), freedom)
  return {
    axes: axesOf(stations).size,
    ovalMm,
    expandedMm: 2 * t * Math.sqrt(variance),
    ...(distance > named
      ? {
          longAxisDegrees: ((Math.atan2(b, a) / 2) * (180 / Math.PI) + 180) % 180,
          longAxisExpandedDegrees: Math.min(90, t * (Math.sqrt(acrossVariance) / ovalMm) * (180 / Math.PI)),
        }
      : { atMostMm: 2 * bound(ovalMm / 2, largestU, freedom, among) }),
  }
}

/** The size of the oval of `fittedOval` by itself, mm; undefined on fewer than three axes. */
export function fittedOvalMm(stations: readonly StationFinding[]): number | undefined {
  if (!canBeFitted(stations)) return undefined
  const { a, b } = fit(stations)
  return 2 * Math.hypot(a, b)
}

function canBeFitted(stations: readonly StationFinding[]): boolean {
  return axesOf(stations).size >= 3 && stations.every((s) => s.individualMm > 0)
}

function axesOf(stations: readonly StationFinding[]): ReadonlySet<number> {
  return new Set(stations.map((s) => ((s.axisDegrees % 180) + 180) % 180))
}

/**
 * The most that half of an oval found to be `found` may be, u estimated with finite degrees of freedom: as for a u
 * known that is larger by what the estimate adds to the quantile of a vector of no length.
 */
function bound(found: number, u: number, freedom: number, among: number): number {
  const p = 1 - 0.05 / among
  const known = squaredLengthQuantile(p, Number.POSITIVE_INFINITY)
  const wider = u * Math.sqrt(squaredLengthQuantile(p, freedom) / known)
  return wider * boundInU(found / wider, among)
}

/** Median of χ² with two degrees of freedom. */
const medianOfNone = 2 * Math.LN2

/**
 * The length, in u, that a vector in the plane would be found shorter than this in one case in twenty. A
 * vector found shorter than half of those that have no length at all bounds nothing by itself: that half is
 * taken in its place, on the safe side.
 */
function boundInU(found: number, among: number): number {
  const square = Math.max(found * found, medianOfNone)
  const missed = (lambda: number) => 1 - noncentralChiSquared2(square, lambda)
  return Math.sqrt(risingRoot(missed, 1 - 0.05 / among, 0, (Math.sqrt(square) + furthestOff) ** 2, 1e-5))
}

/** What a station's diameter adds to a and to b of its level's fit, per mm. */
export interface OvalCoefficients {
  readonly a: number
  readonly b: number
}

/**
 * The fit of `fittedOval` as a linear function: a = Σ a_k·D_k and b = Σ b_k·D_k over the stations of a level, in
 * their order; the diameters may be counted from any one size. Stations on three axes or more, each with a part of
 * its own. Source: as for `fittedOval`.
 */
export function ovalCoefficients(stations: readonly StationFinding[]): OvalCoefficients[] {
  return fitOf(stations).coefficients
}

function fit(stations: readonly StationFinding[]) {
  const { coefficients, covariance } = fitOf(stations)
  // Diameters from their own mean: 54 mm squared would cost six of sixteen digits.
  const about = stations.reduce((sum, s) => sum + s.diameterMm, 0) / stations.length
  let a = 0
  let b = 0
  for (const [k, { diameterMm }] of stations.entries()) {
    a += (coefficients[k]?.a ?? 0) * (diameterMm - about)
    b += (coefficients[k]?.b ?? 0) * (diameterMm - about)
  }
  return { a, b, covariance }
}

function fitOf(stations: readonly StationFinding[]) {
  const rows = stations.map((station) => {
    const twice = (2 * station.axisDegrees * Math.PI) / 180
    const weight = 1 / station.individualMm
    const design: Vector = [weight, weight * Math.cos(twice), weight * Math.sin(twice)]
    return { design, weight }
  })
  const inverse: Matrix = inverseOf(normalMatrix(rows.map((row) => row.design)))
  return {
    coefficients: rows.map(({ design, weight }) => ({
      a: weight * dot(inverse[1], design),
      b: weight * dot(inverse[2], design),
    })),
    covariance: { aa: inverse[1][1], ab: inverse[1][2], bb: inverse[2][2] },
  }
}
