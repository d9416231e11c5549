import { blockDecisionOf } from '../core/decision/block-decision'
import type { BoreFinding, Findings } from '../core/findings'
import { type BlockFigure, blockRows, blockSentence } from './block'
import { blockDecisionTexts } from './block-decision'
import { blunderText } from './blunders'
import {
  type BorePaper,
  bullets,
  noteSection,
  type PaperItem,
  type PaperSection,
  section,
} from './bore-paper'
import { decisionTexts } from './decision'
import { decidedOf } from './decision-passages'
import { decisionWords } from './decision-words'
import { boreHeading } from './findings-page'
import { growthRows } from './growth-rows'
import { type Fact, factsOfAll, type ReportedJob } from './paper-facts'
import { limitsLine } from './paper-limits'
import { paperWords } from './paper-words'
import type { PistonRows } from './piston-rows'
import type { Row } from './row'
import { surfaceLines } from './surface'
import { words } from './words'

/** A bore in the table of all of them; a figure with its doubt beneath it. */
export interface EngineRow {
  readonly boreId: string
  readonly name: string
  readonly figures: readonly (BlockFigure | undefined)[]
  readonly standing: string
  readonly decision: string
}

/** What the report says of an engine of several bores before it turns to each. */
export interface EnginePaper {
  readonly facts: readonly Fact[]
  readonly verdict: string
  readonly decision?: string
  readonly besideDecision: readonly string[]
  readonly heads: readonly string[]
  readonly rows: readonly EngineRow[]
  readonly limits: string
  readonly reasons: readonly PaperSection[]
  readonly sections: readonly PaperSection[]
}

/** The bores of an engine in one report: `papers` are those of the bores that it is about. */
export function enginePaper(
  job: ReportedJob,
  findings: Findings,
  papers: readonly { readonly finding: BoreFinding; readonly paper: BorePaper }[],
  pistons: PistonRows,
  withNote = false,
): EnginePaper {
  const block = blockDecisionOf(job, findings)
  const [decision, ...besideDecision] = block ? blockDecisionTexts(job, block) : []
  return {
    facts: factsOfAll(papers.map(({ finding, paper }) => ({ name: finding.boreName, facts: paper.facts }))),
    verdict: blockSentence(findings) ?? '',
    ...(decision === undefined ? {} : { decision }),
    besideDecision,
    ...engineTable(job, findings, papers, pistons),
    limits: limitsLine(job.spec),
    reasons: papers.map(({ finding }) => boreSection(job, findings, finding)),
    sections: [
      ...(pistons.ofEngine.length === 0
        ? []
        : [
            section(
              'engine',
              paperWords.titles.piston,
              pistons.ofEngine.map((row): PaperItem => ({ kind: 'row', row })),
            ),
          ]),
      ...questionsSection(papers),
      ...surfaceOfAll(papers),
      section('unseen', paperWords.titles.unseen, itemsOfAll(papers, 'unseen')),
      section('cautions', paperWords.titles.cautions, itemsOfAll(papers, 'cautions')),
      ...(withNote ? [noteSection(job)] : []),
    ].filter(({ items }) => items.length > 0),
  }
}

type Papers = readonly { readonly finding: BoreFinding; readonly paper: BorePaper }[]

/** Columns that no bore has a figure for are left out. */
function engineTable(job: ReportedJob, findings: Findings, papers: Papers, pistons: PistonRows) {
  const { bore, largest, smallest, ovality, taper, standing } = words.block.heads
  const { wear, clearance, decision } = paperWords.table
  const all = blockRows(findings)
  const rows = papers.flatMap(({ finding }) => {
    const row = all.find(({ boreId }) => boreId === finding.boreId)
    if (!row) return []
    const growth = growthRows(job, findings, finding).find(({ id }) => id === 'wear:0')
    const fit = pistons.ofBore(finding).find(({ id }) => id.startsWith('clearance:'))
    const figures = [row.largest, row.smallest, row.ovality, row.taper, figureOf(growth), figureOf(fit)]
    return [{ ...row, figures, decision: shortDecision(job, findings, row.boreId) }]
  })
  const heads = [largest, smallest, ovality, taper, wear, clearance]
  const isTold = heads.map((_, column) => rows.some(({ figures }) => figures[column] !== undefined))
  const told = <Item>(items: readonly Item[]) => items.filter((_, column) => isTold[column])
  return {
    heads: [bore, ...told(heads), standing, decision],
    rows: rows.map(({ boreId, name, figures, standingText, decision: ofBore }) => ({
      boreId,
      name,
      figures: told(figures),
      standing: standingText,
      decision: ofBore,
    })),
  }
}

function figureOf(row: Row | undefined): BlockFigure | undefined {
  return row && { figure: row.figure, doubt: row.verdictText ?? '' }
}

function shortDecision(job: ReportedJob, findings: Findings, boreId: string): string {
  const finding = findings.bores.find((one) => one.boreId === boreId)
  const decided = finding && decidedOf(job, findings, finding)
  return decided?.decision.known ? decisionWords.short[decided.decision.outcome] : words.block.none
}

/** What a bore asks for by itself, and what decides it. */
function boreSection(job: ReportedJob, findings: Findings, finding: BoreFinding): PaperSection {
  const decided = decidedOf(job, findings, finding)
  const texts = decided && decisionTexts(decided)
  const bore = job.bores.find(({ id }) => id === finding.boreId)
  const title = bore ? boreHeading(bore, finding) : finding.boreName
  const why = texts?.reasons.filter(({ decides }) => decides).map(({ text }) => text) ?? []
  return section(
    `bore ${finding.boreId}`,
    texts ? paperWords.engineDecision(title, texts.headline) : title,
    bullets([...(texts?.beneath ?? []), ...why]),
  )
}

function questionsSection(papers: Papers): PaperSection[] {
  const asked = papers.flatMap(({ finding }) =>
    finding.blunders.map((blunder) => paperWords.ofBores([finding.boreName], blunderText(blunder))),
  )
  return [section('questions', paperWords.titles.questions, bullets(asked))]
}

function surfaceOfAll(papers: Papers): PaperSection[] {
  const items = papers.flatMap(({ finding }) => {
    const lines = surfaceLines(finding)
    return finding.surface.map(
      ({ photos = [] }, index): PaperItem => ({
        kind: 'surface',
        text: paperWords.ofBores([finding.boreName], lines[index] ?? ''),
        photos,
      }),
    )
  })
  return [section('surface', paperWords.titles.surface, items)]
}

/** The lines that a section has for any of the bores, each once; what not all of them have names its bores. */
function itemsOfAll(papers: Papers, id: string): PaperItem[] {
  const told = papers.flatMap(({ finding, paper }) =>
    paper.sections
      .filter((one) => one.id === id)
      .flatMap(({ items }) => items.flatMap((item) => (item.kind === 'bullet' ? [item.text] : [])))
      .map((text) => ({ text, name: finding.boreName })),
  )
  const texts = [...new Set(told.map(({ text }) => text))]
  return bullets(
    texts.map((text) => {
      const names = told.filter((one) => one.text === text).map(({ name }) => name)
      return names.length === papers.length ? text : paperWords.ofBores(names, text)
    }),
  )
}
