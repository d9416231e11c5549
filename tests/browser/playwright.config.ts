import { defineConfig } from '@playwright/test'
import { chromiumFlags, findChromium } from '../../src/cli/chromium.mjs'
import { freePort } from '../../src/cli/free-port.mjs'

// Read again by every worker, which inherits the choice.
process.env.BOREWALL_PORT ||= `${await freePort()}`
const address = `http://127.0.0.1:${process.env.BOREWALL_PORT}/`

export default defineConfig({
  testDir: '.',
  testMatch: '**/*.spec.ts',
  outputDir: `output/failures-${process.env.BOREWALL_PORT}`,
  reporter: [['list'], ...(process.env.PLAYWRIGHT_JSON_OUTPUT_FILE ? [['json'] as const] : [])],
  fullyParallel: true,
  forbidOnly: true,
  // Two pages drawing on the processor keep two cores busy.
  workers: 2,
  timeout: process.env.PROOF === '1' ? 600_000 : 45_000,
  expect: { timeout: 10_000 },
  use: {
    baseURL: address,
    viewport: { width: 1440, height: 900 },
    locale: 'en-GB',
    timezoneId: 'UTC',
    // A move of the picture is one frame then: each costs a quarter of a second on the processor.
    contextOptions: { reducedMotion: 'reduce' },
    screenshot: 'only-on-failure',
    launchOptions: { args: chromiumFlags, ...executable() },
  },
  webServer: {
    command: `"${process.execPath}" src/cli/start.mjs`,
    cwd: '../..',
    url: address,
    env: { BROWSER: 'none' },
    gracefulShutdown: { signal: 'SIGTERM', timeout: 3000 },
    timeout: 120_000,
    stdout: 'ignore',
    stderr: 'pipe',
  },
})

function executable() {
  const executablePath = findChromium()
  return executablePath === undefined ? {} : { executablePath }
}
