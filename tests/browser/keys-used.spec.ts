import type { Page } from '@playwright/test'
import { words } from '../../src/words/words'
import { expect, test, withoutPicture } from './bench-fixture'
import { fillByKeyboard, pressByKeyboard, tabTo } from './keyboard'

const { file, firstPage, grid, keptSpecs, limits, next, setUp } = words

/** Counts the keys that go down in the page from now on; those that only change others are not counted. */
async function countKeys(page: Page): Promise<() => Promise<number>> {
  await page.evaluate(() => {
    document.documentElement.dataset.keys = '0'
    const count = ({ key, repeat }: KeyboardEvent) => {
      const { dataset } = document.documentElement
      if (!repeat && !['Shift', 'Control', 'Meta', 'Alt'].includes(key))
        dataset.keys = `${Number(dataset.keys) + 1}`
    }
    window.addEventListener('keydown', count, { capture: true })
  })
  return () => page.evaluate(() => Number(document.documentElement.dataset.keys))
}

/** Invented: a bore worn most near the top, across 0°. */
function reading(level: number, axis: number, repeat: number): string {
  const um = 8 + 5 * Math.max(0, 2 - level) * Math.cos((axis * Math.PI) / 4) ** 2 + repeat
  return (54 + Math.round(um) / 1000).toFixed(3)
}

const readings = [0, 1, 2, 3].flatMap((level) =>
  [0, 1, 2, 3].flatMap((axis) => [0, 1].map((repeat) => reading(level, axis, repeat))),
)

/** Types every reading where the next one goes, and waits for the verdict; the keys that it took. */
async function readAll(page: Page, keys: () => Promise<number>): Promise<number> {
  const before = await keys()
  expect(readings).toHaveLength(32)
  await page.keyboard.type(readings.map((text) => `${text}\n`).join(''))
  await expect(page.locator('.next-head')).toContainText(next.allRead)
  await expect(page.locator('.verdict')).toHaveText(/^Inside the wear limit/)
  await expect(page.locator('.station .figure')).toHaveCount(16)
  await expect(page.locator('.not-taken')).toHaveCount(0)
  await expect(page.getByText(/^Saved \d\d:\d\d$/)).toBeVisible()
  const used = (await keys()) - before
  expect(used, 'a key more than its characters for each reading').toBe(
    readings.join('').length + readings.length,
  )
  return used
}

function report(what: string, keys: number): void {
  const description = `${keys} ${what}`
  test.info().annotations.push({ type: 'keys used', description })
  process.stdout.write(`keys used: ${description}\n`)
}

test('sixteen stations are read twice from an empty job to a verdict without the mouse, with few keys where the limits were kept', async ({
  page,
}) => {
  test.setTimeout(120_000)
  await withoutPicture(page)
  await page.goto('./')
  const keys = await countKeys(page)
  await pressByKeyboard(page, firstPage.measure)
  await fillByKeyboard(page, setUp.labels.size, '54')
  await fillByKeyboard(page, limits.labels.wearLimit, '54.05')
  await fillByKeyboard(page, grid.newLevel, '8 16 25 35')
  await fillByKeyboard(page, grid.newAxis, '45 135')
  await tabTo(page, page.getByRole('combobox', { name: next.repeatsPerStation }))
  await page.keyboard.press('2')
  // To the field for the next reading, and from there on only numbers.
  await page.keyboard.press('Tab')
  report('for set-up, limits and plan, all typed', await keys())
  report(`for ${readings.length} readings of 6 characters`, await readAll(page, keys))

  await pressByKeyboard(page, keptSpecs.keep)
  await page.keyboard.type('54 saw')
  await page.keyboard.press('Enter')
  await expect(page.getByText(/kept under “54 saw”/)).toBeVisible()
  await pressByKeyboard(page, file.menu)
  await pressByKeyboard(page, file.new)
  await expect(page.locator('.next-head')).toContainText(grid.noLevels)

  const empty = await keys()
  await pressByKeyboard(page, keptSpecs.take)
  await expect(page.getByRole('menuitem').first()).toBeFocused()
  await page.keyboard.type('54')
  await page.keyboard.press('Enter')
  await fillByKeyboard(page, setUp.labels.size, '54')
  // Out of the field: from there the numbers find their way.
  await page.keyboard.press('Tab')
  const forAll = (await keys()) - empty
  report('for set-up, limits and plan from kept limits', forAll)
  expect(forAll).toBeLessThan(40)
  await readAll(page, keys)
})
