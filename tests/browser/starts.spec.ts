import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'

test('the Bench has nothing that axe finds fault with, light or dark', async ({ page }) => {
  await openApp(page)
  await expect(page.locator('.picture-box canvas')).toBeVisible()
  await expectAccessible(page)
  await page.emulateMedia({ colorScheme: 'dark' })
  await expectAccessible(page)
})

test('the app is served from one host with a policy that lets nothing else in', async ({ page }) => {
  await withoutPicture(page)
  const answer = await page.goto('./')
  expect(answer?.headers()['content-security-policy']).toContain("default-src 'none'")
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible()
})
