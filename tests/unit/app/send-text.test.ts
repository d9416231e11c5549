import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { textToSend } from '../../../src/app/send-text'
import { inspectCommand } from '../../../src/cli/inspect-command'
import { readJob } from '../../../src/job/read-job'
import type { Job } from '../../../src/job/schema'
import { inventedJob } from '../cli/invented-job'

let folder = ''
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'send-'))
})
afterAll(() => rmSync(folder, { recursive: true }))

const example = fileURLToPath(new URL('../../../scenarios/A-two-stroke-single.json', import.meta.url))

function printed(job: Job): string {
  writeFileSync(join(folder, 'job.json'), JSON.stringify(job))
  return inspectCommand(['job.json'], folder).output
}

function exampleJob(): Job {
  const read = readJob(readFileSync(example))
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.job
}

describe('the text sent', () => {
  it('is what inspect prints of the example, to the letter', () => {
    const text = textToSend(exampleJob())
    expect(text).toBe(inspectCommand([example], folder).output)
    expect(text.length).toBeGreaterThan(3000)
  })

  it('is what inspect prints of a job without a closing zero, of one without readings and of one without limits', () => {
    const job = inventedJob()
    const provisional = { ...job, setUps: job.setUps.map(({ zeroCloseUm: _, ...setUp }) => setUp) }
    const unread = {
      ...job,
      bores: job.bores.map((bore) => ({
        ...bore,
        surveys: bore.surveys.map((survey) => ({ ...survey, readings: [] })),
      })),
    }
    for (const one of [provisional, unread, { ...job, spec: {} }]) expect(textToSend(one)).toBe(printed(one))
  })

  it('carries the job, the mark of the invented, each verdict, the day, limits, rules, gaps and cautions', () => {
    const text = textToSend(inventedJob())
    for (const said of [
      'Invented saw',
      'An example: all figures are invented.',
      'Measured on 9 March 2026. Hours run: 120.5.',
      'Inside the wear limit. Out-of-round is too close to call.',
      'chances in 100 that it is\ninside.',
      'Bore New, for comparison',
      'limit 15 µm · largest less smallest at one level',
      'What these readings cannot show',
      'service manual for this engine has the last word, and a qualified\n  machinist',
    ]) {
      expect(text).toContain(said)
    }
  })
})
