import { readFileSync } from 'node:fs'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { readJob } from '../../../../src/job/read-job'
import type { Job } from '../../../../src/job/schema'
import { exaggerationOfJob, findingsOf } from '../../../../src/job/selectors'
import { ReportSheets } from '../../../../src/pages/report/ReportSheets'
import { type ReportChoice, reportOf } from '../../../../src/pages/report/report-content'
import { sizeWithDoubt } from '../../../../src/words/numbers'

const paint = { colour: () => '#888888', span: { lowUm: -50, highUm: 50 } }
const look = {
  paper: 'a4',
  paintOf: () => paint,
  pictures: new Map(),
  photos: new Map(),
} as const

function scenario(file: string): Job {
  const read = readJob(readFileSync(new URL(`../../../../scenarios/${file}`, import.meta.url)))
  if (!read.ok) throw new Error(`${file} is no job`)
  return read.job
}

function sheetsOf(job: Job, choice: ReportChoice = {}): string {
  const exaggeration = exaggerationOfJob(job)
  const report = reportOf(job, { ...choice, ...(exaggeration === undefined ? {} : { exaggeration }) })
  return renderToStaticMarkup(<ReportSheets report={report} look={look} density="plain" />).replaceAll(
    '\u00a0',
    ' ',
  )
}

describe('the sheets of a report', () => {
  it('hold every diameter of a bore with its doubt, as the findings have it', () => {
    const job = scenario('A-two-stroke-single.json')
    const sheets = sheetsOf(job)
    const [finding] = findingsOf(job).bores
    expect(finding?.stations.length).toBe(21)
    for (const { diameterMm, expandedMm } of finding?.stations ?? []) {
      expect(sheets).toContain(`>${sizeWithDoubt(diameterMm, expandedMm)}<`)
    }
  })

  it('are drawn of every example without a figure that is none', () => {
    const files = [
      'A-two-stroke-single.json',
      'B-four-cylinder-iron.json',
      'C-wet-liner-diesel.json',
      'D1-compressor.json',
      'D2-hydraulic-tube.json',
      'E-scuff-scan-360.json',
      'E-scuff-scan-72.json',
    ]
    for (const file of files) {
      const sheets = sheetsOf(scenario(file))
      expect(sheets).not.toMatch(/NaN|Infinity|undefined|\[object/)
    }
  })
})
