/**
 * `npm test`: everything that must hold, with the plain line "N passed, N failed" at the end.
 * `--proof` full counts, with the figures in tests/proof/RESULTS.md; `--bench` times and sizes, nothing
 * asserted; `--contact-sheet` every page, size and theme in one picture; `--pictures` those of README.
 * Plain JavaScript, because it runs before anything is installed.
 */
import { ensureInstalled } from '../src/cli/install.mjs'

const runs = {
  '': async () => (await import('./run/test-run.mjs')).testRun({ full: false }),
  '--proof': async () => (await import('./run/test-run.mjs')).testRun({ full: true }),
  '--bench': async () => (await import('./run/measure.mjs')).measure('tests/bench/bench.ts'),
  '--contact-sheet': async () =>
    (await import('./run/measure.mjs')).measure('tests/browser/contact-sheet/contact-sheet.ts'),
  '--pictures': async () => (await import('./run/measure.mjs')).measure('tests/browser/pictures/pictures.ts'),
}

const asked = process.argv.slice(2).join(' ')
const run = Object.entries(runs).find(([name]) => name === asked)?.[1]

if (run === undefined) {
  process.stderr.write('Usage: node tests/run.mjs [--proof | --bench | --contact-sheet | --pictures]\n')
  process.exitCode = 2
} else {
  try {
    await ensureInstalled()
    process.exitCode = await run()
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : error}\n`)
    if (asked === '' || asked === '--proof') process.stdout.write('0 passed, 1 failed\n')
    process.exitCode = 1
  }
}
