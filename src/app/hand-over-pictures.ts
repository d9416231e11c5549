import { rampSpan } from '../core/surface/ramp-span'
import { isoStepOf } from '../scene/iso-step-of'
import { legendMarks } from '../scene/legend-marks'
import type { ShownWall } from './hand-over-bores'
import { pictureLabels } from './picture-labels'
import { paperHand, setType, typeLoaded } from './send-hand'
import { drawLegend, drawScale, type Legend, legendHeight, markText, scaleHeight } from './send-legend'

/** A picture that a page holds in itself. */
export interface HeldPicture {
  readonly address: string
  readonly width: number
  readonly height: number
}

const size = { width: 640, height: 480 }
const legendWidth = 220
/** Device pixels that all pictures of a file may have together, and for one unit of the layout at least and at most. */
const pixelsOfAll = 1.6e6
const ratios = { least: 1, most: 2, legend: 1.5 }
const room = 12

/** The wall as it stands, one of so many, with its labels and its scale; undefined without WebGL 2. */
export async function stillOf(wall: ShownWall, ofAll: number): Promise<HeldPicture | undefined> {
  const ratio = ratioFor(ofAll)
  const paper = paperOf(size, ratio)
  if (!paper) return undefined
  await typeLoaded()
  const { drawStillBore } = await import('../scene/still-bore')
  const drawn = await drawStillBore(paper.pen, { x: 0, y: 0, ...size }, ratio, {
    grid: wall.grid,
    ports: wall.bore.ports,
    stations: wall.finding.stations,
    surface: wall.finding.surface,
    pair: wall.finding.pair,
    exaggeration: wall.exaggeration,
    aim: 'front',
    labels: pictureLabels,
    hand: paperHand,
    corners: [{ x: 0, y: 0, width: 150, height: scaleHeight + room }],
  })
  if (!drawn) return undefined
  setType(paper.pen, 13)
  paper.pen.textBaseline = 'middle'
  drawScale(paper.pen, room, room / 2, wall.exaggeration, drawn.pixelsPerMm)
  return heldPicture(paper.canvas, size)
}

/** What colours and marks of a wall mean, and the same in words. */
export function legendOf(
  wall: ShownWall,
): { readonly picture: HeldPicture; readonly text: string } | undefined {
  const { grid, finding, bore, exaggeration } = wall
  const { pair, stations, surface } = finding
  const isoStepUm = isoStepOf(grid)
  const marks = legendMarks({ grid, pair, stations, ports: bore.ports, surface, isoStepUm, exaggeration })
  const span = rampSpan(grid.middleMm, pair, grid.deviationsUm)
  const legend: Legend = { middleMm: grid.middleMm, pair, span, marks, isoStepUm, exaggeration }
  const measured = paperOf({ width: legendWidth, height: 1 })
  const height = measured ? Math.ceil(legendHeight(measured.pen, legend, legendWidth, false)) : 0
  const paper = paperOf({ width: legendWidth, height })
  if (!paper) return undefined
  drawLegend(paper.pen, { x: 0, y: 0, width: legendWidth, height }, legend, undefined)
  const text = marks.map((mark) => markText(mark, isoStepUm)).join('; ')
  return { picture: heldPicture(paper.canvas, { width: legendWidth, height }), text }
}

function ratioFor(pictures: number): number {
  const fitting = Math.sqrt(pixelsOfAll / (pictures * size.width * size.height))
  return Math.min(ratios.most, Math.max(ratios.least, fitting))
}

function paperOf(
  { width, height }: { readonly width: number; readonly height: number },
  ratio: number = ratios.legend,
) {
  const canvas = document.createElement('canvas')
  canvas.width = Math.round(width * ratio)
  canvas.height = Math.round(height * ratio)
  const pen = canvas.getContext('2d')
  if (!pen) return undefined
  pen.scale(ratio, ratio)
  pen.fillStyle = paperHand.paper
  pen.fillRect(0, 0, width, height)
  return { canvas, pen }
}

/** A browser that writes no WebP gives a PNG: larger, and as good. */
function heldPicture(
  canvas: HTMLCanvasElement,
  { width, height }: { readonly width: number; readonly height: number },
): HeldPicture {
  return { address: canvas.toDataURL('image/webp', 0.8), width, height }
}
