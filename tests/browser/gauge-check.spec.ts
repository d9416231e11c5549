import { crossedStudy } from '../../src/words/english/crossed-study'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'

const { gaugeCheck, instruments, number, setUp } = words

test('a gauge is checked by a list of readings, tells what it can answer, and takes its figures over by one touch', async ({
  page,
}) => {
  await withoutPicture(page)
  await openApp(page)
  const gauge = 'Dial bore gauge, 0.001 mm'
  await page.getByRole('button', { name: instruments.title }).click()
  await page.getByText(gaugeCheck.title).first().click()
  const field = page.getByRole('textbox', { name: gaugeCheck.field(gauge) })

  // What is no number stays in the field, and is named.
  await field.fill('54,012 54.o13')
  await field.blur()
  await expect(page.getByRole('alert')).toHaveText(gaugeCheck.refused('54.o13', number.refused.letters))
  await expect(field).toHaveValue('54,012 54.o13')

  await field.fill('54,012 54.013\n54.011 54.012 54.014; 54.012 54.013 54.012 54.011 54.013')
  await page.getByRole('button', { name: gaugeCheck.add }).click()
  await expect(field).toHaveValue('')
  const kept = page.getByRole('textbox', { name: gaugeCheck.again(gauge, 1) })
  await expect(kept).toHaveValue(/^54\.012 54\.013 54\.011 .* 54\.013$/)
  await expect(page.getByText(/^10 readings scatter by a standard deviation of 0\.95 µm/)).toBeVisible()
  await expect(page.getByText(/answers whether it is inside the wear limit/)).toBeVisible()
  await page.getByRole('textbox', { name: gaugeCheck.date(gauge, 1) }).fill('2026-03-01')
  await page.keyboard.press('Enter')
  await expectAccessible(page, '.sheet')

  await page.getByRole('button', { name: gaugeCheck.use('0.95 µm', 9) }).click()
  await expect(page.getByText(gaugeCheck.inUse)).toBeVisible()
  await page.getByRole('button', { name: setUp.typicalTitle }).click()
  await expect(page.getByRole('textbox', { name: setUp.typicalLabels.repeatability })).toHaveValue('0.949')
  await expect(page.getByRole('textbox', { name: setUp.typicalLabels.repeatabilityFreedom })).toHaveValue('9')

  await page.getByRole('button', { name: instruments.title }).click()
  await page.getByText(gaugeCheck.title).first().click()
  await page.getByRole('button', { name: gaugeCheck.remove(gauge, 1) }).click()
  await expect(kept).toHaveCount(0)
})

test('a study of several people and parts is pasted, says what is missing and where, and what the gauge tells apart in these hands', async ({
  page,
}) => {
  await withoutPicture(page)
  await openApp(page)
  const gauge = 'Dial bore gauge, 0.001 mm'
  await page.getByRole('button', { name: instruments.title }).click()
  await page.getByText(gaugeCheck.studies).first().click()
  const field = page.getByRole('textbox', { name: crossedStudy.field(gauge) })

  await expect(field).toHaveAttribute('inputmode', 'text')

  // Invented: Ben reads 3 µm more than Ada.
  const lines = [1, 2, 3, 4, 5].flatMap((part) =>
    ['Ada', 'Ben'].map((person, i) => {
      const from = 54 + (6 * part + 3 * i) / 1000
      return [person, `${part}`, from.toFixed(3), (from + 0.001).toFixed(3)].join('\t')
    }),
  )
  await field.fill(lines.join('\n').replace('54.009', '54.o09'))
  await page.getByRole('button', { name: crossedStudy.add }).click()
  await expect(page.getByRole('alert')).toContainText('Line 2: “54.o09”')
  await expect(field).toHaveValue(/54\.o09/)

  // A line left out is kept as it is, and asked for.
  await field.fill(['Person\tPart\tFirst\tSecond', ...lines.slice(0, -1)].join('\n'))
  await page.getByRole('button', { name: crossedStudy.add }).click()
  await expect(field).toHaveValue('')
  await expect(page.getByText(/^Ben, part 5: no reading, where most have 2\./)).toBeVisible()
  const kept = page.getByRole('textbox', { name: crossedStudy.again(gauge, 1) })
  await kept.fill(`${await kept.inputValue()}\nBen; 5; 54,033; 54,034`)
  await kept.blur()
  await expect(page.getByText(crossedStudy.read(2, 5, 2))).toBeVisible()
  const table = page.locator('.study-table')
  await expect(table.getByRole('row')).toHaveCount(6)
  await expect(table.getByRole('row', { name: crossedStudy.rows.parts })).toContainText(/9\.\d+ µm/)
  await expect(page.getByText(/^In these hands the gauge tells \d+ sizes of such parts apart/)).toBeVisible()
  await expectAccessible(page, '.sheet')

  await page.getByRole('button', { name: crossedStudy.remove(gauge, 1) }).click()
  await expect(kept).toHaveCount(0)
})
