import type { Page } from '@playwright/test'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'

const { bore, limits, next, picture, questions, setUp } = words

/** Only what cannot be seen without the picture is tested with it. */
const picturedTests = new Set([
  'the example fits into the page: neither the page nor the sheet scrolls at 1440 × 900',
  'the exaggeration is typed, refused where it cannot be drawn, and given back',
])

async function type(page: Page, label: string, text: string): Promise<void> {
  const field = page.getByRole('textbox', { name: label, exact: true })
  await field.fill(text)
  await field.press('Enter')
}

function fieldOf(page: Page, label: string) {
  return page.getByRole('textbox', { name: label, exact: true })
}

test.beforeEach(async ({ page }, { title }) => {
  if (!picturedTests.has(title)) await withoutPicture(page)
})

/** How far the content of a column reaches below its end, pixels. */
function overflowOf(page: Page, column: string): Promise<number> {
  return page.locator(column).evaluate((element) => element.scrollHeight - element.clientHeight)
}

test('the example fits into the page: neither the page nor the sheet scrolls at 1440 × 900', async ({
  page,
}) => {
  await openApp(page)
  await expect(page.locator('.verdict')).toBeVisible()
  expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBeLessThanOrEqual(900)
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(1440)
  expect(await overflowOf(page, '.sheet-scroll')).toBeLessThanOrEqual(1)
})

test('a port is placed by its width along the wall and its middle, kept by its edges, and mirrored in one touch', async ({
  page,
}) => {
  await openApp(page)
  await page.locator('.openings summary').click()
  const cell = page.getByRole('button', { name: /^62 mm, 45°: / })
  await expect(cell).toHaveClass(/is-inside/)
  await expect(page.locator('.map-port')).toHaveCount(7)
  const way = page.getByRole('combobox', { name: bore.ports.measuredBy })
  await way.selectOption('arc')
  // A sixth of the way round a bore of 54.050 mm is 28.30 mm: own arithmetic.
  await type(page, `boost: ${bore.ports.width}`, '28,30')
  await way.selectOption('edges')
  const edges = async () => [
    Number(await fieldOf(page, `boost: ${bore.ports.fromAngle}`).inputValue()),
    Number(await fieldOf(page, `boost: ${bore.ports.toAngle}`).inputValue()),
  ]
  const [from = 0, to = 0] = await edges()
  expect(to - from).toBeCloseTo(60, 1)
  expect((to + from) / 2).toBeCloseTo(180, 2)

  // Both ends past the old ones, the first of them typed first.
  await type(page, `boost: ${bore.ports.fromDepth}`, '60')
  await type(page, `boost: ${bore.ports.toDepth}`, '66')
  await way.selectOption('arc')
  await type(page, `boost: ${bore.ports.middle}`, '241')
  await way.selectOption('edges')
  const [movedFrom = 0, movedTo = 0] = await edges()
  expect(movedFrom - from).toBeCloseTo(61, 2)
  expect(movedTo - to).toBeCloseTo(61, 2)
  await type(page, `boost: ${bore.ports.fromAngle}`, '210')
  await type(page, `boost: ${bore.ports.toAngle}`, '270')
  await page.getByRole('button', { name: bore.ports.mirror('boost') }).click()
  const image = `boost${bore.ports.mirrorSuffix}`
  // The mirror image about the front: 210 to 270 becomes 90 to 150, at the same depths.
  for (const [label, value] of [
    [bore.ports.fromDepth, '60'],
    [bore.ports.toDepth, '66'],
    [bore.ports.fromAngle, '90'],
    [bore.ports.toAngle, '150'],
  ] as const) {
    await expect(fieldOf(page, `${image}: ${label}`)).toHaveValue(value)
  }
  await expect(page.locator('.map-port')).toHaveCount(7)
  // One contact of the axis at 45° stands at 225°.
  await expect(cell).toHaveClass(/is-blocked/)
  await page.getByRole('button', { name: words.undo.undoOf(words.changes.ports) }).click()
  await expect(fieldOf(page, `${image}: ${bore.ports.fromAngle}`)).toHaveCount(0)
  await type(page, `boost: ${bore.ports.toAngle}`, '210')
  await expect(page.getByText(words.number.waits.same)).toBeVisible()
  await type(page, `boost: ${bore.ports.fromAngle}`, '150')
  await expect(page.getByText(words.number.waits.same)).toBeHidden()

  await way.selectOption('arc')
  await type(page, `boost: ${bore.ports.width}`, '400')
  await expect(page.getByRole('alert').filter({ hasText: '400 mm is outside' })).toBeVisible()
  await expect(fieldOf(page, `boost: ${bore.ports.width}`)).toHaveValue('400')
})

test('a doubt that is known better than typical takes the place of the typical one, and can be undone', async ({
  page,
}) => {
  await openApp(page)
  const largest = page.locator('.finding').first()
  const before = (await largest.locator('.finding-figure').textContent()) ?? ''
  await page.getByRole('button', { name: setUp.typicalTitle }).click()
  const setting = fieldOf(page, setUp.typicalLabels.setting)
  await expect(setting).toHaveValue('')
  await expect(setting).toHaveAttribute('placeholder', '2.6')
  await type(page, setUp.typicalLabels.setting, '9')
  await expect(largest.locator('.finding-figure')).not.toHaveText(before)
  await type(page, setUp.typicalLabels.thermometerDoubt, '0,2')
  await expect(fieldOf(page, setUp.typicalLabels.thermometerDoubt)).toHaveValue('0.2')
  await expectAccessible(page, '.sheet')
  await page.getByRole('heading', { level: 2 }).first().click()
  await page.keyboard.press('ControlOrMeta+z')
  await page.keyboard.press('ControlOrMeta+z')
  await expect(setting).toHaveValue('')
  await expect(largest.locator('.finding-figure')).toHaveText(before)
})

test('two temperatures of parts that lay side by side are asked about, and each answer ends the question', async ({
  page,
}) => {
  await openApp(page)
  const question = page.locator('.question')
  const thermometers = page.getByRole('combobox', { name: setUp.labels.thermometers })
  await thermometers.selectOption('soaked')
  await expect(question).toHaveCount(0)
  await type(page, setUp.labels.boreTemperature, '28,5')
  await expect(question).toContainText(questions.soakedApart('28.5 °C', 'micrometer', '26 °C'))
  await expectAccessible(page, '.proof')
  await question.getByRole('button', { name: questions.bothAt('26 °C') }).click()
  await expect(question).toHaveCount(0)
  await expect(fieldOf(page, setUp.labels.boreTemperature)).toHaveValue('26')
  await type(page, setUp.labels.referenceTemperature, '24')
  await question.getByRole('button', { name: questions.notYetEqual }).click()
  await expect(question).toHaveCount(0)
  await expect(thermometers).toHaveValue('one')
  await expect(fieldOf(page, setUp.labels.boreTemperature)).toHaveValue('26')
  await expect(fieldOf(page, setUp.labels.referenceTemperature)).toHaveValue('24')
})

test('a date that is none stays in its field with the reason', async ({ page }) => {
  await openApp(page)
  await type(page, setUp.surveyLabels.date, '31.5.2024')
  await expect(page.getByRole('alert').filter({ hasText: /31\.5\.2024.* is not a date/ })).toBeVisible()
  await expect(fieldOf(page, setUp.surveyLabels.date)).toHaveValue('31.5.2024')
  await type(page, setUp.surveyLabels.date, '2024-05-31')
  await expect(fieldOf(page, setUp.surveyLabels.date)).toHaveAttribute('aria-invalid', 'false')
})

test('a size that cannot belong to the setting is refused in words and stays in the field', async ({
  page,
}) => {
  await openApp(page)
  await page.getByRole('button', { name: /^8 mm, 0°/ }).click()
  const field = page.getByRole('textbox', { name: new RegExp(`^${next.sizeField}: `) })
  await field.fill('5,4033')
  await field.press('Enter')
  await expect(page.locator('#next-refusal')).toHaveText(next.farFromSetting('5,4033', '54.000 mm'))
  await expect(field).toHaveValue('5,4033')
})

test('a limit can be cleared again and the verdict then says that there is none', async ({ page }) => {
  await openApp(page)
  for (const label of [limits.labels.newMin, limits.labels.newMax, limits.labels.wearLimit]) {
    await type(page, label, '')
  }
  // What is left is the band that the grades span.
  await expect(page.locator('.verdict')).not.toContainText(words.verdict.none['no-limits'])
  for (const grade of ['A', 'B']) {
    await page.getByRole('button', { name: limits.removeGrade(grade) }).click()
  }
  await expect(page.locator('.verdict')).toContainText(words.verdict.none['no-limits'])
})

test('the exaggeration is typed, refused where it cannot be drawn, and given back', async ({ page }) => {
  await openApp(page)
  const typed = fieldOf(page, picture.exaggerationTyped)
  const own = await typed.inputValue()
  await type(page, picture.exaggerationTyped, '200')
  await expect(page.getByRole('slider', { name: picture.exaggeration })).toHaveAttribute(
    'aria-valuetext',
    picture.exaggerationIs('200'),
  )
  await type(page, picture.exaggerationTyped, '1000000')
  await expect(page.locator('.factor').getByRole('alert')).toBeVisible()
  await typed.press('Escape')
  await page.getByRole('button', { name: picture.exaggerationAuto }).click()
  await expect(typed).toHaveValue(own)
})

test('a cell under the pointer is read out and marked on the map', async ({ page }) => {
  await openApp(page)
  await page.getByRole('button', { name: /^8 mm, 0°/ }).hover()
  await expect(page.locator('.read-out')).toHaveText(/^8 mm · 0° · 54\.0\d\d ± 0\.0\d\d · a reading$/)
  await expect(page.locator('.map-pointer')).toHaveCount(1)
})

test('the doubt of the largest diameter is taken apart, and checked by simulation off the page, which can be stopped', async ({
  page,
}) => {
  await openApp(page)
  const { budget, simulation } = words
  await page.getByText(budget.title).click()
  await expect(page.locator('.budget-table tbody tr').first()).toContainText(budget.kinds.setting)
  await page.getByRole('button', { name: simulation.start }).click()
  await page.getByRole('button', { name: simulation.cancel }).click()
  await expect(page.getByRole('progressbar')).toHaveCount(0)
  await page.getByRole('button', { name: simulation.start }).click()
  await expect(page.locator('.simulation')).toContainText('20,000 draws of every error agree', {
    timeout: 30_000,
  })
  await expectAccessible(page, '.budget')
})

test('a plan is proposed for a question, taken in one touch that leaves what is read, undone, and says how many readings a doubt takes', async ({
  page,
}) => {
  await openApp(page)
  const { plan } = words
  const panel = page.locator('.plan-proposal')
  await panel.getByText(plan.title, { exact: true }).click()
  await expect(panel).toContainText('The middle of this bore cannot be measured')
  await expect(panel.getByRole('row', { name: /^35 mm only 90°/ })).toBeVisible()
  const level = page.getByRole('textbox', { name: words.grid.editLevel('48 mm'), exact: true })
  const axis = page.getByRole('textbox', { name: words.grid.editAxis('22.5°'), exact: true })
  const question = panel.getByRole('combobox', { name: plan.question })
  await question.selectOption('bolts')
  await panel.getByRole('button', { name: plan.take }).click()
  await expect(axis).toBeVisible()
  await expect(level).toHaveCount(0)
  await expect(page.getByRole('button', { name: /^35 mm, 90°: 54\.0/ })).toBeVisible()
  await expect(panel.getByText(plan.taken)).toBeVisible()
  await page.getByRole('button', { name: words.undo.undoOf(plan.change) }).click()
  await expect(level).toBeVisible()
  await expect(axis).toHaveCount(0)

  await question.selectOption('size')
  await type(page, plan.repeats.label, '5')
  await expect(panel).toContainText(plan.repeats.never('± 7 µm'))
  await question.selectOption('out-of-round')
  await type(page, plan.repeats.label, '2,5')
  await panel.getByRole('button', { name: plan.repeats.ask(2) }).click()
  await expect(page.getByRole('combobox', { name: words.next.repeatsPerStation })).toHaveValue('2')
  await panel.getByText(plan.measurable).click()
  await expect(panel).toContainText('25.5 to 38.5 mm: 53° to 127°')
  await expectAccessible(page, '.plan-proposal')

  await type(page, bore.labels.length, '')
  await expect(panel).toContainText(plan.unknown['no-length'])
})

test('a service interval and the hours of a week, with comma or point, make a next check in hours and a day that comes, and are undone', async ({
  page,
}) => {
  await page.clock.setFixedTime(new Date('2025-12-14T12:00:00'))
  await openApp(page, 'C')
  const row = page.locator('.findings li').filter({ hasText: words.growth.check.name })
  await expect(row).toContainText(words.growth.check.why['half-way'])
  await page.getByRole('button', { name: limits.more }).click()
  await type(page, limits.labels.serviceInterval, '0')
  await expect(fieldOf(page, limits.labels.serviceInterval)).toHaveValue('0')
  await expect(page.getByText(/0\.1/).first()).toBeVisible()
  await type(page, limits.labels.serviceInterval, '700,5')
  await expect(row).toContainText('by 14300 h run')
  await expect(row).toContainText(words.growth.check.why['service-interval'])

  await page.getByRole('button', { name: setUp.more.title, exact: true }).click()
  await type(page, bore.labels.hoursPerWeek, '70.05')
  // Measured on 6 October 2025: 700.5 h at 70.05 in a week are ten weeks.
  await expect(row).toContainText('at 70.05 h a week on 15 December 2025')
  await expect(row).not.toContainText(words.growth.check.due)
  await expectAccessible(page, '.proof')
  await page.setViewportSize({ width: 390, height: 844 })
  await page.getByRole('navigation').getByRole('button', { name: words.parts.narrow.setUp }).click()
  await expect(fieldOf(page, limits.labels.serviceInterval)).toHaveValue('700.5')
  await type(page, limits.labels.serviceInterval, '693')
  await page.getByRole('navigation').getByRole('button', { name: words.parts.narrow.findings }).click()
  await expect(row).toContainText(`on 14 December 2025 · ${words.growth.check.due}`)
  await page.setViewportSize({ width: 1440, height: 900 })
  for (let i = 0; i < 3; i++) await page.getByRole('button', { name: /^Undo:/ }).click()
  await expect(row).toContainText(words.growth.check.why['half-way'])
})
