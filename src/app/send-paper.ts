import { words } from '../words/words'
import type { Caption } from './send-caption'
import { type Box, linesWithin, type Pen, paperHand, setType } from './send-hand'
import { type Legend, legendHeight } from './send-legend'

/** Units of the layout: what a CSS pixel is on the page. */
const paper = { width: 800, height: 600 }
/** Device pixels for one unit: a paper of 1600 × 1200 pixels to be sent, of 3200 × 2400 to be printed. */
export const paperRatios = { send: 2, print: 4 } as const
const edge = 28
const headTop = 22
/** Between caption, picture, rule and foot. */
const gaps = { aboveBody: 12, belowBody: 12, belowRule: 9, belowFoot: 22 }
const column = { width: 206, gap: 20 }
const leastPicture = 330

export interface Paper {
  readonly canvas: HTMLCanvasElement
  readonly pen: Pen
  readonly picture: Box
  readonly legendBox: Box
}

interface Line {
  readonly text: string
  readonly px: number
  readonly weight: number
  readonly colour: string
  /** Of its middle. */
  readonly y: number
}

/**
 * White paper with its caption written above and its foot below, and the room left between them. It grows
 * longer where a long caption or legend would leave too little room. Undefined where the browser draws nothing.
 */
export function layOutPaper(caption: Caption, legend: Legend, paperRatio: number): Paper | undefined {
  const canvas = document.createElement('canvas')
  const pen = canvas.getContext('2d')
  if (!pen) return undefined
  const width = paper.width - 2 * edge
  const head = headLines(pen, caption, width)
  const foot = footLines(pen, caption, width)
  const top = headTop + head.height + gaps.aboveBody
  const least = Math.max(leastPicture, legendHeight(pen, legend, column.width))
  const below = gaps.belowBody + gaps.belowRule + foot.height + gaps.belowFoot
  const height = Math.max(paper.height, Math.ceil(top + least + below))
  canvas.width = paper.width * paperRatio
  canvas.height = height * paperRatio
  // Sizing a canvas forgets all that was set.
  pen.scale(paperRatio, paperRatio)
  pen.fillStyle = paperHand.paper
  pen.fillRect(0, 0, paper.width, height)
  const footTop = height - gaps.belowFoot - foot.height
  write(pen, head.lines, headTop)
  drawTag(pen, caption.invented)
  write(pen, foot.lines, footTop)
  pen.fillStyle = paperHand.rule
  pen.fillRect(edge, footTop - gaps.belowRule, width, 1)
  const body = { y: top, height: height - below - top }
  const pictureWidth = width - column.width - column.gap
  return {
    canvas,
    pen,
    picture: { x: edge, width: pictureWidth, ...body },
    legendBox: { x: edge + pictureWidth + column.gap, width: column.width, ...body },
  }
}

function headLines(pen: Pen, caption: Caption, width: number) {
  const { ink, softInk } = paperHand
  const text = stack(pen)
  text.add(caption.job, 17, 600, ink, width - tagWidth(pen, caption.invented) - column.gap)
  text.add(caption.bore, 14, 400, softInk, width)
  text.space(7)
  text.add(caption.verdict, 24, 600, ink, width)
  text.space(2)
  text.add(caption.beside.join(' '), 15, 400, ink, width)
  return { lines: text.lines, height: text.end() }
}

function footLines(pen: Pen, caption: Caption, width: number) {
  const text = stack(pen)
  const sentences = [...caption.foot, words.sentPicture.madeWith(words.app.name)]
  text.add(sentences.join(' '), 12, 400, paperHand.softInk, width)
  return { lines: text.lines, height: text.end() }
}

const tag = { px: 14, height: 24, padding: 9 }

function tagWidth(pen: Pen, text: string | undefined): number {
  if (text === undefined) return 0
  setType(pen, tag.px)
  return pen.measureText(text).width + 2 * tag.padding
}

/** Top right, in a dashed frame as on the page: the figures are invented. */
function drawTag(pen: Pen, text: string | undefined): void {
  if (text === undefined) return
  const width = tagWidth(pen, text)
  const x = paper.width - edge - width
  pen.save()
  pen.strokeStyle = paperHand.softInk
  pen.setLineDash([4, 3])
  pen.strokeRect(x, headTop - 1, width, tag.height)
  pen.fillStyle = paperHand.ink
  pen.textBaseline = 'middle'
  pen.fillText(text, x + tag.padding, headTop - 1 + tag.height / 2)
  pen.restore()
}

/** Gathers paragraphs one under the other. */
function stack(pen: Pen) {
  const lines: Line[] = []
  let y = 0
  return {
    lines,
    end: () => y,
    space(units: number) {
      y += units
    },
    add(text: string, px: number, weight: number, colour: string, width: number) {
      setType(pen, px, weight)
      for (const line of linesWithin(pen, text, width)) {
        const height = Math.round(px * 1.3)
        lines.push({ text: line, px, weight, colour, y: y + height / 2 })
        y += height
      }
    },
  }
}

function write(pen: Pen, lines: readonly Line[], top: number): void {
  pen.textBaseline = 'middle'
  pen.textAlign = 'left'
  for (const { text, px, weight, colour, y } of lines) {
    setType(pen, px, weight)
    pen.fillStyle = colour
    pen.fillText(text, edge, top + y)
  }
}
