import { readFileSync } from 'node:fs'
import type { BrowserContext, Page } from '@playwright/test'
import type { ExampleName } from '../../src/app/examples'
import { inspectText } from '../../src/cli/inspect-text'
import { readJob } from '../../src/job/read-job'
import type { Job } from '../../src/job/schema'
import { findingsOf } from '../../src/job/selectors'
import { writeJob } from '../../src/job/write-job'
import { ownerTalk } from '../../src/words/owner'
import { ownerWords } from '../../src/words/owner-words'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'
import { hostileJob, hostileText } from './hostile-job'
import { chooseFile } from './job-files'
import { troublesOf } from './laid-out'

const { show: said } = ownerWords
const { pages } = words

const files: Readonly<Record<Exclude<ExampleName, 'B-as-typed' | 'E' | 'E-72'>, string>> = {
  A: 'A-two-stroke-single.json',
  B: 'B-four-cylinder-iron.json',
  C: 'C-wet-liner-diesel.json',
  D1: 'D1-compressor.json',
  D2: 'D2-hydraulic-tube.json',
}

function scenario(name: keyof typeof files): Job {
  const read = readJob(readFileSync(new URL(`../../scenarios/${files[name]}`, import.meta.url)))
  if (!read.ok) throw new Error(`${name} is no job`)
  return read.job
}

const count = (page: Page) => page.locator('.show-count')
const sentence = (page: Page) => page.locator('.show-sentence')
const plain = (text: string) => text.replaceAll('\u00a0', ' ')

async function openShow(page: Page, example: ExampleName = 'A'): Promise<void> {
  await page.goto(`./#example=${example}&page=show`)
  await expect(count(page)).toHaveText('1 of 7')
}

test('the picture looks at what is said, keys go through it, and the bore is turned by hand and left again', async ({
  page,
}) => {
  test.slow()
  await openApp(page)
  await page
    .getByRole('navigation', { name: pages.label })
    .getByRole('button', { name: pages.show, exact: true })
    .click()
  expect(new URL(page.url()).hash).toBe('#example=A&page=show')
  await expect(page.locator('.show canvas')).toBeVisible()
  await expect(page.getByRole('navigation', { name: pages.label })).toHaveCount(0)
  await expect(sentence(page)).toHaveText(ownerWords.seen.drawn('500'))
  await expect(page.locator('.picture-scale')).toContainText('× 500')
  // The new one stands beside the used one, at one exaggeration.
  await expect(page.locator('.picture-labels')).toContainText('New')

  await page.keyboard.press('ArrowRight')
  await expect(count(page)).toHaveText('2 of 7')
  await page.keyboard.press('Space')
  await expect(count(page)).toHaveText('3 of 7')
  await expect(page.locator('.picture-labels')).not.toContainText('New')
  await page.keyboard.press('PageDown')
  await page.keyboard.press('ArrowLeft')
  await expect(count(page)).toHaveText('3 of 7')
  await page.keyboard.press('End')
  await page.keyboard.press('ArrowRight')
  await expect(count(page)).toHaveText('7 of 7')
  await page.keyboard.press('Home')
  await page.keyboard.press('PageUp')
  await expect(count(page)).toHaveText('1 of 7')

  // A key on the picture turns it, and goes nowhere else.
  const views = page.getByRole('group', { name: words.picture.views.label })
  await page.getByRole('application').press('ArrowRight')
  await expect(views).toBeVisible()
  await expect(count(page)).toHaveText('1 of 7')
  await views.getByRole('button', { name: words.picture.views.above }).click()
  await expectAccessible(page)
  await page.keyboard.press('Escape')
  await expect(views).toHaveCount(0)
  await page.getByRole('button', { name: said.turn }).click()
  await page.getByRole('button', { name: said.next }).click()
  await expect(views).toHaveCount(0)
  await expect(count(page)).toHaveText('2 of 7')

  await page.keyboard.press('Escape')
  await expect(page.getByRole('tablist', { name: words.bar.bores })).toBeVisible()
  expect(new URL(page.url()).hash).toBe('#example=A')
})

test('without WebGL the map stands beside what is said of each example, with the figures of inspect', async ({
  page,
}) => {
  test.slow()
  await withoutPicture(page)
  for (const name of ['A', 'B', 'C', 'D1', 'D2'] as const) {
    const job = scenario(name)
    const findings = findingsOf(job)
    const [finding] = findings.bores
    if (!finding) throw new Error('no bore')
    const inspected = new Set(inspectText(job, findings).match(/\d+(?:\.\d+)?/g) ?? [])
    await openShow(page, name)
    await expect(page.locator('.show-flat .unrolled-map').first()).toBeVisible()
    for (const step of ownerTalk(job, findings, finding, 'flat')) {
      await expect(page.locator('.show-topic')).toHaveText(step.heading)
      await expect(sentence(page)).toHaveText(step.sentence)
      expect((await page.locator('.show-beside li').allTextContents()).map(plain)).toEqual(step.beside)
      // What is behind it are rows of the findings, each figure as inspect prints it.
      const behind = await page.locator('.show-figures dd').allTextContents()
      for (const figure of behind.flatMap((text) => text.match(/\d+\.\d{3}/g) ?? [])) {
        expect(inspected, figure).toContain(figure)
      }
      await page.keyboard.press('ArrowRight')
    }
    if (name === 'A') await expectAccessible(page)
  }
  // Another bore begins anew.
  await openShow(page, 'B')
  await page.keyboard.press('End')
  await page.getByRole('combobox', { name: said.bore }).selectOption({ label: '3' })
  await expect(count(page)).toHaveText('1 of 7')
  await page.keyboard.press('ArrowRight')
  await expect(sentence(page)).toContainText('86.098 ± 0.009')

  await page.getByRole('button', { name: said.fullScreen }).click()
  await expect(page.getByRole('button', { name: said.endFullScreen })).toBeVisible()
  await page.getByRole('button', { name: said.leave }).click()
  await expect.poll(() => page.evaluate(() => document.fullscreenElement)).toBe(null)
})

test.describe('by touch', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true })

  async function swipe(page: Page, by: number, from: { x: number; y: number }): Promise<void> {
    const client = await page.context().newCDPSession(page)
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', x: number) =>
      client.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: type === 'touchEnd' ? [] : [{ x, y: from.y }],
      })
    await touch('touchStart', from.x)
    for (const share of [0.25, 0.5, 0.75, 1]) await touch('touchMove', from.x + by * share)
    await touch('touchEnd', from.x + by)
    await client.detach()
  }

  test('the findings of a phone lead to it, a swipe goes on and back, and nothing is cut or small on any screen', async ({
    page,
  }) => {
    await withoutPicture(page)
    await openApp(page)
    await page
      .getByRole('navigation', { name: words.phone.parts })
      .getByRole('button', { name: words.parts.narrow.findings })
      .tap()
    const first = page.locator('.findings-part .button').first()
    await expect(first).toHaveText(pages.explain)
    await first.tap()
    await expect(count(page)).toHaveText('1 of 7')
    await swipe(page, -120, { x: 250, y: 600 })
    await expect(count(page)).toHaveText('2 of 7')
    await swipe(page, -120, { x: 250, y: 300 })
    await expect(count(page)).toHaveText('3 of 7')
    await swipe(page, 120, { x: 100, y: 600 })
    await expect(count(page)).toHaveText('2 of 7')
    await swipe(page, 20, { x: 100, y: 600 })
    await expect(count(page)).toHaveText('2 of 7')
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme })
      await expectAccessible(page)
    }
    for (const [width, height] of [
      [390, 844],
      [844, 390],
      [1024, 768],
      [1280, 720],
      [1920, 1080],
    ] as const) {
      await page.setViewportSize({ width, height })
      expect(await troublesOf(page), `${width} × ${height}`).toEqual([])
    }
  })
})

async function withoutPictures(context: BrowserContext): Promise<void> {
  await context.addInitScript(() => {
    Object.defineProperty(HTMLCanvasElement.prototype, 'getContext', { value: () => null })
  })
}

test('a second window shows the bench as it is: what is told, the bore, a change of it, and another job', async ({
  page,
  context,
}) => {
  await withoutPictures(context)
  await openShow(page, 'B')
  // The bench tells what it shows while the window still waits for its own example.
  await context.route(/B-four-cylinder-iron-[^/]*\.js/, async (route) => {
    await new Promise((resolve) => setTimeout(resolve, 500))
    await route.continue()
  })
  const opened = context.waitForEvent('page')
  await page.getByRole('button', { name: said.otherWindow }).click()
  const second = await opened
  await expect(count(second)).toHaveText('1 of 7')
  await expect(second.getByText(said.follows)).toBeVisible()
  await page.keyboard.press('ArrowRight')
  await expect(count(second)).toHaveText('2 of 7')
  await page.getByRole('combobox', { name: said.bore }).selectOption({ label: '3' })
  await page.keyboard.press('ArrowRight')
  await page.keyboard.press('ArrowLeft')
  await expect(count(second)).toHaveText('1 of 7')
  await page.keyboard.press('ArrowRight')
  await expect(sentence(second)).toContainText('86.098 ± 0.009')

  // On the bench a name is changed, which keeps the job; the window goes over to it, and is no rival for its pen.
  await page.keyboard.press('Escape')
  const name = page.getByRole('textbox', { name: words.bar.jobName })
  await name.fill('Mine')
  await name.press('Enter')
  await expect(second.getByRole('heading', { level: 1 })).toHaveText('Mine')
  await expect(sentence(second)).toContainText('86.098 ± 0.009')
  await second.reload()
  await expect(second.getByRole('heading', { level: 1 })).toHaveText('Mine')
  await page.reload()
  await expect(name).toHaveValue('Mine')
  await expect(page.getByText(words.pen.following)).toBeHidden()
  await name.fill('Mine again')
  await name.press('Enter')
  await expect(second.getByRole('heading', { level: 1 })).toHaveText('Mine again')

  await page.goto('./#example=A')
  await expect(second.getByRole('heading', { level: 1 })).toHaveText('Garden saw (invented)')
  const closed = second.waitForEvent('close')
  // The window may be gone before the click is answered.
  await Promise.race([second.getByRole('button', { name: said.leave }).click(), closed])
  await closed
})

test('a hostile job is shown as text everywhere, and runs nothing', async ({ page }) => {
  await withoutPicture(page)
  await openApp(page)
  await chooseFile(page, 'hostile.json', writeJob({ ...hostileJob(scenario('B')), id: 'hostile' }))
  await expect(page.getByRole('textbox', { name: words.bar.jobName })).toHaveValue(hostileText(120))
  await page.goto('./#page=show')
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(hostileText(120))
  for (let step = 1; step <= 7; step++) {
    await expect(count(page)).toHaveText(`${step} of 7`)
    await page.keyboard.press('ArrowRight')
  }
  await expect(page.getByRole('combobox', { name: said.bore }).locator('option').first()).toHaveText(
    hostileText(120),
  )
  expect(
    await page.evaluate(() => ({ ran: 'ran' in window, made: document.querySelectorAll('img').length })),
  ).toEqual({
    ran: false,
    made: 0,
  })
  await page.setViewportSize({ width: 390, height: 844 })
  expect((await troublesOf(page)).filter((trouble) => !trouble.startsWith('44'))).toEqual([])
  await expectAccessible(page)
})
