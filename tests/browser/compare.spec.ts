import type { Page } from '@playwright/test'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'
import { troublesOf } from './laid-out'

const { compare, pages, picture, readOut } = words

async function goToCompare(page: Page): Promise<void> {
  await page
    .getByRole('navigation', { name: pages.label })
    .getByRole('button', { name: pages.compare })
    .click()
  await expect(page.getByRole('region', { name: compare.walls })).toBeVisible()
}

const readOuts = (page: Page) => page.locator('.wall-list p')

test('the used bore stands beside the new one and their difference, and what is pointed at on one is read on all', async ({
  page,
}) => {
  await openApp(page)
  await goToCompare(page)
  await expect(page.locator('.picture-box canvas')).toBeVisible()
  expect(new URL(page.url()).hash).toBe('#example=A&page=compare')
  await expect(page.locator('.wall-list button')).toHaveText([/^Bore 1/, /^New/, /^Bore 1 less New/])
  await expect(page.locator('.picture-label.is-bore, .picture-labels')).toContainText('Bore 1 less New')

  // The wall on the right, pointed at, is read on the one on the left too.
  const box = await page.locator('.picture-box').boundingBox()
  if (!box) throw new Error('no picture')
  await expect
    .poll(async () => {
      await page.mouse.move(box.x + box.width * 0.5, box.y + box.height * 0.25)
      await page.mouse.move(box.x + box.width * 0.5, box.y + box.height * 0.28)
      return readOuts(page).allTextContents()
    })
    .toEqual([
      expect.stringMatching(/^[\d.]+ mm · \d+° · /),
      expect.stringMatching(/^[\d.]+ mm · \d+° · /),
      expect.stringMatching(/^[\d.]+ mm · \d+° · /),
    ])
  const [one, other] = await readOuts(page).allTextContents()
  const placeIn = (text = '') => text.split(' · ').slice(0, 2)
  expect(placeIn(one)).toEqual(placeIn(other))

  await page.locator('.wall-list button').nth(2).click()
  await expect(page.locator('.picture-legend')).toContainText(compare.less.notBoth)
  await page.goBack()
  await expect(page.getByRole('tablist', { name: words.bar.bores })).toBeVisible()
})

test('without WebGL the maps stand side by side, a difference is chosen, and the keyboard steps through time', async ({
  page,
}) => {
  await withoutPicture(page)
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await openApp(page, 'C')
  await goToCompare(page)
  await expect(page.locator('.flat-walls figcaption')).toHaveText([
    'Bore 1, 0 h',
    'Bore 1, 4200 h',
    'Bore 1, 8900 h',
    'Bore 1, 13600 h',
    '13600 h less 0 h',
  ])
  // By hand from the job: 130.162 less 130.011 at 20 °C, rounded there; the doubt is the covariance's.
  await expect(page.locator('.difference-lines dd').first()).toHaveText(/^\+15[012] ± \d+ µm$/)
  await expect(page.locator('.difference-lines')).toContainText(words.findings.largestRead)
  await expect(page.locator('.difference-table .is-within').first()).toContainText(compare.less.within)
  await expectAccessible(page)

  await page.getByRole('combobox', { name: compare.less.other, exact: true }).selectOption({ index: 1 })
  await expect(page.locator('.difference h2')).toHaveText('Bore 1, 13600 h less 4200 h')

  const shown = page.getByRole('checkbox', { name: /^Bore 1, 0 h/ })
  await shown.uncheck()
  await expect(page.locator('.flat-walls figcaption')).toHaveCount(4)
  await page.getByRole('checkbox', { name: compare.time.show('Bore 1') }).check()
  const slider = page.getByRole('slider', { name: compare.time.slider('Bore 1') })
  await slider.press('Home')
  await expect(slider).toHaveAttribute('aria-valuetext', 'Survey 1 of 4: 0 h')
  await slider.press('ArrowRight')
  await expect(slider).toHaveAttribute('aria-valuetext', 'Survey 2 of 4: 4200 h')
  await expect(page.locator('.is-between')).toHaveCount(0)
  const through = page.locator('.wall-list li').filter({ hasText: compare.time.name('Bore 1') })
  await expect(through).toContainText('4200 h')

  // The same place read on the survey's own wall and on the one in time: it is that wall.
  await page.locator('.flat-walls [role="listbox"]').first().focus()
  await page.keyboard.press('ArrowDown')
  const ofSurvey = page.locator('.wall-list li').filter({ hasText: 'Bore 1, 4200 h' }).locator('p')
  await expect(ofSurvey).toContainText(/a reading$/)
  expect(await through.locator('p').textContent()).toBe(await ofSurvey.textContent())

  // Past the last survey there is no wall, only what the lines say, also where nothing may move.
  await slider.press('End')
  await expect(slider).toHaveAttribute('aria-valuetext', /^At 18\d{3} h, ahead: sizes by their lines alone$/)
  await expect(page.locator('.time-ahead')).toContainText(
    /first at its limit, by its line: 130\.200 \(130\.\d+ to 130\.\d+\)/,
  )
  await expect(page.locator('.time-ahead')).toContainText(/From 15\d{3} h on it may be over 130\.200/)
  await expect(page.locator('.flat-walls .is-between')).toHaveCount(1)
  await expectAccessible(page)
  await slider.press('Home')
  for (let i = 0; i < 4; i++) await slider.press('ArrowRight')
  await expect(page.locator('.time-ahead')).toContainText(
    /Before 15\d{3} h, the earliest that it meets 130\.200/,
  )
  await slider.press('ArrowLeft')
  await expect(slider).toHaveAttribute('aria-valuetext', 'Survey 4 of 4: 13600 h')
  await expect(page.locator('.flat-walls .is-between')).toHaveCount(0)
  await slider.press('ArrowLeft')
  await slider.press('ArrowLeft')

  // Moving is wanted after all: between surveys a hand finds a wall that nobody measured, without a figure.
  await page.emulateMedia({ reducedMotion: 'no-preference' })
  await expect(async () => {
    await slider.fill('300')
    await slider.fill('400')
    const said = await slider.getAttribute('aria-valuetext')
    expect(said).toMatch(/^About \d+ h, between surveys: drawn only$/)
  }).toPass()
  await expect(through.locator('p')).toHaveText(/between surveys, drawn only$/)
  await expect(page.locator('.flat-walls .is-between')).toHaveCount(1)
  await slider.press('ArrowRight')
  await expect(slider).toHaveAttribute('aria-valuetext', 'Survey 3 of 4: 8900 h')
})

test.describe('on a phone', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true })

  test('one wall is drawn at a time, all are read, and the bench is a press away', async ({ page }) => {
    await withoutPicture(page)
    await page.goto('./#example=A&page=compare')
    await expect(page.locator('.wall-list button')).toHaveCount(3)
    await page
      .getByRole('option', { name: /^8 mm, 0° front/ })
      .first()
      .tap({ force: true })
    await expect(readOuts(page).nth(2)).toHaveText(/^8 mm · 0° · \+24 ± 3 µm/)
    await expect(page.getByText(readOut.nothing)).toHaveCount(0)
    expect(await troublesOf(page)).toEqual([])
    await expectAccessible(page)
    await page.getByRole('button', { name: pages.toBench }).tap()
    await expect(page.getByRole('navigation', { name: words.phone.parts })).toBeVisible()
  })
})

test('a job with one survey says what comparing takes', async ({ page }) => {
  await withoutPicture(page)
  await openApp(page, 'D1')
  await page.getByRole('button', { name: pages.compare, exact: true }).click()
  await expect(page.getByText(compare.nothingSaid)).toBeVisible()
  await expect(page.getByText(picture.trouble['no-webgl'])).toHaveCount(0)
})
