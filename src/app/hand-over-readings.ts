import type { Bore, Reading, Survey } from '../core/measured'
import { tableOf, text } from '../formats/html-blocks'
import { element, type HtmlNode } from '../formats/html-text'
import { handOverWords } from '../words/hand-over-words'
import { inShownUnit, lengthUnit, mmPerInch } from '../words/length-unit'
import { degrees, depth, plain } from '../words/numbers'
import { boreFacts, type ReportedJob } from '../words/paper-facts'
import { words } from '../words/words'

/** As an instrument shows, in mm or µm: a ten-thousandth of an inch is 2.54 µm. */
const mostDecimals = { mm: 5, inch: 7 }

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
  const decimals = decimalsOf(survey)
  const isDial = survey.readings.some(({ dialUm }) => dialUm !== undefined)
  return [
    text('h3', name),
    element(
      'dl',
      { class: 'facts' },
      ...boreFacts(job, bore, survey).flatMap(({ label, value }) => [text('dt', label), text('dd', value)]),
    ),
    text('p', `${inShownUnit(isDial ? said.dial : said.sizes)}.`, 'soft'),
    tableOf(
      [said.depth, ...axes.map(degrees)],
      levels.map((level) => [
        depth(level),
        ...axes.map((axis) => figures(byPlace.get(`${level} ${axis}`), decimals)),
      ]),
    ),
  ]
}

function figures(reading: Reading | undefined, decimals: number): string {
  const written = (reading ? valuesOf(reading) : []).map((value) => withDecimals(value, decimals))
  return written.length === 0 ? handOverWords.readings.none : written.join('\n')
}

/** In the unit that lengths are written in. */
function valuesOf({ sizesMm, dialUm = [] }: Reading): readonly number[] {
  const values = sizesMm ?? dialUm
  if (lengthUnit() === 'mm') return values
  return values.map((value) => value / (sizesMm ? mmPerInch : mmPerInch * 1000))
}

/** As many decimals for all as the one that was written down most finely has. */
function decimalsOf({ readings }: Survey): number {
  const all = readings.flatMap(valuesOf)
  return Math.max(0, ...all.map((value) => fractionOf(plain(value, mostDecimals[lengthUnit()])).length))
}

function withDecimals(value: number, decimals: number): string {
  const text = plain(value, mostDecimals[lengthUnit()])
  const missing = decimals - fractionOf(text).length
  const mark = missing === decimals && decimals > 0 ? words.language.decimalMark : ''
  return `${text}${mark}${'0'.repeat(missing)}`
}

function fractionOf(text: string): string {
  return text.split(words.language.decimalMark)[1] ?? ''
}
