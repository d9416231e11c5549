import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, type Page, test } from '@playwright/test'
import { newJob } from '../../src/job/new-job'
import type { Job } from '../../src/job/schema'
import { writeJob } from '../../src/job/write-job'
import { words } from '../../src/words/words'
import { report } from '../proof/record'
import { runCount } from '../proof/run-count'
import { seededRandom } from '../proof/seeded-random'
import { withoutPicture } from './bench-fixture'
import { dropFiles } from './job-files'
import { type RealBrowser, startRealBrowser } from './killed-browser'

const seed = 11
const kills = runCount({ quick: 5, full: 100 })

declare global {
  interface Window {
    /** Takes the stations of the sheet with their figures each time the page shows all of them as saved. */
    shownAsSaved(readings: readonly string[]): Promise<void>
  }
}

/** A job without readings and with more stations than are typed before the browser is killed. */
function emptyJob(name: string): Job {
  let count = 0
  const job = newJob(() => `${name}-${count++}`)
  const [first] = job.setUps
  const [bore] = job.bores
  const [survey] = bore?.surveys ?? []
  if (!first || !bore || !survey) throw new Error('A new job is not as it was')
  const { settingAssumed: _, ...setUp } = first
  const levelsMm = Array.from({ length: 10 }, (__, level) => 5 + 8 * level)
  return {
    ...job,
    name,
    setUps: [{ ...setUp, settingSizeMm: 54 }],
    bores: [{ ...bore, surveys: [{ ...survey, levelsMm, axesDegrees: [0, 45, 90, 135] }] }],
  }
}

/** The figures in the sheet by station, as in "8 mm, 0°: 54.042". */
const readingsShown = (page: Page) => page.evaluate(readingsInSheet)

function readingsInSheet(): string[] {
  return [...document.querySelectorAll('table button[aria-label]')].flatMap((button) => {
    const label = button.getAttribute('aria-label') ?? ''
    return /^[\d.]+ mm, \d+°: [\d.]+/.exec(label)?.[0] ?? []
  })
}

/** Whenever a frame shows "Saved", tells what the sheet holds in that frame. */
function tellWhatIsSaved(): void {
  let told = ''
  const look = () => {
    const saved = [...document.querySelectorAll('.bar-saving')].some((one) =>
      /^Saved \d/.test(one.textContent ?? ''),
    )
    const readings = [...document.querySelectorAll('table button[aria-label]')].flatMap(
      (button) => /^[\d.]+ mm, \d+°: [\d.]+/.exec(button.getAttribute('aria-label') ?? '')?.[0] ?? [],
    )
    if (saved && readings.length > 0 && readings.join() !== told) {
      told = readings.join()
      void window.shownAsSaved(readings)
    }
    requestAnimationFrame(look)
  }
  requestAnimationFrame(look)
}

async function openPage({ context }: RealBrowser, address: string): Promise<Page> {
  const [page = await context.newPage()] = context.pages()
  await withoutPicture(page)
  await page.goto(address)
  return page
}

interface Moment {
  /** So many readings are shown as saved, */
  readonly readings: number
  /** and then so long is waited while more are typed, ms. */
  readonly wait: number
}

/** Types until the browser is gone; resolves with what it had shown as saved last. */
async function typeUntilKilled(page: Page, kill: () => Promise<void>, moment: Moment): Promise<string[]> {
  let shown: string[] = []
  let killing: Promise<void> | undefined
  await page.exposeFunction('shownAsSaved', (readings: string[]) => {
    shown = readings
    if (readings.length < moment.readings) return
    killing ??= new Promise((resolve) => setTimeout(resolve, moment.wait)).then(kill)
  })
  await page.evaluate(tellWhatIsSaved)
  await page.getByRole('region', { name: words.next.label }).getByRole('textbox').first().focus()
  for (let number = 0; number < 40; number += 1) {
    try {
      await page.keyboard.type(`54.${String(10 + number).padStart(3, '0')}`)
      await page.keyboard.press('Enter')
    } catch (error) {
      if (!killing) throw error
      break
    }
  }
  // On a slow machine all are typed before enough of them are shown as saved.
  for (let waited = 0; !killing && waited < 100; waited += 1) {
    await new Promise((later) => setTimeout(later, 100))
  }
  if (!killing) throw new Error(`Only ${shown.length} readings were shown as saved`)
  await killing
  return shown
}

test(`every reading that was shown as saved is there after the browser was killed, ${kills} times (seed ${seed})`, async ({
  baseURL,
}) => {
  test.setTimeout(60_000 + kills * 12_000)
  const address = baseURL ?? ''
  const random = seededRandom(seed)
  const profile = await mkdtemp(join(tmpdir(), 'borewall-killed-'))
  let expected: { readonly name: string; readonly readings: readonly string[] } | undefined
  let found = 0
  let browser = await startRealBrowser(profile)
  try {
    for (let kill = 0; kill <= kills; kill += 1) {
      const page = await openPage(browser, expected ? address : `${address}#example=A`)
      await expect(page.getByRole('textbox', { name: words.bar.jobName })).toBeVisible()
      if (expected) {
        await expect(page.getByRole('textbox', { name: words.bar.jobName })).toHaveValue(expected.name)
        const there = new Set(await readingsShown(page))
        expect(
          expected.readings.filter((reading) => !there.has(reading)),
          `shown as saved before kill ${kill}, and gone`,
        ).toEqual([])
        found += expected.readings.length
      }
      if (kill === kills) break
      const name = `killed-${kill}`
      await dropFiles(page, [{ name: `${name}.json`, text: writeJob(emptyJob(name)) }])
      await expect(page.getByText(/^Saved \d\d:\d\d$/)).toBeVisible()
      await expect(page.getByRole('textbox', { name: words.bar.jobName })).toHaveValue(name)
      const readings = await typeUntilKilled(page, browser.kill, {
        readings: 1 + Math.floor(10 * random.even()),
        wait: 120 * random.even(),
      })
      expected = { name, readings }
      browser = await startRealBrowser(profile)
    }
  } finally {
    await browser.kill()
    await rm(profile, { recursive: true, force: true, maxRetries: 5 })
  }
  // A test in which nothing was ever shown as saved would have proved nothing.
  expect(found).toBeGreaterThan(kills)
  report(
    'Readings after the browser was killed',
    { kills, 'readings shown as saved, all there': found },
    seed,
  )
})
