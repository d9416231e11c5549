import type { Page } from '@playwright/test'
import { words } from '../../src/words/words'
import { expect, openApp, test, withoutPicture } from './bench-fixture'

const { changes, marks, next, questions, undo } = words

const place = '48 mm, 0°'
const cell = (page: Page) => page.getByRole('button', { name: new RegExp(`^${place}: `) })
const question = (page: Page) =>
  page.locator('.question').filter({ hasText: questions.blocked(place, 'exhaust and boost') })

async function undoOf(page: Page, change: string): Promise<void> {
  await page.getByRole('button', { name: undo.undoOf(change) }).click()
}

test('a reading where a port is in the way is kept, shown and asked about, and counts only once it is said to be right', async ({
  page,
}) => {
  await withoutPicture(page)
  await openApp(page)
  const verdict = page.locator('.verdict')
  const inside = (await verdict.textContent()) ?? ''
  await expect(cell(page)).toHaveAccessibleName(`${place}: no reading, exhaust and boost in the way`)

  // Far over the wear limit, so that the verdict shows whether it is counted.
  await cell(page).click()
  const field = page.getByRole('textbox', { name: `${next.sizeField}: ${place}` })
  await field.fill('54,090')
  await field.press('Enter')
  await expect(cell(page)).toHaveAccessibleName(
    new RegExp(`^${place}: 54\\.0\\d\\d, ${marks.blocked.replace('?', '\\?')}`),
  )
  await expect(cell(page)).toHaveText(/54\.090.*port\?/)
  await expect(page.locator('.map-station-open').first()).toBeVisible()
  await expect(verdict).toHaveText(inside)
  await expect(question(page).getByRole('button')).toHaveText([
    questions.blocked(place, 'exhaust and boost'),
    questions.itIsRight,
    questions.takeItOut,
  ])

  await question(page).getByRole('button', { name: questions.itIsRight }).click()
  await expect(question(page)).toBeHidden()
  await expect(verdict).toHaveText(/^Over the wear limit/)
  await expect(page.locator('.map-station-open')).toHaveCount(0)
  await undoOf(page, changes.confirmed(place))
  await expect(verdict).toHaveText(inside)

  await question(page).getByRole('button', { name: questions.takeItOut }).click()
  await expect(question(page)).toBeHidden()
  await expect(cell(page)).toHaveAccessibleName(/in the way$/)
  await undoOf(page, changes.readingOut(place))
  await expect(cell(page)).toHaveText(/54\.090/)
  await expect(question(page)).toBeVisible()
  await undoOf(page, changes.reading(place))
  await expect(cell(page)).toHaveAccessibleName(/in the way$/)
  await expect(question(page)).toBeHidden()
  await expect(verdict).toHaveText(inside)
})
