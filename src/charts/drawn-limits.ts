import type { LimitPair } from '../core/findings'
import type { CutPoint } from '../core/surface/grid-cuts'
import { limitText } from '../words/limit-text'
import { size } from '../words/numbers'
import type { ShownRange } from './shown-range'

export type LimitName = 'min' | 'max' | 'new-max'

/** A limit as it is drawn: where, what it is called, and whether it is judged and so has a doubt. */
export interface DrawnLimit {
  readonly which: LimitName
  readonly deviationUm: number
  /** With what it is, and the size alone where there is no room for that. */
  readonly text: string
  readonly sizeText: string
  readonly isJudged: boolean
}

/** The limits of a pair, from the largest down. */
export function drawnLimits(pair: LimitPair | undefined, middleMm: number): DrawnLimit[] {
  if (!pair) return []
  const limit = (which: LimitName, mm: number | undefined, isJudged: boolean): DrawnLimit[] =>
    mm === undefined
      ? []
      : [
          {
            which,
            deviationUm: (mm - middleMm) * 1000,
            text: limitText(which, mm, pair),
            sizeText: size(mm),
            isJudged,
          },
        ]
  return [
    ...limit('max', pair.maxMm, true),
    ...limit('new-max', pair.newMaxMm, false),
    ...limit('min', pair.minMm, pair.kind !== 'wear'),
  ]
}

/** Between which deviations, µm, a place of the wall is too close to call at a judged limit; within what is shown. */
export function doubtBand(
  { doubtUm }: Pick<CutPoint, 'doubtUm'>,
  which: LimitName,
  { lowUm, highUm }: ShownRange,
): readonly [fromUm: number, toUm: number] {
  const [belowFirm, insideFrom, insideTo, aboveFirm] = doubtUm
  const [from, to] =
    which === 'max'
      ? [Math.max(insideTo, belowFirm), aboveFirm]
      : [belowFirm, Math.min(insideFrom, aboveFirm)]
  return [Math.max(lowUm, from), Math.min(highUm, to)]
}

/** Whether the wall there is too close to call. */
export function isTooClose(point: CutPoint, limits: readonly DrawnLimit[]): boolean {
  const [belowFirm, insideFrom, insideTo, aboveFirm] = point.doubtUm
  const at = (which: LimitName) => limits.some((limit) => limit.which === which && limit.isJudged)
  return (
    (at('max') && point.deviationUm > insideTo && point.deviationUm < aboveFirm) ||
    (at('min') && point.deviationUm < insideFrom && point.deviationUm > belowFirm)
  )
}
