import { join, resolve } from 'node:path'
import { ensureChromium } from '../../src/cli/chromium.mjs'
import { buildIfStale } from '../../src/cli/page-build.mjs'
import { root } from './step.mjs'
import { importTypeScript } from './typescript.mjs'

/**
 * Runs a module that looks at the built page and reports, asserting nothing: its `run(setting)`.
 * @param {string} file
 * @returns {Promise<number>} the exit code
 */
export async function measure(file) {
  /** @param {string} line */
  const say = (line) => process.stderr.write(`${line}\n`)
  const chromium = ensureChromium(say)
  const outDir = resolve(root, process.env.BOREWALL_OUT ?? 'dist')
  await buildIfStale(root, outDir, () => say('Building the page.'))
  const { run } = await importTypeScript(file)
  await run({ root, outDir, chromium, output: join(root, 'tests/browser/output') })
  return 0
}
