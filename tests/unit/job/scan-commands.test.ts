import { describe, expect, it } from 'vitest'
import type { Scan } from '../../../src/core/measured'
import { addSurvey, removeSurvey } from '../../../src/job/bore-commands'
import { checkJob } from '../../../src/job/check-job'
import { scanHashes, withoutScans, withScans } from '../../../src/job/embedded-scans'
import { addScan, removeScan, setScan } from '../../../src/job/scan-commands'
import type { Job } from '../../../src/job/schema'
import { countingIds, sampleJob } from './sample-job'

const after: Scan = { id: 'after', hash: 'ef'.repeat(32), levels: 14, angles: 72, values: 854 }
const scansOf = (job: Job) => job.bores[0]?.scans

describe('changes to the scans of a bore', () => {
  it('add one, say more of it, and take it out again, each leaving a job that a file may hold', () => {
    const added = addScan(sampleJob, 'bore', after)
    expect(scansOf(added)?.map(({ id }) => id)).toEqual(['scan', 'after'])
    const said = setScan(added, 'bore', 'after', { cleaning: 'after', tieSurveyId: 'survey' })
    expect(scansOf(said)?.[1]).toEqual({ ...after, cleaning: 'after', tieSurveyId: 'survey' })
    expect(setScan(said, 'bore', 'after', { cleaning: 'after' })).toBe(said)
    expect(scansOf(setScan(said, 'bore', 'after', { tieSurveyId: undefined }))?.[1]).toEqual({
      ...after,
      cleaning: 'after',
    })
    expect(removeScan(said, 'bore', 'after')).toEqual(sampleJob)
    for (const job of [added, said]) expect(checkJob(job).ok).toBe(true)
  })

  it('leave surface findings that were found in a scan when it goes, without its name', () => {
    const removed = removeScan(sampleJob, 'bore', 'scan')
    expect(removed.bores[0]).not.toHaveProperty('scans')
    const [finding] = removed.bores[0]?.surveys[0]?.surfaceFindings ?? []
    expect(finding?.id).toBe('streak')
    expect(finding).not.toHaveProperty('scanId')
    expect(checkJob(removed).ok).toBe(true)
  })

  it('take the size off a scan when the survey that gave it goes', () => {
    const two = addSurvey(sampleJob, 'bore', countingIds())
    const removed = removeSurvey(two, 'bore', 'survey')
    expect(scansOf(removed)?.[0]).not.toHaveProperty('tieSurveyId')
    expect(scansOf(removed)?.[0]?.id).toBe('scan')
  })

  it('throw for a scan or a bore that is not there', () => {
    expect(() => removeScan(sampleJob, 'bore', 'none')).toThrow(/"none"/)
    expect(() => setScan(sampleJob, 'none', 'scan', {})).toThrow(/"none"/)
  })
})

describe('the scans in a file', () => {
  it('are those that its bores name, and come off again as they went on', () => {
    const { job, scans } = withoutScans(sampleJob)
    expect(job).not.toHaveProperty('scans')
    expect(scanHashes(job)).toEqual(['cd'.repeat(32)])
    expect(withScans(job, [...scans, { hash: '00'.repeat(32), base64: 'AAAA' }])).toEqual(sampleJob)
    expect(withScans(job, [])).toBe(job)
    expect(withoutScans(job)).toEqual({ job, scans: [] })
  })
})
