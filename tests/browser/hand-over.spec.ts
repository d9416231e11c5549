import { readFileSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { fileURLToPath, pathToFileURL } from 'node:url'
import type { Browser, BrowserContextOptions, Page, TestInfo } from '@playwright/test'
import { inspectCommand } from '../../src/cli/inspect-command'
import { inspectedScans } from '../../src/job/inspected-scans'
import { readJob } from '../../src/job/read-job'
import type { Job } from '../../src/job/schema'
import { findingsOf } from '../../src/job/selectors'
import { writeJob } from '../../src/job/write-job'
import { handOver } from '../../src/words/english/hand-over'
import { findingsPage, type Passage } from '../../src/words/findings-page'
import { letterheadWords } from '../../src/words/letterhead-words'
import { scanPassages } from '../../src/words/scan-passages'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'
import { hostileJob, hostileText } from './hostile-job'
import { chooseFile, pickFromMenu } from './job-files'
import { patchesOf, shareNear } from './pixels'

const { send, marks, report } = words
const { dialog: shop } = letterheadWords
/** Of the whole file, without photographs. */
const mostBytes = 1_000_000

const files = {
  B: 'B-four-cylinder-iron.json',
  C: 'C-wet-liner-diesel.json',
  D1: 'D1-compressor.json',
  D2: 'D2-hydraulic-tube.json',
  E: 'E-scuff-scan-360.json',
} as const
type Name = keyof typeof files | 'A'

const pathOf = (name: Name) =>
  fileURLToPath(
    new URL(`../../scenarios/${name === 'A' ? 'A-two-stroke-single.json' : files[name]}`, import.meta.url),
  )

function scenario(name: Name): Job {
  const read = readJob(readFileSync(pathOf(name)))
  if (!read.ok) throw new Error(`${name} is no job`)
  return read.job
}

/** Makes the file of the job on the bench, and gives where it lies. */
async function handedOver(page: Page, testInfo: TestInfo): Promise<{ name: string; path: string }> {
  await page.getByRole('button', { name: send.open, exact: true }).click()
  const dialog = page.getByRole('dialog', { name: send.title })
  const download = page.waitForEvent('download')
  await dialog.getByRole('button', { name: send.handOver.make, exact: true }).click()
  const done = await download
  const path = testInfo.outputPath(done.suggestedFilename())
  await done.saveAs(path)
  await expect(dialog.getByText(send.done.saved(done.suggestedFilename()))).toBeVisible()
  await page.keyboard.press('Escape')
  return { name: done.suggestedFilename(), path }
}

interface Opened {
  readonly page: Page
  /** Requests but the one for the file, breaches of its policy, and what the console was told. */
  readonly complaints: string[]
  close(): Promise<void>
}

const knownWarning = /GL Driver Message \(OpenGL, Performance/

/** Opens a file from the disk, in a clean profile without a network. */
async function openedFile(browser: Browser, path: string, options: BrowserContextOptions): Promise<Opened> {
  const context = await browser.newContext({ baseURL: '', offline: true, ...options })
  const page = await context.newPage()
  const complaints: string[] = []
  const address = pathToFileURL(path).href
  context.on('console', (message) => {
    if (!knownWarning.test(message.text())) complaints.push(`${message.type()}: ${message.text()}`)
  })
  context.on('weberror', (error) => complaints.push(`thrown: ${error.error().message}`))
  context.on('request', (request) => {
    if (request.url() !== address && !request.url().startsWith('data:')) complaints.push(request.url())
  })
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', ({ violatedDirective }) => {
      console.error(`policy: ${violatedDirective}`)
    })
  })
  await page.goto(address)
  return { page, complaints, close: () => context.close() }
}

interface Station {
  readonly bore: string
  readonly survey: string
  readonly levelMm: number
  readonly axisDegrees: number
  readonly diameterAt20Mm: number
  readonly expandedUncertaintyMm: number
  readonly verdict: string | null
}

/** As a page writes it: U rounded up to the next whole µm, of which a twentieth may fall away. */
function written({ diameterAt20Mm, expandedUncertaintyMm }: Station): string {
  const um = Math.max(1, Math.ceil(expandedUncertaintyMm * 1000 - 0.05 - 1e-9))
  return `${diameterAt20Mm.toFixed(3)} ± ${(um / 1000).toFixed(3)}`
}

function textsOf(passage: Passage): readonly string[] {
  if (passage.kind === 'list') return passage.items
  if (passage.kind === 'entries') return passage.entries.flatMap(({ left, under }) => [left, ...under])
  return passage.kind === 'table' || passage.kind === 'title' ? [] : [passage.text]
}

const unspaced = (text: string) => text.replace(/\s+/g, '')

/** Every station with U and verdict in its cell, and every text of the page that `inspect` prints. */
async function expectFindings(page: Page, name: Name): Promise<void> {
  const outcome: { bores: { bore: string; survey: string }[]; stations: Station[] } = JSON.parse(
    inspectCommand([pathOf(name), '--json'], '.').output,
  )
  const read = outcome.bores.filter(({ bore, survey }) =>
    outcome.stations.some((station) => station.bore === bore && station.survey === survey),
  )
  const tables = page.locator('.figures table', {
    has: page.getByRole('columnheader', { name: report.depthHead }),
  })
  await expect(tables).toHaveCount(read.length)
  for (const [index, { bore, survey }] of read.entries()) {
    const rows = await tables.nth(index).locator('tr').allInnerTexts()
    const cells = rows.map((row) => row.split('\t'))
    const axes = cells[0] ?? []
    const stations = outcome.stations.filter((one) => one.bore === bore && one.survey === survey)
    for (const station of stations) {
      const row = cells.find(([head]) => head?.trim() === `${station.levelMm} mm`)
      const cell = row?.[axes.findIndex((axis) => axis.trim() === `${station.axisDegrees}°`)] ?? ''
      expect(cell, `${bore}, ${station.levelMm} mm, ${station.axisDegrees}°`).toContain(written(station))
      const mark = Object.entries(marks).find(([verdict]) => verdict === station.verdict)?.[1]
      if (mark !== undefined && cell.includes('\n')) expect(cell).toContain(mark)
    }
  }
  const job = scenario(name)
  const { machine: _, invented: __, ...figures } = job
  const passages = [...findingsPage(figures, findingsOf(job)), ...scanPassages(inspectedScans(job))]
  const shown = unspaced((await page.locator('.figures').textContent()) ?? '')
  const lost = passages.flatMap(textsOf).filter((text) => text !== '' && !shown.includes(unspaced(text)))
  expect(lost).toEqual([])
}

test('the file of each example says all that inspect says, with scripts off, offline and in less than a megabyte', async ({
  page,
  browser,
}, testInfo) => {
  test.slow()
  await withoutPicture(page)
  for (const name of ['B', 'C', 'D1', 'D2', 'E'] as const) {
    await openApp(page, name)
    const file = await handedOver(page, testInfo)
    const off = await openedFile(browser, file.path, { javaScriptEnabled: false })
    await expectFindings(off.page, name)
    await expect(off.page.locator('.told .steps > li').first()).toBeVisible()
    await expect(off.page.locator('.bore-figure:visible')).toHaveCount(0)
    expect((await readFile(file.path)).length, name).toBeLessThan(mostBytes)
    expect(off.complaints, name).toEqual([])
    await off.close()
  }
})

test('a bore turns in its file under the hand and by keys as the app drew it, nothing else runs and nothing is loaded', async ({
  page,
  browser,
}, testInfo) => {
  test.slow()
  await openApp(page)
  const file = await handedOver(page, testInfo)
  expect(file.name).toMatch(/^garden-saw-invented-\d{4}-\d\d-\d\d\.html$/)
  const bytes = await readFile(file.path)
  expect(bytes.length).toBeLessThan(mostBytes)

  const off = await openedFile(browser, file.path, { javaScriptEnabled: false })
  await expectFindings(off.page, 'A')
  await expect(off.page.locator('.bore-place img')).toHaveCount(2)
  const still = await off.page.locator('.bore-place').first().screenshot()
  expect(off.complaints).toEqual([])
  await off.close()

  const on = await openedFile(browser, file.path, { reducedMotion: 'reduce' })
  const turning = on.page.locator('.turning').first()
  await expect(turning.locator('canvas')).toBeVisible()
  await expect(turning.locator('.picture-scale')).toContainText('Form drawn × 500')
  const before = await drawn(turning)
  // The still picture was drawn by the renderer of three, a little smaller, and this one by our own.
  const [ofStill, ofTurning] = await Promise.all([wallPatch(page, still), wallPatch(page, before)])
  meanOf(ofStill).forEach((value, channel) => {
    expect(Math.abs(value - (meanOf(ofTurning)[channel] ?? 0)), `channel ${channel}`).toBeLessThan(12)
  })
  await expectAccessible(on.page, 'main')

  const box = await turning.boundingBox()
  if (!box) throw new Error('nothing turns')
  await on.page.mouse.move(box.x + box.width / 2, box.y + box.height / 2)
  await on.page.mouse.down()
  await on.page.mouse.move(box.x + box.width / 2 + 90, box.y + box.height / 2, { steps: 3 })
  await on.page.mouse.up()
  const dragged = await drawn(turning)
  expect(dragged.equals(before), 'the picture after a drag').toBe(false)
  await on.page.keyboard.press('ArrowRight')
  expect((await drawn(turning)).equals(dragged), 'the picture after a key').toBe(false)
  await on.page.getByRole('button', { name: handOver.turning.whole, exact: true }).click()
  expect(differs(ofTurning, await wallPatch(page, await drawn(turning)))).toBeLessThan(2)

  await on.page.emulateMedia({ media: 'print' })
  await expect(turning).toBeHidden()
  await expect(on.page.locator('.bore-place img').first()).toBeVisible()
  await on.page.emulateMedia({ media: 'screen' })
  expect(on.complaints).toEqual([])
  const ran = await on.page.evaluate(() => {
    const script = document.createElement('script')
    script.textContent = 'document.title = "breached"'
    document.body.append(script)
    return document.title === 'breached'
  })
  expect(ran).toBe(false)
  await expect.poll(() => on.complaints.join('\n')).toContain('policy: script-src')
  await on.close()

  // The file is the job, too.
  await chooseFile(page, 'owner.html', bytes.toString('utf8'))
  await expect(page.getByText(words.file.opened('owner.html'))).toBeVisible()
})

const drawn = (turning: ReturnType<Page['locator']>) =>
  turning.evaluate(() => new Promise(requestAnimationFrame)).then(() => turning.screenshot())

/** The middle of the wall, clear of its labels. */
async function wallPatch(page: Page, png: Buffer) {
  const [patch] = await patchesOf(page, png, [{ x: 165, y: 170, width: 60, height: 60 }])
  return patch ?? []
}

function meanOf(patch: Awaited<ReturnType<typeof wallPatch>>): readonly number[] {
  return [0, 1, 2].map(
    (channel) => patch.reduce((sum, pixel) => sum + (pixel[channel] ?? 0), 0) / patch.length,
  )
}

/** How far two patches are apart, on average of all pixels and channels. */
function differs(one: Awaited<ReturnType<typeof wallPatch>>, other: typeof one): number {
  expect(shareNear(one, [255, 255, 255], 0)).toBeLessThan(0.9)
  const sums = one.map((pixel, i) => pixel.reduce((sum, v, c) => sum + Math.abs(v - (other[i]?.[c] ?? 0)), 0))
  return sums.reduce((a, b) => a + b, 0) / (3 * one.length)
}

test('a hostile job is text in its file, in each of its fields, and breaks neither its page nor its policy', async ({
  page,
  browser,
}, testInfo) => {
  test.slow()
  await withoutPicture(page)
  await openApp(page)
  const job = { ...hostileJob(scenario('B')), id: 'hostile' }
  await chooseFile(page, 'hostile.json', writeJob(job))
  await expect(page.getByText(words.file.opened('hostile.json'))).toBeAttached()
  await pickFromMenu(page, words.file.letterhead)
  const dialog = page.getByRole('dialog', { name: shop.title })
  await dialog.getByLabel(shop.shopName).fill(hostileText(120))
  await dialog.getByLabel(shop.address, { exact: true }).fill(hostileText(200))
  await expect(dialog.getByText(shop.saved, { exact: true })).toBeVisible()
  await page.keyboard.press('Escape')
  const { path } = await handedOver(page, testInfo)
  for (const width of [1280, 390]) {
    const {
      page: opened,
      complaints,
      close,
    } = await openedFile(browser, path, {
      viewport: { width, height: 844 },
      reducedMotion: 'reduce',
    })
    await expect(opened.locator('.turning canvas').first()).toBeAttached()
    const text = await opened.locator('main').textContent()
    expect(text).toContain('<script>window.ran = true</script><img src=x onerror="window.ran=true">')
    await expect(opened.locator('.shop p').first()).toContainText('<script>window.ran = true</script>')
    expect(text).not.toMatch(/[\u202a-\u202e\u2066-\u2069]/)
    const seen = await opened.evaluate(() => ({
      ran: 'ran' in window,
      scripts: document.scripts.length,
      pictures: document.querySelectorAll('img:not([src^="data:image/"])').length,
      overflow: document.documentElement.scrollWidth - document.documentElement.clientWidth,
    }))
    expect(seen).toEqual({ ran: false, scripts: 1, pictures: 0, overflow: 0 })
    expect(complaints).toEqual([])
    await close()
  }
  const read = readJob(await readFile(path))
  expect(read).toEqual({ ok: true, job })
})
