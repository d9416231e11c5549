import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'

declare global {
  interface Window {
    said: string[]
  }
}

const { aids } = words

test('a voice says what was taken and what comes next, a pedal takes the number, and both are off until they are chosen', async ({
  page,
}) => {
  await withoutPicture(page)
  await page.addInitScript(() => {
    window.said = []
    const speak = (utterance: SpeechSynthesisUtterance) => window.said.push(utterance.text)
    Object.defineProperty(window, 'speechSynthesis', { value: { speak, cancel: () => undefined } })
  })
  await openApp(page)
  const field = page.getByRole('region', { name: words.next.label }).getByRole('textbox')
  await page.locator('[data-cell]').first().focus()
  await page.keyboard.press('Delete')
  await field.fill('54.021')
  await page.keyboard.press('F9')
  await expect(field).toHaveValue('54.021')
  expect(await page.evaluate(() => window.said)).toEqual([])

  await page.getByRole('button', { name: words.file.menu, exact: true }).click()
  await page.getByRole('button', { name: aids.menu }).click()
  const dialog = page.getByRole('dialog', { name: aids.title })
  await dialog.getByRole('checkbox', { name: aids.voice }).check()
  const pedal = dialog.getByRole('button', { name: aids.choose(aids.actions.take) })
  await pedal.click()
  await page.keyboard.press('5')
  await expect(dialog.getByRole('alert')).toHaveText(aids.typesText('5'))
  await pedal.click()
  await page.keyboard.press('F9')
  await expect(dialog.getByRole('button', { name: aids.set(aids.actions.take, 'F9') })).toBeVisible()
  await expectAccessible(page, 'dialog')
  await page.keyboard.press('Escape')

  await page.evaluate(() => {
    window.said = []
  })
  await page.keyboard.press('F9')
  await expect(field).toHaveValue('')
  await expect.poll(() => page.evaluate(() => window.said.join(' '))).toMatch(/54 point 0 2 1/)
  await page.reload()
  await expect(page.locator('[data-cell]').first()).toBeVisible()
  const stored = await page.evaluate(() => localStorage.getItem('borewall-aids'))
  expect(JSON.parse(stored ?? '')).toEqual({ spoken: true, pedals: { take: 'F9' } })
})

test('a question mark lists every key, but not where it is typed', async ({ page }) => {
  await withoutPicture(page)
  await openApp(page)
  const list = page.getByRole('dialog', { name: words.keyList.title })
  await page.locator('[data-cell]').first().focus()
  await page.keyboard.press('Delete')
  await page.keyboard.press('?')
  await expect(list.getByText('From cell to cell; with Shift choose several')).toBeVisible()
  await expectAccessible(page, 'dialog')
  await page.keyboard.press('Escape')
  await expect(list).toBeHidden()
  await page.getByRole('region', { name: words.next.label }).getByRole('textbox').focus()
  await page.keyboard.press('?')
  await expect(list).toBeHidden()
})
