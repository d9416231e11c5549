import type { LimitPair } from '../core/findings'
import { size } from './numbers'
import { words } from './words'

/** A limit that is drawn, with its size: 54.050 wear limit. */
export function limitText(which: 'min' | 'max' | 'new-max', sizeMm: number, pair: LimitPair): string {
  const { limits } = words.picture
  const written = size(sizeMm)
  if (which === 'new-max') return limits.newMax(written)
  if (pair.kind === 'wear' && which === 'max') return limits.wear(written)
  if (pair.kind !== 'grade') return limits[which](written)
  const grade = pair.gradeName ?? ''
  return which === 'min' ? limits.gradeMin(grade, written) : limits.gradeMax(grade, written)
}
