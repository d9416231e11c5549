import { readFile } from 'node:fs/promises'
import type { Page } from '@playwright/test'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'
import { dropFiles, pickFromMenu } from './job-files'
import { tabTo } from './keyboard'

const { file, send, table } = words

/** As a spreadsheet with decimal commas writes it, with one slip: a letter for a figure. */
const typed = [
  'Bore;Depth mm;Angle;Reading 1;Reading 2',
  '1;8;0;54,080;54,081',
  '1;8;90;54,050;54,O51',
  '2;8;0;54,020;54,021',
  '2;8;270;54,010;54,011',
].join('\r\n')

async function chooseByKeyboard(page: Page, label: string, letters: string): Promise<void> {
  await tabTo(page, page.getByRole('combobox', { name: label, exact: true }))
  await page.keyboard.type(letters)
}

test('a table with decimal commas and one bad cell is mapped and taken by keyboard alone, undone in one step, and exported as it was', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write'])
  await withoutPicture(page)
  await openApp(page)
  await pickFromMenu(page, file.new)
  await dropFiles(page, [{ name: 'engine.csv', text: typed }])
  const dialog = page.getByRole('dialog', { name: table.title('engine.csv') })
  await expect(dialog.getByText(table.open['value-unit'])).toBeVisible()
  await expect(dialog.getByRole('combobox', { name: table.labels.decimal })).toHaveValue('comma')
  await expect(dialog.getByRole('combobox', { name: table.labels.separator })).toHaveValue(';')
  await expect(dialog.getByRole('button', { name: table.takeNothing })).toBeDisabled()

  // One of the two columns of readings is said; the other held the same and follows.
  await chooseByKeyboard(page, table.labels.column('D (Reading 1)'), 'Size, mm')
  await expect(dialog.getByRole('combobox', { name: table.labels.column('E (Reading 2)') })).toHaveValue(
    'size-mm',
  )
  await expect(dialog.getByText('270° is 90°', { exact: true })).toBeVisible()
  await expect(dialog.getByText('row 3, column E (Reading 2)')).toBeVisible()
  await expect(dialog.getByText(table.refused.letters)).toBeVisible()
  await expectAccessible(page, 'dialog')
  await tabTo(page, dialog.getByRole('button', { name: table.take('7 readings', table.meanings['size-mm']) }))
  await page.keyboard.press('Enter')

  await expect(dialog.getByText(table.taken('7 readings', '1 cell refused.'))).toBeVisible()
  await tabTo(page, dialog.getByRole('button', { name: table.report.copy }))
  await page.keyboard.press('Enter')
  await expect(dialog.getByText(table.report.copied)).toBeVisible()
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(
    `row\tcolumn\tcell\twhy\n3\tE (Reading 2)\t54,O51\t${table.refused.letters}`,
  )
  await page.keyboard.press('Escape')
  await expect(page.locator('.bores').getByRole('tab')).toHaveCount(2)
  await expect(page.getByRole('button', { name: /^8 mm, 0°: 54\.08/ })).toBeVisible()

  await page.keyboard.press('ControlOrMeta+z')
  await expect(page.locator('.bores').getByRole('tab')).toHaveCount(1)
  await expect(page.getByRole('button', { name: words.undo.nothing, exact: true })).toBeDisabled()
  await page.keyboard.press('ControlOrMeta+Shift+z')
  await expect(page.locator('.bores').getByRole('tab')).toHaveCount(2)

  await page.getByRole('button', { name: send.open, exact: true }).click()
  const panel = page.getByRole('dialog', { name: send.title })
  await panel.getByRole('combobox', { name: table.export.decimal }).selectOption('comma')
  const download = page.waitForEvent('download')
  await panel.getByRole('button', { name: table.export.readings }).click()
  const text = await readFile(await (await download).path(), 'utf8')
  expect(text).toBe(
    `\uFEFF${[
      'bore;survey;date;hours;depth_mm;axis_deg;repeat;size_mm',
      '1;;;;8;0;1;54,08',
      '1;;;;8;0;2;54,081',
      '1;;;;8;90;1;54,05',
      '2;;;;8;0;1;54,02',
      '2;;;;8;0;2;54,021',
      '2;;;;8;90;1;54,01',
      '2;;;;8;90;2;54,011',
    ].join('\r\n')}\r\n`,
  )
})

test('a table of 100,000 rows is read aside and can be stopped, and a table opens as a new job where there is none', async ({
  page,
}) => {
  await withoutPicture(page)
  await page.goto('./')
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible()
  const many = Array.from({ length: 100_000 }, (_, row) => `${row % 300};${row % 180};54,012`)
  // Touched from within the page as soon as it stands there: a fast machine has read the table before
  // a touch from outside has found the button.
  await page.evaluate((stop) => {
    new MutationObserver((_, seen) => {
      const buttons = [...document.querySelectorAll<HTMLButtonElement>('dialog button')]
      const found = buttons.find((button) => button.textContent === stop)
      if (found === undefined) return
      seen.disconnect()
      found.click()
    }).observe(document, { childList: true, subtree: true })
  }, table.cancel)
  await dropFiles(page, [{ name: 'long.csv', text: `depth_mm;axis;size_mm\n${many.join('\n')}` }])
  const dialog = page.getByRole('dialog')
  await expect(dialog.getByText(table.stopped)).toBeVisible()
  await page.keyboard.press('Escape')
  await expect(dialog).toBeHidden()

  const inches = 'bore,depth_in,axis,size_in,size_in\nUsed,0.5,0,2.1260,2.1261\nNew,0.5,0,2.1259,'
  await dropFiles(page, [{ name: 'saw.txt', text: inches }])
  const take = table.take(table.readings(3), table.meanings['size-inch'])
  await dialog.getByRole('button', { name: take }).click()
  await expect(dialog.getByText(table.taken(table.readings(3), table.report.noneRefused))).toBeVisible()
  await page.keyboard.press('Escape')
  await expect(page.getByRole('textbox', { name: words.bar.jobName, exact: true })).toHaveValue('saw')
  await expect(page.locator('.bores').getByRole('tab')).toHaveCount(2)
  await expect(page.getByRole('button', { name: /^12\.7 mm, 0°: 54\.00/ })).toBeVisible()
})
