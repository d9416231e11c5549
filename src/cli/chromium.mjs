import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'
import { chromium } from '@playwright/test'

/**
 * WebGL on the processor, so that every machine draws alike; the page around it without it, which takes a
 * fifth of the time for each frame; and none of the browser's own traffic.
 * The sandbox cannot start for the root user, who runs the tests on build machines.
 */
export const chromiumFlags = [
  '--no-sandbox',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--disable-gpu-compositing',
  '--disable-gpu-rasterization',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]

/** The build without a window first: the same engine, and the tests take two thirds of the time. */
const usualPaths = [
  '/usr/bin/chromium-headless-shell',
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
]

const commandNames = [
  'chromium-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
]

/**
 * A Chromium on this machine, or undefined. CHROMIUM, when set, is the only one considered.
 * @returns {string | undefined}
 */
export function findChromium() {
  if (process.env.CHROMIUM) return existsSync(process.env.CHROMIUM) ? process.env.CHROMIUM : undefined
  return [...usualPaths, ...onPath(), chromium.executablePath()].find((path) => existsSync(path))
}

/**
 * A Chromium on this machine; where there is none, Debian's package (as root) or Playwright's own build is
 * installed. Throws with what to do when neither works.
 * @param {(line: string) => void} say
 * @returns {string}
 */
export function ensureChromium(say) {
  const found = findChromium()
  if (found !== undefined) return found
  if (process.env.CHROMIUM) throw new Error(`CHROMIUM names ${process.env.CHROMIUM}, which is not there`)
  if (process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
    say('No Chromium found: installing the chromium-headless-shell package with apt-get.')
    run('apt-get', ['update', '-qq'])
    run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium-headless-shell'])
  } else {
    say("No Chromium found: installing Playwright's build (npx playwright install chromium).")
    run('npx', ['playwright', 'install', 'chromium'])
  }
  const installed = findChromium()
  if (installed !== undefined) return installed
  throw new Error(
    'no Chromium on this machine and none could be installed. Install chromium or Chrome, or name one: ' +
      'CHROMIUM=/path/to/chromium npm test',
  )
}

/**
 * @param {string} command
 * @param {string[]} parameters
 */
function run(command, parameters) {
  const environment = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  spawnSync(command, parameters, {
    stdio: ['ignore', 2, 2],
    env: environment,
    shell: process.platform === 'win32',
  })
}

function onPath() {
  const folders = (process.env.PATH ?? '').split(delimiter)
  return folders.flatMap((folder) => commandNames.map((name) => join(folder, name)))
}
