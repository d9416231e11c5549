import type { Page } from '@playwright/test'
import { pistonWords } from '../../src/words/piston-words'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'

const { panel, clearance, gap: gapWords } = pistonWords
const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true })
const choice = (page: Page, name: string) => page.getByRole('combobox', { name, exact: true })
const findings = (page: Page) => page.getByRole('list', { name: words.pistons.title })
const row = (page: Page, name: string) =>
  findings(page)
    .getByRole('listitem')
    .filter({ hasText: new RegExp(`^${name}`) })

const part = (page: Page, name: string) =>
  page.getByRole('navigation', { name: words.phone.parts }).getByRole('button', { name })

async function openPanel(page: Page): Promise<void> {
  const opener = page.getByRole('button', { name: /^Pistons/ })
  await opener.focus()
  await page.keyboard.press('Enter')
  await expect(page.locator('.pistons-panel')).toBeVisible()
}

async function type(page: Page, name: string, text: string): Promise<void> {
  await field(page, name).fill(text)
  await page.keyboard.press('Enter')
}

test('pistons are listed by keyboard, judged beside the findings, refused where they cannot be, and undone', async ({
  page,
}) => {
  await withoutPicture(page)
  await openApp(page)
  await expect(row(page, clearance.name('used piston'))).toContainText(clearance.verdicts['too-loose'])
  await openPanel(page)
  await expectAccessible(page, '.pistons-panel')

  const add = page.getByRole('button', { name: panel.add['at-hand'] })
  await add.focus()
  await page.keyboard.press('Enter')
  const called = words.pistons.numbered(4)
  const labelled = (label: string) => panel.ofPiston(called, label)
  await type(page, labelled(panel.labels.read), '53,9m')
  await expect(field(page, labelled(panel.labels.read))).toHaveValue('53,9m')
  await expect(page.getByRole('alert').filter({ visible: true })).not.toBeEmpty()
  await type(page, labelled(panel.labels.read), '53,956')
  await expect(field(page, labelled(panel.labels.read))).toHaveValue('53.956')
  await expect(choice(page, labelled(panel.labels.micrometer))).toHaveValue('micrometer')
  await expect(findings(page)).toContainText(clearance.provisionalShort)
  await type(page, labelled(panel.labels.height), '8')
  await type(page, labelled(panel.labels.temperature), '26')
  await type(page, labelled(panel.labels.micrometerTemperature), '26')
  await expect(findings(page)).not.toContainText(clearance.provisionalShort)
  await expect(findings(page)).toContainText(called)

  // A range typed from its far end waits, and is one change with the other.
  const grade = words.pistons.ofGrade('B')
  await type(page, panel.ofPiston(grade, panel.labels.rangeMin), '54,1')
  await expect(page.locator('.pistons-panel').getByRole('status')).not.toBeEmpty()
  await type(page, panel.ofPiston(grade, panel.labels.rangeMax), '54,11')
  await expect(findings(page)).toContainText(clearance.verdicts['too-tight'])
  const undo = page.getByRole('button', { name: new RegExp(`^${words.undo.undo}`) })
  await undo.click()
  await expect(field(page, panel.ofPiston(grade, panel.labels.rangeMin))).toHaveValue('53.956')

  await page.getByRole('button', { name: panel.remove('used piston') }).click()
  await expect(row(page, clearance.name('used piston'))).toHaveCount(0)
  await undo.click()
  await expect(row(page, clearance.name('used piston'))).toHaveCount(1)
})

test('ring gaps and the window of clearance are typed on a phone, a half-typed gap waits, and targets are large', async ({
  page,
}) => {
  await withoutPicture(page)
  await page.setViewportSize({ width: 390, height: 844 })
  await openApp(page, 'C')
  await part(page, words.parts.narrow.setUp).click()
  await openPanel(page)
  await type(page, panel.labels.newDepth, '70')
  await expect(field(page, panel.labels.newDepth)).toHaveValue('70')
  await expect(page.locator('.waits')).toContainText(panel.waitsForGap)
  await type(page, panel.labels.newGap, '1,31')
  await expect(field(page, panel.labels.gap(4))).toHaveValue('1.31')
  await expect(field(page, panel.labels.newDepth)).toHaveValue('')
  await type(page, panel.labels.gapLimit, '1.2')
  await expectAccessible(page, '.pistons-panel')
  const small = await page.locator('.pistons-panel').evaluate((all) =>
    [...all.querySelectorAll('button, summary, input, select')]
      .map(
        (each) =>
          [each.getAttribute('aria-label') ?? each.textContent, each.getBoundingClientRect()] as const,
      )
      .filter(([, { width, height }]) => width > 0 && (width < 44 || height < 44))
      .map(([name, { width, height }]) => `${name}: ${width} by ${height}`),
  )
  expect(small).toEqual([])
  await part(page, words.parts.narrow.findings).click()
  await expect(row(page, gapWords.name)).toContainText(gapWords.verdicts['too-large'])
  await expect(row(page, gapWords.taper)).toContainText('the gauge says')
  await expectAccessible(page, '.findings-part')
})

test('a piston is shown in the bore at the exaggeration that gives it room, and moved along its stroke by keyboard', async ({
  page,
}) => {
  const { shown } = pistonWords
  await openApp(page)
  const factor = field(page, words.picture.exaggerationTyped)
  await expect(factor).toHaveValue('500')
  const show = page.getByRole('button', { name: words.pistons.show })
  await show.focus()
  await page.keyboard.press('Enter')
  const said = page.locator('.piston-row p')
  await expect(said).toHaveText(`${shown.crown('0.5 mm')} ${shown.between}`)
  await expect(factor).toHaveValue('100')
  const down = page.getByRole('button', { name: shown.down })
  await down.focus()
  await page.keyboard.press('Enter')
  await expect(said).toContainText('At 62 mm, where it was measured across: clearance 80 to 83 µm')
  await page.getByRole('slider', { name: shown.along }).focus()
  await page.keyboard.press('End')
  await expect(said).toHaveText(`${shown.crown('54.5 mm')} ${shown.between}`)
  await expectAccessible(page, '.piston-row')
  await choice(page, shown.which).selectOption({ label: words.pistons.ofGrade('B') })
  await expect(said).toContainText('from its skirt edge to its crown')
  await show.focus()
  await page.keyboard.press('Enter')
  await expect(said).toBeHidden()
  await expect(factor).toHaveValue('500')
})
