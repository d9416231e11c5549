/** cos(m·θ) and sin(m·θ) of every angle of a scan: [m · angles + angle]. */
export interface TurnTable {
  readonly angles: number
  readonly cosines: Float64Array
  readonly sines: Float64Array
}

/** The table for m from 0 to `highest`, angles in degrees. Each entry from its own angle, so that none is carried on. */
export function turnTable(anglesDegrees: readonly number[], highest: number): TurnTable {
  const angles = anglesDegrees.length
  const cosines = new Float64Array((highest + 1) * angles)
  const sines = new Float64Array((highest + 1) * angles)
  for (let m = 0; m <= highest; m++) {
    for (const [angle, degrees] of anglesDegrees.entries()) {
      const turn = (((m * degrees) % 360) * Math.PI) / 180
      cosines[m * angles + angle] = Math.cos(turn)
      sines[m * angles + angle] = Math.sin(turn)
    }
  }
  return { angles, cosines, sines }
}
