import { readFileSync } from 'node:fs'
import type { Page } from '@playwright/test'
import type { Job } from '../../src/job/schema'
import { words } from '../../src/words/words'
import { expect, test } from './bench-fixture'
import { dropFiles } from './job-files'

/** As the wall's shader has them: width in CSS pixels, cover, and the colour of the ink. */
const line = { width: 0.8, cover: 0.3, ink: 32 }
/** Of the glass of the near wall, through which all of it is seen. */
const glass = 0.03
const depths = Array.from({ length: 14 }, (_, index) => 5 + 10 * index)

/** Four bores alike, 0.8 µm wider with each mm of depth and without limits: lines all round, evenly far apart, on plain ground. */
function evenCones(): string {
  const job: Job = JSON.parse(
    readFileSync(new URL('../../scenarios/B-four-cylinder-iron.json', import.meta.url), 'utf8'),
  )
  const { ovalityRule, taperRule } = job.spec
  const readings = depths.flatMap((depthMm) =>
    [0, 90].map((axisDegrees) => ({ depthMm, axisDegrees, sizesMm: [86 + depthMm * 0.0008] })),
  )
  const bores = job.bores.map(
    ({ pistons: _, ...bore }: (typeof job.bores)[number] & { pistons?: unknown }) => ({
      ...bore,
      surveys: bore.surveys.slice(0, 1).map((survey) => ({
        ...survey,
        levelsMm: depths,
        axesDegrees: [0, 90],
        readings,
      })),
    }),
  )
  return JSON.stringify({
    ...job,
    id: 'cones',
    name: 'Cones',
    spec: { ovalityRule, taperRule },
    pistons: [],
    bores,
  })
}

interface Seen {
  /** Widths of the lines of the bore in hand, device pixels. */
  readonly widths: readonly number[]
  /** How far the plain bore is off the other between that one's lines, at the most, in steps of 255. */
  readonly wash: number
}

/** Looks down the picture beside the middle of the bore in hand and, at the same heights, of a plain one. */
async function seen(page: Page, png: Buffer, middles: readonly number[], ratio: number): Promise<Seen> {
  const reader = await page.context().newPage()
  const found = await reader.evaluate(
    async ({ base64, at, pixels, look }) => {
      const bytes = Uint8Array.from(atob(base64), (c) => c.charCodeAt(0))
      const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }))
      const pen = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d', {
        willReadFrequently: true,
      })
      if (!pen) throw new Error('no canvas to read pixels with')
      pen.drawImage(bitmap, 0, 0)
      const columnAt = (x: number) => {
        const { data } = pen.getImageData(Math.round(x), 0, 1, bitmap.height)
        return Array.from(
          { length: bitmap.height },
          (_, y) => ((data[y * 4] ?? 0) + (data[y * 4 + 1] ?? 0) + (data[y * 4 + 2] ?? 0)) / 3,
        )
      }
      const [inHand = 0, plain = 0] = at
      // The discs of the stations at 0°, in the middle: between the second and the last but one wall was measured.
      const discs: number[] = []
      let run = 0
      for (const [y, light] of columnAt(inHand).entries()) {
        run = light < 70 ? run + 1 : 0
        if (run === 4 * pixels) discs.push(y)
      }
      const [top = 0, foot = 0] = [discs[1], discs[discs.length - 2]]
      const beside = 14 * pixels
      const lined = columnAt(inHand + beside)
      const bare = columnAt(plain + beside)
      // The plain bore is the ground: the same wall at the same place, without lines.
      const inked = lined.map((light, y) => (bare[y] ?? 0) - light)
      const lines: number[] = []
      for (let y = top; y < foot; y++) {
        const dark = inked[y] ?? 0
        const isDarkest = dark >= Math.max(...inked.slice(y - 4 * pixels, y + 4 * pixels + 1))
        if (dark > 8 && isDarkest && y - (lines[lines.length - 1] ?? 0) > 2) lines.push(y)
      }
      const widths = lines.map((y) => {
        const dark = inked.slice(y - 4 * pixels, y + 4 * pixels + 1)
        return dark.reduce((sum, value) => sum + value, 0) / (look.cover * ((bare[y] ?? 0) - look.ink))
      })
      const between = lines.slice(1).map((y, index) => Math.round((y + (lines[index] ?? y)) / 2))
      const wash = Math.max(...between.map((y) => Math.abs(inked[y] ?? 0)))
      return { widths, wash }
    },
    {
      base64: png.toString('base64'),
      at: middles.map((x) => x * ratio),
      pixels: ratio,
      look: { cover: line.cover * (1 - glass), ink: line.ink },
    },
  )
  await reader.close()
  return found
}

/** What was asked for is drawn in the next frame, and seen in the one after. */
async function framesLater(page: Page): Promise<void> {
  for (let frame = 0; frame < 4; frame++) {
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(done)))
  }
}

/** Each frame of a denser screen takes its time on the processor. */
const ratios = process.env.PROOF === '1' ? [1, 2] : [1]

for (const ratio of ratios) {
  test.describe(`with ${ratio} device pixels for each of the page's`, () => {
    test.use({ deviceScaleFactor: ratio, viewport: { width: 1100, height: 720 } })

    test('lines of one size are as wide at any zoom, and a wall without a step has none and no grey wash', async ({
      page,
    }) => {
      test.setTimeout(90_000)
      await page.goto('./')
      await page.getByRole('heading', { level: 1 }).waitFor()
      await dropFiles(page, [{ name: 'cones.json', text: evenCones() }])
      await page.getByRole('button', { name: words.pages.compare, exact: true }).click()
      await expect(page.locator('.picture-label-figure').filter({ visible: true })).toHaveCount(4)
      await page.locator('.wall-list button').nth(1).click()
      // Texts stand on the wall, and the picture is what is looked at.
      const texts = page.locator('.picture-labels, .picture-corner')
      await texts.evaluateAll((all) => {
        for (const one of all) if (one instanceof HTMLElement) one.style.opacity = '0'
      })
      const box = await page.locator('.picture-box canvas').boundingBox()
      if (!box) throw new Error('no picture')
      for (const zoomed of [0, 2]) {
        for (let step = 0; step < zoomed; step++) {
          await page.getByRole('button', { name: words.picture.zoomIn, exact: true }).click()
        }
        await framesLater(page)
        const middles = await page.locator('.picture-label-bore').evaluateAll(
          (names, left) =>
            names.map((name) => {
              const { x, width } = name.getBoundingClientRect()
              return x + width / 2 - left
            }),
          box.x,
        )
        const png = await page.screenshot({ clip: box, scale: 'device' })
        const found = await seen(page, png, [middles[1] ?? 0, middles[2] ?? 0], ratio)
        expect(found.widths.length).toBeGreaterThan(7)
        for (const width of found.widths) {
          expect(Math.abs(width - line.width * ratio), `zoomed in ${zoomed} times`).toBeLessThan(0.1 * ratio)
        }
        expect(found.wash).toBeLessThan(3)
      }
    })
  })
}
