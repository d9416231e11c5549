import type { LimitPair } from '../core/findings'
import { type BorePlace, ring, type Stroke, type StrokeRole } from './stroke-geometry'

export interface RingedBore {
  readonly middleMm: number
  readonly lengthMm: number
  readonly pair: LimitPair | undefined
  readonly levelsMm: readonly number[]
}

/** The limit cylinders as rings: firm at both mouths, fine at every level; the largest new size thin. */
export function limitStrokes({ middleMm, lengthMm, pair, levelsMm }: RingedBore): readonly Stroke[] {
  const mouths = [0, lengthMm]
  const limit = (role: StrokeRole, sizeMm: number | undefined, widthPx: number): readonly Stroke[] => {
    if (sizeMm === undefined) return []
    const deviationUm = (sizeMm - middleMm) * 1000
    const at = (depthMm: number, width: number, farOpacity: number, nearOpacity: number): Stroke => ({
      places: ring(depthMm, deviationUm),
      widthPx: width,
      role,
      farOpacity,
      nearOpacity,
    })
    const opacity = role === 'new-max' ? 0.75 : 1
    const fine = role === 'new-max' ? [] : levelsMm.map((depthMm) => at(depthMm, 0.95, 0.6, 0.22))
    return [...fine, ...mouths.map((depthMm) => at(depthMm, widthPx, opacity, opacity))]
  }
  return [
    ...limit('max', pair?.maxMm, 2.2),
    ...limit('new-max', pair?.newMaxMm, 1),
    ...limit('min', pair?.minMm, 2.2),
  ]
}

/** The line across the bore between the two contacts pointed at, with pale edges; none where nothing is. */
export function pointerStrokes(contacts: readonly BorePlace[]): readonly Stroke[] {
  if (contacts.length === 0) return []
  return [
    { places: contacts, widthPx: 3.4, role: 'pointer-edge', farOpacity: 0.8, nearOpacity: 0.8 },
    { places: contacts, widthPx: 1.4, role: 'pointer', farOpacity: 1, nearOpacity: 1 },
  ]
}
