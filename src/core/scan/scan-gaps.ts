import type { RadialScan } from './radial-scan'

/** The widest stretch around a level without a value. */
export interface LevelGap {
  /** Places with a value. */
  readonly values: number
  /** From a value to the next one, degrees; 360 where there are fewer than two values. */
  readonly gapDegrees: number
}

/** Fewer values than this show no form: mean, eccentricity and oval take five. */
const fewestValues = 6

/** The widest gap of a level, radii in the order of the angles, NaN where there is none. */
export function levelGap(anglesDegrees: readonly number[], radiiUm: Float64Array): LevelGap {
  let values = 0
  let first = 0
  let last = 0
  let gapDegrees = 0
  for (const [i, angle] of anglesDegrees.entries()) {
    if (Number.isNaN(radiiUm[i])) continue
    if (values === 0) first = angle
    else gapDegrees = Math.max(gapDegrees, angle - last)
    last = angle
    values++
  }
  return values < 2
    ? { values, gapDegrees: 360 }
    : { values, gapDegrees: Math.max(gapDegrees, first + 360 - last) }
}

/** How many levels show where their middle is: six values or more, and no gap of half a turn. */
export function levelsAllRound({ depthsMm, anglesDegrees, radiiUm }: RadialScan): number {
  return depthsMm.filter((_, level) => {
    const { values, gapDegrees } = levelGap(anglesDegrees, rowOf(radiiUm, level, anglesDegrees.length))
    return values >= fewestValues && gapDegrees < 180
  }).length
}

/** The radii of a level, in the order of the angles; a view of the scan's own. */
export function rowOf(radiiUm: Float64Array, level: number, angles: number): Float64Array {
  return radiiUm.subarray(level * angles, (level + 1) * angles)
}
