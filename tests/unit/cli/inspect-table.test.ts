import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { inspectCommand } from '../../../src/cli/inspect-command'
import { readingsTable } from '../../../src/formats/readings-table'
import { tableStyles } from '../../../src/formats/write-table'
import { templateOf } from '../../../src/job/kept-spec'
import type { Job } from '../../../src/job/schema'
import { inventedJob } from './invented-job'

let folder = ''
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'inspect-table-'))
})
afterAll(() => rmSync(folder, { recursive: true }))

function written(name: string, content: string | Job): string {
  writeFileSync(join(folder, name), typeof content === 'string' ? content : JSON.stringify(content))
  return name
}

/** The invented job without its readings, and those as a table. */
function parted(): { readonly spec: Job; readonly table: string } {
  const job = inventedJob()
  const bores = job.bores.map((bore) => ({
    ...bore,
    surveys: bore.surveys.map((survey) => ({ ...survey, readings: [] })),
  }))
  return { spec: { ...job, bores }, table: readingsTable(job, 'inch', tableStyles.comma) }
}

const run = (table: string, spec: string | Job, ...more: string[]) =>
  inspectCommand([written('t.csv', table), '--spec', written('spec.json', spec), ...more], folder)

describe('a table of readings with a job that has none', () => {
  it('gives the findings of the whole job, as text and as JSON', () => {
    const { spec, table } = parted()
    const whole = written('whole.json', inventedJob())
    const figures = (text: string) =>
      JSON.parse(text).stations.map((s: Record<string, unknown>) => [
        s.bore,
        s.levelMm,
        s.diameterAt20Mm,
        s.verdict,
      ])
    const { exitStatus, output, errors } = run(table, spec, '--json')
    expect({ exitStatus, errors }).toEqual({ exitStatus: 0, errors: '' })
    expect(figures(output)).toEqual(figures(inspectCommand([whole, '--json'], folder).output))
    expect(run(table, spec).output).toMatch(/\nInside the wear limit\. Out-of-round is too close to call\.\n/)
  })

  it('may be limits that were kept for other jobs', () => {
    const kept = templateOf(inventedJob(), 'kept', 'Saws')
    const { exitStatus, output } = run('depth_mm,axis_deg,size_mm\n8,0,54.03\n8,90,54.02\n', kept)
    expect(exitStatus).toBe(0)
    expect(output).toMatch(/Inside the wear limit/)
  })

  it('names row and column of each cell that cannot be read, and prints no findings then', () => {
    const table = 'depth_mm;axis_deg;size_mm\n8;0;54,0l\n8;90;54,01\n16;0;0,3\n'
    const { exitStatus, output, errors } = run(table, parted().spec)
    expect({ exitStatus, output }).toEqual({ exitStatus: 1, output: '' })
    expect(errors).toContain('row 2, column C (size_mm): “54,0l”')
    expect(errors).toContain('row 4, column C (size_mm): “0,3”')
    expect(JSON.parse(run(table, parted().spec, '--json').output).problems).toMatchObject([
      { code: 'letters', path: 'row 2, column C (size_mm)' },
      { code: 'out-of-range', path: 'row 4, column C (size_mm)' },
    ])
  })

  it('ends with status 1 where its heads leave a unit open, it holds nothing, or commas could be either', () => {
    const { spec } = parted()
    const codes = (table: string) => {
      const { exitStatus, output } = run(table, spec, '--json')
      return [exitStatus, ...JSON.parse(output).problems.map(({ code }: { code: string }) => code)]
    }
    expect(codes('depth;axis;reading\n8;0;54,01')).toEqual([1, 'depth-unit', 'value-unit'])
    expect(codes('depth_mm;axis;size_mm\n')).toEqual([1, 'no-readings'])
    expect(codes('9,7,12')).toEqual([1, 'commas-only'])
    expect(codes('')).toEqual([1, 'empty'])
    expect(codes('depth_mm;axis;size_mm\n"8;0;54')).toEqual([1, 'quote-left-open'])
  })

  it('ends with status 1 where the job holds readings or cannot be read, and says which file it is', () => {
    const table = 'depth_mm;axis;size_mm\n8;0;54,01'
    expect(run(table, inventedJob())).toMatchObject({ exitStatus: 1, output: '' })
    expect(run(table, inventedJob()).errors).toMatch(/^spec\.json could not be read:/)
    expect(run(table, '{').errors).toMatch(/^spec\.json could not be read:/)
    expect(inspectCommand(['none.csv', '--spec', 'spec.json'], folder).errors).toMatch(/^none\.csv could not/)
  })

  it('ends with status 2 without its job, and a job file with another beside it', () => {
    const status = (...parameters: string[]) => inspectCommand(parameters, folder).exitStatus
    expect(status('t.csv')).toBe(2)
    expect(status('t.csv', '--spec')).toBe(2)
    expect(status('whole.json', '--spec', 'spec.json')).toBe(2)
    expect(status('t.csv', 'u.csv', '--spec', 'spec.json')).toBe(2)
  })
})
