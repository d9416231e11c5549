import type { Page } from '@playwright/test'
import { words } from '../../src/words/words'
import { expect, openApp, test } from './bench-fixture'
import { type Patch, patchAt } from './pixels'

const { trouble } = words.picture

declare global {
  interface Window {
    /** How many times anything was drawn by WebGL. */
    drawn: number
    /** The most triangles drawn at once, frame by frame. */
    triangles: number[]
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

test('the picture draws nothing while the page is idle, says so when the graphics are lost, and is drawn again as it was turned when they are back', async ({
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

  const unturned = await wallSeen(page)
  await page.getByRole('application').press('ArrowRight')
  await page.getByRole('application').press('ArrowRight')
  await expect.poll(async () => change(unturned, await wallSeen(page))).toBeGreaterThan(0.05)
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

/** Frames that a key takes until nothing is drawn any more. */
async function framesOfKey(page: Page, key: string): Promise<number> {
  const drawn = () => page.evaluate(() => window.drawn)
  const before = await drawn()
  await page.getByRole('application').press(key)
  let last = -1
  for (let now = before; now !== last; now = await drawn()) {
    last = now
    await page.waitForTimeout(400)
  }
  return last - before
}

test('arrow keys reach the picture through a screen reader too, and turn it in one frame where less motion is asked for', async ({
  page,
}) => {
  // Counted, not drawn: frames are quick then.
  await page.addInitScript(() => {
    window.drawn = 0
    let isCounted = false
    for (const name of ['drawArrays', 'drawElements'] as const) {
      Object.defineProperty(WebGL2RenderingContext.prototype, name, {
        value() {
          if (isCounted) return
          isCounted = true
          window.drawn += 1
          queueMicrotask(() => {
            isCounted = false
          })
        },
      })
    }
  })
  await openApp(page)
  // A screen reader keeps the arrow keys for itself but in an application, and says which keys that has.
  const picture = page.getByRole('application', { description: words.pictureTexts.keys })
  await expect(picture).toHaveCount(1)
  await expect(picture).toHaveAttribute('tabindex', '0')
  await expect.poll(() => page.evaluate(() => window.drawn)).toBeGreaterThan(0)
  await framesOfKey(page, 'ArrowLeft')
  const atOnce = await framesOfKey(page, 'ArrowRight')
  expect(atOnce, 'a frame that shows where it went, and none after it').toBe(1)
  await page.emulateMedia({ reducedMotion: 'no-preference' })
  expect(await framesOfKey(page, 'ArrowRight')).toBeGreaterThan(2 * atOnce)
})

test('a wall of many nodes is drawn roughly while the eye moves and when it is new, and whole once it rests', async ({
  page,
}) => {
  // The most that a frame draws at once, frame by frame; counted and not drawn.
  await page.addInitScript(() => {
    window.triangles = []
    let isOpen = false
    Object.defineProperty(WebGL2RenderingContext.prototype, 'drawElements', {
      value(_: number, count: number) {
        if (!isOpen) window.triangles.push(0)
        isOpen = true
        queueMicrotask(() => {
          isOpen = false
        })
        const last = window.triangles.length - 1
        window.triangles[last] = Math.max(window.triangles[last] ?? 0, count / 3)
      },
    })
  })
  const frames = () => page.evaluate(() => window.triangles)
  await openApp(page, 'E')
  await expect(page.getByRole('application', { name: words.scans.picture })).toBeVisible()
  await expect.poll(async () => Math.max(...(await frames()))).toBeGreaterThan(90_000)
  const first = await frames()
  const atRest = Math.max(...first)
  const rough = first[first.indexOf(atRest) - 1] ?? 0
  expect(rough).toBeGreaterThan(0)
  expect(rough).toBeLessThan(atRest / 3)
  await page.waitForTimeout(1000)
  await page.emulateMedia({ reducedMotion: 'no-preference' })
  await page.evaluate(() => {
    window.triangles = []
  })
  await page.getByRole('application').press('ArrowRight')
  await expect.poll(async () => (await frames()).at(-1)).toBe(atRest)
  const moving = (await frames()).slice(0, -1)
  expect(moving.length).toBeGreaterThan(2)
  expect(Math.max(...moving)).toBeLessThan(atRest / 3)
})

test('without linear filtering of float textures, as on many phones, the wall is drawn the same', async ({
  page,
  context,
}) => {
  const without = await context.newPage()
  await without.addInitScript(() => {
    const { getExtension } = WebGL2RenderingContext.prototype
    Object.defineProperty(WebGL2RenderingContext.prototype, 'getExtension', {
      value(this: WebGL2RenderingContext, name: string) {
        return name === 'OES_texture_float_linear' ? null : Reflect.apply(getExtension, this, [name])
      },
    })
  })
  const seen: Patch[] = []
  for (const one of [page, without]) {
    await openApp(one)
    await expect
      .poll(() => one.evaluate(() => performance.getEntriesByName('borewall:first-picture').length))
      .toBe(1)
    await one.waitForTimeout(1000)
    seen.push(await wallSeen(one))
  }
  const [filtered = [], plain = []] = seen
  expect(new Set(plain.map(String)).size, 'colours of the wall').toBeGreaterThan(50)
  expect(change(filtered, plain)).toBeLessThan(0.001)
})
