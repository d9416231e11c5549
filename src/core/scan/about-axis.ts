import type { RadialScan, ScanAxis } from './radial-scan'

/**
 * Radii about an axis, µm, less half of the near diameter, from radii about the spindle; NaN stays. Exact for the
 * distance of each place from the leaning axis: with the place v across from where the axis stands at its level and
 * the lean s, d² = |v|² − (v·s)²/(1 + |s|²). Own derivation. A near diameter that is off by a share moves only what
 * the axis stands off squared, e²/2R, by that share.
 */
export function aboutAxis(scan: RadialScan, axis: ScanAxis, nearDiameterMm: number): Float64Array {
  const { depthsMm, anglesDegrees, radiiUm } = scan
  const nearUm = nearDiameterMm * 500
  const directions = anglesDegrees.map((degrees) => {
    const turn = (degrees * Math.PI) / 180
    return { cosine: Math.cos(turn), sine: Math.sin(turn) }
  })
  const leanX = axis.leanUmPerMm.x / 1000
  const leanY = axis.leanUmPerMm.y / 1000
  const steep = 1 + leanX * leanX + leanY * leanY
  const about = new Float64Array(radiiUm.length)
  let at = 0
  for (const depth of depthsMm) {
    const x0 = axis.atDeckUm.x + depth * axis.leanUmPerMm.x
    const y0 = axis.atDeckUm.y + depth * axis.leanUmPerMm.y
    for (const { cosine, sine } of directions) {
      const radius = nearUm + (radiiUm[at] ?? Number.NaN)
      const x = radius * cosine - x0
      const y = radius * sine - y0
      const along = x * leanX + y * leanY
      about[at++] = Math.sqrt(x * x + y * y - (along * along) / steep) - nearUm
    }
  }
  return about
}
