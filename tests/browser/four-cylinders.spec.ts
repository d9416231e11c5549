import { readFileSync } from 'node:fs'
import type { Page } from '@playwright/test'
import type { Job } from '../../src/job/schema'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'
import { fillByKeyboard, typeReadings } from './keyboard'

const { bar, bore, file, grid, limits, next, setUp } = words

const block = JSON.parse(
  readFileSync(new URL('../../scenarios/B-four-cylinder-iron.json', import.meta.url), 'utf8'),
) as Job

async function pickFrom(page: Page, button: string, item: string): Promise<void> {
  await page.getByRole('button', { name: button, exact: true }).click()
  await page.getByRole('button', { name: item, exact: true }).click()
}

/** The first reading of each station in the order of the page: each level through all bores. */
function levelByLevel(): string[] {
  const depths = block.bores[0]?.surveys[0]?.levelsMm ?? []
  return depths.flatMap((depthMm) =>
    block.bores.flatMap(({ surveys }) =>
      (surveys[0]?.readings ?? [])
        .filter((reading) => reading.depthMm === depthMm)
        .flatMap((reading) => (reading.sizesMm ?? []).slice(0, 1).map((size) => size.toFixed(3))),
    ),
  )
}

test('four cylinders are entered level by level from an empty job, and stand beside each other', async ({
  page,
}) => {
  test.setTimeout(120_000)
  await withoutPicture(page)
  await openApp(page)
  await pickFrom(page, file.menu, file.new)
  await page.getByRole('combobox', { name: setUp.labels.gauge, exact: true }).selectOption('dial-0.01')
  await fillByKeyboard(page, setUp.labels.size, '86')
  await fillByKeyboard(page, limits.labels.newMin, '86')
  await fillByKeyboard(page, limits.labels.newMax, '86.02')
  await fillByKeyboard(page, limits.labels.wearLimit, '86.12')
  await fillByKeyboard(page, limits.labels.ovalityLimit, '0.05')
  await fillByKeyboard(page, limits.labels.taperLimit, '0.06')
  await page.getByRole('combobox', { name: bore.labels.wall }).selectOption('grey-iron')
  await fillByKeyboard(page, bore.labels.travelFrom, '8')
  await fillByKeyboard(page, bore.labels.travelTo, '132')
  await fillByKeyboard(page, grid.newLevel, '4 10 40 80 125')
  await fillByKeyboard(page, grid.newAxis, '45 135')
  for (const _ of block.bores.slice(1)) await pickFrom(page, bar.add, bar.addOwn)
  await expect(page.locator('.bores').getByRole('tab')).toHaveText(['1', '2', '3', '4'])
  await page.getByRole('tab').first().click()
  await page.getByRole('combobox', { name: next.orderLabel }).selectOption('level-by-level')
  await page.getByRole('combobox', { name: next.repeatsPerStation }).selectOption('1')

  const readings = levelByLevel()
  expect(readings).toHaveLength(80)
  await typeReadings(page, readings.slice(0, 4))
  await expect(page.locator('.next strong')).toHaveText('Next: bore 2, 4 mm, 0°')
  await typeReadings(page, readings.slice(4))
  await expect(page.locator('.next strong')).toHaveText(next.allRead)

  await expect(page.locator('.block-sentence')).toHaveText(
    /^Bore 3 is out of its limits\. .*Bores 1 and 2 are inside\.$/,
  )
  const rows = page.locator('.block-table tbody tr')
  await expect(rows).toHaveCount(4)
  await expect(rows.nth(2)).toContainText('86.098')
  await expect(rows.nth(2)).toContainText('84 µm')
  await expect(page.locator('.strip-bore')).toHaveCount(4)
  await rows.nth(2).getByRole('button').click()
  await expect(page.locator('.verdict')).toContainText('Taper is over its limit')
  await expect(page.locator('.strip-bore[aria-current="true"]')).toContainText('3')
  await expectAccessible(page)
})

test.describe('with a finger', () => {
  test.use({ hasTouch: true })

  test('both slips of the block as typed are found and mended', async ({ page }) => {
    await withoutPicture(page)
    await openApp(page, 'B-as-typed')
    const question = page.locator('.question')
    const mend = question.getByRole('button', { name: words.questions.mend })
    await page.getByRole('tab').nth(1).tap()
    await expect(question).toContainText('0° and 90° read the other way round')
    await mend.tap()
    await expect(question).toHaveCount(0)
    await page.getByRole('tab').nth(3).tap()
    await expect(question).toContainText('80 mm, 90° is one whole turn of the needle larger')
    await mend.tap()
    await expect(question).toHaveCount(0)
    await expect(page.locator('.block-sentence')).toHaveText(
      'Bore 3 is out of its limits. Bore 4 is too close to call. Bores 1 and 2 are inside.',
    )
  })
})
