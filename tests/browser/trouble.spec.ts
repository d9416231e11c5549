import type { Page } from '@playwright/test'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'

const { bar, firstPage, kept, file, saving } = words

const nameField = (page: Page) => page.getByRole('textbox', { name: bar.jobName })
const alertOf = (page: Page, text: string) => page.getByRole('alert').filter({ hasText: text })

async function rename(page: Page, name: string): Promise<void> {
  await nameField(page).fill(name)
  await nameField(page).press('Enter')
}

async function expectSaved(page: Page): Promise<void> {
  await expect(page.getByText(/^Saved \d\d:\d\d$/)).toBeVisible()
}

test.beforeEach(({ page }) => withoutPicture(page))

test('data of the browser that is cleared under the page is missed on coming back and at the next change, and the job is kept again', async ({
  page,
  baseURL,
}) => {
  const session = await page.context().newCDPSession(page)
  const clear = () =>
    session.send('Storage.clearDataForOrigin', { origin: new URL(baseURL ?? '').origin, storageTypes: 'all' })
  await openApp(page)
  await rename(page, 'Kept')
  await expectSaved(page)
  await clear()
  await page.evaluate(() => {
    // As on a busy machine, where the page comes back before it is told that its database was closed.
    const real = IDBDatabase.prototype.transaction
    IDBDatabase.prototype.transaction = () => {
      IDBDatabase.prototype.transaction = real
      throw new DOMException('The database connection is closing.', 'InvalidStateError')
    }
    window.dispatchEvent(new Event('focus'))
  })
  await expect(alertOf(page, saving.errors.gone)).toBeVisible()
  await expectAccessible(page, '.not-kept')
  await page.getByRole('button', { name: saving.keepAgain }).click()
  await expectSaved(page)
  await clear()
  await rename(page, 'Kept still')
  await expect(alertOf(page, saving.errors.gone)).toBeVisible()
  await page.getByRole('button', { name: saving.keepAgain }).press('Enter')
  await expectSaved(page)
  await page.reload()
  await expect(nameField(page)).toHaveValue('Kept still')
})

test('with no room at all a job stays on the page, which says so, and is kept once there is room', async ({
  page,
  baseURL,
}) => {
  const session = await page.context().newCDPSession(page)
  const { origin } = new URL(baseURL ?? '')
  // One byte: this Chromium takes none for no override. Before the first write: the browser asks for the room left only now and then.
  await page.goto('./job.schema.json')
  await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 })
  await openApp(page)
  await rename(page, 'No room')
  await expect(alertOf(page, saving.errors.quota)).toBeVisible()
  await expect(nameField(page)).toHaveValue('No room')
  await session.send('Storage.overrideQuotaForOrigin', { origin })
  await page.getByRole('button', { name: saving.retry }).click()
  await expectSaved(page)
  await page.reload()
  await expect(nameField(page)).toHaveValue('No room')
})

test('kept jobs that an older tab holds back are not taken for lost, and a job typed meanwhile is kept once that tab is closed', async ({
  page,
  context,
}) => {
  const older = await context.newPage()
  await older.goto('./job.schema.json')
  await older.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        // As the first Borewall did, but for making way.
        const opening = indexedDB.open('borewall', 1)
        opening.onupgradeneeded = () => {
          opening.result.createObjectStore('jobs', { keyPath: 'id' })
          opening.result.createObjectStore('aside', { autoIncrement: true })
          opening.result.createObjectStore('marks')
        }
        opening.onsuccess = () => resolve()
        opening.onerror = () => reject(opening.error)
      }),
  )
  await page.goto('./')
  await expect(alertOf(page, saving.unreachableWhy.blocked)).toBeVisible()
  await expectAccessible(page, '.first-page')
  await page.getByRole('button', { name: firstPage.measure }).click()
  await rename(page, 'Typed meanwhile')
  await expect(alertOf(page, saving.errors.blocked)).toBeVisible()
  await older.close()
  await page.getByRole('button', { name: saving.retry }).click()
  await expectSaved(page)
})

test('kept jobs that a newer Borewall has arranged are left alone, and the page says so', async ({
  page,
}) => {
  await page.goto('./job.schema.json')
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('borewall', 99)
        opening.onsuccess = () => {
          opening.result.close()
          resolve()
        }
        opening.onerror = () => reject(opening.error)
      }),
  )
  await page.goto('./')
  await expect(alertOf(page, saving.unreachableWhy['newer-shelf'])).toBeVisible()
  await page.getByRole('button', { name: firstPage.measure }).click()
  await rename(page, 'In memory')
  await expect(alertOf(page, saving.errors['newer-shelf'])).toBeVisible()
})

test('a kept job that is damaged opens with all that is wrong, is set aside whole, and the page goes on', async ({
  page,
}) => {
  await openApp(page)
  await rename(page, 'Damaged')
  await expectSaved(page)
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('borewall')
        opening.onerror = () => reject(opening.error)
        opening.onsuccess = () => {
          const jobs = opening.result.transaction('jobs', 'readwrite').objectStore('jobs')
          const reading = jobs.openCursor()
          reading.onsuccess = () => {
            const cursor = reading.result
            if (!cursor) throw new Error('Nothing is kept')
            const value: { text: string } = cursor.value
            const putting = cursor.update({ ...value, text: value.text.slice(0, 900) })
            putting.onsuccess = () => {
              opening.result.close()
              resolve()
            }
          }
        }
      }),
  )
  await page.goto('about:blank')
  await page.goto('./')
  await expect(page.getByRole('dialog', { name: file.problemsTitle('Damaged') })).toBeVisible()
  await page.keyboard.press('Escape')
  await page.getByRole('button', { name: firstPage.kept }).click()
  await expect(page.getByText(new RegExp(`^${kept.setAsideWhy.unreadable}, `))).toBeVisible()
})
