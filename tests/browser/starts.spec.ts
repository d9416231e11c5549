import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'

test('the app opens with the invented example when the browser holds no job', async ({ page }) => {
  await openApp(page)
  await expect(page).toHaveTitle(/Borewall/)
  await expect(page.getByRole('main')).toBeVisible()
  await expect(page.getByText(/invented/i).first()).toBeVisible()
})

for (const colorScheme of ['light', 'dark'] as const) {
  test(`the first page has nothing that axe finds fault with in ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme })
    await openApp(page)
    await expectAccessible(page)
  })
}

test('the app is served from one host with a policy that lets nothing else in', async ({ page }) => {
  await withoutPicture(page)
  const answer = await page.goto('./')
  expect(answer?.headers()['content-security-policy']).toContain("default-src 'none'")
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible()
})
