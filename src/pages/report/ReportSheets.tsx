import './report-sheets.css'
import { Fragment, type ReactNode, useMemo } from 'react'
import { paperWords } from '../../words/paper-words'
import { words } from '../../words/words'
import { boreParts } from './bore-parts'
import { engineParts } from './engine-parts'
import type { Report } from './report-content'
import type { Density, ReportLook } from './report-look'
import type { ReportPart } from './report-part'
import type { SheetPlan, Stretch } from './sheet-layout'

export interface ReportSheetsProps {
  readonly report: Report
  readonly look: ReportLook
  readonly density: Density
  /** Which parts stand on which sheet, for each chapter; absent: each chapter flows on one sheet as long as it needs. */
  readonly plan?: readonly (readonly SheetPlan[])[]
}

/** The chapters of a report, each begun on a sheet of its own: a bore, or an engine and then its bores. */
export function chaptersOf(
  report: Report,
  look: ReportLook,
  density: Density,
): readonly (readonly ReportPart[])[] {
  const { engine, bores } = report
  if (engine) return engineParts(report, engine, look, density)
  return bores.map((bore) => boreParts(report, bore, look, density))
}

/** The sheets of a report as they are printed. Plain props, no wiring: it can be drawn anywhere. */
export function ReportSheets({ report, look, density, plan }: ReportSheetsProps) {
  const chapters = useMemo(() => chaptersOf(report, look, density), [report, look, density])
  const sheets = chapters.flatMap((parts, chapter): readonly ReactNode[] => {
    const nodes = new Map(parts.map((part) => [part.id, part]))
    const planned = plan?.[chapter]
    return planned
      ? planned.map((sheet) => planSheet(sheet, nodes))
      : [<Flow key={parts[0]?.id} parts={parts} />]
  })
  const title = report.engine ? report.name : titleOfOne(report)
  return (
    <div className={`report-sheets is-${density}`} data-paper={look.paper}>
      {sheets.map((sheet, index) => (
        <section
          // Sheets have no name but their number.
          key={`${index + 1}`}
          className="report-sheet"
          aria-label={paperWords.page.sheet(index + 1)}
        >
          <div className="sheet-body">{sheet}</div>
          <footer className="sheet-foot">
            <span dir="auto">{paperWords.foot(title, index + 1, sheets.length)}</span>
            <span>{paperWords.madeWith(words.app.name)}</span>
          </footer>
        </section>
      ))}
    </div>
  )
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
