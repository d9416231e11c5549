import type { PictureView } from './picture-view'
import type { LabelRoom } from './place-labels'

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

/** A text tied to the bore. */
export interface Label {
  readonly text: string
  readonly kind: LabelKind
  /** Room to other labels, CSS pixels; the room's own where absent. */
  readonly gapPx?: number
  /** Offers its places to the room at each frame, best first, until one is taken. Makes nothing. */
  readonly offer: (view: PictureView, room: LabelRoom) => void
}

/** A label with its size in the font it is written in, CSS pixels. */
export interface SizedLabel {
  readonly label: Label
  readonly width: number
  readonly height: number
}

/** Whether a label has found a place where it is free, the more important ones first; the room says where. */
export function stands({ label, width, height }: SizedLabel, view: PictureView, room: LabelRoom): boolean {
  room.seek(width, height, label.gapPx)
  label.offer(view, room)
  return room.isTaken
}
