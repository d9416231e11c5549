import { createHash } from 'node:crypto'
import { describe, expect, it } from 'vitest'
import { escapedHtml } from '../../../src/formats/html-text'
import { largestFileBytes } from '../../../src/job/file-text'
import { jobInPage, jobInPageId } from '../../../src/job/job-in-page'
import { readJob } from '../../../src/job/read-job'
import type { Job } from '../../../src/job/schema'
import { writeJob } from '../../../src/job/write-job'
import { hostileJob } from '../../browser/hostile-job'
import { scenario, scenarioFiles } from '../scenarios/scenario'

function page(job: Job, body = ''): string {
  return `<!doctype html>\n<body>${body}<template id="${jobInPageId}">${escapedHtml(writeJob(job))}</template></body>`
}

describe('a job in a page that was handed over', () => {
  it('is read as it was written, hostile texts and all', () => {
    for (const file of scenarioFiles) {
      for (const job of [scenario(file), hostileJob(scenario(file))]) {
        expect(readJob(new TextEncoder().encode(page(job)))).toEqual({ ok: true, job })
      }
    }
  })

  it('gets back the photographs that the page shows', () => {
    const job = scenario('A-two-stroke-single.json')
    const base64 = Buffer.from('not a picture, and nobody looks').toString('base64')
    const hash = createHash('sha256').update(base64).digest('hex')
    const shown = `<img alt="x" width="4" height="3" src="data:image/jpeg;base64,${base64}" data-hash="${hash}">`
    const still = '<img alt="y" width="4" height="3" src="data:image/webp;base64,AAAA">'
    expect(readJob(page(job, `${still}<figure>${shown}</figure>`))).toEqual({
      ok: true,
      job: { ...job, photographs: [{ hash, type: 'image/jpeg', base64 }] },
    })
  })

  it('may be as large as a file that is a job, with a page around it', () => {
    const job = scenario('A-two-stroke-single.json')
    const around = ' '.repeat(largestFileBytes - writeJob(job).length)
    expect(readJob(page(job, `<p>${around}</p>`))).toEqual({ ok: true, job })
    expect(readJob(page(job, `<p>${around.repeat(2)}</p>`))).toMatchObject({
      ok: false,
      problems: [{ code: 'file-too-large' }],
    })
  })

  it('is looked for in no other page, whose kind is told as ever', () => {
    expect(jobInPage('<!doctype html><p>template id="borewall-job"</p>')).toBeUndefined()
    expect(readJob('<!doctype html><p>hello</p>')).toMatchObject({
      ok: false,
      problems: [{ code: 'other-kind-of-file', kind: 'web-page' }],
    })
    expect(readJob(`<template id="${jobInPageId}">{"format":</template>`)).toMatchObject({ ok: false })
  })
})
