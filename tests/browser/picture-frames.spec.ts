import type { Page } from '@playwright/test'
import { words } from '../../src/words/words'
import { expect, openApp, test } from './bench-fixture'
import { type Patch, patchAt } from './pixels'

const { trouble } = words.picture

declare global {
  interface Window {
    /** How many times anything was drawn by WebGL. */
    drawn: number
    losing: WEBGL_lose_context | null
  }
}

async function countDrawing(page: Page): Promise<void> {
  await page.addInitScript(() => {
    window.drawn = 0
    for (const name of [
      'drawArrays',
      'drawElements',
      'drawArraysInstanced',
      'drawElementsInstanced',
    ] as const) {
      const draw: (...values: number[]) => void = WebGL2RenderingContext.prototype[name]
      Object.defineProperty(WebGL2RenderingContext.prototype, name, {
        value(this: WebGL2RenderingContext, ...values: number[]) {
          window.drawn += 1
          draw.apply(this, values)
        },
      })
    }
  })
}

/** The middle of the picture, where nothing stands on it in HTML. */
async function wallSeen(page: Page): Promise<Patch> {
  const box = await page.locator('.picture-box canvas').boundingBox()
  if (!box) throw new Error('no picture')
  return patchAt(page, Math.round(box.x + box.width / 2), Math.round(box.y + box.height / 2), 40)
}

/** Share of pixels that differ clearly. */
function change(before: Patch, after: Patch): number {
  const changed = before.filter((pixel, i) =>
    pixel.some((value, channel) => Math.abs(value - (after[i]?.[channel] ?? 0)) > 12),
  )
  return changed.length / before.length
}

test('the picture draws nothing while the page is idle, says so when the graphics are lost, and is drawn again when they are back', async ({
  page,
}) => {
  await countDrawing(page)
  await openApp(page)
  await expect
    .poll(() => page.evaluate(() => performance.getEntriesByName('borewall:first-picture').length))
    .toBe(1)
  await page.waitForTimeout(1000)
  const drawn = await page.evaluate(() => window.drawn)
  expect(drawn).toBeGreaterThan(0)
  await page.waitForTimeout(3000)
  expect(await page.evaluate(() => window.drawn)).toBe(drawn)

  const before = await wallSeen(page)
  await page.evaluate(() => {
    const gl = document.querySelector<HTMLCanvasElement>('.picture-box canvas')?.getContext('webgl2')
    window.losing = gl?.getExtension('WEBGL_lose_context') ?? null
    window.losing?.loseContext()
  })
  await expect(page.getByText(trouble['context-lost'])).toBeVisible()
  expect(change(before, await wallSeen(page)), 'gone from the picture').toBeGreaterThan(0.5)
  // A change while it is lost asks for a frame that nobody can draw.
  await page.getByRole('button', { name: /^8 mm, 0°/ }).hover()
  await page.mouse.move(5, 5)
  await page.evaluate(() => window.losing?.restoreContext())
  await expect(page.getByText(trouble.restored)).toBeVisible()
  await expect.poll(async () => change(before, await wallSeen(page))).toBeLessThan(0.01)
})
