import { text } from '../formats/html-blocks'
import { element, type HtmlNode } from '../formats/html-text'
import type { Job } from '../job/schema'
import type { ChartToSave } from '../pages/bench/chart-to-save'
import { handOverWords } from '../words/hand-over-words'
import { degrees, depth, plain } from '../words/numbers'
import { profileSentences } from '../words/profile'
import { sectionSentences } from '../words/section'
import { words } from '../words/words'
import { drawnApart, sizes } from './drawn-apart'
import type { ToldBore } from './hand-over-bores'
import { shortPath } from './short-path'

/**
 * The flat views of a bore as figures: the wall unrolled, and section and profile where it is widest. `number`: of the
 * bore among those on the page.
 */
export function drawingsOf(job: Job, told: ToldBore, number: number): readonly HtmlNode[] {
  const { wall, finding, bore } = told
  if (!wall) return []
  const said = handOverWords.drawings
  const place = finding.largest
  const factor = words.picture.exaggerationIs(plain(wall.exaggeration, wall.exaggeration < 10 ? 1 : 0))
  const axis = { axisDegrees: place?.axisDegrees ?? 0, angleDegrees: place?.axisDegrees ?? 0 }
  const drawn = (chart: ChartToSave['chart'], caption: readonly string[]) =>
    drawing(job, told, { chart, depthMm: place?.depthMm ?? 0, axis }, caption.join(' '), number)
  return [
    ...drawn('map', [said.map, words.savedChart.mapMarks]),
    ...(place
      ? [
          ...drawn('section', [
            said.section(depth(place.depthMm), factor),
            ...sectionSentences(finding, place.depthMm),
          ]),
          ...drawn('profile', [
            said.profile(degrees(place.axisDegrees)),
            ...profileSentences(finding, bore, place.axisDegrees),
          ]),
        ]
      : []),
  ]
}

function drawing(
  job: Job,
  { wall, finding, bore }: ToldBore,
  chart: ChartToSave,
  caption: string,
  number: number,
): HtmlNode[] {
  if (!wall) return []
  const { mapGrid: grid, exaggeration } = wall
  const node = drawnApart({ job, bore, finding, grid, exaggeration, chart, hours: undefined })
  if (!node) return []
  const { width, height } = sizes[chart.chart]
  const svg: HtmlNode = {
    ...keptShort(node, `${chart.chart}-${number}`),
    attributes: { viewBox: `0 0 ${width} ${height}`, role: 'img', 'aria-label': caption },
  }
  return [element('figure', { class: `drawing ${chart.chart}` }, svg, text('figcaption', caption))]
}

/** A drawing in few letters, whose clips have names of their own on a page with others. */
function keptShort(node: HtmlNode, name: string): HtmlNode {
  const { id, d, 'clip-path': clip } = node.attributes
  return {
    ...node,
    attributes: {
      ...node.attributes,
      ...(d === undefined ? {} : { d: shortPath(String(d)) }),
      ...(id === undefined ? {} : { id: `${name}-${id}` }),
      ...(clip === undefined ? {} : { 'clip-path': String(clip).replace('url(#', `url(#${name}-`) }),
    },
    children: node.children.map((child) => (typeof child === 'string' ? child : keptShort(child, name))),
  }
}
