import type { BoreFinding } from '../core/findings'
import type { Bore } from '../core/measured'
import { rampSpan } from '../core/surface/ramp-span'
import type { WallGrid } from '../core/surface/wall-grid'
import { isoStepOf } from '../scene/iso-step-of'
import { legendMarks } from '../scene/legend-marks'
import type { StillBore } from '../scene/still-bore'
import { pictureLabels } from './picture-labels'
import { type Box, type Pen, paperHand, typeLoaded } from './send-hand'
import type { Legend } from './send-legend'

/** A wall that a still picture is drawn of. */
export interface PicturedWall {
  readonly bore: Bore
  readonly finding: BoreFinding
  readonly grid: WallGrid
  readonly exaggeration: number
}

/** White paper of so many units, each so many device pixels; undefined where the browser draws nothing. */
export function whitePaper(
  { width, height }: { readonly width: number; readonly height: number },
  ratio: number,
): { readonly canvas: HTMLCanvasElement; readonly pen: Pen } | undefined {
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

/** Draws a bore into a box of a paper, with its labels; undefined, with nothing drawn, without WebGL 2. */
export async function drawBoreOnPaper(
  pen: Pen,
  box: Box,
  ratio: number,
  { bore, finding, grid, exaggeration }: PicturedWall,
  { aim = 'front', ...seen }: Partial<Pick<StillBore, 'aim' | 'corners'>> = {},
): Promise<{ readonly pixelsPerMm: number } | undefined> {
  await typeLoaded()
  const { drawStillBore } = await import('../scene/still-bore')
  return drawStillBore(pen, box, ratio, {
    grid,
    ports: bore.ports,
    stations: finding.stations,
    surface: finding.surface,
    pair: finding.pair,
    exaggeration,
    aim,
    ...seen,
    labels: pictureLabels,
    hand: paperHand,
  })
}

/** What colours and marks of a wall mean; of a flat map without its exaggeration. */
export function legendOf({
  bore,
  finding,
  grid,
  exaggeration,
}: Omit<PicturedWall, 'exaggeration'> & { readonly exaggeration: number | undefined }): Legend {
  const { pair, stations, surface } = finding
  const isoStepUm = isoStepOf(grid)
  return {
    middleMm: grid.middleMm,
    pair,
    span: rampSpan(grid.middleMm, pair, grid.deviationsUm),
    marks: legendMarks({ grid, pair, stations, ports: bore.ports, surface, isoStepUm, exaggeration }),
    isoStepUm,
    exaggeration,
  }
}
