import type { ShapeFinding } from '../core/findings'
import type { OvalityRule, TaperRule } from '../core/measured'
import { ownerWords } from './owner-words'

/** Across the bore in plain words: the nearest of four directions. */
export function acrossText(axisDegrees: number): string {
  const { frontRear, frontRight, sides, frontLeft } = ownerWords.shape.across
  const nearest = Math.round(axisDegrees / 45) % 4
  return [frontRear, frontRight, sides, frontLeft][(nearest + 4) % 4] ?? frontRear
}

/** An out-of-round or a taper that is known, and not none by its doubt. */
export function standsOut(shape: ShapeFinding<OvalityRule> | ShapeFinding<TaperRule> | undefined): boolean {
  return shape?.known === true && (shape.lowMm > 0 || shape.highMm < 0)
}
