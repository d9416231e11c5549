import './report.css'
import { type ReactNode, useEffect, useMemo, useRef } from 'react'
import { useStore } from 'zustand'
import { jobStore } from '../../job/job-store'
import type { Job } from '../../job/schema'
import { exaggerationEndOfJob, exaggerationOfJob } from '../../job/selectors'
import { toldBores } from '../../job/told-bores'
import { choosePaper, reporting, reportNote, reportOn } from '../../session/reporting'
import { boreTitle } from '../../words/compared'
import { paperTitle } from '../../words/paper-title'
import { paperWords } from '../../words/paper-words'
import { words } from '../../words/words'
import { useSession } from '../bench/use-job'
import { today } from '../today'
import { ReportSheets } from './ReportSheets'
import { type Report as Reported, reportOf } from './report-content'
import { type PaperName, paperNames, type ReportLook } from './report-look'
import { useSheetPlan } from './use-sheet-plan'

/** What the app brings to a report: pictures, photographs, the shop. */
export type ReportMade = Omit<ReportLook, 'paper'> & {
  /** Pictures are still being drawn. */
  readonly isDrawing: boolean
  readonly isFlat: boolean
}

/** The report as it stands on the session, for the app to draw the pictures that it needs. */
export function useReport(): Reported {
  const job = useStore(jobStore, (state) => state.job)
  const { boreId, withNote } = useStore(reporting)
  const chosen = useSession((state) => state.exaggeration)
  return useMemo(() => {
    const own = exaggerationOfJob(job)
    const end = exaggerationEndOfJob(job)
    const exaggeration = own === undefined || end === undefined ? undefined : Math.min(chosen ?? own, end)
    return reportOf(job, {
      withNote,
      ...(boreId === undefined ? {} : { boreId }),
      ...(exaggeration === undefined ? {} : { exaggeration }),
    })
  }, [job, boreId, withNote, chosen])
}

/** The page of the report: what is put in, and the sheets as they will be printed. */
export function Report(props: {
  readonly report: Reported
  readonly made: ReportMade
  /** Beside what is chosen: what belongs to the shop. */
  readonly children?: ReactNode
}) {
  const { report, made, children } = props
  const job = useStore(jobStore, (state) => state.job)
  const chosen = useStore(reporting, (state) => state.paper)
  const paper = chosen ?? usualPaper(navigator.language)
  const { isDrawing, isFlat, ...drawn } = made
  const { paintOf, pictures, photos, letterhead, code } = drawn
  const look = useMemo<ReportLook>(
    () => ({
      paper,
      paintOf,
      pictures,
      photos,
      ...(letterhead ? { letterhead } : {}),
      ...(code ? { code } : {}),
    }),
    [paper, paintOf, pictures, photos, letterhead, code],
  )
  const container = useRef<HTMLDivElement>(null)
  const { density, plan } = useSheetPlan(container, report, look)
  useTitleOnPaper(titleOf(job, report))
  const count = plan?.reduce((sum, { sheets }) => sum + sheets.length, 0) ?? 0
  const said = paperWords.page
  return (
    <main className="report" aria-label={words.pages.report}>
      <div className="report-choice">
        <PaperChoice paper={paper} />
        <WhatToReport job={job} />
        <button type="button" className="button" disabled={isDrawing} onClick={() => window.print()}>
          {said.print}
        </button>
        {children}
        <p className="report-said aside" role="status">
          {isDrawing ? said.drawing : `${said.sheets(count)} ${isFlat ? said.flatOnly : said.printHow}`}
        </p>
      </div>
      {/* A narrow screen shows a part of a sheet at a time, in letters that can be read. */}
      <section className="report-desk" {...{ tabIndex: 0 }} aria-label={said.scrolls} ref={container}>
        <ReportSheets report={report} look={look} density={density} {...(plan ? { plan } : {})} />
      </section>
    </main>
  )
}

/** Letter where it is what printers hold; A4 in all other places. */
export function usualPaper(language: string): PaperName {
  return /-(US|CA|MX|PH|CL|CO|VE)$/i.test(language) ? 'letter' : 'a4'
}

function PaperChoice({ paper }: { readonly paper: PaperName }) {
  const said = paperWords.page
  return (
    <fieldset className="report-paper">
      <legend>{said.paper}</legend>
      {paperNames.map((name) => (
        <label key={name}>
          <input
            type="radio"
            name="paper"
            value={name}
            checked={name === paper}
            onChange={() => choosePaper(name)}
          />
          {said.sizes[name]}
        </label>
      ))}
    </fieldset>
  )
}

function WhatToReport({ job }: { readonly job: Job }) {
  const { boreId, withNote } = useStore(reporting)
  const said = paperWords.page
  const bores = toldBores(job)
  return (
    <>
      {bores.length > 1 ? (
        <label className="report-bore">
          {said.of}
          <select value={boreId ?? ''} onChange={(event) => reportOn(event.target.value || undefined)}>
            <option value="">{said.wholeEngine}</option>
            {bores.map((bore) => (
              <option key={bore.id} value={bore.id}>
                {boreTitle(bore)}
              </option>
            ))}
          </select>
        </label>
      ) : null}
      {job.note?.trim() ? (
        <label className="report-note">
          <input type="checkbox" checked={withNote} onChange={(event) => reportNote(event.target.checked)} />
          {said.note}
        </label>
      ) : null}
    </>
  )
}

function titleOf(job: Job, report: Reported): string {
  const [first] = report.bores
  const dates = report.bores.flatMap(({ survey: { date } }) => (date === undefined ? [] : [date]))
  const day = dates.sort().at(-1) ?? today()
  return paperTitle(day, job.name, report.engine ? undefined : first?.bore.name)
}

/** The title of the page while it is printed: browsers name the file after it. */
function useTitleOnPaper(title: string): void {
  useEffect(() => {
    let before: string | undefined
    const start = () => {
      before ??= document.title
      document.title = title
    }
    const end = () => {
      if (before !== undefined) document.title = before
      before = undefined
    }
    window.addEventListener('beforeprint', start)
    window.addEventListener('afterprint', end)
    return () => {
      end()
      window.removeEventListener('beforeprint', start)
      window.removeEventListener('afterprint', end)
    }
  }, [title])
}
