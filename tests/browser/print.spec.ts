import type { Page } from '@playwright/test'
import { words } from '../../src/words/words'
import { expect, openApp, test, withoutPicture } from './bench-fixture'

test.use({ colorScheme: 'dark' })

async function printed(page: Page): Promise<string> {
  return (await page.pdf({ format: 'A4' })).toString('latin1')
}

function sheetsIn(pdf: string): number {
  return [...pdf.matchAll(/\/Type \/Page\b/g)].length
}

test('the Bench is printed on few sheets, nothing cut and nothing to press, in light colours and with the picture sharp', async ({
  page,
}) => {
  await openApp(page)
  const canvas = page.locator('.picture-canvas canvas')
  await expect.poll(() => canvas.evaluate(({ width }: HTMLCanvasElement) => width)).toBe(592)
  await expect(page.locator('.picture-label').filter({ visible: true }).first()).toBeVisible()
  // Section and profile are loaded when there is time.
  await page.getByRole('tab', { name: words.charts.views.section, exact: true }).click()
  await expect(page.locator('.wall-chart')).toBeVisible()

  const pdf = await printed(page)
  const sheets = sheetsIn(pdf)
  expect(sheets).toBeGreaterThan(0)
  expect(sheets).toBeLessThanOrEqual(3)
  // The only bitmap is the picture, at three device pixels for one of the sheet: all that is flat is lines.
  const bitmaps = [...pdf.matchAll(/\/Width (\d+)\s*\/Height (\d+)/g)].map(([, ...size]) => size.join(' × '))
  expect([...new Set(bitmaps)]).toEqual(['1443 × 1200'])
  await expect(canvas).toHaveCount(1)
  await expect.poll(() => canvas.evaluate(({ width }: HTMLCanvasElement) => width)).toBe(592)

  // A4 without the margins, in CSS pixels.
  await page.emulateMedia({ media: 'print' })
  await page.setViewportSize({ width: 703, height: 1032 })
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(703)
  for (const part of [
    'h1',
    '.bar-about',
    '.sentence',
    '.readings',
    '.verdict',
    '.findings',
    '.texts',
    '.picture-box',
    '.unrolled-map',
    '.paper-charts > :first-child svg',
    '.paper-charts > :last-child svg',
  ]) {
    await expect(page.locator(part).first(), part).toBeVisible()
  }
  for (const part of [
    '.bar button:not(.bar-about)',
    '.quiet',
    '.button',
    '.next',
    '.controls',
    '.add-to-plan',
    '.read-out',
    'summary',
  ]) {
    await expect(page.locator(part).filter({ visible: true }), part).toHaveCount(0)
  }
  await expect(page.locator('body')).toHaveCSS('background-color', 'rgb(255, 255, 255)')
  const { thinnest, pitches } = await linesOnPaper(page)
  expect(thinnest.mm, thinnest.of).toBeGreaterThan(0.249)
  expect(pitches.length).toBeGreaterThan(1)
  for (const pitch of pitches) expect(pitch).toBeCloseTo(1.2, 1)

  await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')))
  const copy = page.locator('.paper-copy')
  const inked = await copy.evaluate((drawn: HTMLCanvasElement) => {
    const { data } = drawn.getContext('2d')?.getImageData(0, 0, drawn.width, drawn.height) ?? { data: [] }
    return data.filter((value, index) => index % 4 === 3 && value > 0).length / (drawn.width * drawn.height)
  })
  // The wall, and no shell round it: that covered a tenth more.
  expect(inked).toBeGreaterThan(0.1)
  expect(inked).toBeLessThan(0.2)
  // The key beside it has the colours of the light page by then too.
  await expect(page.locator('.picture-ramp span').last()).toHaveCSS('background-color', 'rgb(127, 169, 186)')
  await page.evaluate(() => window.dispatchEvent(new Event('afterprint')))
  await expect(copy).toHaveCount(0)
  await expect(page.locator('.picture-ramp span').last()).toHaveCSS('background-color', 'rgb(127, 163, 179)')
})

/** The thinnest line of the flat views, mm, and how far apart the lines of each hatch are, mm. */
function linesOnPaper(page: Page) {
  return page.evaluate(() => {
    const mm = 25.4 / 96
    let thinnest = { mm: Number.POSITIVE_INFINITY, of: '' }
    const pitches: number[] = []
    for (const shape of document.querySelectorAll<SVGGeometryElement>(
      '.unrolled-map :is(path, line, circle, rect), .paper-charts :is(path, line, circle)',
    )) {
      const { stroke, fill, strokeWidth, visibility } = getComputedStyle(shape)
      const scale = (shape.getScreenCTM()?.a ?? 0) * mm
      const isLine = stroke !== 'none' && stroke !== fill && fill === 'none'
      if (!isLine || visibility !== 'visible' || scale === 0) continue
      const width = Number.parseFloat(strokeWidth) * scale
      if (width < thinnest.mm) thinnest = { mm: width, of: shape.outerHTML.slice(0, 200) }
      const [one, other] = [...(shape.getAttribute('d') ?? '').matchAll(/M(-?[\d.]+),-?[\d.]+l-/g)]
      const isHatch = shape.matches('.map-hatch, .chart-hatch')
      if (isHatch) pitches.push(((Number(other?.[1]) - Number(one?.[1])) / Math.SQRT2) * scale)
    }
    return { thinnest, pitches }
  })
}

test('Compare is printed as it is drawn for the sheet: as wide as that, undistorted, with its labels in it', async ({
  page,
}) => {
  await openApp(page)
  await page.getByRole('button', { name: words.pages.compare, exact: true }).click()
  await expect(page.locator('.picture-label-figure').filter({ visible: true })).toHaveCount(3)
  for (const format of process.env.PROOF === '1' ? ['A4', 'Letter'] : ['A4']) {
    const pdf = (await page.pdf({ format })).toString('latin1')
    expect(sheetsIn(pdf)).toBe(1)
    const [bitmap] = pdf.matchAll(/\/Width (\d+)\s*\/Height (\d+)/g)
    expect(Number(bitmap?.[1])).toBe(690 * 3)
  }
  await page.emulateMedia({ media: 'print' })
  await page.setViewportSize({ width: 703, height: 1032 })
  const copy = page.locator('.paper-copy')
  await expect(copy).toHaveCount(1)
  const drawn = await copy.evaluate((canvas: HTMLCanvasElement) => {
    const { left, right, width, height } = canvas.getBoundingClientRect()
    return { left, right, stretched: (width / height) * (canvas.height / canvas.width) }
  })
  expect(drawn.stretched).toBeCloseTo(1, 2)
  expect(drawn.left).toBeGreaterThanOrEqual(0)
  expect(drawn.right).toBeLessThanOrEqual(703)
  const labels = await page
    .locator('.picture-label')
    .filter({ visible: true })
    .evaluateAll((all) =>
      all.map((label) => label.getBoundingClientRect()).map(({ left, right }) => [left, right]),
    )
  expect(labels.length).toBeGreaterThan(6)
  for (const [left = 0, right = 0] of labels) {
    expect(left >= drawn.left - 1 && right <= drawn.right + 1).toBe(true)
  }
  await page.emulateMedia({ media: null })
  // Without anything that moves the browser tells of it at the next frame alone.
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(done)))
  await expect(copy).toHaveCount(0)
})

test('from a phone the page of a desk is printed, and what was typed there stays', async ({ page }) => {
  await withoutPicture(page)
  await page.setViewportSize({ width: 390, height: 844 })
  await openApp(page)
  await page.getByRole('navigation').getByRole('button', { name: words.parts.narrow.setUp }).click()
  const size = page.getByRole('textbox', { name: words.setUp.labels.size, exact: true })
  await size.fill('a little more')
  await size.press('Enter')
  await expect(size).toHaveAttribute('aria-invalid', 'true')

  await page.emulateMedia({ media: 'print' })
  for (const part of ['.bench .sentence', '.bench .readings', '.bench .verdict', '.bench .unrolled-map']) {
    await expect(page.locator(part).first(), part).toBeVisible()
  }
  await expect(page.locator('h1').filter({ visible: true })).toHaveCount(1)
  for (const part of ['.narrow', '.bar.is-narrow', '.narrow-banner']) {
    await expect(page.locator(part), part).toBeHidden()
  }
  await page.emulateMedia({ media: null })
  await expect(page.locator('.bench')).toHaveCount(0)
  expect(sheetsIn(await printed(page))).toBeGreaterThan(1)
  await expect(size).toHaveValue('a little more')
})
