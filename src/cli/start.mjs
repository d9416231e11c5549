/**
 * `npm start`: installs what is missing, builds the page where its sources changed, serves it on a fixed
 * address of this machine only, and opens it. Plain JavaScript, because it runs before anything is installed.
 */
import { readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { addressAt, chosenPort } from './address.mjs'
import { ensureInstalled } from './install.mjs'
import { openInBrowser } from './open-in-browser.mjs'
import { buildIfStale } from './page-build.mjs'
import { servePage } from './page-server.mjs'
import { portHolder } from './port-holder.mjs'

const root = fileURLToPath(new URL('../..', import.meta.url))
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))

async function start() {
  const port = chosenPort()
  const address = addressAt(port)
  const holder = await portHolder(port)
  if (holder.kind === 'borewall') return meetRunning(address, holder.version)
  if (holder.kind === 'other') {
    throw new Error(
      `another program already uses port ${port}, where Borewall keeps its jobs (${address}).\n` +
        `Stop that program and start again. ${whoHoldsIt(port)}`,
    )
  }
  await ensureInstalled()
  const outDir = resolve(root, process.env.BOREWALL_OUT ?? 'dist')
  await buildIfStale(root, outDir, () => say('Building the page; this takes a few seconds.'))
  const server = await servePage({ outDir, port, version })
  stopOnSignal(server)
  const opened = await openInBrowser(address)
  say(
    `Borewall ${version} runs at ${address}${opened ? ' and opens in your browser.' : ': open it in a browser.'}`,
  )
  say('Jobs are kept by that browser, under this address. Ctrl+C stops Borewall; the jobs stay.')
}

/**
 * @param {string} address
 * @param {string} running
 */
async function meetRunning(address, running) {
  const opened = await openInBrowser(address)
  say(
    `Borewall already runs at ${address}${opened ? ' and opens in your browser.' : ': open it in a browser.'}`,
  )
  if (running !== version) {
    say(
      `It is version ${running}; this folder holds ${version}. To use this one, stop the other first (Ctrl+C).`,
    )
  }
}

/** @param {number} port */
function whoHoldsIt(port) {
  return process.platform === 'win32'
    ? `"netstat -ano | findstr :${port}" shows its number.`
    : `"lsof -i :${port}" names it.`
}

/** @param {{ close(): Promise<void> }} server */
function stopOnSignal(server) {
  for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP'])) {
    process.once(signal, async () => {
      await server.close()
      process.exit(0)
    })
  }
}

/** @param {string} line */
function say(line) {
  process.stdout.write(`${line}\n`)
}

start().catch((error) => {
  process.stderr.write(`Borewall did not start: ${error instanceof Error ? error.message : error}\n`)
  process.exitCode = 1
})
