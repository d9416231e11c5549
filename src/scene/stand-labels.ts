import type { PictureView } from './picture-view'
import { type Box, LabelRoom } from './place-labels'

/** A place where a label may stand: the point it is tied to, and which part of its box lies there (0 to 1). */
export interface LabelOffer {
  readonly x: number
  readonly y: number
  readonly alignX: number
  readonly alignY: number
  /** Length of the line from the label's left edge to what it names, CSS pixels. */
  readonly leader?: number
}

export type LabelKind =
  | 'bore'
  | 'figure'
  | 'depth'
  | 'pointed'
  | 'side'
  | 'sign'
  | 'limit'
  | 'iso'
  | 'surface'

/** A text tied to the bore. Its offers are asked for at every frame, best first. */
export interface Label {
  readonly text: string
  readonly kind: LabelKind
  /** Room to other labels, CSS pixels; 2 where absent. */
  readonly gapPx?: number
  offers(view: PictureView): readonly LabelOffer[]
}

/** A label with its size in the font it is written in, CSS pixels. */
export interface SizedLabel {
  readonly label: Label
  readonly width: number
  readonly height: number
}

/** A label with the place it has got. */
export interface StandingLabel<Sized extends SizedLabel> {
  readonly sized: Sized
  readonly box: Box
  readonly leader: number | undefined
}

/** Stands each label where it is free, the most important first; those without a free place are left out. */
export function standLabels<Sized extends SizedLabel>(
  labels: readonly Sized[],
  view: PictureView,
  taken: readonly Box[],
): readonly StandingLabel<Sized>[] {
  const room = new LabelRoom(view.width, view.height, taken)
  return labels.flatMap((sized) => {
    const { label, width, height } = sized
    const offers = label.offers(view)
    const boxes = offers.map((offer) => ({
      x: Math.round(offer.x - offer.alignX * width),
      y: Math.round(offer.y - offer.alignY * height),
      width,
      height,
    }))
    const box = room.take(boxes, label.gapPx)
    return box ? [{ sized, box, leader: offers[boxes.indexOf(box)]?.leader }] : []
  })
}
