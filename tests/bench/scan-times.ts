import type { Browser } from '@playwright/test'
import { exampleAddress } from '../../src/app/examples'
import { presetOf } from '../../src/core/gauge/presets'
import { fitScan } from '../../src/core/scan/fit-scan'
import { marksOf } from '../../src/core/scan/marks'
import { scanForm } from '../../src/core/scan/scan-form'
import { scanGridOf } from '../../src/core/surface/scan-grid'
import { readWholeScanTable } from '../../src/formats/scan-table'
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

interface ScanTimes {
  readonly preview: number
  readonly taken: number
  readonly frame: number
  readonly fitted: number
  readonly longest: number
}

interface HowTaken {
  readonly text: string
  readonly hasGraphics: boolean
  /** How long the preview is looked at. */
  readonly lookMs: number
}

/**
 * From dropping the file to its preview, and, taken as soon as it can be, to the first frame that holds its wall and to
 * all that it proves; with the graphics, which are drawn on the processor here, and without.
 */
export async function scanPageTimes(browser: Browser, address: string): Promise<Figure[]> {
  const text = scanText()
  const drawn: ScanTimes[] = []
  const flat: ScanTimes[] = []
  const lookedAt: ScanTimes[] = []
  for (let index = 0; index < runs; index += 1) {
    drawn.push(await scanTaken(browser, address, { text, hasGraphics: true, lookMs: 0 }))
    flat.push(await scanTaken(browser, address, { text, hasGraphics: false, lookMs: 0 }))
    lookedAt.push(await scanTaken(browser, address, { text, hasGraphics: true, lookMs: 2000 }))
  }
  const figure = (name: string, times: readonly number[], target?: string): Figure => ({
    name: `scan of 360 × 512: ${name}`,
    value: spread(times, 'ms'),
    ...(target === undefined ? {} : { target }),
  })
  return [
    figure(
      'file dropped to preview',
      drawn.map(({ preview }) => preview),
    ),
    figure(
      'file dropped to first frame, fit included',
      drawn.map(({ frame }) => frame),
      '1,500 ms',
    ),
    figure(
      'file dropped to all that it proves',
      drawn.map(({ fitted }) => fitted),
      '1,500 ms',
    ),
    figure(
      'the same without WebGL',
      flat.map(({ fitted }) => fitted),
      '1,500 ms',
    ),
    figure(
      'taken after two seconds, to first frame',
      lookedAt.map(({ frame, taken }) => frame - taken),
    ),
    figure(
      'longest that the page stood still',
      drawn.map(({ longest }) => longest),
    ),
  ]
}

/** One scan dropped on a job and taken at once, timed in the page: a test's own way to it would count as well. */
async function scanTaken(browser: Browser, address: string, how: HowTaken): Promise<ScanTimes> {
  const { hasGraphics } = how
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } })
  const page = await context.newPage()
  if (!hasGraphics) await page.addInitScript(withoutGraphics)
  await page.goto(`${address}${exampleAddress('A')}`)
  if (hasGraphics) await page.waitForFunction(() => performance.getEntriesByName('borewall:first-picture')[0])
  await page.waitForTimeout(1500)
  const times = await page.evaluate(dropAndTake, how)
  await context.close()
  return times
}

/** Runs in the page, before anything else. */
function withoutGraphics(): void {
  const { getContext } = HTMLCanvasElement.prototype
  Object.assign(HTMLCanvasElement.prototype, {
    getContext(this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
      return kind === 'webgl2' ? null : Reflect.apply(getContext, this, [kind, ...rest])
    },
  })
}

/** Runs in the page. */
async function dropAndTake({ text, hasGraphics, lookMs }: HowTaken): Promise<ScanTimes> {
  const pause = () => new Promise((resolve) => setTimeout(resolve, 4))
  const markedAt = async (name: string) => {
    for (;;) {
      const [mark] = performance.getEntriesByName(name)
      if (mark) return mark.startTime
      await pause()
    }
  }
  // What the text cost to get here is not the page's own.
  await new Promise((resolve) => setTimeout(resolve, 500))
  let longest = 0
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) longest = Math.max(longest, duration)
  }).observe({ type: 'longtask' })
  const dataTransfer = new DataTransfer()
  dataTransfer.items.add(new File([text], 'wall.csv'))
  const start = performance.now()
  for (const type of ['dragover', 'drop']) {
    document.body.dispatchEvent(new DragEvent(type, { bubbles: true, cancelable: true, dataTransfer }))
  }
  let take: HTMLButtonElement | null = null
  while (!take) {
    await pause()
    take = document.querySelector('button.is-take:enabled')
  }
  const preview = performance.now() - start
  if (lookMs > 0) await new Promise((resolve) => setTimeout(resolve, lookMs))
  const taken = performance.now() - start
  take.click()
  const frame = hasGraphics ? (await markedAt('borewall:scan-picture')) - start : Number.NaN
  const fitted = (await markedAt('borewall:scan-fitted')) - start
  return { preview, taken, frame, fitted, longest }
}
