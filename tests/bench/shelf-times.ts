import type { Browser, Page } from '@playwright/test'
import { words } from '../../src/words/words'
import { keepMany } from '../browser/many-jobs'
import { type Figure, spread } from './figures'

const jobs = 10_000
const rounds = 7
const { kept, shelf } = words

/**
 * With 10,000 jobs on the shelf: from the choice of the list to its first rows, to every job being known, and from a
 * letter typed in the search to the rows that it leaves. Each ends with the frame that shows it.
 */
export async function shelfTimes(browser: Browser, address: string): Promise<Figure[]> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } })
  const page = await context.newPage()
  // As in a browser without WebGL: the picture is not what is measured here.
  await page.addInitScript(() => {
    Object.defineProperty(HTMLCanvasElement.prototype, 'getContext', { value: () => null })
  })
  await page.goto(address)
  await page.getByRole('button', { name: words.firstPage.measure }).waitFor()
  await keepMany(page, jobs)
  const times = { rows: [] as number[], all: [] as number[], again: [] as number[], search: [] as number[] }
  for (let round = 0; round < rounds; round += 1) {
    await page.goto(`${address}#nothing-${round}`)
    await page.reload()
    await page.getByRole('button', { name: words.file.menu, exact: true }).waitFor()
    // The page's own code is loaded once; what is measured is the list.
    const first = await opened(page)
    times.rows.push(first.rows)
    times.all.push(first.all)
    await page.getByRole('button', { name: shelf.back }).click()
    times.again.push((await opened(page)).rows)
    times.search.push(await searched(page, `order ${12_000 + round}`))
  }
  await context.close()
  return [
    { name: 'list of 10,000 jobs, first rows', value: spread(times.rows, 'ms'), target: '100 ms' },
    { name: 'list of 10,000 jobs, opened again', value: spread(times.again, 'ms'), target: '100 ms' },
    { name: 'list of 10,000 jobs, every job known', value: spread(times.all, 'ms') },
    { name: 'search in 10,000 jobs, rows shown', value: spread(times.search, 'ms'), target: '100 ms' },
  ]
}

/** Chooses the list from the menu of the job; times from the click. */
async function opened(page: Page): Promise<{ readonly rows: number; readonly all: number }> {
  await page.getByRole('button', { name: words.file.menu, exact: true }).click()
  return page.evaluate(
    ({ open, count, item }) =>
      new Promise<{ rows: number; all: number }>((resolve) => {
        const start = performance.now()
        let rows = 0
        const look = () => {
          if (rows === 0 && document.querySelector('tbody tr')) rows = performance.now() - start
          const isWhole = [...document.querySelectorAll('[role="status"]')].some((one) =>
            one.textContent?.startsWith(count),
          )
          if (isWhole) resolve({ rows, all: performance.now() - start })
          else requestAnimationFrame(look)
        }
        const button = [...document.querySelectorAll('button')].find((one) => one.textContent === item)
        if (!button) throw new Error(`There is no ${item} or ${open}`)
        button.click()
        requestAnimationFrame(look)
      }),
    { open: kept.open(''), count: shelf.count(jobs), item: words.file.kept },
  )
}

/** Types what one job alone has; times from the last letter to the frame with that row alone. */
async function searched(page: Page, text: string): Promise<number> {
  const field = page.getByRole('searchbox', { name: shelf.search })
  await field.fill(text.slice(0, -1))
  await page.evaluate(() => {
    const input = document.querySelector('input[type="search"]')
    input?.addEventListener(
      'input',
      () => {
        const start = performance.now()
        const look = () => {
          if (document.querySelectorAll('tbody tr').length > 1) return requestAnimationFrame(look)
          performance.measure('borewall:searched', { start, end: performance.now() })
        }
        requestAnimationFrame(look)
      },
      { capture: true, once: true },
    )
  })
  await field.press(text.slice(-1))
  await page.waitForFunction(() => performance.getEntriesByName('borewall:searched').length > 0)
  const took = await page.evaluate(() => {
    const [measured] = performance.getEntriesByName('borewall:searched')
    performance.clearMeasures('borewall:searched')
    return measured?.duration ?? Number.NaN
  })
  await field.fill('')
  return took
}
