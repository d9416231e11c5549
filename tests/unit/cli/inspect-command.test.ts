import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { inspectCommand } from '../../../src/cli/inspect-command'
import { jsonText } from '../../../src/cli/inspect-json'
import { inspect } from '../../../src/core/inspect'
import type { Job } from '../../../src/job/schema'
import { scenario } from '../scenarios/scenario'
import { inventedJob } from './invented-job'

let folder = ''
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'inspect-'))
})
afterAll(() => rmSync(folder, { recursive: true }))

function written(name: string, content: string | Job): string {
  writeFileSync(join(folder, name), typeof content === 'string' ? content : JSON.stringify(content))
  return name
}

const text = (job: Job) => inspectCommand([written('job.json', job)], folder)
const json = (job: Job) => JSON.parse(inspectCommand([written('job.json', job), '--json'], folder).output)

describe('the findings of a job as text', () => {
  it('end with status 0, say the verdict, and leave standard error empty', () => {
    const { exitStatus, output, errors } = text(inventedJob())
    expect({ exitStatus, errors }).toEqual({ exitStatus: 0, errors: '' })
    expect(output).toMatch(
      /^What the readings prove: Invented saw\n=+\n\nAn example: all figures are invented\.\n/,
    )
    expect(output).toMatch(
      /\nBore Used\n-+\n\nMeasured on 9 March 2026\. Hours run: 120\.5\.\n\nAt these temperatures each reading is corrected by −3\.\d µm\. The bore at 26 °C[\s\S]*?\n\nInside the wear limit\. Out-of-round is too close to call\.\n/,
    )
    expect(output).toMatch(
      /\nBore New, for comparison\n-+\n\nThe day it was measured was not recorded\.\n\nAt these temperatures[\s\S]*?\n\nFor comparison: 54\.\d{3} to 54\.\d{3} at 2 stations\.\n/,
    )
  })

  it('stay within 78 columns and hold no NaN, infinity or undefined', () => {
    const { output } = text(inventedJob())
    for (const line of output.split('\n')) expect([...line].length).toBeLessThanOrEqual(78)
    expect(output).not.toMatch(/NaN|Infinity|undefined|null/)
  })

  it('set each station with its ± and a mark in a table of levels and axes', () => {
    const { output } = text(inventedJob())
    expect(output).toMatch(
      /Depth +0° +90°\n +8 mm +54\.030 ± 0\.\d{3} +54\.016 ± 0\.\d{3}\n +inside +inside\n/,
    )
  })

  it('show a reading at a port, and leave it out of the verdict', () => {
    const { output } = text(inventedJob())
    expect(output).toMatch(/60 mm .*\n +port\? +inside/)
    expect(output).toMatch(/The reading at 60 mm, 0° stands at exhaust: kept, but in no verdict/)
    expect(output).toMatch(/about the 3 stations measured/)
  })

  it('hold the note of the job, each of its lines as a paragraph', () => {
    const note = 'A score at 200° catches a fingernail.\n\nRust near the deck.'
    const { output } = text(inventedJob({ machine: 'Saw', note }))
    expect(output).toContain(
      '\nMachine: Saw\n\nNote: A score at 200° catches a fingernail.\n\nRust near the deck.\n\nBore Used\n',
    )
    expect(json(inventedJob({ note })).job.note).toBe(note)
    expect(json(inventedJob()).job.note).toBeNull()
  })

  it('give the last word to the manual and the machinist', () => {
    expect(text(inventedJob()).output).toMatch(/service manual for this engine has the last word/)
  })

  it('say what is missing where nothing was read yet', () => {
    const job = inventedJob()
    const bores = job.bores.slice(0, 1).map((bore) => ({
      ...bore,
      surveys: bore.surveys.map((survey) => ({ ...survey, readings: [] })),
    }))
    const { exitStatus, output } = text({ ...job, name: '', bores })
    expect(exitStatus).toBe(0)
    expect(output).toMatch(/^What the readings prove: a job without a name\n/)
    expect(output).toMatch(/No readings yet\./)
  })

  it('say that a verdict is provisional, and why', () => {
    const job = inventedJob()
    const setUps = job.setUps.map(({ zeroCloseUm: _, ...setUp }) => setUp)
    expect(text({ ...job, setUps }).output).toMatch(/Provisional: no closing zero was recorded\./)
  })

  it('do not pass on a control character in a name to the terminal', () => {
    const { output } = text(inventedJob({ name: 'Saw \u202e turned' }))
    expect(output).toMatch(/^What the readings prove: Saw \ufffd turned\n/)
  })
})

describe('the findings of a job as JSON', () => {
  it('carry for each station bore, survey, level, axis, diameter at 20 °C, U, verdict and probability', () => {
    const { stations } = json(inventedJob())
    expect(stations).toHaveLength(6)
    expect(stations[0]).toMatchObject({
      bore: 'used',
      survey: 's-used',
      levelMm: 8,
      axisDegrees: 0,
      verdict: 'inside',
      counted: true,
    })
    expect(stations[0].diameterAt20Mm).toBeCloseTo(54.0298, 4)
    expect(stations[0].expandedUncertaintyMm).toBeGreaterThan(0)
    expect(stations[0].probability).toBeGreaterThan(0.95)
    expect(stations[2]).toMatchObject({ counted: false, blockedBy: ['exhaust'] })
  })

  it('carry verdict, out-of-round and taper beside them, and no verdict for a bore to compare with', () => {
    const { bores } = json(inventedJob())
    expect(bores[0]).toMatchObject({
      bore: 'used',
      role: 'of-this-engine',
      verdict: { verdict: 'inside' },
      sentences: { verdict: 'Inside the wear limit. Out-of-round is too close to call.' },
    })
    expect(bores[0].ovality[0]).toMatchObject({
      rule: 'largest-less-smallest-at-a-level',
      verdict: 'too-close',
    })
    expect(bores[0].taper[0]).toMatchObject({ rule: 'between-levels-of-an-axis' })
    expect(bores[1]).toMatchObject({ verdict: null, whyNoVerdict: 'for-comparison' })
  })

  it('carry everything that was found of a bore', () => {
    const job = scenario('A-two-stroke-single.json')
    const names: { readonly [field: string]: string } = {
      boreId: 'bore',
      boreName: 'name',
      surveyId: 'survey',
      pair: 'limits',
      depthForm: 'formAlongDepth',
      blunders: 'questions',
    }
    for (const [index, finding] of inspect(job).bores.entries()) {
      const entry = json(job).bores[index]
      // The stations of all bores stand in a list of their own.
      const fields = Object.keys(finding).filter((field) => field !== 'stations')
      for (const field of fields) expect(Object.keys(entry)).toContain(names[field] ?? field)
    }
  })

  it('write null for infinite degrees of freedom and for a verdict without limits', () => {
    const { stations } = json(inventedJob({ spec: {} }))
    expect(stations[0]).toMatchObject({ verdict: null, probability: null })
    const freedoms = stations[0].budget.map((part: { degreesOfFreedom: unknown }) => part.degreesOfFreedom)
    expect(freedoms).toContain(null)
  })

  it('never write what is not a number', () => {
    expect(jsonText({ a: Number.NEGATIVE_INFINITY })).toBe('{\n  "a": null\n}\n')
    expect(() => jsonText({ a: Number.NaN })).toThrow(/"a" is not a number/)
  })
})

describe('a file that cannot be read', () => {
  it('ends with status 1 and names each problem with its place on standard error', () => {
    const job = inventedJob()
    const bad = {
      ...job,
      setUps: job.setUps.map((setUp) => ({ ...setUp, settingSizeMm: 'wide', zeroOpen: 0 })),
    }
    const { exitStatus, output, errors } = inspectCommand([written('bad.json', JSON.stringify(bad))], folder)
    expect({ exitStatus, output }).toEqual({ exitStatus: 1, output: '' })
    expect(errors).toMatch(/^bad\.json could not be read:\n\n- setUps\[0\]/)
    expect(errors).toMatch(/setUps\[0\]\.settingSizeMm \(line 1, column \d+\): Here a number/)
    expect(errors.replace(/\s+/g, ' ')).toMatch(/There is no field “zeroOpen” here\. Is “zeroOpenUm” meant\?/)
  })

  it('with --json also writes the problems as one object', () => {
    const file = written('empty.json', '')
    const { exitStatus, output } = inspectCommand([file, '--json'], folder)
    expect(exitStatus).toBe(1)
    expect(JSON.parse(output)).toMatchObject({
      problems: [{ code: 'file-empty', path: '', text: 'The file is empty. Is there a copy of it?' }],
    })
  })

  it.each([
    ['nowhere.json', 'file-not-found', /no such file/],
    ['.', 'file-is-folder', /a folder/],
    ['empty.json/job', 'file-not-found', /no such file/],
  ])('may not be a job file at all: %s', (file, code, sentence) => {
    written('empty.json', '')
    const { exitStatus, output, errors } = inspectCommand(['--json', file], folder)
    expect(exitStatus).toBe(1)
    expect(errors).toMatch(sentence)
    expect(JSON.parse(output)).toMatchObject({ problems: [{ code }] })
  })
})

describe('pistons and rings', () => {
  it('stand in the text and in the JSON: clearance and ring gap of each bore, pairing and oversize of the engine', () => {
    const block = scenario('B-four-cylinder-iron.json')
    expect(text(block).output).toMatch(
      /\nPistons and oversize for the engine\n-+\n\nWhich piston in which bore/,
    )
    const { bores, pairing, oversize } = json(block)
    expect(pairing).toMatchObject({ known: true, fitNone: ['cylinder-3'] })
    expect(oversize).toMatchObject({ known: true, oversizeMm: 0.25, cleanUpIsHint: true })
    expect(bores[2].clearance[0]).toMatchObject({ pistonId: 'piston-3', ranHere: true, verdict: 'too-loose' })
    expect(bores[2].ringGap).toEqual({ known: false, why: 'no-gaps' })
    const liner = scenario('C-wet-liner-diesel.json')
    expect(text(liner).output).toMatch(/\nRing gap +0\.55 to 0\.93 mm +inside\n/)
    expect(json(liner).bores[0].ringGap).toMatchObject({
      known: true,
      taper: { byGauge: { differs: false } },
    })
  })
})

describe('a crossed study', () => {
  const readings = ['Ada', 'Ben'].flatMap((person, i) =>
    ['1', '2', '3'].map((part, j) => ({ person, part, dialUm: [10 * j + 3 * i, 10 * j + 3 * i + 1] })),
  )
  const job = inventedJob({
    gauges: [{ id: 'g', kind: 'dial-0.001-micrometer', crossedStudies: [{ readings }] }],
  })

  it('stands in the text and in the JSON, with its figures and its words', () => {
    const { output } = text(job)
    expect(output).toMatch(/\nCrossed studies of gauges\n-+\n/)
    expect(output).toMatch(/\n2 people read 3 parts twice each\.\n/)
    for (const line of output.split('\n')) expect([...line].length).toBeLessThanOrEqual(78)
    const { crossedStudies } = json(job)
    expect(crossedStudies).toHaveLength(1)
    expect(crossedStudies[0]).toMatchObject({ gaugeId: 'g', shown: { known: true, trials: 2 } })
    expect(crossedStudies[0].shown.variance.parts.deviationUm).toBeGreaterThan(5)
    expect(crossedStudies[0].text).toMatch(/^2 people read 3 parts twice each\. the gauge/)
  })
})

describe('wrong usage', () => {
  it.each([
    [[], /^Name one job file\./],
    [['a', 'b'], /^Name one job file\./],
    [['--json'], /^Name one job file\./],
    [['a', '--yaml'], /^There is no option --yaml\./],
    [['--help'], /^Usage:/],
  ])('ends with status 2, tells the usage and writes no findings: %j', (parameters, start) => {
    const { exitStatus, output, errors } = inspectCommand(parameters, folder)
    expect({ exitStatus, output }).toEqual({ exitStatus: 2, output: '' })
    expect(errors).toMatch(start)
    expect(errors).toMatch(/npm run inspect -- FILE \[--json\]/)
  })
})
