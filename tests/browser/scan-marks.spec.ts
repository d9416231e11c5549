import { surface } from '../../src/words/english/surface'
import { scanMarkWords } from '../../src/words/scan-mark-words'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'

test('marks of a scan are listed, light up where they lie, and become a surface finding in one touch that can be undone', async ({
  page,
}) => {
  await withoutPicture(page)
  await openApp(page, 'E-72')
  const panel = page.getByRole('region', { name: scanMarkWords.title })
  const rows = panel.locator('ul > li')
  await expect(rows.nth(6)).toBeVisible()
  await expect(panel).toContainText('Four corners, at 50°')
  await expect(panel).toContainText('The wall between “exhaust left” and “exhaust right” stands proud.')

  const outlines = page.locator('.unrolled-map:visible .scan-mark')
  await expect(outlines).toHaveCount(await rows.count())
  await rows.nth(3).locator('.surface-name').focus()
  await expect(rows.nth(3)).toHaveClass(/is-lit/)
  await expect(outlines.nth(3)).toHaveClass(/is-lit/)
  await expect(outlines.nth(0)).not.toHaveClass(/is-lit/)
  await expectAccessible(page)

  await rows
    .nth(0)
    .getByRole('button', { name: /^Record 1/ })
    .press('Enter')
  const findings = page.locator('.surface-findings ul > li')
  await expect(findings).toHaveCount(1)
  await expect(findings).toContainText(`1 ${surface.surface.kinds.scuff}`)
  await expect(rows.nth(0)).toContainText(scanMarkWords.recorded)
  await page.getByRole('button', { name: words.undo.undo }).click()
  await expect(findings).toHaveCount(0)
  await expect(rows.nth(0).getByRole('button', { name: /^Record 1/ })).toBeVisible()

  await page.getByRole('tab', { name: words.charts.views.section }).click()
  await expect(page.locator('.scan-mark-cut').first()).toBeVisible()
})
