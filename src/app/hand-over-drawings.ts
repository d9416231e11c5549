import { text } from '../formats/html-blocks'
import { element, type HtmlNode } from '../formats/html-text'
import { hoursCoursesOf } from '../job/hours-courses-of'
import type { Job } from '../job/schema'
import type { ChartToSave } from '../pages/bench/chart-to-save'
import { courseAt } from '../pages/bench/course-at'
import { handOverWords } from '../words/hand-over-words'
import { hoursSentences } from '../words/hours'
import { degrees, depth, placeText, plain } from '../words/numbers'
import { profileSentences } from '../words/profile'
import { sectionSentences } from '../words/section'
import { words } from '../words/words'
import { type DrawnHours, drawnApart, sizes } from './drawn-apart'
import type { ShownWall, ToldBore } from './hand-over-bores'
import { keptDrawing } from './kept-drawing'

/**
 * The flat views of a bore as figures: the wall unrolled, section and profile where it is widest, and its sizes over
 * the hours. `number`: of the bore among those on the page.
 */
export function drawingsOf(job: Job, told: ToldBore, number: number): readonly HtmlNode[] {
  const { wall, finding, bore } = told
  if (!wall) return []
  const place = finding.largest ?? { depthMm: 0, axisDegrees: 0 }
  const hours = hoursOf(job, told)
  const chosen = { ...place, axis: { axisDegrees: place.axisDegrees, angleDegrees: place.axisDegrees } }
  return viewsOf(told, wall, hours).flatMap(([chart, caption]) => {
    const { mapGrid: grid, exaggeration } = wall
    const node = drawnApart({ job, bore, finding, grid, exaggeration, chart: { chart, ...chosen }, hours })
    if (!node) return []
    const { width, height } = sizes[chart]
    const svg: HtmlNode = {
      ...keptDrawing(node, `${chart}-${number}`),
      attributes: { viewBox: `0 0 ${width} ${height}`, role: 'img', 'aria-label': caption },
    }
    return [element('figure', { class: `drawing ${chart}` }, svg, text('figcaption', caption))]
  })
}

type View = readonly [chart: ChartToSave['chart'], caption: string]

/** Which views there are of a bore, each with what is said below it. */
function viewsOf(
  { finding, bore }: ToldBore,
  wall: ShownWall,
  hours: DrawnHours | undefined,
): readonly View[] {
  const said = handOverWords.drawings
  const { savedChart } = words
  const { largest: place } = finding
  const factor = words.picture.exaggerationIs(plain(wall.exaggeration, wall.exaggeration < 10 ? 1 : 0))
  const captions: readonly (readonly [View[0], readonly string[]])[] = [
    ['map', [said.map, savedChart.mapMarks]],
    ...(place
      ? ([
          [
            'section',
            [said.section(depth(place.depthMm), factor), ...sectionSentences(finding, place.depthMm)],
          ],
          [
            'profile',
            [said.profile(degrees(place.axisDegrees)), ...profileSentences(finding, bore, place.axisDegrees)],
          ],
        ] as const)
      : []),
    ...(hours
      ? ([
          [
            'hours',
            [
              `${words.hours.title(placeText(hours.course.place))}.`,
              ...hoursSentences(hours.course, hours.courses),
            ],
          ],
        ] as const)
      : []),
  ]
  return captions.map(([chart, sentences]) => [chart, sentences.join(' ')])
}

/** The station that comes to its limit first, where any is on its way there. */
function hoursOf(job: Job, { bore }: ToldBore): DrawnHours | undefined {
  const courses = hoursCoursesOf(job, bore.id)
  const course = typeof courses === 'string' ? undefined : courseAt(courses, undefined)
  return course && typeof courses !== 'string' ? { courses, course } : undefined
}
