import type { PictureView } from './picture-view'
import { type Label, type LabelKind, type StandingLabel, standLabels } from './stand-labels'

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
  for (const standing of standLabels(sized, view, [])) drawLabel(pen, standing, hand)
  pen.restore()
}

function drawLabel(
  pen: CanvasRenderingContext2D,
  { sized: { label }, box, leader }: StandingLabel<{ label: Label; width: number; height: number }>,
  hand: LabelHand,
): void {
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  pen.font = fontOf(label.kind, hand)
  const isOnWall = label.kind === 'iso' || label.kind === 'surface'
  pen.fillStyle = isOnWall ? hand.ink : hand.softInk
  if (label.kind === 'sign') {
    pen.fillStyle = hand.ink
    pen.fillRect(box.x, box.y, box.width, box.height)
    pen.fillStyle = hand.paper
  }
  if (isOnWall) {
    pen.strokeStyle = `rgb(240 236 225 / ${label.kind === 'iso' ? 60 : 90}%)`
    pen.lineWidth = 3
    pen.strokeText(label.text, x, y)
  }
  if (leader !== undefined) pen.fillRect(box.x - leaderGap - leader, y, leader, 1)
  pen.fillText(label.text, x, y)
}

function styleOf(kind: LabelKind): LabelStyle {
  return styles[kind] ?? plainStyle
}

function fontOf(kind: LabelKind, { fontFamily }: LabelHand): string {
  const { px, weight } = styleOf(kind)
  return `${weight} ${px}px ${fontFamily}`
}
