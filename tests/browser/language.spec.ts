import type { Page } from '@playwright/test'
import { german } from '../../src/words/german'
import { english, leavesOf } from '../unit/words/text-table'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'

const phone = { width: 390, height: 844 }

/** English texts of several words that no German text holds. */
const onlyEnglish = (() => {
  const other = leavesOf(german)
    .flatMap(({ said }) => (typeof said === 'string' ? [said] : []))
    .join('\n')
  return leavesOf(english)
    .flatMap(({ said }) => (typeof said === 'string' ? said.split(/\{\w+\}/) : []))
    .map((text) => text.trim())
    .filter((text) => /\p{L}{2}.* .*\p{L}{3}/u.test(text) && !other.includes(text))
})()

/** Everything on the page that is read: its texts, and what fields and buttons are called. */
function textsOf(page: Page): Promise<string> {
  return page.evaluate(() => {
    const named = [...document.querySelectorAll('[aria-label], [title], [placeholder]')].flatMap((one) =>
      ['aria-label', 'title', 'placeholder'].map((name) => one.getAttribute(name) ?? ''),
    )
    return [document.body.textContent, ...named].join('\n').replaceAll('\u00a0', ' ')
  })
}

async function expectNoEnglish(page: Page): Promise<void> {
  const read = await textsOf(page)
  expect(onlyEnglish.filter((text) => read.includes(text))).toEqual([])
}

/** How far the page, or a button's words, reach out of their room. */
async function expectRoom(page: Page): Promise<void> {
  const found = await page.evaluate(() => {
    const wide = document.documentElement.scrollWidth - window.innerWidth
    const buttons = [...document.querySelectorAll('button')]
      .filter((one) => one.getClientRects().length > 0 && one.scrollWidth > one.clientWidth + 1)
      .map((one) => one.textContent)
    return { wide: Math.max(0, wide), buttons }
  })
  expect(found).toEqual({ wide: 0, buttons: [] })
}

test.beforeEach(({ page }) => withoutPicture(page))

test('a page is read in German once it is chosen, on every page, on a phone too, and in English again', async ({
  page,
}) => {
  test.slow()
  expect(onlyEnglish.length).toBeGreaterThan(500)
  const requested: string[] = []
  page.on('request', (request) => requested.push(request.url()))
  await openApp(page)
  await expect(page.locator('html')).toHaveAttribute('lang', 'en')
  expect(requested.filter((url) => /german/.test(url))).toEqual([])
  await page.getByRole('button', { name: english.words.file.menu, exact: true }).click()
  await page.getByRole('button', { name: english.words.language.menu, exact: true }).click()
  const dialog = page.getByRole('dialog', { name: english.words.language.title })
  await expect(dialog.getByRole('button', { name: 'English' })).toHaveAttribute('aria-current', 'true')
  await expectAccessible(page, 'dialog[open]')
  await dialog.getByRole('button', { name: 'Deutsch' }).click()

  await expect(page.locator('html')).toHaveAttribute('lang', 'de')
  await expect(page.locator('.verdict')).toContainText(german.words.verdict.inside.wear)
  await expect(page.locator('.sheet, main').first()).toContainText('54,0')
  await expectNoEnglish(page)
  await expectRoom(page)
  await expectAccessible(page)

  for (const [name, has] of [
    ['compare', german.words.pages.compare],
    ['show', german.owner.topics.seen],
  ] as const) {
    await page.goto(`./#example=A&page=${name}`)
    await expect(page.getByText(has).first()).toBeVisible()
    await expectNoEnglish(page)
    await expectRoom(page)
  }

  await page.setViewportSize(phone)
  await page.goto('./#example=A')
  await page.reload()
  for (const part of Object.values(german.words.parts.narrow)) {
    await page.getByRole('button', { name: part, exact: true }).click()
    await expectNoEnglish(page)
    await expectRoom(page)
  }
  await page.evaluate(() => localStorage.setItem('borewall-language', 'en'))
  await page.reload()
  await expect(page.locator('html')).toHaveAttribute('lang', 'en')
})

test('a browser that asks for German gets it, and one that asks for what there is not gets English', async ({
  browser,
}) => {
  for (const [locale, lang, heading] of [
    ['de-AT', 'de', german.words.firstPage.heading],
    ['pt-BR', 'en', english.words.firstPage.heading],
  ] as const) {
    const context = await browser.newContext({ locale })
    const page = await context.newPage()
    await page.goto('./')
    await expect(page.getByRole('heading', { level: 1, name: heading })).toBeVisible()
    await expect(page.locator('html')).toHaveAttribute('lang', lang)
    if (lang === 'de') await expectNoEnglish(page)
    await context.close()
  }
})

test('what was typed and not taken keeps the page from changing its language', async ({ page }) => {
  await openApp(page, 'B')
  const field = page.getByRole('textbox', { name: english.words.limits.labels.wearLimit })
  await field.fill('much')
  await field.blur()
  await page.getByRole('button', { name: english.words.file.menu, exact: true }).click()
  await page.getByRole('button', { name: english.words.language.menu, exact: true }).click()
  await page.getByRole('dialog').getByRole('button', { name: 'Deutsch' }).click()
  await expect(page.getByText(english.words.language.waiting)).toBeVisible()
  await expect(page.locator('html')).toHaveAttribute('lang', 'en')
  await expect(field).toHaveValue('much')
})
