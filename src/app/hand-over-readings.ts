import type { Bore, Measured, Reading, Survey } from '../core/measured'
import { tableOf, text } from '../formats/html-blocks'
import { element, type HtmlNode } from '../formats/html-text'
import { surveySentence } from '../words/findings-page'
import { handOverWords } from '../words/hand-over-words'
import { degrees, depth, plain } from '../words/numbers'
import { words } from '../words/words'

/** As many as an instrument shows: ten-thousandths of an inch are 2.54 µm. */
const decimals = { size: 5, dial: 2 }

/** Every reading of every survey as it was written down, a table for each. */
export function readingsPart({ bores }: Measured): HtmlNode {
  const said = handOverWords
  const tables = bores.flatMap((bore) =>
    bore.surveys.filter(({ readings }) => readings.length > 0).flatMap((survey) => surveyPart(bore, survey)),
  )
  return element(
    'section',
    { class: 'readings' },
    text('h2', said.parts.readings),
    text('p', tables.length === 0 ? words.report.noStations : said.readings.lead, 'soft'),
    ...tables,
  )
}

function surveyPart(bore: Bore, survey: Survey): HtmlNode[] {
  const said = handOverWords.readings
  const { report } = words
  const name = bore.role === 'for-comparison' ? report.comparison(bore.name) : report.bore(bore.name)
  const axes = [...survey.axesDegrees].sort((a, b) => a - b)
  const levels = [...survey.levelsMm].sort((a, b) => a - b)
  const byPlace = new Map(survey.readings.map((one) => [`${one.depthMm} ${one.axisDegrees}`, one]))
  const isDial = survey.readings.some(({ dialUm }) => dialUm !== undefined)
  return [
    text('h3', name),
    text('p', `${surveySentence(survey)} ${isDial ? said.dial : said.sizes}.`, 'soft'),
    tableOf(
      [said.depth, ...axes.map(degrees)],
      levels.map((level) => [depth(level), ...axes.map((axis) => figures(byPlace.get(`${level} ${axis}`)))]),
    ),
  ]
}

function figures(reading: Reading | undefined): string {
  const { sizesMm, dialUm } = reading ?? {}
  const written = [
    ...(sizesMm ?? []).map((value) => plain(value, decimals.size)),
    ...(dialUm ?? []).map((value) => plain(value, decimals.dial)),
  ]
  return written.length === 0 ? handOverWords.readings.none : written.join('\n')
}
