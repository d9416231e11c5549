import { existsSync, readFileSync } from 'node:fs'

/**
 * How many tests of one runner passed and failed. A runner that did nothing has not passed.
 * @typedef {{ passed: number, failed: number, skipped: number, note?: string }} Counts
 */

/**
 * A step that is one check in itself: types, lint, build.
 * @param {import('./step.mjs').Step} step
 * @returns {Counts}
 */
export function countCheck(step) {
  return step.code === 0 ? { passed: 1, failed: 0, skipped: 0 } : { passed: 0, failed: 1, skipped: 0 }
}

/**
 * @param {string} file the JSON report of Vitest
 * @param {number} exitCode
 * @returns {Counts}
 */
export function countVitest(file, exitCode) {
  const report = readReport(file)
  if (report === undefined) return nothingRan()
  // A file that cannot be loaded holds no tests that could fail, yet it failed.
  const unloaded = report.testResults.filter(
    (/** @type {{ status: string, assertionResults: unknown[] }} */ result) =>
      result.status === 'failed' && result.assertionResults.length === 0,
  ).length
  return settle(
    report.numPassedTests,
    report.numFailedTests + unloaded,
    report.numPendingTests + report.numTodoTests,
    exitCode,
  )
}

/**
 * @param {string} file the JSON report of Playwright
 * @param {number} exitCode
 * @returns {Counts}
 */
export function countPlaywright(file, exitCode) {
  const report = readReport(file)
  if (report === undefined) return nothingRan()
  const { expected, unexpected, flaky, skipped } = report.stats
  return settle(expected, unexpected + flaky, skipped, exitCode)
}

/** @param {string} file */
function readReport(file) {
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined
}

/** @returns {Counts} */
function nothingRan() {
  return { passed: 0, failed: 1, skipped: 0, note: 'no report was written' }
}

/**
 * @param {number} passed
 * @param {number} failed
 * @param {number} skipped
 * @param {number} exitCode
 * @returns {Counts}
 */
function settle(passed, failed, skipped, exitCode) {
  if (passed + failed === 0) return { passed, failed: 1, skipped, note: 'no test was executed' }
  if (exitCode !== 0 && failed === 0) {
    return { passed, failed: 1, skipped, note: `every test passed, yet the runner ended with ${exitCode}` }
  }
  return { passed, failed, skipped }
}
