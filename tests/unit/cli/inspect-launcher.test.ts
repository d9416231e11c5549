import { spawn } from 'node:child_process'
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { inventedJob } from './invented-job'

const launcher = resolve('src/cli/inspect.mjs')
let folder = ''
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'inspect-'))
  writeFileSync(join(folder, 'job.json'), JSON.stringify(inventedJob()))
})
afterAll(() => rmSync(folder, { recursive: true }))

interface Ran {
  readonly code: number | null
  readonly output: string
  readonly errors: string
}

/** Runs the launcher; `mostBytes` closes the pipe after so much was read. */
function run(parameters: string[], environment: NodeJS.ProcessEnv = {}, mostBytes?: number): Promise<Ran> {
  return new Promise((done, failed) => {
    const env = { ...process.env, npm_lifecycle_event: '', INIT_CWD: '', ...environment }
    const child = spawn(process.execPath, [launcher, ...parameters], { env })
    let output = ''
    let errors = ''
    child.stdout.on('data', (chunk) => {
      output += chunk
      if (mostBytes !== undefined && output.length >= mostBytes) child.stdout.destroy()
    })
    child.stderr.on('data', (chunk) => {
      errors += chunk
    })
    child.once('error', failed)
    child.once('close', (code) => done({ code, output, errors }))
  })
}

describe('the launcher of inspect', () => {
  it('bundles the command from its sources, runs it and leaves no bundle behind', async () => {
    const { code, output, errors } = await run([join(folder, 'job.json')])
    expect({ code, errors }).toEqual({ code: 0, errors: '' })
    expect(output).toMatch(/^What the readings prove: Invented saw\n/)
    expect(readdirSync('node_modules/.cache/borewall').filter((name) => /^inspect-/.test(name))).toEqual([])
  }, 60_000)

  it('takes a relative name from the folder in which npm was called', async () => {
    const { code } = await run(['job.json'], { npm_lifecycle_event: 'inspect', INIT_CWD: folder })
    expect(code).toBe(0)
  }, 60_000)

  it('passes on the status and keeps complaints off standard output', async () => {
    const { code, output, errors } = await run([join(folder, 'nowhere.json')])
    expect({ code, output }).toEqual({ code: 1, output: '' })
    expect(errors).toMatch(/no such file/)
    expect((await run([])).code).toBe(2)
  }, 60_000)

  it('writes a large report whole, and does not crash when its reader stops early', async () => {
    const job = inventedJob()
    const axesDegrees = Array.from({ length: 36 }, (_, i) => i * 5)
    const levelsMm = Array.from({ length: 12 }, (_, i) => 4 + i)
    const readings = levelsMm.flatMap((depthMm) =>
      axesDegrees.map((axisDegrees) => ({ depthMm, axisDegrees, sizesMm: [54.02] })),
    )
    const bores = job.bores.slice(0, 1).map((bore) => ({
      ...bore,
      surveys: [{ id: 's', setUpId: 'set', levelsMm, axesDegrees, readings }],
    }))
    const file = join(folder, 'large.json')
    writeFileSync(file, JSON.stringify({ ...job, bores }))
    const whole = await run([file, '--json'])
    expect(whole.code).toBe(0)
    expect(JSON.parse(whole.output).stations).toHaveLength(432)
    const cut = await run([file, '--json'], {}, 100)
    expect({ code: cut.code, errors: cut.errors }).toEqual({ code: 0, errors: '' })
  }, 60_000)
})
