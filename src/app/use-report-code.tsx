import './report-code.css'
import { type ReactNode, useEffect, useMemo, useState } from 'react'
import { useStore } from 'zustand'
import { QrCode } from '../charts/QrCode'
import type { LeftOut } from '../job/carried-job'
import { jobStore } from '../job/job-store'
import type { Job } from '../job/schema'
import { letterheadWords } from '../words/letterhead-words'
import type { ReportCode } from './report-code'

type Made = ReportCode | { readonly kind: 'none'; readonly why: 'not-loaded' }

/** The code for the report of the job on the bench; undefined while it is made. */
export function useReportCode(appAddress: string | undefined): Made | undefined {
  const job = useStore(jobStore, (state) => state.job)
  const [made, setMade] = useState<{ readonly job: Job; readonly appAddress: string; readonly code: Made }>()
  useEffect(() => {
    if (appAddress === undefined) return
    let isGone = false
    void codeLater(job, appAddress).then((code) => {
      if (!isGone) setMade({ job, appAddress, code })
    })
    return () => {
      isGone = true
    }
  }, [job, appAddress])
  if (appAddress === undefined) return { kind: 'none', why: 'no-address' }
  return made?.job === job && made.appAddress === appAddress ? made.code : undefined
}

async function codeLater(job: Job, appAddress: string): Promise<Made> {
  const part = await import('./report-code').catch(() => undefined)
  return part ? part.reportCode(job, appAddress) : { kind: 'none', why: 'not-loaded' }
}

/** The code with what it is in one line, for a report; undefined where there is none. */
export function useCodeOnReport(code: Made | undefined): ReactNode {
  return useMemo(() => {
    if (code?.kind !== 'code') return undefined
    return (
      <figure className="report-code">
        <QrCode drawing={code.drawing} label={letterheadWords.code.label} />
        <figcaption>{captionOf(code.leftOut)}</figcaption>
      </figure>
    )
  }, [code])
}

/** What the code is, and what of the job is not in it. */
export function captionOf({ photographs, scans, notes }: LeftOut): string {
  const said = letterheadWords.code
  const parts = [
    ...(photographs > 0 ? [said.photographs(photographs)] : []),
    ...(scans > 0 ? [said.scans(scans)] : []),
    ...(notes > 0 ? [said.notes(notes)] : []),
  ]
  return parts.length === 0 ? said.caption : said.captionWithout(said.list(parts))
}
