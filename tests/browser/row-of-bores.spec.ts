import type { Page } from '@playwright/test'
import { words } from '../../src/words/words'
import { expect, openApp, test } from './bench-fixture'

/** Half of a line and what rounding to pixels leaves, CSS pixels. */
const trifle = 1.5

/** How far to both sides something is seen. */
interface Extent {
  readonly middle: number
  readonly width: number
}

interface Measured {
  /** Of each bore, the ring of the wear limit at the deck and at the foot. */
  readonly rings: readonly (readonly [Extent, Extent])[]
  /** Where discs lie in the column of the first bore's middle. */
  readonly discs: readonly number[]
}

/** Measures a picture of the row in a page of its own, in CSS pixels from its left and top. */
async function measured(page: Page, png: Buffer, middles: readonly number[]): Promise<Measured> {
  const reader = await page.context().newPage()
  const result = await reader.evaluate(
    async ([base64, at]) => {
      const bytes = Uint8Array.from(atob(base64), (c) => c.charCodeAt(0))
      const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }))
      const { width, height } = bitmap
      const pen = new OffscreenCanvas(width, height).getContext('2d')
      if (!pen) throw new Error('no canvas to read pixels with')
      pen.drawImage(bitmap, 0, 0)
      const { data } = pen.getImageData(0, 0, width, height)
      const isNear = (x: number, y: number, colour: readonly number[]) =>
        colour.every((value, channel) => Math.abs((data[(y * width + x) * 4 + channel] ?? 0) - value) <= 40)
      const extent = (middle: number, top: number, bottom: number) => {
        const half = ((at[1] ?? 0) - (at[0] ?? 0)) / 2
        let [left, right] = [width, 0]
        for (let y = Math.round(top); y < Math.round(bottom); y++) {
          for (let x = Math.max(0, Math.round(middle - half)); x < Math.round(middle + half); x++) {
            if (!isNear(x, y, [163, 72, 28])) continue
            left = Math.min(left, x)
            right = Math.max(right, x)
          }
        }
        return { middle: (left + right + 1) / 2, width: right - left + 1 }
      }
      const column = Math.round(at[0] ?? 0)
      const discs: number[] = []
      let run = 0
      for (let y = 0; y < height; y++) {
        run = isNear(column, y, [32, 35, 31]) ? run + 1 : 0
        if (run === 5) discs.push(y - 2)
      }
      const rings = at.map(
        (middle) => [extent(middle, 0, height / 2), extent(middle, height / 2, height)] as const,
      )
      return { rings, discs }
    },
    [png.toString('base64'), middles] as const,
  )
  await reader.close()
  return result
}

test('the bores of a row stand upright and are drawn alike, and pointing at the outermost finds the station drawn there', async ({
  page,
}) => {
  await openApp(page, 'B')
  await page.getByRole('button', { name: words.pages.compare, exact: true }).click()
  await expect(page.locator('.picture-label-figure').filter({ visible: true })).toHaveCount(4)
  // The key has the colour of the ring too.
  await page.locator('.picture-corner').evaluateAll((corners) => {
    for (const corner of corners) if (corner instanceof HTMLElement) corner.style.visibility = 'hidden'
  })
  const box = await page.locator('.picture-box canvas').boundingBox()
  if (!box) throw new Error('no picture')
  const middles = await page.locator('.picture-label-bore').evaluateAll(
    (names, left) =>
      names.map((name) => {
        const { x, width } = name.getBoundingClientRect()
        return x + width / 2 - left
      }),
    box.x,
  )
  const { rings, discs } = await measured(page, await page.screenshot({ clip: box }), middles)
  const [first] = rings
  rings.forEach(([deck, foot], index) => {
    const middle = middles[index] ?? Number.NaN
    expect(Math.abs(deck.middle - middle), `bore ${index + 1}, ring at the deck`).toBeLessThan(trifle)
    expect(Math.abs(foot.middle - middle), `bore ${index + 1}, ring at the foot`).toBeLessThan(trifle)
    expect(Math.abs(deck.width - (first?.[0].width ?? 0))).toBeLessThan(2 * trifle)
    expect(Math.abs(foot.width - (first?.[1].width ?? 0))).toBeLessThan(2 * trifle)
  })

  // The discs in the middle of the bore in hand are the stations of the far wall at 0°: 4, 10, 40, 80 and 125 mm deep.
  expect(discs).toHaveLength(5)
  await page.mouse.move(box.x + (middles[3] ?? 0), box.y + (discs[2] ?? 0))
  await expect(page.locator('.wall-list p')).toHaveText(
    Array.from({ length: 4 }, () => /^40 mm · 0° · .* a reading$/),
  )
})
