import { type ScaleLinear, scaleLinear } from 'd3-scale'
import type { ShownRange } from './shown-range'

/** How an axis is drawn along its depth: the depth down, as on the map, the diameter across. Pixels. */
export interface ProfileScale {
  readonly left: number
  readonly top: number
  readonly width: number
  readonly height: number
  readonly lengthMm: number
  /** From a deviation, µm. */
  readonly across: ScaleLinear<number, number>
}

/** Thickness that the wall is shown with where it is cut, pixels. */
export const profileCutPx = 8

/** With room at both sides, at the right for the cut wall too. */
export function profileScale(box: Omit<ProfileScale, 'across'>, { lowUm, highUm }: ShownRange): ProfileScale {
  const spread = Math.max(1, highUm - lowUm)
  const room = { left: 12, right: 12 + profileCutPx }
  return {
    ...box,
    across: scaleLinear([lowUm, lowUm + spread], [box.left + room.left, box.left + box.width - room.right]),
  }
}
