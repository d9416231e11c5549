import type { Page } from '@playwright/test'
import { writeJob } from '../../src/job/write-job'
import { words } from '../../src/words/words'
import { scenario } from '../unit/scenarios/scenario'
import { expect, expectAccessible, test, withoutPicture } from './bench-fixture'
import { dropFiles, pickFromMenu } from './job-files'

const { bar, file, firstPage, keptSpecs, limits, questions, setUp, undo } = words

function field(page: Page, name: string) {
  return page.getByRole('textbox', { name, exact: true })
}

/** A job of a mechanic's own with limits and a plan: the saw among the examples, its figures taken for typed ones. */
function ownJob() {
  const { invented: _, ...saw } = scenario('A-two-stroke-single.json')
  return { ...saw, id: 'own', name: 'Saw on the left bench', machine: 'Saw 54' }
}

test('limits are kept under a name and begin the next job of the kind, by keyboard, without its readings', async ({
  page,
}) => {
  await withoutPicture(page)
  await page.goto('./')
  await expect(page.getByRole('heading', { name: firstPage.heading })).toBeVisible()
  await dropFiles(page, [{ name: 'own.json', text: writeJob(ownJob()) }])
  await expect(field(page, bar.jobName)).toHaveValue('Saw on the left bench')
  await page.getByRole('button', { name: keptSpecs.keep }).click()
  await expect(field(page, keptSpecs.keepName)).toHaveValue('Saw 54')
  await page.keyboard.press('Enter')
  await expect(
    page.getByText(/^Limits as kept under “Saw 54” on .*, from the user’s own manual\.$/),
  ).toBeVisible()

  await pickFromMenu(page, file.new)
  await expect(field(page, limits.labels.wearLimit)).toHaveValue('')
  const take = page.getByRole('button', { name: keptSpecs.take })
  await take.focus()
  await page.keyboard.press('Enter')
  await expectAccessible(page, '.take-spec')
  await page.keyboard.press('s')
  await page.keyboard.press('Enter')
  await expect(take).toBeHidden()
  await expect(field(page, limits.labels.wearLimit)).toHaveValue('54.050')
  await page.getByRole('button', { name: setUp.more.title, exact: true }).click()
  await expect(field(page, bar.machine)).toHaveValue('Saw 54')
  await expect(field(page, bar.jobName)).toHaveValue('')
  // The plan is there, and nothing that was read on another day; the setting is asked about.
  await expect(page.getByRole('button', { name: /^8 mm, 0°/ })).toBeVisible()
  await expect(page.getByText('54.0', { exact: false }).filter({ hasText: 'spread' })).toHaveCount(0)
  await expect(field(page, setUp.labels.boreTemperature)).toHaveValue('')
  await expect(page.getByRole('button', { name: questions.itIs('54.000 mm') })).toBeVisible()
  await page.getByRole('button', { name: undo.undoOf(keptSpecs.taken('Saw 54')) }).click()
  await expect(field(page, limits.labels.wearLimit)).toHaveValue('')
  await expect(take).toBeVisible()
})

test('kept limits are listed, renamed, removed with a way back, and begin a job from the list', async ({
  page,
}) => {
  await withoutPicture(page)
  await page.goto('./')
  await expect(page.getByRole('heading', { name: firstPage.heading })).toBeVisible()
  await dropFiles(page, [{ name: 'own.json', text: writeJob(ownJob()) }])
  const keep = page.getByRole('button', { name: keptSpecs.keep })
  await keep.click()
  await page.keyboard.press('Enter')
  await field(page, limits.labels.wearLimit).fill('54,06')
  await field(page, limits.labels.wearLimit).press('Enter')
  await keep.click()
  await page.keyboard.press('Enter')
  // Under the same name it is asked about first.
  await expect(page.getByRole('dialog')).toContainText(keptSpecs.replaceAsk('Saw 54'))
  await page.getByRole('button', { name: words.app.cancel }).last().click()
  await field(page, keptSpecs.keepName).fill('Saw 54, late')
  await page.keyboard.press('Enter')
  await expect(page.getByText(/kept under “Saw 54, late”/)).toBeVisible()

  await pickFromMenu(page, file.kept)
  await page.getByRole('button', { name: keptSpecs.title }).click()
  const dialog = page.getByRole('dialog', { name: keptSpecs.title })
  await expect(dialog.getByRole('listitem')).toHaveCount(2)
  await expect(dialog).toContainText(keptSpecs.wear('54.060'))
  await expectAccessible(page, 'dialog')
  await page.emulateMedia({ colorScheme: 'dark' })
  await expectAccessible(page, 'dialog')
  await field(page, keptSpecs.rename('Saw 54')).fill('Saw 54, early')
  await page.keyboard.press('Enter')
  await page.getByRole('button', { name: keptSpecs.removeNamed('Saw 54, early') }).click()
  await expect(dialog.getByRole('listitem')).toHaveCount(1)
  await dialog.getByRole('button', { name: keptSpecs.undo }).click()
  await expect(dialog.getByRole('listitem')).toHaveCount(2)
  await page.getByRole('button', { name: keptSpecs.newJobFrom('Saw 54, early') }).click()
  await expect(field(page, limits.labels.wearLimit)).toHaveValue('54.050')
  await expect(field(page, bar.jobName)).toHaveValue('')
  await page.reload()
  await expect(field(page, limits.labels.wearLimit)).toHaveValue('54.050')
})
