import { readFileSync } from 'node:fs'
import type { CDPSession, Locator, Page } from '@playwright/test'
import type { Job } from '../../src/job/schema'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'
import { troublesOf } from './laid-out'

const { bore, grid, limits, next, parts, phone, picture, setUp } = words

test.use({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } })

const single = JSON.parse(
  readFileSync(new URL('../../scenarios/A-two-stroke-single.json', import.meta.url), 'utf8'),
) as Job

async function show(page: Page, part: keyof typeof parts.narrow): Promise<void> {
  const bar = page.getByRole('navigation', { name: phone.parts })
  await bar.getByRole('button', { name: new RegExp(`^${parts.narrow[part]}`) }).tap()
}

async function fill(page: Page, label: string, text: string): Promise<void> {
  const field = page.getByRole('textbox', { name: label, exact: true })
  await field.fill(text)
  await field.press('Enter')
}

function onPad(page: Page, name: string): Locator {
  return page.getByRole('group', { name: phone.pad.label }).getByRole('button', { name, exact: true })
}

/** Presses the keys of the pad, as a thumb would; a comma or a point is one key. */
async function tapKeys(page: Page, text: string): Promise<void> {
  for (const character of text) {
    const name = /[.,]/.test(character) ? phone.pad.point : character
    await onPad(page, name).tap()
  }
}

async function enterReading(page: Page, text: string): Promise<void> {
  await tapKeys(page, text)
  await onPad(page, next.take).tap()
}

const typed = (page: Page) => page.locator('.number-typed')
const heading = (page: Page, depth: string, axis: string) =>
  page.getByRole('heading', { name: next.deepAcross(depth, axis), exact: true })

test('a used cylinder is measured on a phone with taps alone, from an empty job to its verdict', async ({
  page,
}) => {
  test.setTimeout(120_000)
  await withoutPicture(page)
  await page.goto('./')
  await page.getByRole('button', { name: words.firstPage.measure }).tap()
  await show(page, 'setUp')
  const size = page.getByRole('textbox', { name: setUp.labels.size, exact: true })
  await expect(size).toHaveAttribute('inputmode', 'decimal')
  await fill(page, setUp.labels.size, '54,000')
  await fill(page, limits.labels.newMin, '54')
  await fill(page, limits.labels.newMax, '54.012')
  await fill(page, limits.labels.wearLimit, '54,05')
  await fill(page, bore.labels.length, '88')
  await fill(page, grid.newLevel, '8 16 25 35 48 62 80')
  await fill(page, grid.newAxis, '45 135')

  await show(page, 'enter')
  await expect(heading(page, '8 mm', '0°')).toBeVisible()
  // The same number stays in the field while the phone is turned on its side and back.
  await tapKeys(page, '54.0')
  await page.setViewportSize({ width: 844, height: 390 })
  await expect(typed(page)).toHaveValue('54.0')
  await tapKeys(page, '33')
  await page.setViewportSize({ width: 390, height: 844 })
  await expect(typed(page)).toHaveValue('54.033')
  await expect(page.locator('.other-unit')).toContainText('+33')
  await page.getByRole('button', { name: next.again, exact: true }).tap()
  await expect(heading(page, '8 mm', '0°')).toBeVisible()
  await enterReading(page, '54,053')
  await expect(heading(page, '8 mm', '45°')).toBeVisible()

  // Back to a slip of the thumb: its chip, corrected digit by digit.
  await page.getByRole('button', { name: next.back, exact: true }).tap()
  await page.getByRole('button', { name: phone.repeatNumber(2, '54.053') }).tap()
  for (let digit = 0; digit < 2; digit++) await page.getByRole('button', { name: phone.pad.delete }).tap()
  await enterReading(page, '35')
  await expect(heading(page, '8 mm', '45°')).toBeVisible()
  await show(page, 'setUp')
  await page.getByRole('combobox', { name: next.repeatsPerStation, exact: true }).selectOption('1')
  await show(page, 'enter')

  // A question stands above the pad, keeps nobody from typing on, and its reading can be taken out.
  await enterReading(page, '53.98')
  await expect(page.locator('.question-line')).toContainText('8 mm, 45°')
  await tapKeys(page, '5')
  await expect(typed(page)).toHaveValue('5')
  await page.getByRole('button', { name: phone.pad.delete }).tap()
  await page.getByRole('button', { name: next.back, exact: true }).tap()
  await page.getByRole('button', { name: phone.repeatNumber(1, '53.980') }).tap()
  await page.getByRole('button', { name: words.questions.takeItOut, exact: true }).tap()
  await expect(heading(page, '8 mm', '45°')).toBeVisible()
  await expect(page.locator('.question-line')).toBeHidden()

  // A size that cannot be is refused in words and stays.
  await enterReading(page, '5.4026')
  await expect(page.getByRole('alert').filter({ hasText: '5.4026' })).toBeVisible()
  await expect(typed(page)).toHaveValue('5.4026')
  for (let digit = 0; digit < 6; digit++) await page.getByRole('button', { name: phone.pad.delete }).tap()

  const readings = single.bores[0]?.surveys[0]?.readings.slice(1) ?? []
  expect(readings).toHaveLength(20)
  for (const { depthMm, axisDegrees, sizesMm = [] } of readings) {
    const here = heading(page, `${depthMm} mm`, `${axisDegrees}°`)
    while (!(await here.isVisible())) {
      await page.getByRole('button', { name: next.cannotReach, exact: true }).tap()
      const belt = page.getByRole('button', { name: phone.unreachable.belt('48 mm'), exact: true })
      if (await belt.isVisible()) await belt.tap()
      else await page.getByRole('button', { name: phone.unreachable.only, exact: true }).tap()
    }
    await enterReading(page, sizesMm[0]?.toFixed(3) ?? '')
  }
  await expect(page.getByText(next.allRead)).toBeVisible()
  // An axis that could not be reached is written down, a whole level is a belt; both are kept with the job.
  const outOfReach = page.getByText(phone.outOfReach('35 mm, 0°, 35 mm, 45° and 35 mm, 135°'))
  await expect(outOfReach).toBeVisible()
  await expect(page.getByText(/^Saved \d\d:\d\d$/)).toBeVisible()
  await page.reload()
  await show(page, 'enter')
  await expect(outOfReach).toBeVisible()

  await show(page, 'wall')
  await expect(page.locator('.wall-part').getByRole('option')).toHaveCount(42)
  const verdict = page.locator('.verdict-strip:visible')
  await expect(verdict).toHaveText('Inside the wear limit.')
  await verdict.tap()
  await expect(page.locator('.verdict')).toHaveText('Inside the wear limit.')
  await expect(page.locator('.finding').first()).toContainText('8 mm, 0°')
  await expect(page.locator('.texts').first()).toContainText(/nobody measured/i)

  // A finding opens the wall at its place; from there it is one tap to its number.
  await page.locator('.finding-name').first().tap()
  await expect(page.locator('.read-out')).toContainText(/^8 mm · 0° · .* a reading/)
  await page.getByRole('button', { name: phone.measureHere, exact: true }).tap()
  await expect(heading(page, '8 mm', '0°')).toBeVisible()
  await expect(page.locator('.repeats button')).toHaveText(['54.033', '54.035'])
})

test('a port is entered on a phone, shown on the map above its list, and its stations are passed by', async ({
  page,
}) => {
  await withoutPicture(page)
  await page.goto('./')
  await page.getByRole('button', { name: words.firstPage.measure }).tap()
  await show(page, 'setUp')
  await fill(page, setUp.labels.size, '54')
  await fill(page, bore.labels.length, '88')
  await fill(page, grid.newLevel, '35')
  await page.locator('.openings summary').tap()
  await page.getByRole('button', { name: bore.ports.add, exact: true }).tap()
  await fill(page, 'Port 1: To, mm', '55')
  await fill(page, 'Port 1: From, mm', '29')
  await fill(page, 'Port 1: From, °', '315')
  await fill(page, 'Port 1: To, °', '45')
  await expect(page.locator('.set-up-part .map-port')).toHaveCount(1)
  await show(page, 'enter')
  await expect(heading(page, '35 mm', '90°')).toBeVisible()
})

const sizes = [
  { width: 390, height: 844 },
  { width: 390, height: 664 },
  { width: 844, height: 390 },
  { width: 1024, height: 768 },
]

test('nothing is cut, hidden or too small for a finger at any size of phone and tablet, for either hand', async ({
  page,
}) => {
  test.setTimeout(180_000)
  await withoutPicture(page)
  await openApp(page, 'B-as-typed')
  // All that is scrolled to, as in a window without end.
  await page.setViewportSize({ width: 390, height: 6000 })
  await show(page, 'findings')
  for (const closed of await page.locator('.findings-part summary').all()) await closed.tap()
  expect.soft(await troublesOf(page), 'all findings').toEqual([])
  await show(page, 'setUp')
  await page.locator('.openings summary').tap()
  await page.getByRole('button', { name: bore.ports.add, exact: true }).tap()
  await page.getByRole('button', { name: bore.belts.add, exact: true }).tap()
  await page.getByRole('button', { name: limits.addGrade, exact: true }).tap()
  for (const panel of [setUp.typicalTitle, setUp.more.title, words.instruments.title]) {
    await page.getByRole('button', { name: panel, exact: true }).tap()
    expect.soft(await troublesOf(page), `all of the set-up with ${panel}`).toEqual([])
  }
  for (const hand of [phone.leftHand, phone.rightHand]) {
    await page.getByRole('button', { name: phone.menu, exact: true }).tap()
    await page.getByRole('button', { name: hand, exact: true }).tap()
    const isLeft = hand === phone.leftHand
    for (const size of sizes) {
      await page.setViewportSize(size)
      const name = `${size.width} × ${size.height}${isLeft ? ', left hand' : ''}`
      await show(page, 'setUp')
      expect.soft(await troublesOf(page), `set-up at ${name}`).toEqual([])
      await page.locator('.plan-grid .station').nth(1).tap()
      expect.soft(await troublesOf(page), `a station read at ${name}`).toEqual([])
      await expectPadWhole(page, size, isLeft)
      await page.locator('.repeats button').first().tap()
      expect.soft(await troublesOf(page), `a repeat corrected at ${name}`).toEqual([])
      await page.getByRole('button', { name: phone.leaveIt }).tap()
      for (const part of ['wall', 'findings', 'enter'] as const) {
        await show(page, part)
        expect.soft(await troublesOf(page), `${part} at ${name}`).toEqual([])
      }
    }
  }
})

/** All keys are seen at once, each as large as it is meant to be; the keys of a hand stand at its side. */
async function expectPadWhole(
  page: Page,
  { width, height }: { width: number; height: number },
  isLeft: boolean,
) {
  const boxes = await Promise.all((await page.locator('.pad-key').all()).map((key) => key.boundingBox()))
  expect(boxes).toHaveLength(16)
  for (const box of boxes) {
    if (!box) throw new Error('a key is not shown')
    expect(box.width).toBeGreaterThanOrEqual(88)
    expect(box.height).toBeGreaterThanOrEqual(72)
    expect(box.y + box.height).toBeLessThanOrEqual(height)
    expect(box.x + box.width).toBeLessThanOrEqual(width)
  }
  const figure = await typed(page).evaluate((field) => Number.parseFloat(getComputedStyle(field).fontSize))
  expect(figure, 'height of the number').toBeGreaterThanOrEqual(56)
  const middle = async (key: Locator) => ((await key.boundingBox())?.x ?? 0) + 44
  const enter = await middle(page.locator('.pad-key.is-enter'))
  const five = await middle(page.locator('.pad-key.is-5'))
  expect(Math.sign(enter - five)).toBe(isLeft ? -1 : 1)
}

test('every part of the page is accessible on phone and tablet, in light and dark', async ({ page }) => {
  test.setTimeout(120_000)
  await withoutPicture(page)
  await openApp(page, 'B-as-typed')
  const looked = process.env.PROOF === '1' ? sizes : [sizes[0], sizes[sizes.length - 1]]
  for (const [index, size] of looked.entries()) {
    if (!size) throw new Error('no size')
    await page.setViewportSize(size)
    await page.emulateMedia({ colorScheme: index % 2 === 0 ? 'light' : 'dark' })
    for (const part of ['enter', 'wall', 'findings', 'setUp'] as const) {
      await show(page, part)
      await expectAccessible(page)
    }
    await page.locator('.plan-grid .station').nth(1).tap()
    await expectAccessible(page)
    if (index > 0) continue
    await page.emulateMedia({ colorScheme: 'dark' })
    await expectAccessible(page)
  }
})

/** Moves fingers over the screen in steps, as a hand does. */
async function drag(
  hand: CDPSession,
  from: readonly { x: number; y: number }[],
  by: { x: number; y: number },
) {
  const at = (share: number) => from.map(({ x, y }, id) => ({ x: x + by.x * share, y: y + by.y * share, id }))
  await hand.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(0) })
  for (let step = 1; step <= 10; step++) {
    await hand.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(step / 10) })
  }
  // A hand that stops before it lifts leaves nothing to glide on.
  await new Promise((rested) => setTimeout(rested, 200))
  await hand.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(1) })
  await hand.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] })
}

test('one finger on the picture scrolls the page until Turn hands it the bore; two fingers always turn it', async ({
  page,
}) => {
  test.setTimeout(120_000)
  await openApp(page)
  await show(page, 'wall')
  const canvas = page.locator('.picture-box canvas')
  await expect(canvas).toBeVisible({ timeout: 60_000 })
  const box = await canvas.boundingBox()
  if (!box) throw new Error('no picture')
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 }
  const hand = await page.context().newCDPSession(page)
  const front = page.getByRole('button', { name: picture.views.front, exact: true })
  const isFront = () => expect(front).toHaveAttribute('aria-pressed', 'true')
  const scrolled = () => page.locator('.wall-part').evaluate((part) => part.scrollTop)

  await isFront()
  await drag(hand, [middle], { x: 30, y: -150 })
  await expect.poll(scrolled).toBeGreaterThan(80)
  await isFront()

  await page.locator('.wall-part').evaluate((part) => part.scrollTo(0, 0))
  await page.getByRole('button', { name: picture.turn, exact: true }).tap()
  await drag(hand, [middle], { x: 60, y: -60 })
  await page.getByRole('button', { name: picture.turnDone, exact: true }).tap()
  await expect(front).toHaveAttribute('aria-pressed', 'false')
  expect(await scrolled()).toBe(0)

  await front.tap()
  await isFront()
  await drag(hand, [middle, { x: middle.x + 60, y: middle.y }], { x: 40, y: -60 })
  await expect(front).toHaveAttribute('aria-pressed', 'false')
  expect(await scrolled()).toBe(0)
})
