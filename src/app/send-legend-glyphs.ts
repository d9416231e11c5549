import type { LegendMark } from '../scene/legend-marks'
import { type Box, type Pen, paperHand, paperPalette } from './send-hand'

const wall = paperPalette.ramp[Math.floor(paperPalette.ramp.length / 2)] ?? paperHand.paper
const fullTurn = 2 * Math.PI

/** Draws a mark as it looks on the wall, small: on the flat map or in the 3D picture. */
export function drawGlyph(pen: Pen, mark: LegendMark, box: Box, flat: boolean): void {
  pen.save()
  pen.beginPath()
  pen.rect(box.x, box.y, box.width, box.height)
  pen.clip()
  pen.fillStyle = mark === 'hole' ? paperHand.paper : wall
  pen.fillRect(box.x, box.y, box.width, box.height)
  pen.strokeStyle = paperHand.ink
  pen.fillStyle = paperHand.ink
  glyphs[mark](pen, box, flat)
  pen.restore()
}

const glyphs: Readonly<Record<LegendMark, (pen: Pen, box: Box, flat: boolean) => void>> = {
  disc: (pen, box) => disc(pen, box, true),
  'disc-open': (pen, box) => disc(pen, box, false),
  hatch: drawHatch,
  stipple: drawDots,
  dashed(pen, box, flat) {
    drawDots(pen, { ...box, width: box.width / 2 }, flat)
    pen.setLineDash([4, 2.6])
    pen.lineWidth = 1.8
    line(pen, box.x + box.width / 2, box.y, box.x + box.width / 2, box.y + box.height)
  },
  'firm-above': (pen, box, flat) => drawPatch(pen, box, paperHand.loose, flat ? '' : '+'),
  'firm-below': (pen, box, flat) => drawPatch(pen, box, paperHand.tight, flat ? '' : '−'),
  'iso-lines'(pen, box) {
    pen.globalAlpha = 0.4
    pen.lineWidth = 1
    for (const share of [0.2, 0.5, 0.8]) {
      const y = box.y + share * box.height
      line(pen, box.x, y + 2, box.x + box.width, y - 2)
    }
  },
  hole(pen, { x, y, width, height }) {
    pen.lineWidth = 1.8
    pen.strokeRect(x + 1, y + 1, width - 2, height - 2)
  },
  surface(pen, { x, y, width, height }) {
    for (const [colour, lineWidth] of [
      [paperHand.ink, 4.6],
      [paperPalette.wallPaper, 2],
    ] as const) {
      pen.strokeStyle = colour
      pen.lineWidth = lineWidth
      pen.strokeRect(x + 4, y + 3.5, width - 8, height - 7)
    }
  },
}

function disc(pen: Pen, { x, y, width, height }: Box, counted: boolean): void {
  pen.beginPath()
  pen.arc(x + width / 2, y + height / 2, 4, 0, fullTurn)
  pen.fillStyle = counted ? paperHand.ink : paperPalette.wallPaper
  pen.strokeStyle = counted ? paperPalette.wallPaper : paperHand.ink
  pen.lineWidth = 1.4
  pen.fill()
  pen.stroke()
}

function drawHatch(pen: Pen, { x, y, width, height }: Box): void {
  pen.fillStyle = paperPalette.wallPaper
  pen.fillRect(x, y, width, height)
  pen.globalAlpha = 0.5
  pen.lineWidth = 1
  for (let from = x; from < x + width + height; from += 6) line(pen, from, y, from - height, y + height)
}

function drawDots(pen: Pen, { x, y, width, height }: Box, flat: boolean): void {
  pen.fillStyle = flat ? paperHand.ink : paperHand.loose
  for (let row = 0; row * 4 < height; row++) {
    for (let dot = x + 2 + (row % 2) * 3.5; dot < x + width; dot += 7) {
      pen.beginPath()
      pen.arc(dot, y + 2 + row * 4, 1.05, 0, fullTurn)
      pen.fill()
    }
  }
}

function drawPatch(pen: Pen, { x, y, width, height }: Box, colour: string, sign: string): void {
  pen.fillStyle = colour
  pen.fillRect(x, y, width, height)
  pen.lineWidth = 2.2
  pen.strokeRect(x + 1, y + 1, width - 2, height - 2)
  if (sign === '') return
  pen.fillStyle = paperHand.ink
  pen.fillRect(x + width / 2 - 6, y + 2, 12, height - 4)
  pen.fillStyle = paperHand.paper
  pen.textAlign = 'center'
  pen.textBaseline = 'middle'
  pen.fillText(sign, x + width / 2, y + height / 2)
}

function line(pen: Pen, fromX: number, fromY: number, toX: number, toY: number): void {
  pen.beginPath()
  pen.moveTo(fromX, fromY)
  pen.lineTo(toX, toY)
  pen.stroke()
}
