import { readFile } from 'node:fs/promises'
import type { Locator, Page } from '@playwright/test'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'
import { dropFiles } from './job-files'

const { bar, demo, examples, file, firstPage, kept, note } = words
const phone = { width: 390, height: 844 }

function heading(page: Page): Locator {
  return page.getByRole('heading', { level: 1, name: firstPage.heading })
}

function example(page: Page, name: keyof typeof examples.list): Locator {
  return page.getByRole('link', { name: examples.list[name].name })
}

function jobName(page: Page): Locator {
  return page.getByRole('textbox', { name: bar.jobName })
}

function loadedExamples(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    performance
      .getEntriesByType('resource')
      .map(({ name }) => name)
      .filter((name) => /two-stroke|four-cylinder|liner|compressor|tube|scuff/.test(name)),
  )
}

test.beforeEach(({ page }) => withoutPicture(page))

test('a browser without a job shows three ways to begin, free of faults by axe in both themes and widths', async ({
  page,
}) => {
  await page.goto('./')
  await expect(heading(page)).toBeVisible()
  await expect(page).toHaveTitle('Borewall')
  await expect(page.locator('.ways').getByRole('button')).toHaveText([firstPage.measure, firstPage.open])
  await expect(page.locator('.example-list a')).toHaveCount(8)
  expect(await loadedExamples(page)).toEqual([])
  for (const size of [phone, { width: 1440, height: 900 }]) {
    await page.setViewportSize(size)
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme })
      await expectAccessible(page)
    }
    const reach = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
    expect(reach).toBeLessThanOrEqual(0)
    for (const target of await page.locator('.first-page :is(a, button)').all()) {
      expect((await target.boundingBox())?.height).toBeGreaterThanOrEqual(44)
    }
  }
})

test('by keyboard a job of your own begins empty, and once it has a name the browser opens with it', async ({
  page,
}) => {
  await page.goto('./')
  await expect(heading(page)).toBeVisible()
  await page.keyboard.press('Tab')
  await expect(page.getByRole('button', { name: firstPage.measure })).toBeFocused()
  await page.keyboard.press('Enter')
  await expect(jobName(page)).toHaveValue('')
  await expect(page.getByText(demo.banner)).toBeHidden()
  await page.reload()
  await expect(heading(page)).toBeVisible()
  await page.getByRole('button', { name: firstPage.measure }).click()
  await jobName(page).fill('Saw on the left bench')
  await jobName(page).press('Enter')
  await expect(page.getByText(/^Saved \d\d:\d\d$/)).toBeVisible()
  await page.reload()
  await expect(jobName(page)).toHaveValue('Saw on the left bench')
})

test('each example opens at its own address as it came, and back leads to the first page', async ({
  page,
}) => {
  const opened = {
    A: 'Garden saw (invented)',
    B: 'Four-cylinder block (invented)',
    'B-as-typed': 'Block as typed (invented)',
    C: 'Wet-liner diesel, four visits (invented)',
    D1: 'Workshop compressor (invented)',
    D2: 'Hydraulic tube (invented)',
    E: 'Scuffed two-stroke, every 1° (invented)',
    'E-72': 'Scuffed two-stroke, every 5° (invented)',
  } as const
  await page.goto('./')
  for (const name of ['A', 'B', 'B-as-typed', 'C', 'D1', 'D2', 'E', 'E-72'] as const) {
    await example(page, name).focus()
    await page.keyboard.press('Enter')
    await expect(page.getByRole('heading', { level: 1, name: opened[name] })).toBeVisible()
    await expect(page.getByText(demo.banner)).toBeVisible()
    expect(new URL(page.url()).hash).toBe(`#example=${name}`)
    await page.goBack()
    await expect(heading(page)).toBeVisible()
  }
})

test('an example is kept only once it was changed, from then on as a job, and can be had again', async ({
  page,
}) => {
  await page.goto('./#example=d2')
  await expect(jobName(page)).toHaveValue('Hydraulic tube (invented)')
  expect(new URL(page.url()).hash).toBe('#example=D2')
  await page.reload()
  await expect(jobName(page)).toHaveValue('Hydraulic tube (invented)')

  await page.getByRole('button', { name: demo.banner }).click()
  const field = page.getByRole('textbox', { name: note.title })
  await expect(field).toHaveValue(/catches a fingernail/)
  await expectAccessible(page, 'dialog')
  await field.fill('Honed anew.')
  await page.getByRole('button', { name: words.app.close, exact: true }).click()
  await expect(page.getByText(/^Saved \d\d:\d\d$/)).toBeVisible()
  expect(new URL(page.url()).hash).toBe('')

  await page.getByRole('button', { name: file.menu, exact: true }).click()
  await page.getByRole('button', { name: file.examples }).click()
  await expectAccessible(page, 'dialog')
  await example(page, 'D2').click()
  await expect(page.getByRole('dialog')).toBeHidden()
  await page.getByRole('button', { name: demo.banner }).click()
  await expect(field).toHaveValue(/catches a fingernail/)
  await page.getByRole('button', { name: words.app.close, exact: true }).click()

  await page.goBack()
  await page.getByRole('button', { name: demo.banner }).click()
  await expect(field).toHaveValue('Honed anew.')
  await page.getByRole('button', { name: words.app.close, exact: true }).click()
  await page.getByRole('button', { name: file.menu, exact: true }).click()
  await page.getByRole('button', { name: file.kept }).click()
  await expect(page.locator('tbody tr')).toHaveCount(1)
})

test('a job file is opened by dropping it on the first page, and a broken one is told of there', async ({
  page,
}) => {
  await page.goto('./')
  await expect(heading(page)).toBeVisible()
  await dropFiles(page, [{ name: 'notes.json', text: 'no job at all' }])
  const dialog = page.getByRole('dialog', { name: file.problemsTitle('notes.json') })
  await expect(dialog).toContainText(file.problemsLeadNoJob)
  await page.keyboard.press('Escape')
  await expect(heading(page)).toBeVisible()
  const text = await readFile('scenarios/C-wet-liner-diesel.json', 'utf8')
  await dropFiles(page, [{ name: 'liner.json', text }])
  await expect(jobName(page)).toHaveValue('Wet-liner diesel, four visits (invented)')
  await expect(page.getByText(file.opened('liner.json'))).toBeVisible()
})

test.describe('where something is in the way', () => {
  test.use({ expectedComplaints: [/Failed to load resource/] })

  test('the page says that an example is not known, or cannot be loaded, and shows what there is', async ({
    page,
  }) => {
    await page.goto('./#example=Z')
    await expect(page.getByRole('dialog')).toContainText(examples.unknown('Z'))
    await page.getByRole('button', { name: words.app.close, exact: true }).click()
    await expect(heading(page)).toBeVisible()
    expect(new URL(page.url()).hash).toBe('')
    await page.route(/D1-compressor/, (route) => route.fulfill({ status: 404, body: '' }))
    await example(page, 'D1').click()
    await expect(page.getByRole('dialog')).toContainText(examples.notLoaded)
    await page.getByRole('button', { name: words.app.close, exact: true }).click()
    await expect(heading(page)).toBeVisible()
    await example(page, 'D2').click()
    await expect(jobName(page)).toHaveValue('Hydraulic tube (invented)')
  })

  test('a job that was open last and can no longer be read leads to the first page, and what is kept is offered', async ({
    page,
  }) => {
    await openApp(page)
    await jobName(page).fill('To be damaged')
    await jobName(page).press('Enter')
    await expect(page.getByText(/^Saved \d\d:\d\d$/)).toBeVisible()
    await page.evaluate(damageKeptJobs)
    await page.goto('./')
    await expect(page.getByRole('dialog', { name: file.problemsTitle('To be damaged') })).toBeVisible()
    await page.getByRole('button', { name: words.app.close, exact: true }).click()
    await expect(heading(page)).toBeVisible()
    await page.getByRole('button', { name: firstPage.kept }).click()
    await expect(page.getByText(kept.setAsideLead)).toBeVisible()
  })
})

/** Runs in the page: cuts the text of every kept job short. */
function damageKeptJobs(): Promise<void> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open('borewall')
    opening.onerror = () => reject(opening.error)
    opening.onsuccess = () => {
      const change = opening.result.transaction('jobs', 'readwrite')
      const cursor = change.objectStore('jobs').openCursor()
      cursor.onsuccess = () => {
        if (!cursor.result) return
        cursor.result.update({ ...cursor.result.value, text: '{ "format": ' })
        cursor.result.continue()
      }
      change.oncomplete = () => {
        opening.result.close()
        resolve()
      }
    }
  })
}
