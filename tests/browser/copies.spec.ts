import { readFile } from 'node:fs/promises'
import type { Page } from '@playwright/test'
import { writeJob } from '../../src/job/write-job'
import { words } from '../../src/words/words'
import { scenario } from '../unit/scenarios/scenario'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'
import { dropFiles, pickFromMenu, savedFile, withoutFilePicker } from './job-files'

const { bar, file, jobsTaken, keeping, saving, undo, versions } = words

const nameField = (page: Page) => page.getByRole('textbox', { name: bar.jobName })

async function rename(page: Page, name: string): Promise<void> {
  await nameField(page).fill(name)
  await nameField(page).press('Enter')
}

async function expectSaved(page: Page): Promise<void> {
  await expect(page.getByText(/^Saved \d\d:\d\d$/)).toBeVisible()
}

/** Limits of the example, kept for other jobs. */
async function keepLimits(page: Page): Promise<void> {
  const template = { ...scenario('A-two-stroke-single.json'), id: 'limits', name: 'Saws' }
  const record = { id: 'limits', name: 'Saws', typedOn: '2024-05-31', text: writeJob(template) }
  await page.evaluate(
    (kept) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('borewall')
        opening.onerror = () => reject(opening.error)
        opening.onsuccess = () => {
          const writing = opening.result.transaction('specs', 'readwrite')
          writing.objectStore('specs').put(kept)
          writing.oncomplete = () => {
            opening.result.close()
            resolve()
          }
        }
      }),
    record,
  )
}

test.beforeEach(async ({ page }) => {
  await withoutPicture(page)
  await withoutFilePicker(page)
})

test('a job is looked at as it was when the session began, brought back to it, and that is undone', async ({
  page,
}) => {
  await openApp(page)
  await rename(page, 'Before')
  await expectSaved(page)
  await page.reload()
  await rename(page, 'After')
  await expectSaved(page)
  await pickFromMenu(page, versions.menu)
  const dialog = page.getByRole('dialog', { name: versions.title })
  await expect(dialog.getByRole('listitem')).toHaveCount(1)
  await expect(dialog).toContainText(versions.why.session)
  await expect(dialog).toContainText(versions.held('Before', words.shelf.readings(42)))
  await dialog.getByText(versions.look, { exact: true }).click()
  await expect(dialog.getByRole('textbox')).toHaveValue(/Before[\s\S]*Inside the wear limit/)
  await expectAccessible(page, 'dialog')
  await dialog.getByText(versions.restore, { exact: true }).press('Enter')
  await expect(nameField(page)).toHaveValue('Before')
  await page.getByRole('button', { name: undo.undoOf(words.changes.restored) }).click()
  await expect(nameField(page)).toHaveValue('After')
  await pickFromMenu(page, versions.menu)
  await expect(dialog.getByRole('listitem')).toHaveCount(2)
  await expect(dialog).toContainText(versions.why.restore)
})

test('all jobs and kept limits go to one file and come back into an empty browser, each with what became of it', async ({
  page,
  baseURL,
}) => {
  await openApp(page)
  await rename(page, 'Saw')
  await pickFromMenu(page, file.new)
  await rename(page, 'Pump')
  await expectSaved(page)
  await keepLimits(page)
  const downloading = page.waitForEvent('download')
  await pickFromMenu(page, file.saveAll)
  const download = await downloading
  const name = download.suggestedFilename()
  expect(name).toMatch(/^all-jobs-\d{4}-\d\d-\d\d\.json$/)
  const text = await readFile(await download.path(), 'utf8')
  await expect(page.getByText(file.savedAll(2, name))).toBeVisible()

  const session = await page.context().newCDPSession(page)
  await page.goto('about:blank')
  await session.send('Storage.clearDataForOrigin', {
    origin: new URL(baseURL ?? '').origin,
    storageTypes: 'all',
  })
  await page.goto('./')
  await expect(page.getByRole('button', { name: words.firstPage.measure })).toBeVisible()
  const report = page.getByRole('dialog', { name: jobsTaken.title(name) })
  const close = () => page.getByRole('button', { name: words.app.close, exact: true }).click()
  await dropFiles(page, [{ name, text }])
  await expect(report).toContainText(jobsTaken.taken(2))
  await expect(report).toContainText(jobsTaken.limits(1))
  await close()
  const changed = text
    .replace('"name": "Pump"', '"name": "Well"')
    .replace('"zeroOpenUm": 0', '"zeroOpenUm": "0"')
  await dropFiles(page, [{ name, text }])
  await expect(report).toContainText(jobsTaken.same(2))
  await expect(report).not.toContainText(jobsTaken.limits(1))
  await close()
  await dropFiles(page, [{ name, text: changed }])
  await expect(report).toContainText(jobsTaken.copied(1))
  await expect(report).toContainText(jobsTaken.refused(1))
  await expect(report).toContainText(/jobs\[\d\]\.setUps\[0\]\.zeroOpenUm/)
  await expectAccessible(page, 'dialog')
  await report.getByRole('button', { name: file.kept }).click()
  for (const kept of ['Saw', 'Pump', file.copyName('Well')]) {
    await expect(page.getByText(kept, { exact: true })).toBeVisible()
  }
})

test('a job that stands in no file is reminded of quietly, until it is in one, and its details say what the browser promises', async ({
  page,
}) => {
  await openApp(page)
  const { text } = await savedFile(page)
  const own = JSON.stringify({ ...JSON.parse(text), id: 'own', invented: undefined, name: 'Own' })
  await dropFiles(page, [{ name: 'own.json', text: own }])
  await expectSaved(page)
  await expect(page.getByText(keeping.reminder['changed-since'])).toBeHidden()
  await rename(page, 'Own, changed')
  await expect(page.getByText(keeping.reminder['changed-since'])).toBeVisible()
  await expectAccessible(page, '.bar')
  await savedFile(page)
  await expect(page.getByText(keeping.reminder['changed-since'])).toBeHidden()
  await pickFromMenu(page, file.duplicate)
  await expect(page.getByText(keeping.reminder['never-copied'])).toBeVisible()
  await page.getByRole('button', { name: keeping.dismissLabel }).click()
  await expect(page.getByText(keeping.reminder['never-copied'])).toBeHidden()
  await page.reload()
  await expectSaved(page)
  await expect(page.getByText(keeping.reminder['never-copied'])).toBeHidden()

  await page.getByText(/^Saved \d\d:\d\d$/).click()
  const details = page.getByRole('dialog', { name: keeping.title })
  await expect(details).toContainText(keeping.notCopied)
  await expect(details).toContainText(keeping.pen.held)
  await expectAccessible(page, 'dialog')
  await page.keyboard.press('Escape')
  await rename(page, 'Own, once more')
  await expectSaved(page)
  await page.getByText(/^Saved \d\d:\d\d$/).click()
  // Chromium promises nothing to a page that was not installed.
  await expect(details).toContainText(keeping.persistence.refused)
  await expect(details.getByRole('button', { name: saving.toFile })).toBeVisible()
})
