import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser } from '@playwright/test'
import { exampleAddress } from '../../../src/app/examples'
import type { Setting } from '../../run/setting'
import { withBuiltPage } from '../built-page'
import { settle } from '../settle'
import { type View, views } from './views'

interface Shot {
  readonly view: View
  readonly png: Buffer
}

/** Every page, size and theme beside each other in one picture. */
export async function run(setting: Setting): Promise<void> {
  const file = join(setting.output, 'contact-sheet.png')
  mkdirSync(setting.output, { recursive: true })
  await withBuiltPage(setting, async (browser, address) => {
    const shots: Shot[] = []
    for (const view of views) shots.push({ view, png: await shoot(browser, address, view) })
    await compose(browser, shots, file)
  })
  process.stdout.write(`${file}\n`)
}

async function shoot(browser: Browser, address: string, view: View): Promise<Buffer> {
  const { width, height, theme, media, example, touch = false } = view
  const context = await browser.newContext({
    viewport: { width, height },
    colorScheme: theme,
    hasTouch: touch,
    isMobile: touch,
    locale: 'en-GB',
    timezoneId: 'UTC',
  })
  const page = await context.newPage()
  if (view.before) await page.addInitScript(view.before)
  await page.goto(example === undefined ? address : `${address}${exampleAddress(example)}`)
  await page.getByRole('heading', { level: 1 }).waitFor()
  await view.prepare?.(page)
  if (media) await page.emulateMedia({ media })
  await settle(page)
  const png = await page.screenshot({ fullPage: media === 'print' })
  await context.close()
  return png
}

/** Half the size of the screen, as many in a row as there is room for. */
async function compose(browser: Browser, shots: readonly Shot[], file: string): Promise<void> {
  const context = await browser.newContext({ viewport: { width: 2260, height: 1000 } })
  const page = await context.newPage()
  const figures = shots.map(({ view, png }) => {
    const caption = `${view.title}, ${view.width} × ${view.height}, ${view.media ?? view.theme}`
    const source = `data:image/png;base64,${png.toString('base64')}`
    return `<figure><figcaption>${caption}</figcaption><img src="${source}" width="${view.width / 2}"></figure>`
  })
  await page.setContent(`<!doctype html><meta charset="utf-8"><style>
    body { margin: 20px; display: flex; flex-wrap: wrap; align-items: flex-start; gap: 24px 20px; background: #8a8a86 }
    figure { margin: 0 } figcaption { font: 14px sans-serif; padding: 4px 0 } img { display: block }
  </style>${figures.join('')}`)
  await page.evaluate(() =>
    Promise.all([...document.images].map((image) => image.decode())).then(() => undefined),
  )
  await page.screenshot({ path: file, fullPage: true })
  await context.close()
}
