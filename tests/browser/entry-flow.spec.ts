import type { Page } from '@playwright/test'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'

const { bar, bore, changes, grid, next, paste, setUp, undo } = words

test.use({ permissions: ['clipboard-read', 'clipboard-write'] })

test.beforeEach(async ({ page }) => {
  await withoutPicture(page)
  await openApp(page)
})

const cell = (page: Page, place: string) => page.getByRole('button', { name: new RegExp(`^${place}: `) })
const figure = (page: Page, place: string) => cell(page, place).locator('.figure')
const undoOf = (page: Page, change: string) => page.getByRole('button', { name: undo.undoOf(change) })
const copied = (page: Page) => page.evaluate(() => navigator.clipboard.readText())

async function pasteText(page: Page, text: string): Promise<void> {
  await page.evaluate((copy) => navigator.clipboard.writeText(copy), text)
  await page.keyboard.press('ControlOrMeta+v')
}

test('cells are walked through, chosen, copied, cut, cleared and pasted by keys, each as one step to undo', async ({
  page,
}) => {
  await cell(page, '8 mm, 0°').focus()
  await page.keyboard.press('End')
  await expect(cell(page, '8 mm, 135°')).toBeFocused()
  await page.keyboard.press('Control+End')
  await expect(cell(page, '80 mm, 135°')).toBeFocused()
  await page.keyboard.press('Control+Home')
  await page.keyboard.press('Shift+ArrowDown')
  await page.keyboard.press('Shift+ArrowRight')
  await expect(page.getByRole('gridcell', { selected: true })).toHaveCount(4)
  await page.keyboard.press('ControlOrMeta+c')
  const block = '54.033 54.035 54.033\t54.026 54.028 54.026\n54.027 54.025 54.025\t54.021 54.021 54.021'
  expect(await copied(page)).toBe(block)

  await page.keyboard.press('Delete')
  for (const place of ['8 mm, 0°', '16 mm, 45°']) await expect(figure(page, place)).toHaveCount(0)
  await undoOf(page, changes.readingsOut(4)).click()
  await expect(figure(page, '8 mm, 0°')).toHaveText('54.034')

  // Cut from one corner of the grid, and into another.
  await cell(page, '8 mm, 0°').focus()
  await page.keyboard.press('Shift+ArrowRight')
  await page.keyboard.press('ControlOrMeta+x')
  expect(await copied(page)).toBe(block.split('\n')[0])
  await expect(figure(page, '8 mm, 0°')).toHaveCount(0)
  await cell(page, '80 mm, 90°').focus()
  await page.keyboard.press('ControlOrMeta+v')
  await expect(figure(page, '80 mm, 90°')).toHaveText('54.034')
  await expect(page.locator('.paste-panel')).toContainText(paste.taken(6, 2))
  await undoOf(page, changes.pasted(2)).click()
  await undoOf(page, changes.readingsOut(2)).click()
  await expect(figure(page, '8 mm, 0°')).toHaveText('54.034')
  await expect(figure(page, '80 mm, 90°')).toHaveText('54.010')
})

test('a block with heads goes where its heads say, to several bores, and what is refused is said cell by cell and mended', async ({
  page,
}) => {
  const { depth1, depth2 } = { depth1: '8 mm, 0°', depth2: '16 mm, 45°' }
  await cell(page, '62 mm, 0°').focus()
  await pasteText(
    page,
    'Depth\t0°\t45°\t60°\n16\t54,041/54,043\t5,4\t54\n8 mm\t54.040 54.042\t\t1\n99\t54\t\t',
  )
  const panel = page.locator('.paste-panel')
  await expect(panel).toContainText(paste.taken(4, 2))
  await expect(panel).toContainText(paste.byHeads('depths and axes'))
  await expect(figure(page, depth1)).toHaveText('54.041')
  const refused = panel.getByRole('listitem')
  await expect(refused).toHaveCount(4)
  await expect(refused.first()).toContainText(next.farFromSetting('5,4', '54.000 mm'))
  await expect(panel).toContainText(paste.noStation['no-axis']('60'))
  await expect(panel).toContainText(paste.noStation['no-level']('99'))
  await panel.getByRole('button', { name: paste.copyRest }).click()
  await expect.poll(() => copied(page)).toContain('5,4')
  await expectAccessible(page, '.sheet')

  const mend = page.getByRole('textbox', {
    name: paste.mend(paste.cellAt(paste.cell(2, 3), next.inBore('bore 1', depth2))),
  })
  await mend.fill('54,031')
  await mend.press('Enter')
  await expect(refused).toHaveCount(3)
  await expect(figure(page, depth2)).toHaveText('54.031')
  await undoOf(page, changes.reading(depth2)).click()
  await undoOf(page, changes.pasted(2)).click()
  await expect(figure(page, depth1)).toHaveText('54.034')
  await panel.getByRole('button', { name: words.app.close }).click()
  await expect(panel).toBeHidden()

  // Columns that name bores: the one on the bench and the one to compare with; in the field it is a block too.
  const field = page.locator('.next-input')
  await cell(page, depth1).click()
  await pasteText(page, 'Depth;1;New\n8;54,051;54,003')
  await expect(panel).toContainText(paste.taken(2, 2))
  await expect(field).not.toHaveValue(/54,051/)
  await expect(figure(page, depth1)).toHaveText('54.051')
  await page.getByRole('tab', { name: bar.comparisonTab('New') }).click()
  await expect(figure(page, depth1)).toHaveText('54.003')

  await cell(page, depth1).focus()
  await pasteText(page, '54,012,54,013')
  await expect(panel).toContainText(paste.unreadable['commas-only'])
})

test('a gauge that types like a keyboard is taken whole while no field has the focus, and its line end presses nothing', async ({
  page,
}) => {
  const stations = ['8 mm, 0°', '8 mm, 45°', '8 mm, 90°', '8 mm, 135°', '16 mm, 0°', '16 mm, 45°']
  await page.getByRole('combobox', { name: next.repeatsPerStation }).selectOption('4')
  const press = (text: string) => page.keyboard.type(text.replaceAll('|', '\n'), { delay: 1 })
  const redo = page.getByRole('button', { name: undo.nothingToRedo })

  // On a button that would undo.
  await page.getByRole('button', { name: undo.undoOf(changes.repeatsPerStation) }).focus()
  await press('54.034|54,027|')
  await expect(page.locator('.next-head')).toContainText(next.inBore('bore 1', stations[2] ?? ''))
  await expect(redo).toBeVisible()
  await expect(undoOf(page, changes.reading(stations[1] ?? ''))).toBeFocused()
  // Without a number its line end is the user's own.
  await page.waitForTimeout(150)
  await page.keyboard.press('Enter')
  await expect(undoOf(page, changes.reading(stations[0] ?? ''))).toBeVisible()

  // On a cell: there first, then onwards.
  await cell(page, stations[2] ?? '').focus()
  await press('54.021|54.024|54.026|')
  await expect(page.locator('.next-head')).toContainText(next.inBore('bore 1', stations[5] ?? ''))

  // Both contacts of the next station are marked on the map, as its cell is in the grid.
  const marked = page.locator('.map-next')
  await expect(marked.locator('title')).toHaveText(words.map.next('16 mm', '45°'))
  await expect(marked.locator('.map-next-line')).toHaveCount(2)
  await expect(cell(page, stations[5] ?? '')).toHaveAttribute('aria-current', 'step')

  // Faster than anything is drawn: seven numbers within one turn of the page.
  await page.locator('.verdict').click()
  await page.evaluate(() => {
    for (const text of ['54.021', '54.018', '54.016', '54.015', '54.014', '54.013', '54.012']) {
      for (const key of [...text, 'Enter']) {
        document.body.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }))
      }
    }
  })
  await expect(page.locator('.next-head')).toContainText(next.inBore('bore 1', '35 mm, 90°'))

  // What is refused gives way to the next number, and is not lost.
  await press('5.4018|')
  await expect(page.locator('#next-refusal')).toHaveText(next.farFromSetting('5.4018', '54.000 mm'))
  await press('54.018|')
  await expect(page.locator('.not-taken')).toContainText(next.notTaken('5.4018', '35 mm, 90°'))
  await page.getByRole('button', { name: next.putBack('5.4018') }).click()
  await expect(page.locator('.next-input')).toHaveValue('5.4018')

  // It stays with its bore, like what is refused in a field.
  const length = page.getByRole('textbox', { name: bore.labels.length, exact: true })
  await length.fill('8,8,8')
  await length.press('Enter')
  await page.getByRole('tab', { name: bar.comparisonTab('New') }).click()
  await expect(page.locator('.next-input')).toHaveValue('')
  await expect(length).not.toHaveValue('8,8,8')
  await page.getByRole('tab').first().click()
  await expect(page.locator('.next-input')).toHaveValue('5.4018')
  await expect(length).toHaveValue('8,8,8')
  await expect(length).toHaveAttribute('aria-invalid', 'true')
})

test('a slip is asked about in its cell and beside the field while the next number is typed', async ({
  page,
}) => {
  await page.getByRole('combobox', { name: next.repeatsPerStation }).selectOption('4')
  await page.locator('.next-input').focus()
  await page.keyboard.type('53.034\n54.02', { delay: 1 })
  const here = page.locator('.next .question-here')
  await expect(here).toContainText('8 mm, 0°')
  await expect(page.locator('.next-input')).toHaveValue('54.02')
  await expect(page.locator('.next-input')).toBeFocused()
  const mark = page.getByRole('button', { name: grid.questionAt('8 mm, 0°') })
  await expect(mark).toBeVisible()
  await cell(page, '8 mm, 0°').focus()
  await page.keyboard.press('Tab')
  await expect(mark).toBeFocused()
  await page.keyboard.press('Enter')
  await expect(mark).toHaveAttribute('aria-expanded', 'true')
  await expect(page.locator('.question-row')).toContainText('8 mm, 0°')
  await expectAccessible(page, '.sheet')
})

/* The international inch is 25.4 mm exactly: (54.033 + 54.035 + 54.033) / 3 / 25.4 is 2.127310, by hand. */
test('the grid of a gauge marked in inches shows inches, within its columns', async ({ page }) => {
  await page.getByRole('combobox', { name: setUp.labels.dialUnit, exact: true }).selectOption('inch')
  await expect(figure(page, '8 mm, 0°')).toHaveText('2.12731')
  await expect(cell(page, '8 mm, 0°')).toHaveAccessibleName(/^8 mm, 0°: 2\.127\d\d in, inside/)
  await expect(page.locator('.readings thead')).toContainText(grid.headIn(grid.meanHead, 'in'))
  const wide = await page
    .locator('.readings :is(.station, td)')
    .evaluateAll((cells) => cells.filter((one) => one.scrollWidth > one.clientWidth).length)
  expect(wide, 'cells wider than their column').toBe(0)
  await cell(page, '8 mm, 0°').focus()
  await page.keyboard.press('ControlOrMeta+c')
  expect(await copied(page)).toMatch(/^2\.1272\d+ 2\.1273\d+ 2\.1272\d+$/)
  await page.keyboard.type('2.1272')
  await expect(page.locator('#next-echo')).toContainText('54.03')
})
