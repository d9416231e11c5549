import type { Job } from '../job/schema'
import { gridOfBore } from '../job/selectors'
import type { Report, ReportWall } from '../pages/report/report-content'
import { pictureBox, pictureKey, type ReportPicture } from '../pages/report/report-look'
import { drawBoreOnPaper, whitePaper } from './bore-on-paper'

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
  const paper = whitePaper(pictureBox, ratio)
  if (!grid || !paper) return { kind: 'none' }
  const { canvas, pen } = paper
  const wall = { bore, finding, grid, exaggeration }
  const drawn = await drawBoreOnPaper(pen, { x: 0, y: 0, ...pictureBox }, ratio, wall)
  if (!drawn) return { kind: 'none' }
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'))
  if (!blob) return { kind: 'none' }
  return { kind: 'drawn', url: URL.createObjectURL(blob), pixelsPerMm: drawn.pixelsPerMm }
}
