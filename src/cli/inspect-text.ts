import type { BoreFinding, Findings, StationFinding } from '../core/findings'
import type { Bore } from '../core/measured'
import { type Block, type Entry, layOut } from '../formats/plain-text'
import type { Job } from '../job/schema'
import { cautions, findingRows, markText, noteTexts, type Row } from '../words/findings'
import { degrees, depth, sizeWithDoubt } from '../words/numbers'
import {
  aboutSentence,
  leanSentence,
  provisionalSentence,
  settleSentence,
  sureSentence,
  verdictSentence,
} from '../words/verdict'
import { words } from '../words/words'

/** The findings of a job as a page of text, at most 78 columns wide. */
export function inspectText(job: Job, findings: Findings): string {
  const said = words.report
  const name = job.name.trim() === '' ? said.untitled : job.name
  return layOut([
    { kind: 'title', text: said.title(name) },
    ...(job.invented ? [paragraph(said.invented)] : []),
    ...(job.machine ? [paragraph(said.machine(job.machine))] : []),
    ...findings.bores.flatMap((finding) => boreBlocks(job, findings, finding)),
    ...cautionBlocks(job, findings),
  ])
}

function boreBlocks(job: Job, findings: Findings, finding: BoreFinding): Block[] {
  const said = words.report
  const comparison = finding.role === 'for-comparison'
  const notes = noteTexts(finding)
  const rows = findingRows(finding, findings)
  return [
    { kind: 'heading', text: comparison ? said.comparison(finding.boreName) : said.bore(finding.boreName) },
    paragraph(verdictSentence(finding)),
    ...paragraphs(
      leanSentence(finding),
      settleSentence(finding),
      sureSentence(finding),
      provisionalSentence(finding),
      aboutSentence(finding),
    ),
    ...stationTable(job, finding),
    ...(rows.length > 0
      ? ([
          { kind: 'subheading', text: words.findings.title },
          { kind: 'entries', entries: rows.map(entryOf) },
        ] as const)
      : []),
    ...(notes.length > 0
      ? ([
          { kind: 'subheading', text: words.notes.title },
          { kind: 'list', items: notes },
        ] as const)
      : []),
  ]
}

function stationTable(job: Job, finding: BoreFinding): Block[] {
  const survey = boreOf(job, finding).surveys.find(({ id }) => id === finding.surveyId)
  if (!survey || finding.stations.length === 0) return [paragraph(words.report.noStations)]
  const axes = [...survey.axesDegrees].sort((a, b) => a - b)
  const levels = [...survey.levelsMm].sort((a, b) => a - b)
  const byPlace = new Map(finding.stations.map((s) => [`${s.depthMm} ${s.axisDegrees}`, s]))
  const comparison = finding.role === 'for-comparison'
  return [
    { kind: 'subheading', text: words.report.table },
    {
      kind: 'table',
      head: [words.report.depthHead, ...axes.map(degrees)],
      rows: levels.map((level) => [
        depth(level),
        ...axes.map((axis) => cell(byPlace.get(`${level} ${axis}`), comparison)),
      ]),
    },
  ]
}

function cell(station: StationFinding | undefined, comparison: boolean): string {
  if (!station) return words.report.notMeasured
  const figure = sizeWithDoubt(station.diameterMm, station.expandedMm)
  return comparison && station.counted ? figure : `${figure}\n${markText(station)}`
}

function entryOf(row: Row): Entry {
  const mark = row.verdictText === undefined ? '' : `   ${row.verdictText}`
  if (row.rank === 'minor') return { left: row.name, right: `${row.figure}${mark}`, under: [], indent: 4 }
  const under = [row.placeText ?? '', row.detail].filter((text) => text !== '')
  return { left: row.name, right: `${row.figure}${mark}`, under }
}

/** Cautions hold for the whole job; what only one kind of wall needs is said once. */
function cautionBlocks(job: Job, findings: Findings): Block[] {
  const items = [...new Set(findings.bores.flatMap((finding) => cautions(finding, boreOf(job, finding))))]
  return items.length === 0
    ? []
    : [
        { kind: 'heading', text: words.cautions.title },
        { kind: 'list', items },
      ]
}

function boreOf(job: Job, finding: BoreFinding): Bore {
  const bore = job.bores.find(({ id }) => id === finding.boreId)
  if (!bore) throw new Error(`inspectText: no bore ${finding.boreId} in the job`)
  return bore
}

function paragraph(text: string): Block {
  return { kind: 'paragraph', text }
}

function paragraphs(...texts: readonly (string | undefined)[]): Block[] {
  return texts.flatMap((text) => (text === undefined ? [] : [paragraph(text)]))
}
