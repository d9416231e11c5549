import type { Rect } from './hatched-rects'
import type { MapScale } from './map-scale'

/** A label to be placed beside its mark: the boxes that the mark encloses, and the size of its text, pixels. */
export interface LabelledMark {
  readonly boxes: readonly Rect[]
  readonly width: number
  readonly height: number
}

const gap = 5

/**
 * Where each label stands: beside its mark, then above, below or within it, within the map and clear of the other
 * labels; undefined where there is no room. Those before have the first choice.
 */
export function surfaceLabelBoxes(
  scale: MapScale,
  marks: readonly LabelledMark[],
): readonly (Rect | undefined)[] {
  const taken: Rect[] = []
  return marks.map((mark) => {
    const others = marks.filter((other) => other !== mark).flatMap(({ boxes }) => boxes)
    const free = offers(mark).filter((box) => isWithin(scale, box) && !taken.some((one) => meet(one, box)))
    // Better on no other mark; still better there than nowhere.
    const chosen = free.find((box) => !others.some((one) => meet(one, box))) ?? free[0]
    if (chosen) taken.push(chosen)
    return chosen
  })
}

function offers({ boxes, width, height }: LabelledMark): Rect[] {
  const widestFirst = [...boxes].sort((a, b) => b.width - a.width)
  return widestFirst.flatMap((box) => {
    const middleX = box.x + (box.width - width) / 2
    const middleY = box.y + (box.height - height) / 2
    const places = [
      [box.x + box.width + gap, middleY],
      [box.x - gap - width, middleY],
      [middleX, box.y - gap - height],
      [middleX, box.y + box.height + gap],
      [box.x + gap, box.y + gap],
      [box.x + box.width + gap, box.y],
      [box.x - gap - width, box.y],
    ] as const
    return places.map(([x, y]) => ({ x, y, width, height }))
  })
}

function isWithin({ left, top, width, height }: MapScale, box: Rect): boolean {
  return (
    box.x >= left && box.y >= top && box.x + box.width <= left + width && box.y + box.height <= top + height
  )
}

function meet(a: Rect, b: Rect): boolean {
  return a.x < b.x + b.width + 2 && b.x < a.x + a.width + 2 && a.y < b.y + b.height && b.y < a.y + a.height
}
