import type { WallGrid } from '../core/surface/wall-grid'

/** A wall on its way from one survey to the next, or from one drawn at random to another: both on the same lines. */
export interface WallWay {
  readonly from: WallGrid
  readonly to: WallGrid
  /** Of the way, from 0 to 1: at either end it is exactly that survey's wall. */
  readonly share: number
  /** It goes there by itself, from the other end. */
  readonly eased: boolean
  /** Neither end is a survey's: nothing fades between them, and stations stay. */
  readonly atRandom?: true
}

/** How long it takes from one survey to the next, s. */
const easeSeconds = 0.6

/** The share of the way at a time since its start, s: slow at both ends. */
export function easedShare(way: WallWay, seconds: number): number {
  if (!way.eased) return way.share
  const part = Math.min(1, Math.max(0, seconds / easeSeconds))
  const eased = part * part * (3 - 2 * part)
  return way.share > 0.5 ? eased : 1 - eased
}

/** Whether it has not arrived yet. */
export function isUnderWay(way: WallWay, seconds: number): boolean {
  return way.eased && seconds < easeSeconds
}
