import type { Page } from '@playwright/test'

/** A patch of the page as it looks, pixel by pixel, each red, green, blue from 0 to 255. */
export type Patch = readonly (readonly [number, number, number])[]

/** The square of pixels about a point of the page. */
export async function patchAt(page: Page, x: number, y: number, half: number): Promise<Patch> {
  const png = await page.screenshot({
    clip: { x: x - half, y: y - half, width: 2 * half + 1, height: 2 * half + 1 },
  })
  const reader = await page.context().newPage()
  const flat = await reader.evaluate(async (base64) => {
    const bytes = Uint8Array.from(atob(base64), (c) => c.charCodeAt(0))
    const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }))
    const canvas = new OffscreenCanvas(bitmap.width, bitmap.height)
    const context = canvas.getContext('2d')
    if (!context) throw new Error('no canvas to read pixels with')
    context.drawImage(bitmap, 0, 0)
    return Array.from(context.getImageData(0, 0, bitmap.width, bitmap.height).data)
  }, png.toString('base64'))
  await reader.close()
  return Array.from({ length: flat.length / 4 }, (_, i) => [
    flat[i * 4] ?? 0,
    flat[i * 4 + 1] ?? 0,
    flat[i * 4 + 2] ?? 0,
  ])
}

/** How many of the pixels lie within this distance of a colour in each channel, as a share. */
export function shareNear(patch: Patch, colour: readonly [number, number, number], within: number): number {
  const near = patch.filter((pixel) =>
    pixel.every((value, i) => Math.abs(value - (colour[i] ?? 0)) <= within),
  )
  return near.length / patch.length
}

/** Share of pixels that are clearly darker than the lightest of the patch: the ink of a mark. */
export function shareOfInk(patch: Patch): number {
  const light = (pixel: readonly [number, number, number]) => (pixel[0] + pixel[1] + pixel[2]) / 3
  const lightest = Math.max(...patch.map(light))
  return patch.filter((pixel) => light(pixel) < lightest - 35).length / patch.length
}
