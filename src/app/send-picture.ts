import { type DrawnMap, drawMap } from '../charts/map-drawing'
import type { BoreFinding } from '../core/findings'
import type { Bore } from '../core/measured'
import type { WallGrid } from '../core/surface/wall-grid'
import type { Job } from '../job/schema'
import { exaggerationOfJob, findingOf, gridOfBore, mapGridOfBore, surveyOf } from '../job/selectors'
import { wallPaint } from '../scene/wall-palette'
import { session } from '../session/session'
import { drawBoreOnPaper, legendOf } from './bore-on-paper'
import { captionOf } from './send-caption'
import { paperHand, typeLoaded } from './send-hand'
import { drawLegend } from './send-legend'
import { layOutPaper, type Paper, paperRatios } from './send-paper'
import { shownPicture } from './shown-picture'

export type DrawnToSend =
  | { readonly kind: 'drawn'; readonly blob: Blob; readonly of: 'picture' | 'flat-map' }
  | { readonly kind: 'no-readings' }
  | { readonly kind: 'failed' }

/** The picture of a bore as it is sent: a PNG on white paper. The flat map where there is no WebGL. */
export async function pictureToSend(
  job: Job,
  bore: Bore,
  surveyId?: string,
  use: keyof typeof paperRatios = 'send',
): Promise<DrawnToSend> {
  const ratio = paperRatios[use]
  const finding = findingOf(job, bore.id, surveyId)
  const grid = gridOfBore(job, bore.id, surveyId)
  const exaggeration = session.getState().exaggeration ?? exaggerationOfJob(job)
  if (!finding || !grid || exaggeration === undefined) return { kind: 'no-readings' }
  await typeLoaded()
  const made =
    (await paperWithBore(job, bore, finding, grid, exaggeration, ratio)) ??
    paperWithMap(job, bore, finding, grid, ratio)
  const blob = made && (await pngOf(made.paper.canvas))
  return made && blob ? { kind: 'drawn', blob, of: made.of } : { kind: 'failed' }
}

interface Made {
  readonly paper: Paper
  readonly of: 'picture' | 'flat-map'
}

/** Undefined without WebGL 2. */
async function paperWithBore(
  job: Job,
  bore: Bore,
  finding: BoreFinding,
  grid: WallGrid,
  exaggeration: number,
  ratio: number,
): Promise<Made | undefined> {
  const wall = { bore, finding, grid, exaggeration }
  const legend = legendOf(wall)
  const paper = layOutPaper(captionOf(job, bore, finding), legend, ratio)
  if (!paper) return undefined
  const { name } = session.getState().view
  const aim = shownPicture.current?.aim() ?? (name === 'free' ? 'front' : name)
  const drawn = await drawBoreOnPaper(paper.pen, paper.picture, ratio, wall, { aim })
  if (!drawn) return undefined
  drawLegend(paper.pen, paper.legendBox, legend, drawn.pixelsPerMm)
  return { paper, of: 'picture' }
}

function paperWithMap(
  job: Job,
  bore: Bore,
  finding: BoreFinding,
  grid: WallGrid,
  ratio: number,
): Made | undefined {
  const { pair, stations, surface } = finding
  const legend = legendOf({ bore, finding, grid, exaggeration: undefined })
  const paper = layOutPaper(captionOf(job, bore, finding), legend, ratio)
  if (!paper) return undefined
  const mapGrid = mapGridOfBore(job, bore.id, finding.surveyId) ?? grid
  const map: DrawnMap = {
    grid: mapGrid,
    paint: wallPaint(mapGrid, pair, 'light'),
    levelsMm: surveyOf(bore, finding.surveyId)?.levelsMm ?? [],
    ports: bore.ports,
    stations,
    surface,
    pair,
  }
  drawMap(paper.pen, paper.picture, map, paperHand)
  drawLegend(paper.pen, paper.legendBox, legend, undefined)
  return { paper, of: 'flat-map' }
}

function pngOf(canvas: HTMLCanvasElement): Promise<Blob | undefined> {
  return new Promise((resolve) => canvas.toBlob((blob) => resolve(blob ?? undefined), 'image/png'))
}
