import type { Job } from '../job/schema'
import { gridOfBore } from '../job/selectors'
import type { Report, ReportWall } from '../pages/report/report-content'
import { pictureBox, pictureKey, type ReportPicture } from '../pages/report/report-look'
import { pictureLabels } from './picture-labels'
import { paperHand } from './send-hand'

/** Device pixels for each CSS pixel: 300 to the inch at the size that a picture is drawn for. */
const ratio = 300 / 96

/** Beyond so many bores the sheet of an engine has no room for pictures, and each bore has its map. */
const mostPictured = 4

/** The walls that a report has pictures of, each once. */
export function wallsPictured({ bores, engine }: Report): readonly ReportWall[] {
  if (engine && bores.length > mostPictured) return []
  const walls = bores.flatMap((bore) => [bore, ...(bore.besideIt && !engine ? [bore.besideIt] : [])])
  const byKey = new Map(walls.map((wall) => [pictureKey(wall.bore.id, wall.survey.id), wall]))
  return [...byKey.values()].filter(({ grid }) => grid !== undefined)
}

/** The picture of a wall on white paper, with the address that it is kept at; `none` without WebGL 2. */
export async function drawReportPicture(
  job: Job,
  { bore, survey, finding }: ReportWall,
  exaggeration: number,
): Promise<ReportPicture> {
  const grid = gridOfBore(job, bore.id, survey.id)
  const canvas = document.createElement('canvas')
  const pen = canvas.getContext('2d')
  if (!grid || !pen) return { kind: 'none' }
  await document.fonts.load(`400 14px ${paperHand.fontFamily}`)
  const { width, height } = pictureBox
  canvas.width = Math.round(width * ratio)
  canvas.height = Math.round(height * ratio)
  pen.scale(ratio, ratio)
  pen.fillStyle = paperHand.paper
  pen.fillRect(0, 0, width, height)
  const { drawStillBore } = await import('../scene/still-bore')
  const drawn = await drawStillBore(pen, { x: 0, y: 0, width, height }, ratio, {
    grid,
    ports: bore.ports,
    stations: finding.stations,
    surface: finding.surface,
    pair: finding.pair,
    exaggeration,
    aim: 'front',
    labels: pictureLabels,
    hand: paperHand,
  })
  if (!drawn) return { kind: 'none' }
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'))
  if (!blob) return { kind: 'none' }
  return { kind: 'drawn', url: URL.createObjectURL(blob), pixelsPerMm: drawn.pixelsPerMm }
}
