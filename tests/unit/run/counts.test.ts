import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { countCheck, countPlaywright, countVitest } from '../../run/counts.mjs'

const folder = mkdtempSync(join(tmpdir(), 'borewall-counts-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

function written(report: object): string {
  const file = join(folder, 'report.json')
  writeFileSync(file, JSON.stringify(report))
  return file
}

function vitest(passed: number, failed: number, testResults: object[] = []): string {
  return written({
    numPassedTests: passed,
    numFailedTests: failed,
    numPendingTests: 0,
    numTodoTests: 0,
    testResults,
  })
}

describe('the sum of the tests', () => {
  it('takes the counts that the runners report', () => {
    expect(countVitest(vitest(5, 2), 1)).toEqual({ passed: 5, failed: 2, skipped: 0 })
    const playwright = written({ stats: { expected: 4, unexpected: 1, flaky: 0, skipped: 1 } })
    expect(countPlaywright(playwright, 1)).toEqual({ passed: 4, failed: 1, skipped: 1 })
  })

  it('counts a test that passed only when tried again as failed', () => {
    const report = written({ stats: { expected: 4, unexpected: 0, flaky: 1, skipped: 0 } })
    expect(countPlaywright(report, 0)).toEqual({ passed: 4, failed: 1, skipped: 0 })
  })

  it('counts a file that could not be loaded as failed', () => {
    const report = vitest(5, 0, [{ status: 'failed', assertionResults: [] }])
    expect(countVitest(report, 1)).toEqual({ passed: 5, failed: 1, skipped: 0 })
  })

  it('refuses a run in which no test was executed', () => {
    expect(countVitest(vitest(0, 0), 0)).toMatchObject({ failed: 1, note: 'no test was executed' })
    const skipped = written({ stats: { expected: 0, unexpected: 0, flaky: 0, skipped: 3 } })
    expect(countPlaywright(skipped, 0)).toMatchObject({ passed: 0, failed: 1 })
  })

  it('refuses a runner that left no report or ended badly after good tests', () => {
    expect(countVitest(join(folder, 'none.json'), 0)).toMatchObject({ passed: 0, failed: 1 })
    expect(countVitest(vitest(3, 0), 1)).toMatchObject({ passed: 3, failed: 1 })
  })

  it('counts types and lint as one check each', () => {
    const step = { title: 'lint', seconds: 1, output: '' }
    expect(countCheck({ ...step, code: 0 })).toEqual({ passed: 1, failed: 0, skipped: 0 })
    expect(countCheck({ ...step, code: 2 })).toEqual({ passed: 0, failed: 1, skipped: 0 })
  })
})
