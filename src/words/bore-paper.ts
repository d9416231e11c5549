import type { BoreFinding, Findings, SurfaceFound } from '../core/findings'
import type { Bore, Photograph } from '../core/measured'
import { blunderText } from './blunders'
import { type DecisionTexts, decisionTexts, surenessTexts } from './decision'
import { decidedOf } from './decision-passages'
import { decisionWords } from './decision-words'
import { cautions, noteTexts, temperatureSentence } from './findings'
import { boreHeading } from './findings-page'
import { boreFacts, type Fact, type ReportedJob } from './paper-facts'
import { limitsLine } from './paper-limits'
import { paperRows } from './paper-rows'
import { type PaperTable, paperTable } from './paper-table'
import { paperWords } from './paper-words'
import type { PistonRows } from './piston-rows'
import type { Row } from './row'
import { surfaceLead, surfaceLines, surfaceSentence } from './surface'
import {
  aboutSentence,
  leanSentence,
  provisionalSentence,
  settleSentence,
  sureSentence,
  verdictSentence,
} from './verdict'
import { words } from './words'

/** Something of a section: a row of findings, a line in a list, a paragraph, or a surface finding. */
export type PaperItem =
  | { readonly kind: 'row'; readonly row: Row }
  | { readonly kind: 'bullet' | 'paragraph'; readonly text: string }
  | { readonly kind: 'surface'; readonly text: string; readonly photos: readonly Photograph[] }

/** A heading with what stands beneath it. */
export interface PaperSection {
  readonly id: string
  readonly title: string
  readonly items: readonly PaperItem[]
}

/** All texts and figures of the report on a bore: those of the findings and the decision on the bench. */
export interface BorePaper {
  readonly title: string
  readonly facts: readonly Fact[]
  readonly verdict: string
  readonly beside: readonly string[]
  /** Absent for a bore that none is made about. */
  readonly decision?: string
  readonly besideDecision: readonly string[]
  readonly table?: PaperTable
  readonly limits: string
  /** Before the table of stations, and after it. */
  readonly reasons: readonly PaperSection[]
  readonly sections: readonly PaperSection[]
}

/** What a report says of a bore by its latest survey. `withNote`: the note of the job too. */
export function borePaper(
  job: ReportedJob,
  findings: Findings,
  finding: BoreFinding,
  pistons: PistonRows,
  withNote = false,
): BorePaper {
  const bore = job.bores.find(({ id }) => id === finding.boreId)
  const survey = bore?.surveys.find(({ id }) => id === finding.surveyId)
  if (!bore || !survey) throw new Error(`borePaper: no survey ${finding.surveyId} in the job`)
  const decided = decidedOf(job, findings, finding)
  const texts = decided && decisionTexts(decided)
  const table = paperTable(finding, survey)
  return {
    title: boreHeading(bore, finding),
    facts: boreFacts(job, bore, survey),
    verdict: present(verdictSentence(finding), surfaceLead(finding)).join(' '),
    beside: present(
      leanSentence(finding),
      settleSentence(finding),
      temperatureSentence(finding),
      sureSentence(finding),
      provisionalSentence(finding),
    ),
    ...(texts ? { decision: texts.headline } : {}),
    besideDecision: [...(texts?.beneath ?? []), ...(decided ? surenessOf(decided) : [])],
    ...(table ? { table } : {}),
    limits: limitsLine(job.spec),
    reasons: [
      ...reasonSections(finding, texts),
      ...rowSections(job, findings, finding, pistons),
      ...surfaceSection(finding),
    ].filter(({ items }) => items.length > 0),
    sections: [
      section('unseen', paperWords.titles.unseen, bullets(unseenTexts(finding, bore))),
      section('cautions', paperWords.titles.cautions, bullets(cautionTexts(finding, bore, texts))),
      ...(withNote ? [noteSection(job)] : []),
    ].filter(({ items }) => items.length > 0),
  }
}

function surenessOf({ decision, sureness }: NonNullable<ReturnType<typeof decidedOf>>): string[] {
  return surenessTexts(decision, sureness)
}

function reasonSections({ blunders }: BoreFinding, texts: DecisionTexts | undefined): PaperSection[] {
  const { titles } = paperWords
  return [
    section('questions', titles.questions, bullets(blunders.map(blunderText))),
    section('why', decisionWords.reasonsTitle, bullets(texts?.reasons.map(({ text }) => text) ?? [])),
    section('how', titles.measure, bullets(texts?.how ?? [])),
    section('changes', decisionWords.changesTitle, bullets(texts?.changes ?? [])),
    section('hints', decisionWords.hintsTitle, bullets(texts?.hints ?? [])),
  ]
}

function rowSections(
  job: ReportedJob,
  findings: Findings,
  finding: BoreFinding,
  pistons: PistonRows,
): PaperSection[] {
  const rows = paperRows(job, findings, finding, pistons)
  return [
    section(
      'rows',
      words.findings.title,
      rows.map((row): PaperItem => ({ kind: 'row', row })),
    ),
  ]
}

function surfaceSection(finding: BoreFinding): PaperSection[] {
  const lines = surfaceLines(finding)
  const items = finding.surface.map(
    (found: SurfaceFound, index): PaperItem => ({
      kind: 'surface',
      text: lines[index] ?? '',
      photos: found.photos ?? [],
    }),
  )
  const sentence = surfaceSentence(finding)
  const lead: PaperItem[] = sentence === undefined ? [] : [{ kind: 'paragraph', text: sentence }]
  return [section('surface', paperWords.titles.surface, [...items, ...lead])]
}

/** What the method or the readings leave open; slips and definitions are for the bench. */
function unseenTexts(finding: BoreFinding, { scans = [] }: Bore): string[] {
  const notes = noteTexts({ ...finding, unseen: [], ovality: [], taper: [] })
  return [
    ...present(aboutSentence(finding)),
    ...notes,
    ...(scans.length > 0 ? [paperWords.scans(scans.length)] : []),
  ]
}

/**
 * Those of the decision, which name who has the last word, and those of the page that it leaves out; how to measure is
 * for the bench.
 */
function cautionTexts(finding: BoreFinding, bore: Bore, texts: DecisionTexts | undefined): string[] {
  const said = words.cautions
  const ofDecision = texts?.cautions ?? []
  const isSaid = (text: string) => text === said.warm || (text === said.manual && ofDecision.length > 0)
  return [...new Set([...ofDecision, ...cautions(finding, bore).filter((text) => !isSaid(text))])]
}

/** The note of a job, a paragraph for each of its lines; nothing without one. */
export function noteSection({ note = '' }: ReportedJob): PaperSection {
  const lines = note.split('\n').filter((line) => line.trim() !== '')
  return section(
    'note',
    paperWords.titles.note,
    lines.map((text): PaperItem => ({ kind: 'paragraph', text })),
  )
}

/** A section of a sheet. */
export function section(id: string, title: string, items: readonly PaperItem[]): PaperSection {
  return { id, title, items }
}

/** Texts as lines of a list. */
export function bullets(texts: readonly string[]): PaperItem[] {
  return texts.map((text) => ({ kind: 'bullet', text }))
}

function present(...texts: readonly (string | undefined)[]): string[] {
  return texts.filter((text) => text !== undefined)
}

/** How a job is called at the head of its report. */
export function reportedName({ name }: Pick<ReportedJob, 'name'>): string {
  return name.trim() === '' ? words.app.untitled : name
}
