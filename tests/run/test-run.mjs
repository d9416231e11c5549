import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { stripVTControlCharacters } from 'node:util'
import { ensureChromium } from '../../src/cli/chromium.mjs'
import { buildIfStale } from '../../src/cli/page-build.mjs'
import { countCheck, countPlaywright, countVitest } from './counts.mjs'
import { emptyRecords, writeResults } from './proof-results.mjs'
import { root, runStep } from './step.mjs'

/**
 * Runs every runner, prints a section for each and the sum at the end; resolves with the exit code.
 * @param {{ full: boolean }} options
 * @returns {Promise<number>}
 *
 * @typedef {import('./step.mjs').Step} Step
 * @typedef {import('./counts.mjs').Counts} Counts
 */
export async function testRun({ full }) {
  const started = performance.now()
  const chromium = ensureChromium(say)
  const environment = { CHROMIUM: chromium, PROOF: full ? '1' : '' }
  const reports = mkdtempSync(join(tmpdir(), 'borewall-reports-'))
  if (full) emptyRecords()
  try {
    const counts = await runAll(reports, environment)
    const passed = sum(counts, 'passed')
    const failed = sum(counts, 'failed')
    const skipped = sum(counts, 'skipped')
    if (full) say(`\nFigures written to ${writeResults({ chromium, passed, failed })}`)
    say(
      `\n${((performance.now() - started) / 1000).toFixed(0)} s in all${skipped ? `, ${skipped} skipped` : ''}`,
    )
    say(`${passed} passed, ${failed} failed`)
    return failed === 0 ? 0 : 1
  } finally {
    rmSync(reports, { recursive: true, force: true })
  }
}

/**
 * The build runs beside the quick checks; the browser, which draws on the processor, runs alone.
 * @param {string} reports
 * @param {Record<string, string>} environment
 * @returns {Promise<Counts[]>}
 */
async function runAll(reports, environment) {
  const vitestReport = join(reports, 'vitest.json')
  const playwrightReport = join(reports, 'playwright.json')
  const vitest = [
    'vitest/vitest.mjs',
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${vitestReport}`,
  ]
  const building = build()
  const checking = [
    runStep('types of the whole', ['typescript/bin/tsc', '-p', '.']),
    runStep('types of the core, without the browser', ['typescript/bin/tsc', '-p', 'src/core']),
    runStep('lint', ['@biomejs/biome/bin/biome', 'check', '--error-on-warnings', '.']),
  ]
  const testing = runStep('unit and outside values', vitest, { environment })

  const counts = []
  for (const step of await Promise.all(checking)) counts.push(section(step, countCheck(step)))
  const tested = await testing
  counts.push(section(tested, countVitest(vitestReport, tested.code)))
  const built = await building
  if (built.code !== 0) return [...counts, section(built, countCheck(built))]

  say('\n== browser')
  const browsed = await runStep(
    'browser',
    ['@playwright/test/cli.js', 'test', '--config=tests/browser/playwright.config.ts'],
    { environment: { ...environment, PLAYWRIGHT_JSON_OUTPUT_FILE: playwrightReport }, live: true },
  )
  return [...counts, summary(browsed, countPlaywright(playwrightReport, browsed.code))]
}

/** @returns {Promise<Step>} */
async function build() {
  const started = performance.now()
  let output = ''
  try {
    await buildIfStale(root, resolve(root, process.env.BOREWALL_OUT ?? 'dist'))
  } catch (error) {
    output = `${stripVTControlCharacters(error instanceof Error ? error.message : String(error))}\n`
  }
  return {
    title: 'build',
    code: output === '' ? 0 : 1,
    seconds: (performance.now() - started) / 1000,
    output,
  }
}

/**
 * @param {Step} step
 * @param {Counts} counts
 */
function section(step, counts) {
  say(`\n== ${step.title}`)
  if (counts.failed > 0) process.stdout.write(step.output)
  return summary(step, counts)
}

/**
 * @param {Step} step
 * @param {Counts} counts
 */
function summary(step, counts) {
  const skipped = counts.skipped ? `, ${counts.skipped} skipped` : ''
  const note = counts.note ? ` (${counts.note})` : ''
  say(`${counts.passed} passed, ${counts.failed} failed${skipped}${note} in ${step.seconds.toFixed(1)} s`)
  return counts
}

/**
 * @param {Counts[]} counts
 * @param {'passed' | 'failed' | 'skipped'} key
 */
function sum(counts, key) {
  return counts.reduce((total, one) => total + one[key], 0)
}

/** @param {string} line */
function say(line) {
  process.stdout.write(`${line}\n`)
}
