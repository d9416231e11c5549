import type { Page } from '@playwright/test'
import { words } from '../../src/words/words'
import { expect, test, withoutPicture } from './bench-fixture'
import { fillByKeyboard, pressByKeyboard, tabTo } from './keyboard'

const { firstPage, grid, limits, next, setUp } = words

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

test('sixteen stations are read twice from an empty job to a verdict without the mouse, a key more than its digits for each', async ({
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
  const forSetUp = await keys()

  // To the field for the next reading, and from there on only numbers.
  await page.keyboard.press('Tab')
  const texts = [0, 1, 2, 3].flatMap((level) =>
    [0, 1, 2, 3].flatMap((axis) => [0, 1].map((repeat) => reading(level, axis, repeat))),
  )
  expect(texts).toHaveLength(32)
  await page.keyboard.type(texts.map((text) => `${text}\n`).join(''))
  await expect(page.locator('.next-head')).toContainText(next.allRead)
  await expect(page.locator('.verdict')).toHaveText(/^Inside the wear limit/)
  await expect(page.locator('.station .figure')).toHaveCount(16)
  await expect(page.locator('.not-taken')).toHaveCount(0)
  await expect(page.getByText(/^Saved \d\d:\d\d$/)).toBeVisible()

  const forReadings = (await keys()) - forSetUp
  const characters = texts.join('').length
  expect(forReadings, 'keys for the readings').toBe(characters + texts.length + 1)
  const perReading = (forReadings / texts.length).toFixed(1)
  test.info().annotations.push({
    type: 'keys used',
    description: `${forSetUp} for set-up, limits and plan; ${forReadings} for ${texts.length} readings of ${characters / texts.length} characters, ${perReading} a reading`,
  })
  process.stdout.write(`keys used: ${test.info().annotations.at(-1)?.description}\n`)
})
