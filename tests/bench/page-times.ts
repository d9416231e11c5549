import type { Browser, Page } from '@playwright/test'
import { exampleAddress } from '../../src/app/examples'
import { words } from '../../src/words/words'
import { type Figure, spread } from './figures'
import { installFrameProbe } from './frame-probe'
import { loadedFiles } from './page-bytes'

const loads = 7
const changes = 10
const firstNumbers = 'borewall:first-numbers'
const firstPicture = 'borewall:first-picture'

/** From navigation to the first numbers and the first picture, each time in a browser that knows nothing. */
export async function loadTimes(browser: Browser, address: string, outDir: string): Promise<Figure[]> {
  const numbers: number[] = []
  const pictures: number[] = []
  let before: string[] = []
  for (let index = 0; index < loads; index += 1) {
    const page = await openPage(browser, address)
    const numbersAt = await markedAt(page, firstNumbers)
    numbers.push(numbersAt)
    pictures.push(await markedAt(page, firstPicture))
    before = await loadedBefore(page, numbersAt)
    await page.context().close()
  }
  return [
    { name: 'navigation to first numbers', value: spread(numbers, 'ms') },
    { name: 'navigation to first picture', value: spread(pictures, 'ms') },
    { name: 'loaded before the first numbers, packed', value: loadedFiles(outDir, before) },
  ]
}

/** From a click or a key to the frame that shows it, finished by the graphics; and what an idle page draws. */
export async function changeTimes(browser: Browser, address: string): Promise<Figure[]> {
  const page = await openPage(browser, address)
  await markedAt(page, firstPicture)
  await quiet(page)
  const idle = await idleFrames(page, 5000)
  const exaggeration = await timed(page, async (index) => {
    const slider = page.getByRole('slider', { name: words.picture.exaggeration })
    await slider.press(index % 2 === 0 ? 'ArrowLeft' : 'ArrowRight')
  })
  const data = await timed(
    page,
    async (index) => {
      await page.keyboard.press(index % 2 === 0 ? 'Control+z' : 'Control+Shift+z')
    },
    () => changeOneReading(page),
  )
  await page.context().close()
  return [
    { name: 'new exaggeration to its first frame', value: spread(exaggeration.first, 'ms') },
    { name: 'new exaggeration to its last frame', value: spread(exaggeration.last, 'ms') },
    { name: 'changed reading to its first frame', value: spread(data.first, 'ms') },
    { name: 'changed reading to its last frame', value: spread(data.last, 'ms') },
    { name: 'frames drawn in 5 s of rest', value: `${idle.frames}`, target: '0' },
    { name: 'animation callbacks in 5 s of rest', value: `${idle.callbacks}`, target: '0' },
  ]
}

async function openPage(browser: Browser, address: string): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } })
  const page = await context.newPage()
  await page.addInitScript(installFrameProbe)
  await page.goto(`${address}${exampleAddress('A')}`)
  return page
}

async function markedAt(page: Page, name: string): Promise<number> {
  const marked = await page.waitForFunction((mark) => performance.getEntriesByName(mark)[0]?.startTime, name)
  return (await marked.jsonValue()) ?? Number.NaN
}

function loadedBefore(page: Page, time: number): Promise<string[]> {
  return page.evaluate((end) => {
    const resources = performance.getEntriesByType('resource') as PerformanceResourceTiming[]
    const loaded = resources.filter(({ responseEnd }) => responseEnd <= end).map(({ name }) => name)
    return [...new Set([location.href, ...loaded])].filter((name) => name.startsWith(location.origin))
  }, time)
}

/** Waits until nothing has been drawn for half a second. */
export async function quiet(page: Page): Promise<void> {
  await page.waitForFunction(() => performance.now() - window.frameProbe.finishedAt > 500)
}

async function idleFrames(page: Page, duration: number): Promise<{ frames: number; callbacks: number }> {
  const counts = () =>
    page.evaluate(() => ({
      frames: window.frameProbe.frames,
      callbacks: window.frameProbe.animationCallbacks,
    }))
  const before = await counts()
  await page.waitForTimeout(duration)
  const after = await counts()
  return { frames: after.frames - before.frames, callbacks: after.callbacks - before.callbacks }
}

/** Times of the first and the last frame after each of a row of changes, the first two not counted. */
async function timed(
  page: Page,
  change: (index: number) => Promise<void>,
  prepare: () => Promise<void> = async () => {},
): Promise<{ first: number[]; last: number[] }> {
  await prepare()
  const first: number[] = []
  const last: number[] = []
  for (let index = 0; index < changes + 2; index += 1) {
    await quiet(page)
    await change(index)
    await page.waitForFunction(() => window.frameProbe.sinceInput.length > 0)
    await quiet(page)
    const times = await page.evaluate(() => {
      const { sinceInput, inputAt } = window.frameProbe
      return sinceInput.map((time) => time - inputAt)
    })
    if (index < 2) continue
    first.push(times[0] ?? Number.NaN)
    last.push(times[times.length - 1] ?? Number.NaN)
  }
  return { first, last }
}

/** Changes the first reading on the sheet, so that undo and redo change it back and forth. */
async function changeOneReading(page: Page): Promise<void> {
  await page.locator('[data-cell="0 0"]').click()
  const field = page.locator('.next-input')
  await field.fill('54.040 54.041 54.040')
  await field.press('Enter')
  await page.locator('.verdict').click()
}
