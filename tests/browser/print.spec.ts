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

  const pdf = await printed(page)
  const sheets = sheetsIn(pdf)
  expect(sheets).toBeGreaterThan(0)
  expect(sheets).toBeLessThanOrEqual(3)
  // The only bitmap is the picture, at three device pixels for one of the page: the map is lines.
  const bitmaps = [...pdf.matchAll(/\/Width (\d+)\s*\/Height (\d+)/g)].map(([, ...size]) => size.join(' × '))
  expect([...new Set(bitmaps)]).toEqual(['1776 × 1476'])
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

  await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')))
  const copy = page.locator('.paper-copy')
  const inked = await copy.evaluate((drawn: HTMLCanvasElement) => {
    const { data } = drawn.getContext('2d')?.getImageData(0, 0, drawn.width, drawn.height) ?? { data: [] }
    return data.filter((value, index) => index % 4 === 3 && value > 0).length / (drawn.width * drawn.height)
  })
  expect(inked).toBeGreaterThan(0.2)
  // The key beside it has the colours of the light page by then too.
  await expect(page.locator('.picture-ramp span').last()).toHaveCSS('background-color', 'rgb(127, 169, 186)')
  await page.evaluate(() => window.dispatchEvent(new Event('afterprint')))
  await expect(copy).toHaveCount(0)
  await expect(page.locator('.picture-ramp span').last()).toHaveCSS('background-color', 'rgb(127, 163, 179)')
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
