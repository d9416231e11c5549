import { createHash } from 'node:crypto'
import { describe, expect, it } from 'vitest'
import { boresToHand } from '../../../src/app/hand-over-bores'
import { photographsPart } from '../../../src/app/hand-over-photographs'
import { htmlText } from '../../../src/formats/html-text'
import { jobInPage, jobInPageId } from '../../../src/job/job-in-page'
import { readJob } from '../../../src/job/read-job'
import type { Job } from '../../../src/job/schema'
import { writeJob } from '../../../src/job/write-job'
import { words } from '../../../src/words/words'
import { hostileText } from '../../browser/hostile-job'
import { scenario } from '../scenarios/scenario'

const base64 = Buffer.from([0xff, 0xd8, 0xff, 0xe0, 1, 2, 3]).toString('base64')
const hash = createHash('sha256').update(Buffer.from(base64, 'base64')).digest('hex')
const missing = 'f'.repeat(64)

/** A scratch with two photographs, one of which is in the file. */
function photographed(): Job {
  const job = scenario('A-two-stroke-single.json')
  const photo = (of: string) => ({ hash: of, name: hostileText(60), widthPx: 4, heightPx: 3 })
  const scratch = {
    id: 'scratch',
    kind: 'scratch',
    shape: 'streak',
    fromDepthMm: 10,
    toDepthMm: 20,
    fromDegrees: 0,
    toDegrees: 0,
    photos: [photo(hash), photo(missing)],
  } as const
  return {
    ...job,
    bores: job.bores.map((bore) => ({
      ...bore,
      surveys: bore.surveys.map((survey) => ({ ...survey, surfaceFindings: [scratch] })),
    })),
    photographs: [{ hash, type: 'image/jpeg', base64 }],
  }
}

describe('photographs on a page that is handed over', () => {
  it('stand with their surface finding, and one that is not at hand says so', () => {
    const job = photographed()
    const shown = photographsPart(job, boresToHand(job)).map(htmlText).join('')
    expect(shown.match(/<img /g)).toHaveLength(1)
    expect(shown).toContain(`src="data:image/jpeg;base64,${base64}"`)
    expect(shown).toContain(words.photographs.notHere)
    expect(shown).toContain('&lt;script&gt;')
    expect(shown).not.toContain('<script>')
  })

  it('go back into the job from where they are shown', () => {
    const job = photographed()
    const { photographs: _, ...bare } = job
    const shown = photographsPart(job, boresToHand(job)).map(htmlText).join('')
    const escaped = writeJob(bare).replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;')
    const page = `<!doctype html>${shown}<template id="${jobInPageId}">${escaped}</template>`
    expect(readJob(jobInPage(page) ?? '')).toEqual({ ok: true, job })
  })

  it('are no part of the page of a job without any', () => {
    const job = scenario('A-two-stroke-single.json')
    expect(photographsPart(job, boresToHand(job))).toEqual([])
  })
})
