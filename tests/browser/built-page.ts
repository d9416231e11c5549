import { type Browser, chromium } from '@playwright/test'
import { chromiumFlags } from '../../src/cli/chromium.mjs'
import { freePort } from '../../src/cli/free-port.mjs'
import { servePage } from '../../src/cli/page-server.mjs'
import type { Setting } from '../run/setting'

/** Serves the built page and starts a browser for the length of one piece of work. */
export async function withBuiltPage(
  setting: Setting,
  work: (browser: Browser, address: string) => Promise<void>,
): Promise<void> {
  const server = await servePage({ outDir: setting.outDir, port: await freePort(), version: 'test' })
  const browser = await chromium.launch({ executablePath: setting.chromium, args: chromiumFlags })
  try {
    await work(browser, server.address)
  } finally {
    await browser.close()
    await server.close()
  }
}
