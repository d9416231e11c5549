import type { LimitPair } from '../core/findings'
import type { RampSpan } from '../core/surface/ramp-span'
import type { PictureLabels } from './picture-labels'

/** A limit, or the middle that is counted from, on the colour key. */
export interface KeyTick {
  readonly which: 'min' | 'max' | 'new-max' | 'middle'
  readonly sizeMm: number
  /** From the top of the key, 0 to 1. */
  readonly share: number
}

/** The ticks of the colour key of a wall, the most important first. Sizes in mm. */
export function keyTicks(middleMm: number, pair: LimitPair | undefined, span: RampSpan): readonly KeyTick[] {
  const tick = (which: KeyTick['which'], sizeMm: number | undefined): readonly KeyTick[] => {
    if (sizeMm === undefined) return []
    const share = (span.highUm - (sizeMm - middleMm) * 1000) / (span.highUm - span.lowUm)
    return share < -0.01 || share > 1.01 ? [] : [{ which, sizeMm, share }]
  }
  return [
    ...tick('max', pair?.maxMm),
    ...tick('min', pair?.minMm),
    ...tick('middle', middleMm),
    ...tick('new-max', pair?.newMaxMm),
  ]
}

/** The key as it is drawn, pixels; `newMax`: its tick has a text too, where its ring is not labelled. */
interface KeyBox {
  readonly height: number
  readonly lineHeight: number
  readonly newMax?: boolean
}

/** The texts beside the ticks, each where it does not touch one before it. */
export function keyTexts(
  ticks: readonly KeyTick[],
  box: KeyBox,
  pair: LimitPair | undefined,
  labels: Pick<PictureLabels, 'limit' | 'middle'>,
) {
  const free = ticks.filter(
    ({ which, share }, index) =>
      (which !== 'new-max' || box.newMax === true) &&
      ticks.slice(0, index).every((other) => Math.abs(other.share - share) * box.height >= box.lineHeight),
  )
  return free.flatMap((tick) => {
    const { which, sizeMm } = tick
    if (which === 'middle') return [{ ...tick, text: labels.middle(sizeMm) }]
    return pair ? [{ ...tick, text: labels.limit(which, sizeMm, pair) }] : []
  })
}
