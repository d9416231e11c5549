import type { Page } from '@playwright/test'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'

const { file, kept, lengths, limits, undo } = words

async function pickFromMenu(page: Page, item: string): Promise<void> {
  await page.getByRole('button', { name: file.menu, exact: true }).click()
  await page.getByRole('button', { name: item, exact: true }).click()
}

const wearLimit = (page: Page, unit: string) =>
  page.getByRole('textbox', { name: limits.labels.wearLimit.replace('mm', unit) })

const largest = (page: Page) =>
  page.locator('.proof li', { hasText: new RegExp(`^${words.findings.largest}`) }).first()

test.beforeEach(({ page }) => withoutPicture(page))

test('a job is written and typed in inches once that is chosen, kept in mm, and another job beside it stays in mm', async ({
  page,
}) => {
  test.slow()
  await openApp(page)
  await expect(wearLimit(page, 'mm')).toHaveValue('54.050')
  await expect(largest(page)).toContainText('54.030 ± 0.007')
  await pickFromMenu(page, lengths.inch)

  await expect(wearLimit(page, 'in')).toHaveValue('2.127953')
  await expect(largest(page)).toContainText('2.12716 ± 0.00028')
  await expect(largest(page)).toContainText('0.315 in, 0°')
  // Figures read off a gauge that is marked in mm stay as they were written down.
  await expect(page.getByText('54.034').first()).toBeVisible()
  await expectAccessible(page)

  await wearLimit(page, 'in').fill('2,1281')
  await wearLimit(page, 'in').press('Enter')
  await expect(wearLimit(page, 'in')).toHaveValue('2.1281')
  await expect(largest(page)).toContainText('wear limit 2.1281')
  await expect(page.locator('button.bar-saving')).toHaveText(/^Saved/)
  await page.reload()
  await expect(wearLimit(page, 'in')).toHaveValue('2.1281')

  const name = await page.getByRole('textbox', { name: words.bar.jobName }).inputValue()
  await page.goto('./#example=D1')
  await expect(page.getByRole('heading', { level: 1, name: /compressor/i })).toBeVisible()
  await expect(largest(page)).toContainText(' mm, ')
  await expect(largest(page)).not.toContainText(' in, ')

  await pickFromMenu(page, file.kept)
  await page.getByRole('button', { name: kept.open(name) }).click()
  await expect(wearLimit(page, 'in')).toHaveValue('2.1281')
  await expect(largest(page)).toContainText('0.315 in, 0°')
  await page.getByRole('button', { name: undo.undoOf(words.changes.limits) }).click()
  await page.getByRole('button', { name: undo.undoOf(lengths.change) }).click()
  await expect(wearLimit(page, 'mm')).toHaveValue('54.050')
  await expect(largest(page)).toContainText('54.030 ± 0.007')
})
