import { readFile } from 'node:fs/promises'
import type { Page } from '@playwright/test'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'
import { chooseFile, dropFiles, pickFromMenu, savedFile, withoutFilePicker } from './job-files'

const { bar, demo, file, kept, saving, shelf, undo } = words

function nameField(page: Page) {
  return page.getByRole('textbox', { name: bar.jobName })
}

async function rename(page: Page, name: string): Promise<void> {
  await nameField(page).fill(name)
  await nameField(page).press('Enter')
  await expect(page.getByRole('heading', { level: 1, name, exact: true })).toBeVisible()
}

async function expectSaved(page: Page): Promise<void> {
  await expect(page.getByText(/^Saved \d\d:\d\d$/)).toBeVisible()
}

test.beforeEach(({ page }) => withoutPicture(page))

test('an example is left for a job of your own by one button', async ({ page }) => {
  await openApp(page)
  await expect(page.getByText(demo.banner)).toBeVisible()
  await expect(page.locator('.bores').getByRole('tab')).toHaveCount(2)
  await page.getByRole('button', { name: demo.startOwn }).click()
  await expect(page.getByText(demo.banner)).toBeHidden()
  await expect(page.getByRole('heading', { level: 1, name: words.app.untitled })).toBeVisible()
})

test('a new name is there again after a reload once the page says saved', async ({ page }) => {
  await openApp(page)
  await rename(page, 'Saw on the left bench')
  await expectSaved(page)
  await page.reload()
  await expect(nameField(page)).toHaveValue('Saw on the left bench')
  await expect(page.getByText(demo.banner)).toBeVisible()
})

test('a new job keeps the former one in the list, from where it is opened again', async ({ page }) => {
  await openApp(page)
  await rename(page, 'The former')
  await pickFromMenu(page, file.new)
  await expect(nameField(page)).toHaveValue('')
  await rename(page, 'The new one')
  await expectSaved(page)
  await pickFromMenu(page, file.kept)
  await expect(page.getByRole('row', { name: 'The new one' })).toContainText(shelf.onBench)
  await page.getByRole('button', { name: kept.open('The former') }).click()
  await expect(nameField(page)).toHaveValue('The former')
  await page.reload()
  await expect(nameField(page)).toHaveValue('The former')
})

test('a broken file shows all that is wrong in it and leaves the job on the bench', async ({ page }) => {
  await withoutFilePicker(page)
  await openApp(page)
  await rename(page, 'Untouched')
  const { text } = await savedFile(page)
  const broken = text
    .replace('"wearLimitMm": 54.05', '"wearLimitMm": "54,05"')
    .replace('"name": "1"', '"nam": "1"')
  await chooseFile(page, 'broken.json', broken)
  const dialog = page.getByRole('dialog', { name: file.problemsTitle('broken.json') })
  await expect(dialog.getByRole('listitem')).toHaveCount(3)
  await expect(dialog).toContainText('spec.wearLimitMm')
  await expect(dialog).toContainText('bores[0]')
  await expectAccessible(page, 'dialog')
  await page.keyboard.press('Escape')
  await expect(dialog).toBeHidden()
  await dropFiles(page, [{ name: 'notes.json', text: 'no job at all' }])
  await expect(page.getByRole('dialog', { name: file.problemsTitle('notes.json') })).toBeVisible()
  await page.getByRole('button', { name: words.app.close, exact: true }).click()
  await dropFiles(page, [
    { name: 'a.json', text },
    { name: 'b.json', text },
  ])
  await expect(page.getByRole('dialog')).toContainText(file.severalDropped)
  await page.getByRole('button', { name: words.app.close, exact: true }).click()
  await expect(nameField(page)).toHaveValue('Untouched')
})

test('a saved file has the name of the job and the day, and opens again as a copy, in place or not at all', async ({
  page,
}) => {
  await withoutFilePicker(page)
  await openApp(page)
  await rename(page, 'Säge 2')
  const { name, text } = await savedFile(page)
  expect(name).toMatch(/^sage-2-\d{4}-\d\d-\d\d\.json$/)
  await rename(page, 'Changed since')
  await dropFiles(page, [{ name, text }])
  await expect(page.getByRole('dialog')).toContainText(file.replaceAsk)
  await page.getByRole('button', { name: file.openAsCopy }).click()
  await expect(nameField(page)).toHaveValue('Säge 2')
  await expect(page.getByText(file.opened(name))).toBeVisible()
  await expectSaved(page)
  await pickFromMenu(page, file.kept)
  await expect(page.getByRole('button', { name: kept.open('Changed since') })).toBeVisible()
  await page.getByRole('button', { name: shelf.back }).click()
  await chooseFile(page, name, text)
  await page.getByRole('button', { name: file.replace, exact: true }).click()
  await expectSaved(page)
  await pickFromMenu(page, file.kept)
  await expect(page.getByRole('button', { name: kept.open('Säge 2') })).toHaveCount(2)
  await expect(page.getByRole('button', { name: kept.open('Changed since') })).toBeHidden()
  await page.getByRole('button', { name: shelf.back }).click()

  // Asked about and let be: it does not count as the job that was open last.
  await pickFromMenu(page, file.new)
  await rename(page, 'The last one')
  await expectSaved(page)
  await chooseFile(page, name, text.replace('Säge 2', 'Säge 3'))
  await page.getByRole('button', { name: words.app.cancel }).click()
  await expect(page.getByRole('dialog')).toBeHidden()
  await page.reload()
  await expect(nameField(page)).toHaveValue('The last one')
})

test('undo and redo go by keyboard outside of fields and leave typing in a field alone', async ({ page }) => {
  await openApp(page)
  const before = await nameField(page).inputValue()
  await rename(page, 'Renamed')
  await nameField(page).blur()
  await page.keyboard.press('Control+z')
  await expect(nameField(page)).toHaveValue(before)
  await page.keyboard.press('Control+Shift+z')
  await expect(nameField(page)).toHaveValue('Renamed')
  await page.keyboard.press('Control+z')
  await page.keyboard.press('Control+y')
  await expect(nameField(page)).toHaveValue('Renamed')
  await nameField(page).pressSequentially(' x')
  await page.keyboard.press('Control+z')
  await page.keyboard.press('Escape')
  await expect(nameField(page)).toHaveValue('Renamed')
  await page.getByRole('button', { name: undo.undoOf(words.changes.jobName) }).click()
  await expect(nameField(page)).toHaveValue(before)
})

test('a name that cannot be kept stays in its field with the reason', async ({ page }) => {
  await openApp(page)
  const tooLong = 'x'.repeat(121)
  await nameField(page).fill(tooLong)
  await nameField(page).press('Enter')
  await expect(nameField(page)).toHaveValue(tooLong)
  await expect(nameField(page)).toHaveAttribute('aria-invalid', 'true')
  await expect(page.locator('.bar').getByRole('alert')).toBeVisible()
})

test('a bore to compare with is added from the bar, removed after a question, and had back by undo', async ({
  page,
}) => {
  await openApp(page)
  await page.getByRole('button', { name: bar.add, exact: true }).click()
  await page.getByRole('button', { name: bar.addComparison }).click()
  await expect(page.locator('.bores').getByRole('tab')).toHaveCount(3)
  await expect(page.locator('.bores').getByRole('tab', { selected: true })).toHaveText(/^New 2$|^New$/)
  const added = (await page.locator('.bores').getByRole('tab', { selected: true }).textContent()) ?? ''
  await pickFromMenu(page, bar.removeBore(added))
  await page
    .getByRole('dialog')
    .getByRole('button', { name: bar.removeBore(added) })
    .click()
  await expect(page.locator('.bores').getByRole('tab')).toHaveCount(2)
  await page.getByRole('button', { name: undo.undoOf(words.changes.boreRemoved) }).click()
  await expect(page.locator('.bores').getByRole('tab')).toHaveCount(3)
})

test('the tabs of the bores go by arrow keys', async ({ page }) => {
  await openApp(page)
  const [first, second] = [
    page.locator('.bores').getByRole('tab').first(),
    page.locator('.bores').getByRole('tab').nth(1),
  ]
  await first.focus()
  await page.keyboard.press('ArrowRight')
  await expect(second).toBeFocused()
  await expect(second).toHaveAttribute('aria-selected', 'true')
  await page.keyboard.press('Home')
  await expect(first).toHaveAttribute('aria-selected', 'true')
})

test('the menu has nothing that axe finds fault with, light or dark', async ({ page }) => {
  await openApp(page)
  await rename(page, 'Kept')
  await page.getByRole('button', { name: file.menu, exact: true }).click()
  await expect(page.getByRole('button', { name: file.kept })).toBeVisible()
  await expectAccessible(page, '.bar')
  await page.emulateMedia({ colorScheme: 'dark' })
  await expectAccessible(page, '.bar')
  await page.keyboard.press('Escape')
  await expect(page.getByRole('button', { name: file.kept })).toBeHidden()
})

test.describe('in a browser that keeps nothing', () => {
  test.beforeEach(async ({ page }) => {
    await withoutFilePicker(page)
    await page.addInitScript(() => {
      Object.defineProperty(window, 'indexedDB', {
        get() {
          throw new DOMException('Storage is switched off', 'SecurityError')
        },
      })
    })
  })

  test('the page says that nothing is kept, why, and offers a file', async ({ page }) => {
    await openApp(page)
    await rename(page, 'Only in memory')
    await expect(page.getByText(saving.failed, { exact: true })).toBeVisible()
    const trouble = page.getByRole('alert').filter({ hasText: saving.errors.unavailable })
    await expect(trouble).toBeVisible()
    await expectAccessible(page, '.not-kept')
    await trouble.getByRole('button', { name: saving.retry }).click()
    await expect(trouble).toBeVisible()
    const download = page.waitForEvent('download')
    await trouble.getByRole('button', { name: saving.toFile }).click()
    const text = await readFile(await (await download).path(), 'utf8')
    expect(JSON.parse(text)).toMatchObject({ format: 'borewall-job', name: 'Only in memory' })
  })

  test('a job that is not kept is left only after a question', async ({ page }) => {
    await openApp(page)
    await rename(page, 'Only in memory')
    await pickFromMenu(page, file.new)
    await expect(page.getByRole('dialog')).toContainText(saving.leaving)
    await page.getByRole('button', { name: words.app.cancel }).click()
    await expect(nameField(page)).toHaveValue('Only in memory')
    await pickFromMenu(page, file.new)
    await page.getByRole('button', { name: saving.leaveAnyway }).click()
    await expect(nameField(page)).toHaveValue('')
  })
})

test('the theme that was chosen holds after a reload', async ({ page }) => {
  await openApp(page)
  const { theme, themeIs } = words.app
  await pickFromMenu(page, themeIs(theme.asSystem))
  await pickFromMenu(page, themeIs(theme.light))
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark')
  await page.reload()
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark')
  await page.getByRole('button', { name: file.menu, exact: true }).click()
  await expect(page.getByRole('button', { name: themeIs(theme.dark), exact: true })).toBeVisible()
})

test('what was done before a reload can be undone and done again after it', async ({ page }) => {
  await openApp(page)
  const first = await nameField(page).inputValue()
  await rename(page, 'One')
  await rename(page, 'Two')
  await expectSaved(page)
  await page.reload()
  await expect(nameField(page)).toHaveValue('Two')
  const back = page.getByRole('button', { name: undo.undoOf(words.changes.jobName) })
  await back.click()
  await expect(nameField(page)).toHaveValue('One')
  await expectSaved(page)
  await page.reload()
  await page.getByRole('button', { name: undo.redoOf(words.changes.jobName) }).click()
  await expect(nameField(page)).toHaveValue('Two')
  await back.click()
  await back.click()
  await expect(nameField(page)).toHaveValue(first)
  await expect(page.getByRole('button', { name: undo.nothing, exact: true })).toBeVisible()
})
