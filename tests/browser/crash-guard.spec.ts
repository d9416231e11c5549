import { readFile } from 'node:fs/promises'
import type { Page } from '@playwright/test'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'

const { app, bar, changes, file, kept, next, picture, saving, undo } = words

declare global {
  interface Window {
    failing: boolean
  }
}

/** As if the browser itself failed while the findings of a change are computed, in the middle of drawing the page. */
async function withFaultyBrowser(page: Page): Promise<void> {
  await page.addInitScript(() => {
    window.failing = false
    const { sqrt } = Math
    Math.sqrt = (value) => {
      if (window.failing) throw new Error('made-up failure')
      return sqrt(value)
    }
  })
}

async function fail(page: Page, failing: boolean): Promise<void> {
  await page.evaluate((each) => {
    window.failing = each
  }, failing)
}

/** Types a reading, and has the page fail as it takes it. */
async function failOverReading(page: Page, place: string, typed: string): Promise<void> {
  await page.getByRole('button', { name: new RegExp(`^${place}: `) }).click()
  const field = page.getByRole('textbox', { name: `${next.sizeField}: ${place}` })
  await field.fill(typed)
  await fail(page, true)
  await field.press('Enter')
  await expect(page.getByText(app.crashed)).toBeVisible()
}

test.describe('a page that fails to draw', () => {
  test.use({ expectedComplaints: [/made-up failure/] })

  test('says so, offers the job as a file and the last change back, and has lost nothing', async ({
    page,
  }) => {
    await withoutPicture(page)
    await withFaultyBrowser(page)
    await page.addInitScript(() => Reflect.deleteProperty(window, 'showSaveFilePicker'))
    await openApp(page)
    // Once it is known that there is no picture, nothing is drawn without cause.
    await expect(page.locator('.wall.is-flat')).toBeVisible()
    const cell = page.getByRole('button', { name: /^62 mm, 90°: / })
    const before = (await cell.textContent()) ?? ''
    await failOverReading(page, '62 mm, 90°', '54,019')
    await expect(page.getByText(app.crashedKept)).toBeVisible()

    const download = page.waitForEvent('download')
    await page.getByRole('button', { name: saving.toFile }).click()
    const text = await readFile(await (await download).path(), 'utf8')
    expect(text).toContain('54.019')

    await fail(page, false)
    await expectAccessible(page)
    await page.getByRole('button', { name: undo.undoOf(changes.reading('62 mm, 90°')) }).click()
    await expect(cell).toHaveText(before)
    await page.getByRole('button', { name: undo.redoOf(changes.reading('62 mm, 90°')) }).click()
    await expect(cell).toHaveText(/54\.019/)

    await failOverReading(page, '80 mm, 0°', '54.018')
    await fail(page, false)
    await page.getByRole('button', { name: file.new, exact: true }).click()
    await expect(page.getByRole('textbox', { name: bar.jobName })).toHaveValue('')
    await page.getByRole('button', { name: file.menu, exact: true }).click()
    await page.getByRole('button', { name: file.kept }).click()
    await page.getByRole('button', { name: kept.open('Garden saw (invented)') }).click()
    await expect(cell).toHaveText(/54\.019/)
    await expect(page.getByRole('button', { name: /^80 mm, 0°: / })).toHaveText(/54\.018/)

    await failOverReading(page, '80 mm, 45°', '54.012')
    await page.getByRole('button', { name: app.reload }).click()
    await expect(page.getByRole('button', { name: /^80 mm, 45°: / })).toHaveText(/54\.012/)
  })

  test('does not call kept what the browser would not keep', async ({ page }) => {
    await withoutPicture(page)
    await withFaultyBrowser(page)
    await page.addInitScript(() => {
      Object.defineProperty(window, 'indexedDB', { value: undefined })
    })
    await openApp(page)
    await expect(page.locator('.wall.is-flat')).toBeVisible()
    await failOverReading(page, '62 mm, 90°', '54,019')
    await expect(page.getByText(app.crashedKept)).toBeHidden()
    await expect(page.getByRole('alert').filter({ hasText: saving.errors.unavailable })).toBeVisible()
    await fail(page, false)
    await page.getByRole('button', { name: file.new, exact: true }).click()
    await expect(page.getByRole('dialog')).toContainText(saving.leaving)
  })
})

test.describe('a picture that does not come', () => {
  test.use({ expectedComplaints: [/Failed to load resource|BorePicture/] })

  test('is missed by nothing else on the page, which says so and shows the map', async ({ page }) => {
    await page.route(/BorePicture.*\.js/, (route) => route.abort())
    await openApp(page)
    await expect(page.getByText(picture.trouble['no-webgl'])).toBeVisible()
    await expect(page.locator('.wall.is-flat .map-station').first()).toBeVisible()
    await expect(page.locator('.verdict')).toBeVisible()
    await expect(page.getByRole('textbox', { name: bar.jobName })).toBeVisible()
  })
})
