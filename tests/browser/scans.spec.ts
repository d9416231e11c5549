import type { Page } from '@playwright/test'
import { scanMarkWords } from '../../src/words/scan-mark-words'
import { scanTableWords } from '../../src/words/scan-table-words'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutWebgl } from './bench-fixture'
import { dropFiles, pickFromMenu, savedFile, withoutFilePicker } from './job-files'

const { file, scans, undo } = words
const scanTable = scanTableWords

/** A wall with one smear at 50°, a port at 180° between 30 and 50 mm, and a spindle that stands off the axis. */
function scanFile(badLine?: number): string {
  const rows = ['depth_mm;angle_deg;radius_um']
  for (let depth = 5; depth <= 75; depth += 5) {
    for (let angle = 0; angle < 360; angle += 5) {
      const port = depth >= 30 && depth <= 50 && Math.abs(angle - 180) <= 15
      const smear = depth >= 20 && depth <= 55 && Math.abs(angle - 50) <= 5 ? -14 : 0
      const noise = ((depth * 7 + angle * 13) % 11) / 10 - 0.5
      const radius = 20 * Math.cos((angle * Math.PI) / 180) + smear + noise
      rows.push(`${depth};${angle};${port ? '' : radius.toFixed(1).replace('.', ',')}`)
    }
  }
  if (badLine !== undefined) rows[badLine - 1] = rows[badLine - 1]?.replace(/;[^;]*$/, ';1O,4') ?? ''
  return rows.join('\n')
}

const places = 15 * 72
const inPorts = 5 * 7

async function importScan(page: Page, text: string): Promise<void> {
  await dropFiles(page, [{ name: 'left wall.csv', text }])
  await expect(page.getByRole('dialog', { name: scans.importTitle('left wall.csv') })).toBeVisible()
}

test('a scan is looked at before it is taken, taken with one bad place left empty, listed, undone, sent in a file and found there again', async ({
  page,
}) => {
  await withoutWebgl(page)
  await withoutFilePicker(page)
  await openApp(page)
  await pickFromMenu(page, file.new)
  await importScan(page, scanFile(40))
  const dialog = page.getByRole('dialog')
  await expect(dialog.getByText(scanTable.levels('15', '5 mm', '75 mm'))).toBeVisible()
  await expect(dialog.getByText(scanTable.angles('72', '5°'))).toBeVisible()
  await expect(dialog.getByText(String(places - inPorts - 1), { exact: true })).toBeVisible()
  await expect(dialog.getByText(scanTable.place('40', '3'))).toBeVisible()
  await expect(dialog.getByText(scanTable.problems.letters('1O,4'))).toBeVisible()
  await expect(dialog.getByRole('combobox', { name: scanTable.labels.valueUnit })).toHaveValue('um')
  await expect(dialog.getByRole('combobox', { name: scanTable.labels.decimal })).toHaveValue('comma')
  await expectAccessible(page, 'dialog')
  await dialog.getByRole('combobox', { name: scanTable.labels.cleaning }).selectOption('before')
  await dialog.getByRole('button', { name: scanTable.takeWith(scanTable.problem, '1') }).click()
  await expect(dialog).toBeHidden()

  const list = page.getByRole('region', { name: scans.title })
  await expect(list).toContainText('left wall')
  await expect(list).toContainText(scans.list.levels('15', '72'))
  await expect(list.getByRole('combobox', { name: scans.list.cleaning('left wall') })).toHaveValue('before')
  // A bore that nobody read is drawn from its scan, without a size.
  await expect(page.getByText(scans.noVerdict)).toBeVisible()
  await expect(page.locator('.unrolled-map image')).toBeVisible()
  await page.getByRole('button', { name: scans.local }).click()
  await expect(page.getByText(scans.localSaid)).toBeVisible()
  await page.getByRole('tab', { name: words.charts.views.section }).click()
  await expect(page.getByText(scans.oneWall)).toBeVisible()
  await expectAccessible(page)
  // A scan has no size of its own to be drawn over hours.
  await page.getByRole('tab', { name: words.charts.views.hours }).click()
  await expect(page.getByText(words.charts.noReadings)).toBeVisible()
  await page.getByRole('tab', { name: words.charts.views.profile }).click()
  await expect(page.getByRole('img', { name: /radii at/ })).toBeVisible()

  await page.getByRole('button', { name: scans.list.remove('left wall') }).click()
  await expect(list).toBeHidden()
  await page.getByRole('button', { name: undo.undoOf(scans.changes.removed('left wall')) }).click()
  await expect(list).toBeVisible()

  const { text } = await savedFile(page)
  const job = JSON.parse(text)
  const [entry] = job.bores[0].scans
  expect(entry).toMatchObject({ name: 'left wall', cleaning: 'before', levels: 15, angles: 72 })
  expect(job.scans).toMatchObject([{ hash: entry.hash }])
  const elsewhere = await page.context().browser()?.newContext()
  const other = await elsewhere?.newPage()
  if (!other) throw new Error('Expected a page in another profile')
  await withoutWebgl(other)
  await other.goto(page.url())
  await expect(other.getByRole('heading', { level: 1 })).toBeVisible()
  await dropFiles(other, [{ name: 'scan.json', text: text }])
  await expect(other.getByText(scans.noVerdict)).toBeVisible()
  const { scans: _, ...bare } = job
  await dropFiles(other, [{ name: 'bare.json', text: JSON.stringify({ ...bare, id: 'bare' }) }])
  await expect(other.getByRole('region', { name: scans.title })).toBeVisible()
  const spoilt = { ...bare, id: 'spoilt', scans: [{ hash: '00'.repeat(32), base64: 'AAAA' }] }
  spoilt.bores[0].scans[0].hash = '00'.repeat(32)
  await dropFiles(other, [{ name: 'spoilt.json', text: JSON.stringify(spoilt) }])
  await expect(other.getByRole('dialog')).toContainText(scans.damaged(1))
  await other.getByRole('button', { name: words.app.close, exact: true }).click()
  await expect(other.getByText(scans.status['not-here'])).toBeVisible()
  await elsewhere?.close()
})

test('a scan that readings give a size has limits in the picture, one without has none, and reading a long one can be stopped', async ({
  page,
}) => {
  await openApp(page, 'E')
  const picture = page.getByRole('application', { name: scans.picture })
  await expect(picture).toBeVisible()
  await expect(picture).toContainText('wear limit')
  await expect(page.getByText(scans.sized)).toBeVisible()
  await page.getByRole('combobox', { name: scans.list.tie('Every 1°') }).selectOption('none')
  await page
    .getByRole('region', { name: scans.title })
    .getByRole('button', { name: /Look at/ })
    .click()
  await expect(page.getByText(scans.noVerdict)).toBeVisible()
  await expect(picture).toContainText(scans.noSize)
  await expect(picture).not.toContainText('wear limit')
  await page.getByRole('button', { name: scans.readings }).click()
  await expect(page.getByRole('application', { name: words.picture.label })).toBeVisible()

  const long = ['depth mm;angle;radius um']
  for (let place = 0; place < 900_000; place++)
    long.push(`${Math.floor(place / 600)};${(place % 600) * 0.6};1`)
  await importScan(page, long.join('\n'))
  await page.getByRole('button', { name: words.table.cancel }).click()
  await expect(page.getByText(words.table.stopped)).toBeVisible()
  await expect(page.getByRole('button', { name: words.table.again })).toBeVisible()
})

test.describe('on a phone', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true })

  test('a scan is drawn, and its buttons are large enough for gloves', async ({ page }) => {
    await withoutWebgl(page)
    await openApp(page, 'E-72')
    await page.getByRole('button', { name: words.parts.narrow.wall }).click()
    await expect(page.getByText(scans.noVerdict)).toBeVisible()
    const height = (await page.getByRole('button', { name: scans.local }).boundingBox())?.height ?? 0
    expect(height).toBeGreaterThanOrEqual(44)
    await expectAccessible(page)
  })
})

test('a scan is fitted once, while it is looked at, for the job that takes it, and not where it is not taken', async ({
  page,
}) => {
  const begun: string[] = []
  page.on('worker', (worker) => {
    if (worker.url().includes('scan-fit')) begun.push(worker.url())
  })
  const isAtRest = () => page.workers().every((worker) => !/scan-(fit|form)/.test(worker.url()))
  await withoutWebgl(page)
  await openApp(page)
  await importScan(page, scanFile())
  const dialog = page.getByRole('dialog')
  await dialog.getByRole('button', { name: scanTable.take('1') }).click()
  await expect(dialog).toBeHidden()
  await expect(page.getByText(scans.noVerdict)).toBeVisible()
  await expect(page.getByRole('region', { name: scans.title })).toContainText('left wall')
  const marks = page.getByRole('region', { name: scanMarkWords.title }).locator('ul > li')
  await expect(marks).toHaveText([new RegExp(scanMarkWords.signs.smaller)])
  expect(begun).toHaveLength(1)
  await expect.poll(isAtRest).toBe(true)

  // Larger figures lie nearer to the axis: what was begun for the file as it stands is let go of.
  await importScan(page, scanFile())
  await dialog.getByRole('combobox', { name: scanTable.labels.sign }).selectOption('inward')
  await dialog.getByRole('button', { name: scanTable.take('1') }).click()
  await expect(dialog).toBeHidden()
  await expect(marks).toHaveText([new RegExp(scanMarkWords.signs.larger)])
  await expect.poll(isAtRest).toBe(true)

  await importScan(page, scanFile())
  await expect(dialog.getByRole('button', { name: scanTable.take('1') })).toBeEnabled()
  await dialog.getByRole('button', { name: words.app.close, exact: true }).click()
  await expect(dialog).toBeHidden()
  await expect.poll(isAtRest).toBe(true)
})

test('a scan that is dropped on an empty page becomes a job, drawn as far down as it was scanned, whatever length is given', async ({
  page,
}) => {
  await page.goto('./')
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible()
  await importScan(page, scanFile())
  await page.getByRole('dialog').getByRole('button', { name: scanTable.newJob }).click()
  const picture = page.getByRole('application', { name: scans.picture })
  await expect(picture).toBeVisible()
  await expect(page.getByText(words.notes.lengthNotKnown('85 mm'))).toBeVisible()
  await expect(page.locator('.unrolled-map')).toContainText('75')
  const length = page.getByRole('textbox', { name: words.bore.labels.length, exact: true })
  await length.fill('60')
  await length.press('Enter')
  await expect(page.getByText(scans.pastEnd('75 mm', '60 mm'))).toBeVisible()
  await length.fill('80')
  await length.press('Enter')
  await expect(page.getByText(scans.noVerdict)).toBeVisible()
  await expect(page.getByText(scans.pastEnd('75 mm', '80 mm'))).toBeHidden()
  await expect(picture).toBeVisible()
})
