import type { StationFinding } from '../findings'
import { squaredLengthQuantile } from '../statistics/squared-length'
import { dot, inverseOf, normalMatrix } from './three-by-three'

/**
 * The most that the oval of one level may be, a difference of diameters in mm, at one-sided confidence of
 * 95 % or better, from two-contact readings on three axes or more; undefined on fewer, which set no upper
 * limit.
 *
 * D_k = D̄ + a·cos 2θ_k + b·sin 2θ_k by least squares, oval = 2·√(a² + b²). The true (a, b) lies within the
 * 95 % region of the estimate, a disc of radius √(2·F)·u about it that holds that ellipse, u the larger
 * principal standard uncertainty and F the quantile of Fisher's distribution for 2 and ν: 2·F =
 * ν·(0.05^(−2/ν) − 1), in the limit −2·ln 0.05 = 5.99. Own derivation. Errors that the stations share move
 * D̄ alone; a form of four lobes or more is not seen as such.
 */
export function ovalBoundMm(stations: readonly StationFinding[]): number | undefined {
  const axes = new Set(stations.map((s) => ((s.axisDegrees % 180) + 180) % 180))
  if (axes.size < 3) return undefined
  const rows = stations.map((s) => {
    const twice = (2 * s.axisDegrees * Math.PI) / 180
    return { design: [1, Math.cos(twice), Math.sin(twice)] as const, station: s }
  })
  const inverse = inverseOf(normalMatrix(rows.map((row) => row.design)))
  // What each reading adds to a and to b.
  const weights = rows.map(({ design, station }) => ({
    station,
    a: dot(inverse[1], design),
    b: dot(inverse[2], design),
  }))
  const sum = (term: (w: (typeof weights)[number]) => number) => weights.reduce((s, w) => s + term(w), 0)
  const size = Math.hypot(
    sum((w) => w.a * w.station.diameterMm),
    sum((w) => w.b * w.station.diameterMm),
  )
  const aa = sum((w) => (w.a * w.station.individualMm) ** 2)
  const bb = sum((w) => (w.b * w.station.individualMm) ** 2)
  const ab = sum((w) => w.a * w.b * w.station.individualMm ** 2)
  const largest = Math.sqrt((aa + bb) / 2 + Math.hypot((aa - bb) / 2, ab))
  const freedom = Math.min(...stations.map((s) => s.individualDegreesOfFreedom))
  return 2 * (size + Math.sqrt(squaredLengthQuantile(0.95, freedom)) * largest)
}
