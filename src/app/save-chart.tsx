import { type SvgNode, svgText } from '../charts/svg-file'
import type { Place } from '../core/findings'
import { isoStep } from '../core/surface/exaggeration'
import { wrap } from '../formats/plain-text'
import { hoursCoursesOf } from '../job/hours-courses-of'
import { jobStore } from '../job/job-store'
import type { Job } from '../job/schema'
import { exaggerationOfJob, findingOf, gridOfBore, surveyOf } from '../job/selectors'
import type { ChartToSave } from '../pages/bench/chart-to-save'
import { courseAt } from '../pages/bench/course-at'
import { session } from '../session/session'
import { boreHeading, surveySentence } from '../words/findings-page'
import { hoursSentences } from '../words/hours'
import { inShownUnit, roundStepUm } from '../words/length-unit'
import { degrees, depth, inRoundMicrons, placeText, plain } from '../words/numbers'
import { profileSentences } from '../words/profile'
import { sectionSentences } from '../words/section'
import { words } from '../words/words'
import { download } from './download'
import { type DrawnHours, type DrawnView, drawnApart, letter, sizes } from './drawn-apart'
import { fileName } from './file-name'
import { paperHand } from './send-hand'

const edge = 24

/** Saves a flat view as an .svg file by itself, on white paper with its caption; its name, or undefined if it failed. */
export async function saveChart(chart: ChartToSave): Promise<string | undefined> {
  const drawn = drawnOf(chart)
  const picture = drawn && drawnApart(drawn)
  if (!drawn || !picture) return undefined
  const text = svgText(onPaper(drawn, picture))
  const { charts, file } = { charts: words.savedChart, file: words.file }
  const name = fileName(
    `${drawn.job.name} ${words.report.bore(drawn.bore.name)} ${charts.fileParts[chart.chart]}`,
    new Date(),
    file.defaultName,
    'svg',
  )
  download(new File([text], name, { type: 'image/svg+xml' }))
  return name
}

function drawnOf(chart: ChartToSave): DrawnView | undefined {
  const { job } = jobStore.getState()
  const { boreId, surveyId, exaggeration = exaggerationOfJob(job) } = session.getState()
  const bore = job.bores.find(({ id }) => id === boreId) ?? job.bores[0]
  const finding = bore && findingOf(job, bore.id, surveyOf(bore, surveyId)?.id)
  const grid = bore && gridOfBore(job, bore.id, surveyId)
  if (!bore || !finding || !grid || exaggeration === undefined) return undefined
  const hours = chart.chart === 'hours' ? hoursOf(job, bore.id, chart.station) : undefined
  if (chart.chart === 'hours' && !hours) return undefined
  return { job, bore, finding, grid, exaggeration, chart, hours }
}

function hoursOf(job: Job, boreId: string, station: Place | undefined): DrawnHours | undefined {
  const courses = hoursCoursesOf(job, boreId)
  const course = typeof courses === 'string' ? undefined : courseAt(courses, station)
  return course && typeof courses !== 'string' ? { courses, course } : undefined
}

function onPaper(drawn: DrawnView, picture: SvgNode): SvgNode {
  const { job, bore, finding, chart } = drawn
  const { width, height } = sizes[chart.chart]
  const name = job.name.trim() === '' ? words.app.untitled : job.name
  const columns = Math.floor(width / letter)
  const head = [
    { text: name, px: 17, weight: 600 },
    ...[
      ...(job.invented ? [words.report.invented] : []),
      `${boreHeading(bore, finding)}. ${surveySentence(surveyOf(bore, finding.surveyId))}`,
    ].map((text) => ({ text, px: 13, weight: 400 })),
  ].flatMap(({ text, ...type }) =>
    wrap(text, (columns * 13) / type.px).map((line) => ({ text: line, ...type })),
  )
  const foot = footOf(drawn).flatMap((text) => wrap(text, columns))
  const top = edge + head.length * 18 + 10
  const below = top + height + 20
  const total = below + foot.length * 16 + edge - 8
  const line = (text: string, y: number, px: number, weight: number, colour: string): SvgNode => ({
    tag: 'text',
    attributes: { x: edge, y, 'font-size': px, 'font-weight': weight, fill: colour },
    children: [text],
  })
  return {
    tag: 'svg',
    attributes: {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${width + 2 * edge} ${total}`,
      width: width + 2 * edge,
      height: total,
      'font-family': paperHand.fontFamily.replaceAll('"', "'"),
    },
    children: [
      { tag: 'title', attributes: {}, children: [`${name}: ${titleOf(drawn)}`] },
      { tag: 'desc', attributes: {}, children: [[...head.map(({ text }) => text), ...foot].join(' ')] },
      { tag: 'rect', attributes: { width: '100%', height: '100%', fill: paperHand.paper }, children: [] },
      ...head.map(({ text, px, weight }, i) => line(text, edge + 10 + i * 18, px, weight, paperHand.ink)),
      {
        tag: 'g',
        attributes: { transform: `translate(${edge},${top})` },
        children: picture.children,
      },
      ...foot.map((text, i) => line(text, below + i * 16, 12, 400, paperHand.softInk)),
    ],
  }
}

function titleOf({ exaggeration, chart, hours }: DrawnView): string {
  const said = words.savedChart
  if (hours) return `${words.hours.title(placeText(hours.course.place))}. ${inShownUnit(said.hours)}`
  const factor = words.picture.exaggerationIs(plain(exaggeration, exaggeration < 10 ? 1 : 0))
  if (chart.chart === 'map') return said.map
  if (chart.chart === 'section') return said.drawn(words.section.title(depth(chart.depthMm)), factor)
  return `${words.profile.title(degrees(chart.axis.axisDegrees))}. ${inShownUnit(said.across)}`
}

function footOf(drawn: DrawnView): string[] {
  const { bore, finding, grid, chart, hours } = drawn
  const said = words.savedChart
  const least = grid.deviationsUm.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY)
  const most = grid.deviationsUm.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY)
  const sentences = {
    map: [said.lines(inRoundMicrons(isoStep(most - least, roundStepUm()) / 1000))],
    section: sectionSentences(finding, chart.depthMm),
    profile: profileSentences(finding, bore, chart.axis.axisDegrees),
    hours: hours ? hoursSentences(hours.course, hours.courses) : [],
  }[chart.chart]
  return [
    titleOf(drawn),
    sentences.join(' '),
    ...(hours ? [] : [chart.chart === 'map' ? said.mapMarks : said.marks]),
    words.charts.between,
    words.cautions.manual,
    words.sentPicture.madeWith(words.app.name),
  ]
}
