import type { Page } from '@playwright/test'
import { words } from '../../src/words/words'
import { expect, openApp, test, withoutPicture } from './bench-fixture'

const { bore, file, grid, next, setUp } = words

async function type(page: Page, label: string, text: string): Promise<void> {
  const field = page.getByRole('textbox', { name: label, exact: true })
  await field.fill(text)
  await field.press('Enter')
}

async function choose(page: Page, label: string, option: string): Promise<void> {
  await page.getByRole('combobox', { name: label, exact: true }).selectOption(option)
}

/*
 * Diameter at 20 °C (the reference temperature of ISO 1) of a bore read as a dial's deviation from a setting,
 * both lengths expanding in proportion to temperature as in GUM (JCGM 100:2008) H.1. Steel 11.5 per million and
 * kelvin is H.1's own; 23 for the aluminium is within handbook tables. Both from memory.
 */
const setting = { sizeMm: 72, micrometerTooMuchMm: 0.002, celsius: 27, perK: 11.5e-6 }
const wall = { celsius: 30, perK: 23e-6 }
const zeroUm = (1 + 3) / 2

function sizeAt20(dialUm: number, larger: 'clockwise' | 'anticlockwise'): number {
  const way = larger === 'clockwise' ? 1 : -1
  const standard =
    (setting.sizeMm - setting.micrometerTooMuchMm) * (1 + setting.perK * (setting.celsius - 20))
  return (standard + (way * (dialUm - zeroUm)) / 1000) / (1 + wall.perK * (wall.celsius - 20))
}

/** As typed, and the mean of the dial in µm. */
const readings = [
  { place: '20 mm, 0°', typed: '+9', dialUm: 9 },
  { place: '20 mm, 90°', typed: '-7,5', dialUm: -7.5 },
  { place: '40 mm, 0°', typed: '−4', dialUm: -4 },
  { place: '40 mm, 90°', typed: '10 12 14', dialUm: 12 },
] as const

async function expectSizes(page: Page, larger: 'clockwise' | 'anticlockwise'): Promise<void> {
  for (const { place, dialUm } of readings) {
    const size = sizeAt20(dialUm, larger).toFixed(3)
    await expect(page.getByRole('button', { name: `${place}: ${size}, ` })).toBeVisible()
  }
  const mean = (sizeAt20(9, larger) + sizeAt20(-7.5, larger)) / 2
  await expect(page.locator('td.level-end .figure').first()).toHaveText(mean.toFixed(3))
}

test('dial deviations become the diameters at 20 °C that the definition gives, whichever way is larger, and stay them when written as sizes', async ({
  page,
}) => {
  await withoutPicture(page)
  await openApp(page)
  await page.getByRole('button', { name: file.menu, exact: true }).click()
  await page.getByRole('button', { name: file.new, exact: true }).click()
  await type(page, setUp.labels.size, '72')
  await choose(page, setUp.labels.entry, 'deviation')
  await choose(page, setUp.labels.direction, 'clockwise')
  await type(page, setUp.labels.zeroOpen, '1')
  await type(page, setUp.labels.zeroClose, '3')
  await type(page, setUp.labels.boreTemperature, '30')
  await type(page, setUp.labels.referenceTemperature, '27')
  await type(page, setUp.labels.micrometerError, '2')
  await choose(page, bore.labels.wall, 'plated-aluminium')
  await type(page, grid.newLevel, '20 40')

  const field = page.getByRole('textbox', { name: new RegExp(`^${next.deviationField}: `) })
  await field.fill('12')
  // Before any temperature: 72.000 and ten microns from the zero at 2.
  await expect(page.locator('#next-echo')).toContainText('72.010')
  for (const { typed } of readings) {
    await field.fill(typed)
    await field.press('Enter')
  }
  await expectSizes(page, 'clockwise')

  await choose(page, setUp.labels.direction, 'anticlockwise')
  await expectSizes(page, 'anticlockwise')
  await choose(page, setUp.labels.entry, 'size')
  await expectSizes(page, 'anticlockwise')
  await page.getByRole('button', { name: '20 mm, 0°: ' }).click()
  // The size as read: what a dial 7 µm past its zero, the wrong way, stands for.
  await expect(page.getByRole('textbox', { name: `${next.sizeField}: 20 mm, 0°` })).toHaveValue('71.993')
})
