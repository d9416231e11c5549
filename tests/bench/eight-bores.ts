import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser, Page } from '@playwright/test'
import type { Job } from '../../src/job/schema'
import { words } from '../../src/words/words'
import { dropFiles } from '../browser/job-files'
import { type Figure, spread } from './figures'
import { installFrameProbe } from './frame-probe'
import { quiet } from './page-times'

/** Few: with the graphics drawn on the processor a turn of eight bores takes seconds. */
const presses = 3

/** Eight bores side by side: each frame while they turn, and from a key to the frames of a new exaggeration. */
export async function eightBoreTimes(browser: Browser, address: string, root: string): Promise<Figure[]> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } })
  const page = await context.newPage()
  await page.addInitScript(installFrameProbe)
  await page.goto(address)
  await page.getByRole('heading', { level: 1 }).waitFor()
  await dropFiles(page, [{ name: 'eight.json', text: eightBores(root) }])
  await page.getByRole('button', { name: words.pages.compare, exact: true }).click()
  await page.locator('.wall-list li').nth(7).waitFor()
  await page.waitForFunction(() => window.frameProbe.frames > 0)
  const turns = await pressed(page, () =>
    page.getByRole('button', { name: words.picture.turnRight, exact: true }).click(),
  )
  const exaggerations = await pressed(page, (index) =>
    page
      .getByRole('slider', { name: words.picture.exaggeration })
      .press(index % 2 === 0 ? 'ArrowLeft' : 'ArrowRight'),
  )
  await context.close()
  return [
    { name: 'eight bores orbiting, each frame', value: spread(turns.flatMap(between), 'ms') },
    {
      name: 'eight bores, new exaggeration to its first frame',
      value: spread(exaggerations.flatMap(first), 'ms'),
    },
    {
      name: 'eight bores, new exaggeration to its last frame',
      value: spread(exaggerations.flatMap(last), 'ms'),
    },
  ]
}

/** Times of the frames after each press, ms since it; the first press is not counted. */
async function pressed(page: Page, press: (index: number) => Promise<void>): Promise<readonly number[][]> {
  const frames: number[][] = []
  for (let index = 0; index < presses + 1; index += 1) {
    await quiet(page)
    await press(index)
    await page.waitForFunction(() => window.frameProbe.sinceInput.length > 0)
    await quiet(page)
    const times = await page.evaluate(() => {
      const { sinceInput, inputAt } = window.frameProbe
      return sinceInput.map((time) => time - inputAt)
    })
    if (index >= 1) frames.push(times)
  }
  return frames
}

const first = (times: readonly number[]) => times.slice(0, 1)
const last = (times: readonly number[]) => times.slice(-1)
const between = (times: readonly number[]) =>
  times.slice(1).map((time, index) => time - (times[index] ?? time))

/** The block of four, twice. */
function eightBores(root: string): string {
  const job: Job = JSON.parse(readFileSync(join(root, 'scenarios/B-four-cylinder-iron.json'), 'utf8'))
  const again = job.bores.map((bore, index) => ({
    ...bore,
    id: `${bore.id}-again`,
    name: `${index + 5}`,
    surveys: bore.surveys.map((survey) => ({ ...survey, id: `${survey.id}-again` })),
  }))
  return JSON.stringify({ ...job, id: 'eight', name: 'Eight', bores: [...job.bores, ...again] })
}
