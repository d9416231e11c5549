import type { PictureView } from './picture-view'
import { type Box, LabelRoom } from './place-labels'
import { type Label, type LabelKind, type SizedLabel, stands } from './stand-labels'

/** How labels are written on paper: family and colours of the page they stand on. */
export interface LabelHand {
  readonly fontFamily: string
  readonly ink: string
  readonly softInk: string
  readonly paper: string
}

interface LabelStyle {
  readonly px: number
  readonly weight: number
  /** Free on each side of the text, px. */
  readonly padding: number
}

const plainStyle: LabelStyle = { px: 14, weight: 400, padding: 3 }
const styles: Partial<Record<LabelKind, LabelStyle>> = {
  sign: { px: 17, weight: 700, padding: 4 },
  iso: { px: 12, weight: 400, padding: 1 },
  surface: { px: 13, weight: 600, padding: 2 },
}
/** Of a line, as a share of the size of its type. */
const lineShare = 1.15
const leaderGap = 2

/** Writes labels over a picture that was just drawn, placed as on the page. Pixels of the view. */
export function drawLabels(
  pen: CanvasRenderingContext2D,
  labels: readonly Label[],
  view: PictureView,
  hand: LabelHand,
  taken: readonly Box[] = [],
): void {
  const sized = labels.map((label) => {
    const { px, padding } = styleOf(label.kind)
    pen.font = fontOf(label.kind, hand)
    return { label, width: pen.measureText(label.text).width + 2 * padding, height: px * lineShare }
  })
  pen.save()
  pen.textBaseline = 'middle'
  pen.textAlign = 'center'
  pen.lineJoin = 'round'
  const room = new LabelRoom()
  room.clear(view.width, view.height, taken)
  for (const one of sized) if (stands(one, view, room)) drawLabel(pen, one, room, hand)
  pen.restore()
}

function drawLabel(
  pen: CanvasRenderingContext2D,
  { label, width, height }: SizedLabel,
  place: LabelRoom,
  hand: LabelHand,
): void {
  const [x, y] = [place.x + width / 2, place.y + height / 2]
  pen.font = fontOf(label.kind, hand)
  const isOnWall = label.kind === 'iso' || label.kind === 'surface'
  pen.fillStyle = isOnWall ? hand.ink : hand.softInk
  if (label.kind === 'sign') {
    pen.fillStyle = hand.ink
    pen.fillRect(place.x, place.y, width, height)
    pen.fillStyle = hand.paper
  }
  if (isOnWall) {
    pen.strokeStyle = `rgb(240 236 225 / ${label.kind === 'iso' ? 60 : 90}%)`
    pen.lineWidth = 3
    pen.strokeText(label.text, x, y)
  }
  pen.fillRect(place.x - leaderGap - place.leader, y, place.leader, 1)
  pen.fillText(label.text, x, y)
}

function styleOf(kind: LabelKind): LabelStyle {
  return styles[kind] ?? plainStyle
}

function fontOf(kind: LabelKind, { fontFamily }: LabelHand): string {
  const { px, weight } = styleOf(kind)
  return `${weight} ${px}px ${fontFamily}`
}
