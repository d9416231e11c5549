import type { BoreFinding, Findings, StationFinding } from '../core/findings'
import { type CrossedStudyFinding, crossedStudies } from '../core/gauge/crossed-study'
import type { Bore, Measured, Survey } from '../core/measured'
import { budgetAtLargest } from '../core/uncertainty/budget'
import { type BlockFigure, blockRows, blockSentence } from './block'
import { blunderText } from './blunders'
import { budgetRows, improvementTexts } from './budget'
import { studyHeading, studyReadText, studyRows, studySentences } from './crossed-study'
import { dayText } from './day-text'
import { blockDecisionPassages, decisionPassages } from './decision-passages'
import { cautions, findingRows, markText, noteTexts, type Row, temperatureSentence } from './findings'
import { checkHeading, checkSentences } from './gauge-check'
import { growthRows } from './growth-rows'
import { differenceUnitText, inShownUnit } from './length-unit'
import { degrees, depth, placeText, plain, plusMinusMicrons, sizeWithDoubt } from './numbers'
import { oversizeSentence } from './oversize'
import type { Passage, PassageEntry } from './passage'
import { type PistonRows, pistonRows } from './piston-rows'
import { pistonWords } from './piston-words'
import { studyWords } from './study-words'
import { surfaceLines, surfaceSentence } from './surface'
import { effectSentences } from './temperature'
import {
  aboutSentence,
  leanSentence,
  provisionalSentence,
  settleSentence,
  sureSentence,
  verdictSentence,
} from './verdict'
import { words } from './words'

export type { Passage, PassageEntry } from './passage'

/** What was measured, with what the job is called. */
export interface NamedJob extends Measured {
  readonly name: string
  readonly machine?: string
  readonly note?: string
  readonly invented?: boolean
}

/** The findings of a job as passages: the page that `inspect` prints and that is sent. */
export function findingsPage(job: NamedJob, findings: Findings): Passage[] {
  const said = words.report
  const name = job.name.trim() === '' ? said.untitled : job.name
  const pistons = pistonRows(job, findings)
  return [
    { kind: 'title', text: said.title(name) },
    ...(job.invented ? [paragraph(said.invented)] : []),
    ...(job.machine ? [paragraph(said.machine(job.machine))] : []),
    ...noteParagraphs(job.note ?? ''),
    ...blockPassages(findings),
    ...blockDecisionPassages(job, findings),
    ...enginePassages(pistons),
    ...findings.bores.flatMap((finding) => borePassages(job, findings, finding, pistons)),
    ...findings.earlier.flatMap((finding) => borePassages(job, findings, finding, pistons)),
    ...checkPassages(job, findings),
    ...studyPassages(job),
    ...cautionPassages(job, findings),
  ]
}

/** The note line by line: it may hold what no figure shows, like a score or rust. */
function noteParagraphs(note: string): Passage[] {
  const lines = note.split('\n').filter((line) => line.trim() !== '')
  return lines.map((line, index) => paragraph(index === 0 ? words.report.note(line) : line))
}

/** The bores of the engine beside each other, where there are several. */
function blockPassages(findings: Findings): Passage[] {
  const sentence = blockSentence(findings)
  if (sentence === undefined) return []
  const { heads, none, title } = words.block
  const cell = (figure: BlockFigure | undefined) => (figure ? `${figure.figure}\n${figure.doubt}` : none)
  return [
    { kind: 'heading', text: title },
    paragraph(sentence),
    {
      kind: 'table',
      head: [heads.bore, heads.largest, heads.smallest, heads.ovality, heads.taper, heads.standing],
      rows: blockRows(findings).map((row) => [
        row.name,
        ...[row.largest, row.smallest, row.ovality, row.taper].map(cell),
        row.standingText,
      ]),
    },
  ]
}

/** Which piston goes in which bore and what they would be bored to, where either can be said. */
function enginePassages({ ofEngine }: PistonRows): Passage[] {
  if (ofEngine.length === 0) return []
  return [
    { kind: 'heading', text: pistonWords.engineTitle },
    { kind: 'entries', entries: ofEngine.map(entryOf) },
  ]
}

function borePassages(
  job: NamedJob,
  findings: Findings,
  finding: BoreFinding,
  pistons: PistonRows,
): Passage[] {
  const notes = noteTexts(finding)
  const rows = [
    ...findingRows(finding, findings),
    ...growthRows(job, findings, finding),
    ...pistons.ofBore(finding),
  ]
  return [
    { kind: 'heading', text: boreHeading(boreOf(job, finding), finding) },
    paragraph(surveySentence(surveyOf(job, finding))),
    ...paragraphs(oversizeSentence(boreOf(job, finding))),
    ...(finding.temperature ? [paragraph(effectSentences(finding.temperature))] : []),
    ...(finding.blunders.length > 0
      ? ([
          { kind: 'subheading', text: words.questions.title },
          { kind: 'list', items: finding.blunders.map(blunderText) },
        ] as const)
      : []),
    paragraph(verdictSentence(finding)),
    ...paragraphs(
      leanSentence(finding),
      settleSentence(finding),
      temperatureSentence(finding),
      sureSentence(finding),
      provisionalSentence(finding),
      aboutSentence(finding),
      surfaceSentence(finding),
    ),
    ...decisionPassages(job, findings, finding),
    ...stationTable(job, finding),
    ...(rows.length > 0
      ? ([
          { kind: 'subheading', text: words.findings.title },
          { kind: 'entries', entries: rows.map(entryOf) },
        ] as const)
      : []),
    ...(finding.surface.length > 0
      ? ([
          { kind: 'subheading', text: words.surface.title },
          { kind: 'list', items: surfaceLines(finding) },
        ] as const)
      : []),
    ...budgetPassages(job, findings, finding),
    ...(notes.length > 0
      ? ([
          { kind: 'subheading', text: words.notes.title },
          { kind: 'list', items: notes },
        ] as const)
      : []),
  ]
}

/** What the doubt of the largest diameter is made of, for the bores that a verdict is about. */
function budgetPassages(job: NamedJob, { bores }: Findings, finding: BoreFinding): Passage[] {
  const largest =
    finding.role === 'of-this-engine' && bores.includes(finding) ? budgetAtLargest(job, finding) : undefined
  if (!largest) return []
  const { station, budget } = largest
  const { title, of } = words.budget
  return [
    { kind: 'subheading', text: title },
    paragraph(of(placeText(station), plusMinusMicrons(budget.expandedMm))),
    {
      kind: 'entries',
      entries: budgetRows(budget).map(({ name, amount, shareText, detail }) => ({
        left: name,
        right: `${amount} ${differenceUnitText()}   ${shareText}`,
        under: [detail],
      })),
    },
    { kind: 'list', items: improvementTexts(budget) },
  ]
}

/** Which bore a finding is about, and which of its surveys where it has several. */
export function boreHeading({ surveys }: Pick<Bore, 'surveys'>, finding: BoreFinding): string {
  const said = words.report
  const name =
    finding.role === 'for-comparison' ? said.comparison(finding.boreName) : said.bore(finding.boreName)
  const number = surveys.findIndex(({ id }) => id === finding.surveyId) + 1
  return surveys.length > 1 ? said.surveyOf(name, number, surveys.length) : name
}

/** When a survey was made and how long the engine had run, as far as that was recorded. */
export function surveySentence(survey: Pick<Survey, 'date' | 'hoursRun'> | undefined): string {
  const { measured } = words.report
  const on = survey?.date === undefined ? measured.undated : measured.on(dayText(survey.date))
  return survey?.hoursRun === undefined ? on : `${on} ${measured.hours(plain(survey.hoursRun, 1))}`
}

function stationTable(job: NamedJob, finding: BoreFinding): Passage[] {
  const survey = surveyOf(job, finding)
  if (!survey || finding.stations.length === 0) return [paragraph(words.report.noStations)]
  const axes = [...survey.axesDegrees].sort((a, b) => a - b)
  const levels = [...survey.levelsMm].sort((a, b) => a - b)
  const byPlace = new Map(finding.stations.map((s) => [`${s.depthMm} ${s.axisDegrees}`, s]))
  const comparison = finding.role === 'for-comparison'
  return [
    { kind: 'subheading', text: inShownUnit(words.report.table) },
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

function entryOf(row: Row): PassageEntry {
  const mark = row.verdictText === undefined ? '' : `   ${row.verdictText}`
  if (row.rank === 'minor') return { left: row.name, right: `${row.figure}${mark}`, under: [], indent: 4 }
  const under = [row.placeText ?? '', row.detail].filter((text) => text !== '')
  return { left: row.name, right: `${row.figure}${mark}`, under }
}

/** What the checks of the gauges showed, where there were any. */
function checkPassages(job: NamedJob, { gaugeChecks }: Findings): Passage[] {
  if (gaugeChecks.length === 0) return []
  return [
    { kind: 'heading', text: words.gaugeCheck.heading },
    ...gaugeChecks.flatMap((check): Passage[] => [
      { kind: 'subheading', text: checkHeading(check, job) },
      paragraph(checkSentences(check).join(' ')),
    ]),
  ]
}

/** What the crossed studies of the gauges showed, where there were any. */
function studyPassages(job: NamedJob): Passage[] {
  const studies = crossedStudies(job)
  if (studies.length === 0) return []
  return [
    { kind: 'heading', text: studyWords.heading },
    ...studies.flatMap((study): Passage[] => [
      { kind: 'subheading', text: studyHeading(study, job) },
      paragraph(studyReadText(study)),
      ...studyEntries(study),
      ...studySentences(study).map(paragraph),
    ]),
  ]
}

function studyEntries(study: CrossedStudyFinding): Passage[] {
  const rows = studyRows(study)
  if (rows.length === 0) return []
  const entries = rows.map(({ name, amount, interval, share }) => ({
    left: name,
    right: `${amount}   ${share}`,
    under: [interval],
  }))
  return [{ kind: 'entries', entries }]
}

/** Cautions hold for the whole job; what only one kind of wall needs is said once. */
function cautionPassages(job: NamedJob, findings: Findings): Passage[] {
  const items = [...new Set(findings.bores.flatMap((finding) => cautions(finding, boreOf(job, finding))))]
  return items.length === 0
    ? []
    : [
        { kind: 'heading', text: words.cautions.title },
        { kind: 'list', items },
      ]
}

function boreOf(job: NamedJob, finding: BoreFinding): Bore {
  const bore = job.bores.find(({ id }) => id === finding.boreId)
  if (!bore) throw new Error(`findingsPage: no bore ${finding.boreId} in the job`)
  return bore
}

function surveyOf(job: NamedJob, finding: BoreFinding): Survey | undefined {
  return boreOf(job, finding).surveys.find(({ id }) => id === finding.surveyId)
}

function paragraph(text: string): Passage {
  return { kind: 'paragraph', text }
}

function paragraphs(...texts: readonly (string | undefined)[]): Passage[] {
  return texts.flatMap((text) => (text === undefined ? [] : [paragraph(text)]))
}
