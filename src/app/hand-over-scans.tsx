import { UnrolledMap } from '../charts/UnrolledMap'
import { fitScan } from '../core/scan/fit-scan'
import type { InspectedScan } from '../core/scan/inspected-scan'
import { drawnLengthOfScan } from '../core/surface/drawn-length'
import { scanGridOf } from '../core/surface/scan-grid'
import { text } from '../formats/html-blocks'
import { element, type HtmlNode } from '../formats/html-text'
import type { Job } from '../job/schema'
import { findingOf, surveyOf } from '../job/selectors'
import { nearDiameterOf, scanFormOptions } from '../job/shown-scan'
import { wallPaint } from '../scene/wall-palette'
import { handOverWords } from '../words/hand-over-words'
import { scanMarkWords } from '../words/scan-mark-words'
import { scanName } from '../words/scans'
import { lookedAtApart, sizes } from './drawn-apart'
import { drawnNode } from './drawn-node'
import { keptDrawing } from './kept-drawing'

/** Depths that are written beside a scan, of which it may have hundreds. */
const depthsWritten = 8

/** A scan of a bore, unrolled. */
export interface ScanDrawing {
  readonly boreId: string
  readonly drawing: HtmlNode
}

/** Each scan unrolled, less its smooth form, with its marks by the numbers that the list of them has. */
export async function scanDrawings(
  job: Job,
  scans: readonly InspectedScan[],
): Promise<readonly ScanDrawing[]> {
  const drawings: ScanDrawing[] = []
  for (const [number, scan] of scans.entries()) {
    const drawn = scanDrawn(job, scan)
    if (!drawn) continue
    const title = scanMarkWords.inScan(scan.bore.name, scanName(scan.scan, scan.index))
    const caption = `${title}. ${handOverWords.drawings.scan}`
    const { width, height } = sizes.map
    const node = keptDrawing(drawn.node, `scan-${number}`)
    const svg: HtmlNode = {
      ...withPicture(node, await asWebp(drawn.picture)),
      attributes: { viewBox: `0 0 ${width} ${height}`, role: 'img', 'aria-label': caption },
    }
    const drawing = element('figure', { class: 'drawing map' }, svg, text('figcaption', caption))
    drawings.push({ boreId: scan.bore.id, drawing })
  }
  return drawings
}

function scanDrawn(job: Job, { bore, scan, marks }: InspectedScan) {
  const survey = surveyOf(bore)
  const finding = survey && findingOf(job, bore.id, survey.id)
  if (!marks || !survey || !finding) return undefined
  const { radii, found } = marks
  const options = scanFormOptions(job, scan, nearDiameterOf(job, bore, survey))
  const { nearDiameterMm: middleMm } = options
  const lengthMm = drawnLengthOfScan(bore, finding.drawnLengthMm, radii.depthsMm)
  const grid = scanGridOf(radii, fitScan(radii, options), {
    middleMm,
    lengthMm,
    belts: bore.belts,
    isLocal: true,
  })
  const every = Math.ceil(radii.depthsMm.length / depthsWritten)
  return lookedAtApart(
    <UnrolledMap
      grid={grid}
      paint={wallPaint(grid, undefined, 'light')}
      lengthMm={lengthMm}
      levelsMm={[...radii.depthsMm].filter((_, index) => index % every === 0)}
      ports={bore.ports}
      stations={[]}
      surface={[]}
      scanMarks={found.marks}
      pair={undefined}
      pointed={undefined}
      onPoint={() => undefined}
      isScan
      {...sizes.map}
    />,
    (drawing) => ({
      node: drawnNode(drawing),
      picture: drawing.querySelector('image')?.getAttribute('href') ?? undefined,
    }),
  )
}

/** A picture of colours in fewer bytes; as it is where the browser writes no WebP. */
async function asWebp(address: string | undefined): Promise<string | undefined> {
  if (address === undefined) return undefined
  const picture = new Image()
  picture.src = address
  await picture.decode()
  const canvas = document.createElement('canvas')
  canvas.width = picture.naturalWidth
  canvas.height = picture.naturalHeight
  canvas.getContext('2d')?.drawImage(picture, 0, 0)
  return canvas.toDataURL('image/webp', 0.8)
}

/** The drawing with its picture in its place; without one, without that place. */
function withPicture(node: HtmlNode, href: string | undefined): HtmlNode {
  const children = node.children.flatMap((child): (HtmlNode | string)[] => {
    if (typeof child === 'string') return [child]
    if (child.tag !== 'image') return [withPicture(child, href)]
    if (href === undefined) return []
    const { x = 0, y = 0, width = 0, height = 0 } = child.attributes
    return [element('image', { x, y, width, height, preserveAspectRatio: 'none', href })]
  })
  return { ...node, children }
}
