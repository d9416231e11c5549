import { type ChildProcess, spawn } from 'node:child_process'
import { type BrowserContext, chromium } from '@playwright/test'
import { chromiumFlags, findChromium } from '../../src/cli/chromium.mjs'

/** A browser with a profile of its own on the disk, to be ended as a crash or a loss of power ends it. */
export interface RealBrowser {
  readonly context: BrowserContext
  /** Ends all its processes at once; none of them gets to write or to tidy anything. */
  kill(): Promise<void>
}

export async function startRealBrowser(profile: string): Promise<RealBrowser> {
  const executable = findChromium()
  if (executable === undefined) throw new Error('No Chromium was found')
  const flags = [
    ...chromiumFlags,
    '--headless',
    '--remote-debugging-port=0',
    `--user-data-dir=${profile}`,
    'about:blank',
  ]
  // A group of its own, so that its children end with it and nothing else does.
  const started = spawn(executable, flags, { detached: true, stdio: ['ignore', 'ignore', 'pipe'] })
  const browser = await chromium.connectOverCDP(await addressOf(started))
  const [context] = browser.contexts()
  if (!context) throw new Error('The browser has no profile open')
  return {
    context,
    async kill() {
      const { pid } = started
      if (pid === undefined) throw new Error('The browser has not started')
      const ended = new Promise((resolve) => started.once('close', resolve))
      process.kill(-pid, 'SIGKILL')
      await ended
    },
  }
}

/** Where the browser listens, which it says as soon as it does. */
function addressOf({ stderr }: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = ''
    stderr?.on('data', (text) => {
      said += text
      const address = /DevTools listening on (ws:\S+)/.exec(said)?.[1]
      if (address !== undefined) resolve(address)
    })
    stderr?.once('close', () => reject(new Error(`The browser ended: ${said}`)))
  })
}
