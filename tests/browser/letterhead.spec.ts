import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Page } from '@playwright/test'
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader'
import { carriedJob } from '../../src/job/carried-job'
import { codeOfJob } from '../../src/job/code-of-job'
import { readJob } from '../../src/job/read-job'
import type { Job } from '../../src/job/schema'
import { letterheadWords } from '../../src/words/letterhead-words'
import { words } from '../../src/words/words'
import {
  complaintsOf,
  expect,
  expectAccessible,
  openApp,
  test,
  withoutPicture,
  withoutWebgl,
} from './bench-fixture'
import { pickFromMenu } from './job-files'

const { dialog: said, problems, opening, code } = letterheadWords

// As a telephone sees a code.
test.use({ deviceScaleFactor: 3 })

const letterheadOf = (page: Page) => page.getByRole('dialog', { name: said.title })

function scenario(file: string): Job {
  const read = readJob(readFileSync(`scenarios/${file}`))
  if (!read.ok) throw new Error(`${file} is no job`)
  return read.job
}

async function textOfCode(page: Page): Promise<string> {
  const reader = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm')
  await prepareZXingModule({ overrides: { wasmBinary: readFileSync(reader).buffer }, fireImmediately: true })
  const picture = await page.getByRole('img', { name: code.label }).screenshot()
  const [found] = await readBarcodes(picture, { formats: ['QRCode'], tryHarder: true })
  return found?.text ?? ''
}

test('a letterhead is typed, kept over a reload, and stands on a report whose code opens the job in a clean profile', async ({
  page,
  browser,
  baseURL,
}) => {
  if (baseURL === undefined) throw new Error('The tests have an address')
  await withoutWebgl(page)
  await openApp(page, 'D1')
  await pickFromMenu(page, words.file.letterhead)
  const dialog = letterheadOf(page)
  await dialog.getByLabel(said.shopName).fill('Bore & Barrel (invented)')
  await dialog.getByLabel(said.address, { exact: true }).fill('1 Example Lane\nSomewhere')
  const address = dialog.getByLabel(said.appAddress)
  await address.fill('shop.example/borewall/')
  await address.press('Enter')
  await expect(dialog.getByRole('alert')).toHaveText(problems.appAddress['no-scheme'])
  await expect(address).toHaveValue('shop.example/borewall/')
  await expectAccessible(page, 'dialog')
  // What was refused waits, also while the dialog is closed.
  await page.keyboard.press('Escape')
  await pickFromMenu(page, words.file.letterhead)
  await expect(dialog.getByRole('alert')).toHaveText(problems.appAddress['no-scheme'])
  await dialog.getByRole('button', { name: said.useMended('https://shop.example/borewall/') }).click()
  await dialog.locator('input[type=file]').setInputFiles('scenarios/slip.png')
  await expect(dialog.getByRole('img', { name: said.pictureShown })).toBeVisible()
  await expect(dialog.getByText(said.saved, { exact: true })).toBeVisible()
  await page.emulateMedia({ colorScheme: 'dark' })
  await expectAccessible(page, 'dialog')
  await page.reload()
  await pickFromMenu(page, words.file.letterhead)
  await expect(dialog.getByLabel(said.shopName)).toHaveValue('Bore & Barrel (invented)')
  await expect(dialog.getByLabel(said.address, { exact: true })).toHaveValue('1 Example Lane\nSomewhere')
  await expect(address).toHaveValue('https://shop.example/borewall/')
  await expect(dialog.getByRole('img', { name: said.pictureShown })).toBeVisible()
  await page.keyboard.press('Escape')

  await page.getByRole('button', { name: words.pages.report, exact: true }).click()
  await expect(page.getByText('Bore & Barrel (invented)')).toBeVisible()
  await expect(page.getByText('1 Example Lane')).toBeVisible()
  await expect(page.getByText(code.caption)).toBeVisible()
  const text = await textOfCode(page)
  expect(text).toMatch(/^https:\/\/shop\.example\/borewall\/#job=[0-9]+$/)

  const clean = await browser.newContext()
  const complaints = complaintsOf(clean, baseURL)
  const other = await clean.newPage()
  await withoutPicture(other)
  await other.goto(`${baseURL}${new URL(text).hash}`)
  const job = scenario('D1-compressor.json')
  await expect(other.getByRole('dialog')).toContainText(job.name)
  await other.getByRole('button', { name: opening.open }).click()
  await expect(other.getByRole('textbox', { name: words.bar.jobName })).toHaveValue(job.name)
  await expect(other).toHaveURL(baseURL)
  // Kept like every job; the letterhead of the shop has not come along.
  await expect(other.getByText(/^Saved /).first()).toBeVisible()
  await other.reload()
  await expect(other.getByRole('textbox', { name: words.bar.jobName })).toHaveValue(job.name)
  await pickFromMenu(other, words.file.letterhead)
  await expect(letterheadOf(other).getByLabel(said.shopName)).toHaveValue('')
  await clean.close()
  expect(complaints).toEqual([])
})

test('an address that is broken, hostile or let be leaves the job on the bench alone, and says what is wrong', async ({
  page,
}) => {
  await withoutPicture(page)
  await openApp(page, 'D2')
  const name = page.getByRole('textbox', { name: words.bar.jobName })
  await name.fill('Mine')
  await name.press('Enter')
  await expect(page.getByText(/^Saved /).first()).toBeVisible()
  const digits = codeOfJob(carriedJob(scenario('A-two-stroke-single.json'), true).job) ?? ''
  const asked = page.getByRole('dialog')
  const go = (hash: string) =>
    page.evaluate((to) => {
      location.hash = to
    }, hash)

  await go(`#job=${digits.slice(0, -7)}`)
  await expect(asked).toContainText(opening.notOpened.damaged)
  await asked.getByRole('button', { name: words.app.close }).click()
  await expect(name).toHaveValue('Mine')

  const hostile: Job = {
    ...scenario('D2-hydraulic-tube.json'),
    name: '<img src=x onerror=alert(1)>\u202e noitcejni',
    machine: '😀 <script>alert(1)</script>',
  }
  await go(`#job=${codeOfJob(hostile)}`)
  await expect(asked).toContainText('<img src=x onerror=alert(1)>')
  await expect(asked).toContainText('<script>alert(1)</script>')
  await asked.getByRole('button', { name: words.app.cancel }).click()
  await expect(name).toHaveValue('Mine')
  await expect(page).toHaveURL(/\/$/)

  await go(`#job=${digits}`)
  await asked.getByRole('button', { name: opening.open }).click()
  await expect(name).toHaveValue('Garden saw (invented)')
  // The one before is still on the shelf, and the same address opens the same job.
  await go(`#job=${digits}`)
  await asked.getByRole('button', { name: opening.open }).click()
  await pickFromMenu(page, words.file.kept)
  await expect(page.getByRole('button', { name: words.kept.open('Mine') })).toBeVisible()
  await expect(page.getByRole('button', { name: words.kept.open('Garden saw (invented)') })).toHaveCount(1)
})

test('a letterhead that cannot be read is set aside, to be saved to a file, and a new one is begun', async ({
  page,
}) => {
  await withoutPicture(page)
  await openApp(page, 'D2')
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('borewall')
        opening.onerror = () => reject(opening.error)
        opening.onsuccess = () => {
          const writing = opening.result.transaction('marks', 'readwrite')
          writing.objectStore('marks').put({ version: 1, shopName: 7 }, 'letterhead')
          writing.oncomplete = () => {
            opening.result.close()
            resolve()
          }
        }
      }),
  )
  await pickFromMenu(page, words.file.letterhead)
  await expect(letterheadOf(page).getByRole('alert')).toHaveText(said.setAside)
  await letterheadOf(page).getByLabel(said.shopName).fill('Anew')
  await expect(letterheadOf(page).getByText(said.saved, { exact: true })).toBeVisible()
  await page.keyboard.press('Escape')
  await pickFromMenu(page, words.file.kept)
  const saving = page.waitForEvent('download')
  await page
    .getByRole('listitem')
    .filter({ hasText: said.setAsideName })
    .getByRole('button', { name: words.kept.setAsideSave })
    .click()
  const file = await (await saving).path()
  expect(JSON.parse(readFileSync(file, 'utf8'))).toEqual({ version: 1, shopName: 7 })
})
