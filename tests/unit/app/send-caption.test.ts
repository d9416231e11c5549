import { describe, expect, it } from 'vitest'
import { captionOf } from '../../../src/app/send-caption'
import type { Job } from '../../../src/job/schema'
import { findingsOf } from '../../../src/job/selectors'
import { inventedJob } from '../cli/invented-job'

function caption(job: Job, which: number) {
  const bore = job.bores[which]
  const finding = findingsOf(job).bores[which]
  if (!bore || !finding) throw new Error('no such bore')
  return captionOf(job, bore, finding)
}

describe('the caption of a picture sent', () => {
  it('names job, bore, day and verdict, says that the figures are invented, and defers to the manual', () => {
    const said = caption(inventedJob(), 0)
    expect(said).toMatchObject({
      job: 'Invented saw',
      invented: 'An example: all figures are invented.',
      bore: 'Bore Used. Measured on 9 March 2026. Hours run: 120.5.',
      verdict: 'Inside the wear limit. Out-of-round is too close to call.',
    })
    expect(said.beside.join(' ')).toMatch(/chances in 100 that it is inside/)
    expect(said.foot.join(' ')).toMatch(/which wall wore is not known.*readings alone.*service manual/)
  })

  it('says nothing of an example where the job is a real one, and names a job that has no name', () => {
    const { invented: _, ...job } = inventedJob({ name: ' ' })
    expect(caption(job, 0)).toMatchObject({ invented: undefined, job: 'Job without a name' })
  })

  it('gives a bore for comparison its sizes and no verdict', () => {
    const said = caption(inventedJob(), 1)
    expect(said.bore).toMatch(/^Bore New, for comparison\. The day it was measured was not recorded\.$/)
    expect(said.verdict).toMatch(/^For comparison: 54\.\d{3} to 54\.\d{3}/)
    expect(said.beside).toEqual([])
  })

  it('marks a provisional verdict and warns of it', () => {
    const job = inventedJob()
    const setUps = job.setUps.map(({ zeroCloseUm: _, ...setUp }) => setUp)
    const said = caption({ ...job, setUps }, 0)
    expect(said.beside.join(' ')).toMatch(/Provisional: no closing zero was recorded/)
    expect(said.foot.join(' ')).toMatch(/Do not decide an engine on a provisional verdict/)
  })

  it('says that questions about readings are open, and which survey it shows of several', () => {
    const job = inventedJob()
    const [bore] = job.bores
    const [survey] = bore?.surveys ?? []
    if (!bore || !survey) throw new Error('no survey')
    const twice = { ...bore, surveys: [survey, { ...survey, id: 'second', date: '2026-05-01' }] }
    const several: Job = { ...job, bores: [twice, ...job.bores.slice(1)] }
    expect(caption(several, 0).bore).toMatch(/^Bore Used, survey 2 of 2\. Measured on 1 May 2026\./)
    const [finding] = findingsOf(job).bores
    if (!finding) throw new Error('no finding')
    const asked = {
      ...finding,
      blunders: [{ code: 'caliper-disagrees', caliperMm: 55, readMm: 54 }] as const,
    }
    expect(captionOf(job, bore, asked).beside[0]).toBe('A question about a reading is open.')
    expect(captionOf(job, bore, finding).beside.join(' ')).not.toMatch(/question/)
  })
})
