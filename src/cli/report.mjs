/**
 * `npm run report -- FILE… -o PDF [--letter]`: prints the report of each job with the page itself, in a Chromium
 * without a window. Plain JavaScript, because it runs before anything is installed.
 */
import { writeFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { startFolder, withBundledCommand } from './bundled-command.mjs'
import { freePort } from './free-port.mjs'
import { ensureInstalled } from './install.mjs'

/** @typedef {import('./report-command.ts').Printing} Printing */

const root = fileURLToPath(new URL('../..', import.meta.url))
/** A job with many bores takes a few seconds, on a slow machine ten times as many. */
const mostMilliseconds = 120_000

async function run() {
  await ensureInstalled()
  await withBundledCommand(
    'report-command',
    async (/** @type {typeof import('./report-command.ts')} */ { reportCommand }) => {
      const asked = reportCommand(process.argv.slice(2), startFolder('report'))
      if ('jobs' in asked) return print(asked)
      process.exitCode = asked.exitStatus
      process.stderr.write(asked.errors)
    },
  )
}

/** @param {Printing} printing */
async function print(printing) {
  const { ensureChromium, chromiumFlags } = await import('./chromium.mjs')
  const { buildIfStale } = await import('./page-build.mjs')
  const { servePage } = await import('./page-server.mjs')
  const { chromium } = await import('@playwright/test')
  const executablePath = ensureChromium(say)
  const outDir = resolve(root, process.env.BOREWALL_OUT ?? 'dist')
  await buildIfStale(root, outDir, () => say('Building the page; this takes a few seconds.'))
  const server = await servePage({ outDir, port: await freePort(), version: 'report' })
  const browser = await chromium.launch({ executablePath, args: chromiumFlags })
  try {
    for (const job of printing.jobs) {
      // Each in a profile of its own: nothing of one job is kept beside the next.
      const context = await browser.newContext({ viewport: { width: 1280, height: 900 } })
      try {
        writeFileSync(job.to, await printed(await context.newPage(), server.address, job, printing.paper))
      } catch (error) {
        say(printing.notPrinted(job.name))
        throw error
      } finally {
        await context.close()
      }
      say(printing.written(job.to))
    }
  } finally {
    await browser.close()
    await server.close()
  }
}

/**
 * @param {import('@playwright/test').Page} page
 * @param {string} address
 * @param {import('./report-command.ts').ToPrint} job
 * @param {Printing['paper']} paper
 */
async function printed(page, address, { name, text }, paper) {
  page.setDefaultTimeout(mostMilliseconds)
  await page.goto(address)
  await page.locator('main.first-page').waitFor()
  await page.evaluate(
    ({ name, text }) => {
      const files = new DataTransfer()
      files.items.add(new File([text], name, { type: 'application/json' }))
      window.dispatchEvent(new DragEvent('drop', { dataTransfer: files, cancelable: true, bubbles: true }))
    },
    { name, text },
  )
  await page.locator('main.bench').waitFor()
  await page.evaluate(() => {
    location.hash = 'page=report'
  })
  await page.locator(`.report-paper input[value="${paper}"]`).check()
  // It can be pressed once every picture is drawn.
  await page.locator('.report-choice button:enabled').first().waitFor()
  return page.pdf({ preferCSSPageSize: true, printBackground: true })
}

/** @param {string} line */
function say(line) {
  process.stderr.write(`${line}\n`)
}

run().catch((error) => {
  process.stderr.write(`No report was printed: ${error instanceof Error ? error.message : error}\n`)
  process.exitCode = 1
})
