import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser, Page } from '@playwright/test'
import { exampleAddress } from '../../../src/app/examples'
import type { Setting } from '../../run/setting'
import { withBuiltPage } from '../built-page'
import { settle } from '../settle'
import { type Picture, pictures } from './picture-list'
import { type Pixels, smallPng } from './small-png'

const viewport = { width: 1440, height: 900 }
/** Paper round parts of the page, px. */
const margin = 16

/** The pictures of README, made from the scenarios with the app itself. */
export async function run({ root, ...setting }: Setting): Promise<void> {
  await withBuiltPage({ root, ...setting }, async (browser, address) => {
    for (const picture of pictures) {
      const png = smallPng(await shoot(browser, address, picture))
      const file = join(root, 'scenarios', picture.file)
      writeFileSync(file, png)
      process.stdout.write(`${file} ${(png.length / 1000).toFixed(0)} kB\n`)
    }
  })
}

async function shoot(browser: Browser, address: string, picture: Picture): Promise<Pixels> {
  const context = await browser.newContext({
    viewport,
    colorScheme: 'light',
    locale: 'en-GB',
    timezoneId: 'UTC',
    reducedMotion: 'reduce',
  })
  const page = await context.newPage()
  await page.goto(`${address}${exampleAddress(picture.example)}`)
  await page.getByRole('heading', { level: 1 }).waitFor()
  await picture.prepare?.(page)
  await settle(page)
  const png = await page.screenshot(picture.parts ? { clip: await around(page, picture.parts) } : {})
  const pixels = await pixelsOf(page, png)
  await context.close()
  return pixels
}

/** The pixels of a PNG, unpacked by the browser. */
async function pixelsOf(page: Page, png: Buffer): Promise<Pixels> {
  const { rgb, ...size } = await page.evaluate(async (base64) => {
    const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))
    const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }))
    const { width, height } = bitmap
    const context = new OffscreenCanvas(width, height).getContext('2d')
    if (!context) throw new Error('This browser gives no canvas to unpack a picture on')
    context.drawImage(bitmap, 0, 0)
    const rgba = context.getImageData(0, 0, width, height).data
    let rgb = ''
    for (let at = 0; at < rgba.length; at += 4) {
      rgb += String.fromCharCode(...rgba.subarray(at, at + 3))
    }
    return { width, height, rgb: btoa(rgb) }
  }, png.toString('base64'))
  return { ...size, rgb: Buffer.from(rgb, 'base64') }
}

/** What holds all of the parts, with a margin, within the window. */
async function around(page: Page, parts: readonly string[]) {
  const boxes = await Promise.all(parts.map((part) => page.locator(part).boundingBox()))
  const found = boxes.flatMap((box) => (box ? [box] : []))
  if (found.length < parts.length) throw new Error(`Not all of ${parts.join(', ')} are on the page`)
  const left = Math.max(0, Math.min(...found.map(({ x }) => x)) - margin)
  const top = Math.max(0, Math.min(...found.map(({ y }) => y)) - margin)
  const right = Math.min(viewport.width, Math.max(...found.map(({ x, width }) => x + width)) + margin)
  const bottom = Math.min(viewport.height, Math.max(...found.map(({ y, height }) => y + height)) + margin)
  return { x: left, y: top, width: right - left, height: bottom - top }
}
