import type { BrowserContext, Page } from '@playwright/test'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'
import { pickFromMenu } from './job-files'

const { bar, file, kept, pen, problems, saving, undo } = words

const nameField = (page: Page) => page.getByRole('textbox', { name: bar.jobName })
const takeOver = (page: Page) => page.getByRole('button', { name: pen.takeOver })

async function rename(page: Page, name: string): Promise<void> {
  await nameField(page).fill(name)
  await nameField(page).press('Enter')
}

async function expectSaved(page: Page): Promise<void> {
  await expect(page.getByText(/^Saved \d\d:\d\d$/)).toBeVisible()
}

/** Another tab of the same browser, with the job that was open last. */
async function secondTab(context: BrowserContext): Promise<Page> {
  const page = await context.newPage()
  await withoutPicture(page)
  await page.goto('./')
  await expect(nameField(page)).toBeVisible()
  return page
}

test.beforeEach(({ page }) => withoutPicture(page))

test('a second tab follows the one that writes, takes the job over by one button, and nothing typed in either is lost', async ({
  page,
  context,
}) => {
  await openApp(page)
  await rename(page, 'One')
  await expectSaved(page)
  const second = await secondTab(context)
  await expect(second.getByText(pen.following)).toBeVisible()
  await expect(nameField(second)).toHaveValue('One')
  await rename(page, 'Two')
  await expect(nameField(second)).toHaveValue('Two')
  await expect(page.getByText(pen.following)).toBeHidden()
  await expect(second.getByRole('button', { name: undo.nothing, exact: true })).toBeDisabled()

  await rename(second, 'Mine')
  await expect(second.getByText(problems['read-only']())).toBeVisible()
  await expect(nameField(second)).toHaveValue('Mine')
  await nameField(second).press('Escape')
  await expectAccessible(second, '.pen-line')

  // A name that is typed and not yet taken, and half of a number.
  await page.getByRole('button', { name: /^8 mm, 0°: / }).click()
  const entry = page.getByRole('region', { name: words.next.label }).getByRole('textbox').first()
  await entry.fill('54.0')
  await nameField(page).fill('Three')
  await takeOver(second).press('Enter')
  await expect(nameField(second)).toHaveValue('Three')
  await expect(page.getByText(pen.lost.saved)).toBeVisible()
  await expect(entry).toHaveValue('54.0')
  await expect(second.getByText(pen.following)).toBeHidden()

  await rename(second, 'Four')
  await expect(nameField(page)).toHaveValue('Four')
  await second.getByRole('button', { name: undo.undoOf(words.changes.jobName) }).click()
  await expect(nameField(page)).toHaveValue('Three')
  await expectSaved(second)
  await second.close()
  await expect(takeOver(page)).toBeHidden()
  await rename(page, 'Five')
  await expectSaved(page)
  await page.reload()
  await expect(nameField(page)).toHaveValue('Five')
  await pickFromMenu(page, file.kept)
  await expect(page.getByRole('row', { name: /Five/ })).toContainText(words.shelf.onBench)
  await expect(page.getByText(kept.setAsideTitle)).toBeHidden()
})

test('a tab that cannot save keeps its change when another takes the job over, which is asked first', async ({
  page,
  context,
}) => {
  await openApp(page)
  await rename(page, 'One')
  await expectSaved(page)
  const second = await secondTab(context)
  await page.evaluate(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('full', 'QuotaExceededError')
    }
  })
  await rename(page, 'Not kept')
  await expect(page.getByText(saving.failed, { exact: true })).toBeVisible()
  await takeOver(second).click()
  await expect(second.getByText(pen.unsavedAsk)).toBeVisible()
  await second.getByRole('button', { name: pen.takeOverAnyway }).click()
  await expect(page.getByText(pen.lost.unsaved)).toBeVisible()
  await expect(nameField(page)).toHaveValue('Not kept')
  await expect(page.getByRole('alert').filter({ hasText: saving.errors.quota })).toBeVisible()
  await rename(second, 'Theirs')
  await expectSaved(second)
  await expect(nameField(page)).toHaveValue('Not kept')
})

test('a tab that does not answer is not waited for', async ({ page, context }) => {
  await page.addInitScript(() => {
    BroadcastChannel.prototype.postMessage = () => {}
  })
  await openApp(page)
  await rename(page, 'One')
  await expectSaved(page)
  const second = await secondTab(context)
  await takeOver(second).click()
  await expect(takeOver(second)).toBeHidden()
  await rename(second, 'Theirs')
  await expect(nameField(page)).toHaveValue('Theirs')
  await expect(page.getByText(pen.lost.saved)).toBeVisible()
})
