import type { Page } from '@playwright/test'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'

const { changes, limits, number, undo } = words
const { newMin, newMax, gradeMin, gradeMax } = limits.labels

function fieldOf(page: Page, label: string) {
  return page.getByRole('textbox', { name: label, exact: true })
}

async function type(page: Page, label: string, text: string): Promise<void> {
  await fieldOf(page, label).fill(text)
  await fieldOf(page, label).press('Enter')
}

const waitsText = (page: Page) => page.locator('.waits')
const undoOnce = (page: Page) => page.getByRole('button', { name: undo.undoOf(changes.limits) }).click()

test('a smallest size typed above the old largest waits, is lost by nothing, and counts with the largest as one change', async ({
  page,
}) => {
  await withoutPicture(page)
  await openApp(page)
  await type(page, limits.labels.wearLimit, '')
  const verdict = page.locator('.verdict')
  const before = (await verdict.textContent()) ?? ''

  await fieldOf(page, newMin).fill('54,020')
  await fieldOf(page, newMin).press('Tab')
  await expect(waitsText(page)).toHaveText(number.waits.low('54.020', '54.012'))
  await expect(fieldOf(page, newMin)).toHaveAccessibleDescription(number.waits.low('54.020', '54.012'))
  await expect(verdict).toHaveText(before)
  await expectAccessible(page, '.sheet')
  // Neither another bore nor an end that is still too small does away with it.
  await page.getByRole('tab').nth(1).click()
  await page.getByRole('tab').first().click()
  await type(page, newMax, '54.015')
  await expect(waitsText(page)).toHaveText([
    number.waits.low('54.020', '54.015'),
    number.waits.high('54.015', '54.020'),
  ])
  await expect(verdict).toHaveText(before)
  await type(page, newMax, '54.040')
  await expect(waitsText(page)).toHaveCount(0)
  await expect(verdict).not.toHaveText(before)
  await expect(fieldOf(page, newMin)).toHaveValue('54.020')
  await undoOnce(page)
  await expect(fieldOf(page, newMin)).toHaveValue('54.000')
  await expect(fieldOf(page, newMax)).toHaveValue('54.012')
  await expect(verdict).toHaveText(before)

  // Downwards, taken back by Escape; and what is no number takes the place of what waited.
  await type(page, newMax, '53.990')
  await expect(waitsText(page)).toHaveText(number.waits.high('53.990', '54.000'))
  await fieldOf(page, newMax).press('Escape')
  await expect(fieldOf(page, newMax)).toHaveValue('54.012')
  await type(page, newMin, '54.02')
  await type(page, newMin, '54.o2')
  await expect(page.getByRole('alert').filter({ hasText: number.refused.letters })).toBeVisible()
  await type(page, newMax, '54.040')
  await expect(fieldOf(page, newMin)).toHaveValue('54.o2')
  await fieldOf(page, newMin).press('Escape')
  await expect(fieldOf(page, newMin)).toHaveValue('54.000')
  await type(page, newMin, '5400')
  await expect(page.getByRole('alert').filter({ hasText: '5400' })).toBeVisible()
})

test('the sizes of a grade are typed in either order too, and wait under its new name', async ({ page }) => {
  await withoutPicture(page)
  await openApp(page)
  const grade = page.locator('.grade').first()
  const part = (label: string) => grade.getByRole('textbox', { name: label, exact: true })
  await part(gradeMin).fill('54.010')
  await part(gradeMin).press('Enter')
  await part(limits.labels.gradeName).fill('C')
  await part(limits.labels.gradeName).press('Enter')
  await expect(waitsText(page)).toHaveText(number.waits.low('54.010', '54.006'))
  await part(gradeMax).fill('54.016')
  await part(gradeMax).press('Enter')
  await expect(waitsText(page)).toHaveCount(0)
  await undoOnce(page)
  await expect(part(gradeMin)).toHaveValue('54.000')
  await expect(part(gradeMax)).toHaveValue('54.006')
})

test('limits in proportion are opened, typed with a comma, judged and printed with how they came about', async ({
  page,
}) => {
  await withoutPicture(page)
  await openApp(page)
  // What temperature does is told for bore and micrometer apart on demand; the grades stand among the findings.
  await page.getByRole('button', { name: /corrected by −3\.7 µm/ }).click()
  await expect(
    page.getByText(/^The bore at 26 °C makes −7\.5 µm of it, the micrometer at 26 °C \+3\.7 µm\./),
  ).toBeVisible()
  await expect(page.locator('.finding', { hasText: words.findings.grades.name })).toContainText('over: A, B')
  await page.getByRole('button', { name: limits.more }).click()
  // The example gives the travel, for its piston.
  await type(page, limits.labels.travel, '')
  await type(page, limits.labels.ovalityPerMm, '0,0002')
  const outOfRound = page.locator('.finding', { hasText: words.findings.ovality }).first()
  await expect(outOfRound).toContainText(/limit 10\.8 µm = 0\.0002 of 54\.\d{3} mm, the smallest of 2 given/)
  await expect(page.locator('.verdict')).toContainText(words.verdict.shape.ovality['too-close'])
  await type(page, limits.labels.taperPerMmOfTravel, '0.0002')
  await expect(page.locator('.verdict')).toContainText(words.verdict.shape.taper.unknown)
  await type(page, limits.labels.travel, '40')
  await expect(page.locator('.verdict')).toContainText(words.verdict.shape.taper.above)
  await type(page, limits.labels.travel, '0,4')
  await expect(fieldOf(page, limits.labels.travel)).toHaveValue('0,4')
  await expect(page.getByRole('alert')).toBeVisible()
  await expectAccessible(page, '.sheet')
})
