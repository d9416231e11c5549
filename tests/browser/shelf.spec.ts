import type { Page } from '@playwright/test'
import { summaryOf } from '../../src/job/job-summary'
import { shortDay } from '../../src/pages/shelf/day-and-time'
import { words } from '../../src/words/words'
import { expect, expectAccessible, test, withoutPicture } from './bench-fixture'
import { keepMany, oneOfMany } from './many-jobs'

const { app, bar, block, firstPage, kept, shelf } = words

function openButton(page: Page, name: string) {
  return page.getByRole('button', { name: kept.open(name), exact: true })
}

function jobName(page: Page) {
  return page.getByRole('textbox', { name: bar.jobName })
}

async function doWith(page: Page, name: string, act: string): Promise<void> {
  await page.getByRole('button', { name: shelf.more(name), exact: true }).click()
  await page.getByRole('menuitem', { name: act, exact: true }).click()
}

/** A browser with so many jobs, at the list of them. */
async function openShelf(page: Page, count: number, options?: { readonly isSummed: boolean }): Promise<void> {
  await withoutPicture(page)
  await page.goto('./')
  await expect(page.getByRole('heading', { name: firstPage.heading })).toBeVisible()
  await keepMany(page, count, options)
  await page.goto('./#shelf')
  await page.reload()
  await expect(page.getByText(shelf.count(count), { exact: true })).toBeVisible()
}

test('300 jobs are listed, found and sorted with those in view alone on the page, and opened by keyboard', async ({
  page,
}) => {
  // Some of what is due is due by this day, some is not.
  const today = '2021-06-15'
  await page.clock.setFixedTime(new Date(`${today}T12:00:00`))
  await openShelf(page, 300)
  await expect(page).toHaveTitle(app.title(shelf.title))
  await expect(page.getByRole('table')).toHaveAttribute('aria-rowcount', '301')
  await expect(page.getByRole('row')).not.toHaveCount(300)
  expect(await page.getByRole('row').count()).toBeLessThan(40)
  await expect(page.getByRole('row').nth(1)).toContainText(/Job 300.*surface may end it/)
  await expect(page.getByRole('row').nth(4).getByRole('img')).toHaveCount(4)
  await expectAccessible(page)

  await openButton(page, 'Job 300').focus()
  await page.keyboard.press('ArrowDown')
  await expect(openButton(page, 'Job 299')).toBeFocused()
  await page.keyboard.press('End')
  await expect(openButton(page, 'Job 1')).toBeFocused()
  expect(await page.getByRole('row').count()).toBeLessThan(40)
  await page.keyboard.press('PageUp')
  await expect(openButton(page, 'Job 1')).not.toBeFocused()
  await page.keyboard.press('Home')
  await expect(openButton(page, 'Job 300')).toBeFocused()

  const jobs = Array.from({ length: 300 }, (_, index) => oneOfMany(index))
  const read = jobs.map(({ name, machine, note, bores }) =>
    [name, machine, note, bores[0]?.surveys[0]?.measuredBy].join(' ').toLowerCase(),
  )
  const pumps = read.filter((text) => ['pump', 'fitter', '5'].every((word) => text.includes(word)))
  expect(pumps.length).toBeGreaterThan(5)
  await page.getByRole('searchbox', { name: shelf.search }).fill('PUMP  fitter 5')
  await expect(page.getByText(shelf.found(pumps.length, 300))).toBeVisible()
  await page.getByRole('searchbox', { name: shelf.search }).fill('order 10006')
  await expect(openButton(page, 'Job 7')).toBeVisible()
  await page.getByRole('searchbox', { name: shelf.search }).fill('')

  await page.getByRole('combobox', { name: shelf.labels.standing }).selectOption(block.standings.out)
  await expect(page.getByText(shelf.found(60, 300))).toBeVisible()
  await page.getByRole('combobox', { name: shelf.labels.machine }).selectOption('Saw')
  const saws = jobs.filter(({ machine }, index) => machine === 'Saw' && index % 5 === 1)
  await expect(page.getByText(shelf.found(saws.length, 300))).toBeVisible()
  await page.getByRole('button', { name: shelf.clear }).click()
  await page.getByLabel(shelf.labels.from).fill('2016-01-01')
  await page.getByLabel(shelf.labels.to).fill('2016-12-31')
  const in2016 = jobs.filter(({ bores }) => bores[0]?.surveys[0]?.date?.startsWith('2016'))
  await expect(page.getByText(shelf.found(in2016.length, 300))).toBeVisible()
  await page.getByRole('button', { name: shelf.clear }).click()
  const checks = jobs.flatMap((job) => summaryOf(job).checkOn ?? []).sort()
  const due = checks.filter((day) => day <= today)
  expect(due.length).toBeGreaterThan(20)
  expect(due.length).toBeLessThan(checks.length)
  await page.getByRole('combobox', { name: shelf.labels.check }).selectOption(shelf.checks.due)
  await expect(page.getByText(shelf.found(due.length, 300))).toBeVisible()
  await page.getByRole('combobox', { name: shelf.labels.order }).selectOption(shelf.orders.check)
  await expect(page.getByRole('row').nth(1)).toContainText(shelf.checkDue(shortDay(due[0] ?? '')))
  await expectAccessible(page, '.shelf-list')
  await page.getByRole('combobox', { name: shelf.labels.check }).selectOption(shelf.checks.none)
  await expect(page.getByText(shelf.found(300 - checks.length, 300))).toBeVisible()
  await page.getByRole('button', { name: shelf.clear }).click()
  await page.getByRole('combobox', { name: shelf.labels.order }).selectOption(shelf.orders.name)
  await expect(page.getByRole('row').nth(2)).toContainText('Job 2')

  await openButton(page, 'Job 2').press('Enter')
  await expect(jobName(page)).toHaveValue('Job 2')
  expect(new URL(page.url()).hash).toBe('')
  await page.goBack()
  await expect(page.getByRole('row', { name: /Job 2 / })).toContainText(shelf.onBench)
  await page.goForward()
  await expect(jobName(page)).toHaveValue('Job 2')
})

test('a job is duplicated, archived, and deleted with a way back that outlasts the page', async ({
  page,
}) => {
  await openShelf(page, 8)
  const place = page.getByRole('combobox', { name: shelf.labels.where })
  await doWith(page, 'Job 3', shelf.acts.duplicate)
  await expect(openButton(page, 'Job 3, copy')).toBeVisible()
  await expect(page.getByText(shelf.did.duplicated('Job 3, copy'))).toBeVisible()
  await expect(page.getByText(shelf.count(9), { exact: true })).toBeVisible()

  await doWith(page, 'Job 4', shelf.acts.archive)
  await expect(openButton(page, 'Job 4')).toBeHidden()
  await place.selectOption(shelf.where.archived)
  await expect(openButton(page, 'Job 4')).toBeVisible()
  await doWith(page, 'Job 4', shelf.acts.unarchive)
  await expect(page.getByText(shelf.none.archived)).toBeVisible()
  await page.getByRole('button', { name: shelf.undo, exact: true }).click()
  await expect(openButton(page, 'Job 4')).toBeVisible()
  await place.selectOption(shelf.where.shelf)

  await openButton(page, 'Job 5').focus()
  await page.keyboard.press('Delete')
  await expect(page.getByText(shelf.did.deleted('Job 5'))).toBeVisible()
  await expect(openButton(page, 'Job 5')).toBeHidden()
  // The next one down is in hand.
  await expect(openButton(page, 'Job 3')).toBeFocused()
  await page.getByRole('button', { name: shelf.undo, exact: true }).click()
  await expect(openButton(page, 'Job 5')).toBeVisible()
  await doWith(page, 'Job 5', shelf.acts.delete)
  await expect(openButton(page, 'Job 5')).toBeHidden()

  await page.reload()
  await expect(page.getByText(shelf.count(7), { exact: true })).toBeVisible()
  await place.selectOption(shelf.where.deleted)
  await expect(openButton(page, 'Job 5')).toBeVisible()
  await doWith(page, 'Job 5', shelf.acts.restore)
  await place.selectOption(shelf.where.archived)
  await expect(openButton(page, 'Job 4')).toBeVisible()
  await place.selectOption(shelf.where.shelf)
  await expect(page.getByText(shelf.count(8), { exact: true })).toBeVisible()
  await openButton(page, 'Job 5').click()
  await expect(jobName(page)).toHaveValue('Job 5')
})

test('jobs kept before there were summaries are summed up, a damaged summary is made anew, and a job deleted long ago goes', async ({
  page,
}) => {
  await openShelf(page, 30, { isSummed: false })
  await page.getByRole('combobox', { name: shelf.labels.standing }).selectOption(block.standings.out)
  await expect(page.getByText(shelf.found(6, 30))).toBeVisible()
  await page.evaluate(spoilEntries)
  await page.reload()
  // Of the two that were deleted one is past its thirty days; the damaged one is whole again.
  await expect(page.getByText(shelf.count(28), { exact: true })).toBeVisible()
  await page.getByRole('combobox', { name: shelf.labels.where }).selectOption(shelf.where.deleted)
  await expect(openButton(page, 'Job 3')).toBeVisible()
  await expect(openButton(page, 'Job 2')).toBeHidden()
  await page.getByRole('combobox', { name: shelf.labels.where }).selectOption(shelf.where.shelf)
  await page.getByRole('searchbox', { name: shelf.search }).fill('order 10000')
  await expect(page.getByRole('row', { name: /Job 1 / })).toContainText(block.standings['too-close'])
})

test.describe('on a phone', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true })

  test('the list is used by touch, with nothing smaller than a finger and no fault by axe, light or dark', async ({
    page,
  }) => {
    await openShelf(page, 30)
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme })
      await expectAccessible(page)
    }
    await page.getByText(shelf.filters, { exact: true }).tap()
    await page.getByRole('combobox', { name: shelf.labels.standing }).selectOption(block.standings.inside)
    await expect(page.getByText(shelf.filtersSet(1))).toBeVisible()
    await expectAccessible(page)
    for (const target of await page
      .locator('.shelf :is(.button, select, input, summary, .shelf-more button)')
      .all()) {
      if (await target.isVisible()) {
        expect((await target.boundingBox())?.height).toBeGreaterThanOrEqual(44)
      }
    }
    await page.getByText(shelf.filtersSet(1)).tap()
    const reach = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
    expect(reach).toBeLessThanOrEqual(0)
    await page.getByRole('button', { name: shelf.more('Job 30') }).tap()
    await expectAccessible(page)
    await page.getByRole('menuitem', { name: shelf.acts.archive }).tap()
    await expect(openButton(page, 'Job 30')).toBeHidden()
    await openButton(page, 'Job 29').tap()
    await expect(page.getByRole('heading', { level: 1, name: 'Job 29' })).toBeAttached()
  })
})

/** Runs in the page: damages a summary, and marks two jobs as deleted, one of them two months ago. */
function spoilEntries(): Promise<void> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open('borewall')
    opening.onerror = () => reject(opening.error)
    opening.onsuccess = () => {
      const writing = opening.result.transaction('entries', 'readwrite')
      const entries = writing.objectStore('entries')
      const change = (id: string, fields: object) => {
        const reading = entries.get(id)
        reading.onsuccess = () => entries.put({ ...reading.result, ...fields })
      }
      const daysAgo = (days: number) => new Date(Date.now() - days * 86_400_000).toISOString()
      change('many-0', { readings: 'many', place: 'inside' })
      change('many-1', { deletedAt: daysAgo(60) })
      change('many-2', { deletedAt: daysAgo(3) })
      writing.oncomplete = () => {
        opening.result.close()
        resolve()
      }
      writing.onabort = () => reject(writing.error)
    }
  })
}
