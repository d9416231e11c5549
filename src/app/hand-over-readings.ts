import type { Bore, Marking, Reading, Survey } from '../core/measured'
import { tableOf, text } from '../formats/html-blocks'
import { element, type HtmlNode } from '../formats/html-text'
import { handOverWords } from '../words/hand-over-words'
import { inShownUnit, mmPerInch } from '../words/length-unit'
import { degrees, depth, plain } from '../words/numbers'
import { boreFacts, type ReportedJob } from '../words/paper-facts'
import { words } from '../words/words'

/** As an instrument shows, in mm or µm: a ten-thousandth of an inch is 2.54 µm. */
const mostDecimals = { mm: 5, inch: 5 }

/** Every reading of every survey as it was written down, a table for each. */
export function readingsPart(job: ReportedJob): HtmlNode {
  const said = handOverWords
  const tables = job.bores.flatMap((bore) =>
    bore.surveys
      .filter(({ readings }) => readings.length > 0)
      .flatMap((survey) => surveyPart(job, bore, survey)),
  )
  return element(
    'section',
    { class: 'readings' },
    text('h2', said.parts.readings),
    text('p', tables.length === 0 ? words.report.noStations : said.readings.lead, 'soft'),
    ...tables,
  )
}

function surveyPart(job: ReportedJob, bore: Bore, survey: Survey): HtmlNode[] {
  const said = handOverWords.readings
  const { report } = words
  const name = bore.role === 'for-comparison' ? report.comparison(bore.name) : report.bore(bore.name)
  const axes = [...survey.axesDegrees].sort((a, b) => a - b)
  const levels = [...survey.levelsMm].sort((a, b) => a - b)
  const byPlace = new Map(survey.readings.map((one) => [`${one.depthMm} ${one.axisDegrees}`, one]))
  const marking = markingOf(job, survey)
  const decimals = decimalsOf(survey, marking)
  const isDial = survey.readings.some(({ dialUm }) => dialUm !== undefined)
  return [
    text('h3', name),
    element(
      'dl',
      { class: 'facts' },
      ...boreFacts(job, bore, survey).flatMap(({ label, value }) => [text('dt', label), text('dd', value)]),
    ),
    text('p', `${inShownUnit(isDial ? said.dial : said.sizes, marking)}.`, 'soft'),
    tableOf(
      [said.depth, ...axes.map(degrees)],
      levels.map((level) => [
        depth(level),
        ...axes.map((axis) => figures(byPlace.get(`${level} ${axis}`), marking, decimals)),
      ]),
    ),
  ]
}

function figures(reading: Reading | undefined, marking: Marking, decimals: number): string {
  const values = reading ? valuesOf(reading, marking) : []
  const written = values.map((value) => withDecimals(value, marking, decimals))
  return written.length === 0 ? handOverWords.readings.none : written.join('\n')
}

/** The unit that the gauge is marked in, in which its readings were written down. */
function markingOf({ setUps, gauges }: ReportedJob, { setUpId }: Survey): Marking {
  const setUp = setUps.find(({ id }) => id === setUpId)
  return gauges.find(({ id }) => id === setUp?.gaugeId)?.markedIn ?? 'mm'
}

function valuesOf({ sizesMm, dialUm = [] }: Reading, marking: Marking): readonly number[] {
  const values = sizesMm ?? dialUm
  if (marking === 'mm') return values
  return values.map((value) => value / (sizesMm ? mmPerInch : mmPerInch * 1000))
}

/** As many decimals for all as the one that was written down most finely has. */
function decimalsOf({ readings }: Survey, marking: Marking): number {
  const all = readings.flatMap((reading) => valuesOf(reading, marking))
  return Math.max(0, ...all.map((value) => fractionOf(plain(value, mostDecimals[marking])).length))
}

function withDecimals(value: number, marking: Marking, decimals: number): string {
  const text = plain(value, mostDecimals[marking])
  const missing = decimals - fractionOf(text).length
  const mark = missing === decimals && decimals > 0 ? words.language.decimalMark : ''
  return `${text}${mark}${'0'.repeat(missing)}`
}

function fractionOf(text: string): string {
  return text.split(words.language.decimalMark)[1] ?? ''
}
