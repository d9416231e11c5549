import type { Browser, Page } from '@playwright/test'
import { exampleAddress } from '../../src/app/examples'
import { presetOf } from '../../src/core/gauge/presets'
import { fitScan } from '../../src/core/scan/fit-scan'
import { marksOf } from '../../src/core/scan/marks'
import { scanForm } from '../../src/core/scan/scan-form'
import { scanGridOf } from '../../src/core/surface/scan-grid'
import { readWholeScanTable } from '../../src/formats/scan-table'
import { scanTableWords } from '../../src/words/scan-table-words'
import { words } from '../../src/words/words'
import { dropFiles } from '../browser/job-files'
import { type Figure, spread } from './figures'

const [levels, angles] = [512, 360]
const runs = 5

/** A worn and scuffed wall as a probe writes it down, one row for each radius. */
function scanText(): string {
  const rows = ['depth_mm,angle_deg,radius_um']
  for (let level = 0; level < levels; level += 1) {
    for (let angle = 0; angle < angles; angle += 1) {
      const smear = level > 100 && level < 300 && Math.abs(angle - 50) < 4 ? -14 : 0
      const noise = Math.sin(level * 12.9898 + angle * 78.233) * 1.5
      const radius = 18 * Math.cos((angle * Math.PI) / 180) + smear + noise
      rows.push(`${(4 + level / 6).toFixed(3)},${angle},${radius.toFixed(1)}`)
    }
  }
  return rows.join('\n')
}

/** How long the parts of the work on a scan of 360 × 512 take by themselves. */
export function scanCoreTimes(): Figure[] {
  const bytes = new TextEncoder().encode(scanText())
  const table = readWholeScanTable(bytes)
  if (!table.ok) throw new Error(`the scan could not be read: ${table.why}`)
  const { scan } = table
  const options = { nearDiameterMm: 60, ...presetOf('radial-probe') }
  const fit = fitScan(scan, options)
  const grid = { middleMm: 60, lengthMm: 95, belts: [], isLocal: false }
  const timed = (name: string, step: () => unknown): Figure => ({
    name: `scan of 360 × 512: ${name}`,
    value: spread(
      Array.from({ length: runs }, () => {
        const start = performance.now()
        step()
        return performance.now() - start
      }),
      'ms',
    ),
  })
  return [
    timed('file to radii', () => readWholeScanTable(bytes)),
    timed('axis and smooth form', () => fitScan(scan, options)),
    timed('marks', () => marksOf(scan, fit, { nearDiameterMm: 60, ports: [] })),
    timed('wall to grid', () => scanGridOf(scan, fit, grid)),
    timed('circles, cylinders, harmonics', () => scanForm(scan, fit, options)),
  ]
}

/** From dropping the file to its preview, from taking it to the first frame, and how long the page stood still. */
export async function scanPageTimes(browser: Browser, address: string): Promise<Figure[]> {
  const text = scanText()
  const previews: number[] = []
  const frames: number[] = []
  const longest: number[] = []
  for (let index = 0; index < runs; index += 1) {
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 } })
    const page = await context.newPage()
    await page.goto(`${address}${exampleAddress('A')}`)
    await markOf(page, 'borewall:first-picture')
    await page.waitForTimeout(1000)
    const start = await now(page)
    await dropFiles(page, [{ name: 'wall.csv', text }])
    // Handing the text to the page is the test's own work.
    await watchStandstill(page)
    const take = page.getByRole('button', { name: scanTableWords.take('1') })
    await take.waitFor()
    previews.push((await now(page)) - start)
    const taken = await now(page)
    await take.click()
    frames.push((await markOf(page, 'borewall:scan-picture')) - taken)
    await page.getByText(words.scans.noVerdict).waitFor()
    longest.push(await page.evaluate(() => Reflect.get(window, 'longestTask') as number))
    await context.close()
  }
  return [
    { name: 'scan of 360 × 512: file dropped to preview', value: spread(previews, 'ms') },
    {
      name: 'scan of 360 × 512: taken to first frame, fit included',
      value: spread(frames, 'ms'),
      target: '1,500 ms with the preview',
    },
    { name: 'scan of 360 × 512: longest that the page stood still', value: spread(longest, 'ms') },
  ]
}

function now(page: Page): Promise<number> {
  return page.evaluate(() => performance.now())
}

async function markOf(page: Page, name: string): Promise<number> {
  const found = await page.waitForFunction(
    (mark) => performance.getEntriesByName(mark).at(-1)?.startTime,
    name,
  )
  return (await found.jsonValue()) ?? Number.NaN
}

/** Keeps the longest task of the main thread, ms, on the window. */
function watchStandstill(page: Page): Promise<void> {
  return page.evaluate(() => {
    Reflect.set(window, 'longestTask', 0)
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) {
        const before = Reflect.get(window, 'longestTask') as number
        Reflect.set(window, 'longestTask', Math.max(before, duration))
      }
    }).observe({ type: 'longtask' })
  })
}
