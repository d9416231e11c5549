import './report-sheets.css'
import { Fragment, type ReactNode, useMemo } from 'react'
import { paperWords } from '../../words/paper-words'
import { words } from '../../words/words'
import { boreParts } from './bore-parts'
import { boresParts, engineParts } from './engine-parts'
import type { Report } from './report-content'
import type { Density, ReportLook } from './report-look'
import type { ReportPart } from './report-part'
import type { SheetPlan, Stretch } from './sheet-layout'

/** Which parts of a chapter stand on which sheet, and how closely. */
export interface ChapterPlan {
  readonly density: Density
  readonly sheets: readonly SheetPlan[]
}

export interface ReportSheetsProps {
  readonly report: Report
  readonly look: ReportLook
  readonly density: Density
  /** How each chapter is laid out; absent: each flows, at the density given, on one sheet as long as it needs. */
  readonly plan?: readonly ChapterPlan[]
}

/** A chapter of a report, begun on a sheet of its own: a bore, or an engine and then its bores. */
export type Chapter = (density: Density) => readonly ReportPart[]

export function chaptersOf(report: Report, look: ReportLook): readonly Chapter[] {
  const { engine, bores } = report
  if (!engine) return bores.map((bore) => (density) => boreParts(report, bore, look, density))
  return [() => engineParts(report, engine, look), (density) => boresParts(report, look, density)]
}

/** The sheets of a report as they are printed. Plain props, no wiring: it can be drawn anywhere. */
export function ReportSheets({ report, look, density, plan }: ReportSheetsProps) {
  const sheets = useMemo(
    () => chaptersOf(report, look).flatMap((chapter, index) => sheetsOf(chapter, plan?.[index], density)),
    [report, look, density, plan],
  )
  const title = report.engine ? report.name : titleOfOne(report)
  return (
    <div className="report-sheets" data-paper={look.paper}>
      {sheets.map((sheet, index) => (
        <section
          // Sheets have no name but their number.
          key={`${index + 1}`}
          className={`report-sheet is-${sheet.density}`}
          aria-label={paperWords.page.sheet(index + 1)}
        >
          <div className="sheet-body">{sheet.body}</div>
          <footer className="sheet-foot">
            <span className="sheet-foot-title" dir="auto">
              {title}
            </span>
            <span>{paperWords.sheetOf(index + 1, sheets.length)}</span>
            <span>{paperWords.madeWith(words.app.name)}</span>
          </footer>
        </section>
      ))}
    </div>
  )
}

interface Sheet {
  readonly density: Density
  readonly body: ReactNode
}

function sheetsOf(chapter: Chapter, plan: ChapterPlan | undefined, density: Density): readonly Sheet[] {
  if (!plan) return [{ density, body: <Flow parts={chapter(density)} /> }]
  const parts = new Map(chapter(plan.density).map((part) => [part.id, part]))
  return plan.sheets.map((sheet) => ({ density: plan.density, body: planSheet(sheet, parts) }))
}

function titleOfOne({ name, bores: [bore] }: Report): string {
  return bore ? paperWords.titleOf(bore.paper.title, name) : name
}

type Parts = ReadonlyMap<string, ReportPart>

function planSheet(sheet: SheetPlan, parts: Parts): ReactNode {
  return sheet.map((stretch) => <Placed key={keyOf(stretch)} {...{ stretch, parts }} />)
}

function keyOf(stretch: Stretch): string {
  return stretch.kind === 'sheet' ? stretch.id : `columns ${stretch.columns[0]?.[0] ?? ''}`
}

function Placed({ stretch, parts }: { readonly stretch: Stretch; readonly parts: Parts }) {
  if (stretch.kind === 'sheet') return <PartBox part={parts.get(stretch.id)} />
  return (
    <div className="sheet-columns">
      {stretch.columns.map((ids, column) => (
        // A column has no name but its place.
        <div key={column === 0 ? 'left' : 'right'}>
          {ids.map((id) => (
            <PartBox key={id} part={parts.get(id)} />
          ))}
        </div>
      ))}
    </div>
  )
}

function PartBox({ part }: { readonly part: ReportPart | undefined }) {
  if (!part) return null
  return (
    <div className="sheet-part" data-part={part.id} data-with-next={part.withNext ? '' : undefined}>
      {part.node}
    </div>
  )
}

/** All parts on one sheet, those of columns in columns that the browser fills. */
function Flow({ parts }: { readonly parts: readonly ReportPart[] }) {
  return runsOf(parts).map((run) => {
    const boxes = run.map((part) => <PartBox key={part.id} part={part} />)
    const key = run[0]?.id ?? ''
    return run[0]?.across === 'column' ? (
      <div key={key} className="sheet-flow">
        {boxes}
      </div>
    ) : (
      <Fragment key={key}>{boxes}</Fragment>
    )
  })
}

function runsOf(parts: readonly ReportPart[]): readonly (readonly ReportPart[])[] {
  const runs: ReportPart[][] = []
  for (const part of parts) {
    const run = runs.at(-1)
    if (run?.[0]?.across === part.across) run.push(part)
    else runs.push([part])
  }
  return runs
}
