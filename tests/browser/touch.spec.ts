import type { Locator, Page } from '@playwright/test'
import { expect, openApp, test, withoutPicture } from './bench-fixture'

test.use({ hasTouch: true })

async function middleOf(target: Locator): Promise<{ x: number; y: number }> {
  const box = await target.boundingBox()
  if (!box) throw new Error('nothing there to tap')
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 }
}

const cell = (page: Page, place: string) => page.getByRole('button', { name: new RegExp(`^${place}`) })
const onMap = (page: Page, place: string) =>
  page.getByRole('option', { name: new RegExp(`^${place}`) }).locator('circle')

test('a finger that taps the map, a cell or a finding lights the same place in the others, and it stays lit', async ({
  page,
}) => {
  await withoutPicture(page)
  await openApp(page)
  const readOut = page.locator('.read-out')
  const pointer = page.locator('.map-pointer circle')

  // Once it is known that there is no picture, the map has its room.
  await expect(page.locator('.wall.is-flat')).toBeVisible()
  const reading = await middleOf(onMap(page, '25 mm, 90°'))
  await page.touchscreen.tap(reading.x, reading.y)
  await expect(readOut).toHaveText(/^25 mm · 90° · 54\.0\d\d ± 0\.0\d\d · a reading$/)
  await expect(cell(page, '25 mm, 90°')).toHaveClass(/is-pointed/)
  await expect(pointer).toHaveCount(1)

  // Between two readings of the same level.
  await page.touchscreen.tap(reading.x + 34, reading.y)
  await expect(readOut).toHaveText(/^25(\.\d+)? mm · 1\d\d(\.\d)?° · /)
  await expect(cell(page, '25 mm, 90°')).not.toHaveClass(/is-pointed/)
  await expect(pointer).toHaveCount(1)

  await cell(page, '62 mm, 45°').tap()
  await expect(readOut).toHaveText(/^62 mm · 45° · /)
  const [lit, station] = [await middleOf(pointer), await middleOf(onMap(page, '62 mm, 45°'))]
  expect(Math.hypot(lit.x - station.x, lit.y - station.y)).toBeLessThan(1)
  await expect(page.getByRole('textbox', { name: /62 mm, 45°$/ })).toBeFocused()

  await page.locator('.finding-name').first().tap()
  await expect(readOut).toHaveText(/^8 mm · 0° · /)
  await expect(cell(page, '8 mm, 0°')).toHaveClass(/is-pointed/)
})
