import type { Page } from '@playwright/test'

/** A patch of the page as it looks, pixel by pixel, each red, green, blue from 0 to 255. */
export type Patch = readonly (readonly [number, number, number])[]

interface Clip {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/** The square of pixels about a point of the page. */
export async function patchAt(page: Page, x: number, y: number, half: number): Promise<Patch> {
  const side = 2 * half + 1
  const png = await page.screenshot({ clip: { x: x - half, y: y - half, width: side, height: side } })
  const [patch] = await patchesOf(page, png, [{ x: 0, y: 0, width: side, height: side }])
  return patch ?? []
}

/** Parts of a PNG, decoded in a page of its own. */
export async function patchesOf(page: Page, png: Buffer, clips: readonly Clip[]): Promise<readonly Patch[]> {
  const reader = await page.context().newPage()
  const patches = await reader.evaluate(
    async ([base64, wanted]) => {
      const bytes = Uint8Array.from(atob(base64), (c) => c.charCodeAt(0))
      const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }))
      const canvas = new OffscreenCanvas(bitmap.width, bitmap.height)
      const context = canvas.getContext('2d', { willReadFrequently: true })
      if (!context) throw new Error('no canvas to read pixels with')
      context.drawImage(bitmap, 0, 0)
      return wanted.map(({ x, y, width, height }) => {
        const { data } = context.getImageData(x, y, width, height)
        return Array.from({ length: width * height }, (_, i): [number, number, number] => [
          data[i * 4] ?? 0,
          data[i * 4 + 1] ?? 0,
          data[i * 4 + 2] ?? 0,
        ])
      })
    },
    [png.toString('base64'), clips] as const,
  )
  await reader.close()
  return patches
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
  const light = lightOf(patch)
  const lightest = Math.max(...light)
  return light.filter((value) => value < lightest - 35).length / patch.length
}

/** How many separate marks, darker than the ground, a square patch holds: dots are many, a line is one. */
export function marksOf(patch: Patch): number {
  const side = Math.sqrt(patch.length)
  const light = lightOf(patch)
  const ground = [...light].sort((a, b) => a - b)[Math.floor(light.length / 2)] ?? 0
  const ink = light.map((value) => value < ground - 14)
  let marks = 0
  for (let start = 0; start < ink.length; start++) {
    if (!ink[start]) continue
    marks += 1
    const open = [start]
    for (let at = open.pop(); at !== undefined; at = open.pop()) {
      if (!ink[at]) continue
      ink[at] = false
      const column = at % side
      open.push(at - side, at + side)
      if (column > 0) open.push(at - 1)
      if (column < side - 1) open.push(at + 1)
    }
  }
  return marks
}

function lightOf(patch: Patch): number[] {
  return patch.map(([red, green, blue]) => (red + green + blue) / 3)
}
