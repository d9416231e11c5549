import type { Locator, Page } from '@playwright/test'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'
import { fillByKeyboard, pressByKeyboard, tabTo, typeReadings } from './keyboard'

const { bore, file, grid, instruments, limits, next, questions, setUp } = words

function fieldOf(page: Page, label: string | RegExp): Locator {
  return page.getByRole('textbox', { name: label, exact: true })
}

/** Chooses by the first letters of an option, as a person does at a keyboard. */
async function choose(page: Page, label: string, text: string): Promise<void> {
  const list = page.getByRole('combobox', { name: label, exact: true })
  await tabTo(page, list)
  await page.keyboard.type(text)
  await expect(list.locator('option:checked')).toHaveText(text)
}

async function startEmptyJob(page: Page): Promise<void> {
  await withoutPicture(page)
  await openApp(page)
  await pressByKeyboard(page, file.menu)
  await pressByKeyboard(page, file.new)
  await expect(page.getByText(words.demo.banner)).toBeHidden()
}

const largest = (page: Page) => page.locator('.finding').first().locator('.finding-figure')

test('a bore is entered by the reverse method at the keyboard, the direction tested, the gauge measured last', async ({
  page,
}) => {
  await startEmptyJob(page)
  await choose(page, setUp.labels.entry, setUp.entries.reverse)
  await pressByKeyboard(page, setUp.directionTest.open)
  await expect(page.getByText(setUp.directionTest.why)).toBeVisible()
  await expectAccessible(page, '.sheet')
  // Smaller went clockwise, so larger is anticlockwise.
  await pressByKeyboard(page, setUp.directionTest.went.clockwise)
  await expect(page.getByRole('combobox', { name: setUp.labels.direction })).toHaveValue('anticlockwise')
  await choose(page, bore.labels.wall, bore.walls['grey-iron'])
  await fillByKeyboard(page, setUp.labels.boreTemperature, '20')
  await fillByKeyboard(page, setUp.labels.referenceTemperature, '20')
  await fillByKeyboard(page, grid.newLevel, '10 40')

  await typeReadings(page, ['0', '-12', '3'], /^Dial deviation, µm: /)
  // No size yet, but what was typed stands in its cell, and is said to be waiting.
  await expect(page.locator('.verdict')).toHaveText(words.verdict.none['no-size-over-contacts'])
  await expect(page.getByRole('button', { name: grid.stationSizeless('10 mm, 90°', '−12') })).toBeVisible()
  await page.keyboard.type('8')
  await expect(page.locator('#next-echo')).toContainText(next.noSizeYet)
  await page.keyboard.press('Enter')

  // All read: what is left to do is asked for. 72.510 at −5: −12 is 7 µm larger, 8 is 13 µm smaller.
  await fillByKeyboard(page, setUp.closing.labels.overContacts, '72,510')
  await fillByKeyboard(page, setUp.closing.labels.dialOverContacts, '−5')
  await fillByKeyboard(page, setUp.closing.labels.zeroClose, '1')
  await expect(fieldOf(page, setUp.closing.labels.overContacts)).toHaveCount(0)
  await expect(fieldOf(page, setUp.labels.overContacts)).toHaveValue('72.510')
  await expect(largest(page)).toHaveText(/^72\.517 ±/)
  await expect(page.getByRole('button', { name: /^40 mm, 90°: 72\.497/ })).toBeVisible()

  // Another way of writing it down moves no diameter.
  await choose(page, setUp.labels.entry, setUp.entries.size)
  await expect(largest(page)).toHaveText(/^72\.517 ±/)
  await expect(fieldOf(page, setUp.labels.size)).toHaveValue('72.510')
})

test('a bore is read directly in inches at the keyboard, each size echoed in mm, with a check at the end', async ({
  page,
}) => {
  await startEmptyJob(page)
  await choose(page, setUp.labels.gauge, setUp.gauges['three-contact-micrometer'])
  await tabTo(page, page.getByRole('combobox', { name: setUp.labels.dialUnit }))
  await page.keyboard.press('ArrowDown')
  await tabTo(page, fieldOf(page, setUp.inchLabels.roughSize))
  await page.keyboard.press('ControlOrMeta+a')
  await page.keyboard.type('2,85')
  await expect(page.locator('.typed-echo')).toHaveText('= 72.39 mm')
  await page.keyboard.press('Enter')
  await fillByKeyboard(page, limits.labels.wearLimit, '72.6')
  await fillByKeyboard(page, grid.newLevel, '10 40')
  await typeReadings(page, ['2.8542', '2.8541', '2.8540'], /^Size, in: /)
  await page.keyboard.type('2.8541')
  await expect(page.locator('#next-echo')).toHaveText('= 72.4941 mm')
  await page.keyboard.press('Enter')
  // 2.8542 in = 72.49668 mm: own arithmetic, 25.4 mm to the inch.
  await expect(page.getByRole('button', { name: /^10 mm, 0°: 2\.8542\d in/ })).toBeVisible()
  await expect(page.locator('.finding').first()).toContainText('72.497')
  await expect(page.locator('.verdict')).toHaveText(words.verdict.inside.wear)
  await expect(page.locator('.lean').filter({ hasText: words.verdict.aboutMeanOnly })).toHaveCount(1)
  await fillByKeyboard(page, setUp.inchLabels.micrometerError, '0.2')
  await fillByKeyboard(page, setUp.closing.labels.zeroClose, '0.4')
  await expect(fieldOf(page, setUp.closing.labels.zeroClose)).toHaveCount(0)
  await expectAccessible(page)
})

test('a new job asserts no setting: it asks for one, takes no dial reading without, and the very size taken can be confirmed', async ({
  page,
}) => {
  await startEmptyJob(page)
  const size = fieldOf(page, setUp.labels.size)
  const question = page.locator('.question')
  await expect(size).toHaveValue('')
  await expect(size).toHaveAttribute('placeholder', setUp.notRecorded(setUp.taken.size('50.000')))
  await expect(question).toContainText(questions.settingTaken('50.000 mm'))
  await expectAccessible(page)
  await choose(page, setUp.labels.entry, setUp.entries.deviation)
  await fillByKeyboard(page, grid.newLevel, '10')
  const reading = fieldOf(page, /^Dial deviation, µm: /)
  await fillByKeyboard(page, /^Dial deviation, µm: /, '12')
  await expect(page.locator('#next-refusal')).toHaveText(next.settingFirst)
  await expect(reading).toHaveValue('12')

  await fillByKeyboard(page, setUp.labels.size, '50')
  await expect(size).toHaveValue('50.000')
  await expect(size).toBeFocused()
  await expect(question).toHaveCount(0)
  await fillByKeyboard(page, /^Dial deviation, µm: /, '12')
  await expect(page.getByRole('button', { name: /^10 mm, 0°: 50\.012/ })).toBeVisible()
  await expect(page.getByText(/^Saved \d\d:\d\d$/)).toBeVisible()
  await page.reload()
  await expect(size).toHaveValue('50.000')
  await expect(question).toHaveCount(0)

  await pressByKeyboard(page, file.menu)
  await pressByKeyboard(page, file.new)
  await pressByKeyboard(page, questions.itIs('50.000 mm'))
  await expect(size).toHaveValue('50.000')
  await expect(question).toHaveCount(0)
})

test('instruments and settings are listed once, chosen for a bore, and kept while they are used', async ({
  page,
}) => {
  await withoutPicture(page)
  await openApp(page)
  await page.getByRole('button', { name: instruments.title, exact: true }).click()
  const panel = page.getByRole('region', { name: instruments.title })
  const users = 'bore 1 and bore New'
  await expect(panel.getByText(instruments.usedBy(users))).toBeVisible()

  await panel.getByRole('button', { name: instruments.add.ring }).click()
  await panel.getByRole('button', { name: instruments.add.setUps }).click()
  const second = instruments.numbered(instruments.unnamedSetUp, 2)
  await panel
    .getByRole('combobox', { name: instruments.labelOf(instruments.labels.standard, second) })
    .selectOption(setUp.standards.ring)
  await panel.getByRole('button', { name: instruments.labelOf(instruments.useHere, second) }).click()
  await expect(page.getByRole('combobox', { name: setUp.labels.setUp }).locator('option:checked')).toHaveText(
    second,
  )
  await expect(page.getByRole('combobox', { name: setUp.labels.standard })).toHaveValue('ring')

  await panel.getByRole('button', { name: instruments.remove(second) }).click()
  await expect(panel.getByRole('alert')).toHaveText(instruments.stillUsed(second, 'bore 1'))
  await expectAccessible(page, '.sheet')
  const first = instruments.numbered(instruments.unnamedSetUp, 1)
  await panel.getByRole('button', { name: instruments.labelOf(instruments.useHere, first) }).click()
  await panel.getByRole('button', { name: instruments.remove(second) }).click()
  await expect(panel.getByText(instruments.usedBy(users))).toBeVisible()
  await expect(panel.getByRole('button', { name: instruments.remove(second) })).toHaveCount(0)
})
