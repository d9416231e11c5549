import type { Page } from '@playwright/test'

/** Waits for fonts, the picture's own files and its frames. */
export async function settle(page: Page): Promise<void> {
  await page.waitForLoadState('networkidle')
  await page.evaluate(() => document.fonts.ready.then(() => undefined))
  await page.waitForTimeout(1500)
}
