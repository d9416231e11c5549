import { readFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import type { Locator, Page } from '@playwright/test'
import { inspectCommand } from '../../src/cli/inspect-command'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'
import { patchesOf, shareNear } from './pixels'

const { send } = words
const example = fileURLToPath(new URL('../../scenarios/A-two-stroke-single.json', import.meta.url))
const printed = inspectCommand([example], '.').output

const ink = [32, 35, 31] as const
const paper = { width: 1600, height: 1200 }
/** Where things stand on the paper, with the 3D picture or the flat map, pixels. */
const margin = { x: 4, y: 4, width: 40, height: 400 }
const caption = { x: 56, y: 130, width: 600, height: 60 }
const wall = { x: 420, y: 740, width: 300, height: 150 }
const key = { x: 1120, y: 280, width: 60, height: 400 }
const marks = { x: 1180, y: 570, width: 240, height: 300 }

async function openSend(page: Page): Promise<Locator> {
  await page.getByRole('button', { name: send.open, exact: true }).click()
  const dialog = page.getByRole('dialog', { name: send.title })
  await expect(dialog).toBeVisible()
  return dialog
}

function way(dialog: Locator, name: keyof typeof send.ways): Locator {
  return dialog.getByRole('button', { name: send.ways[name], exact: true })
}

async function saved(page: Page, button: Locator): Promise<{ name: string; bytes: Buffer }> {
  const download = page.waitForEvent('download')
  await button.click()
  const done = await download
  return { name: done.suggestedFilename(), bytes: await readFile(await done.path()) }
}

/** Width and height as a PNG's header has them (PNG specification, third edition, 5.2 and 11.2.1). */
function sizeOfPng(bytes: Buffer): { width: number; height: number } {
  expect([...bytes.subarray(0, 8)], 'signature of a PNG').toEqual([137, 80, 78, 71, 13, 10, 26, 10])
  return { width: bytes.readUInt32BE(16), height: bytes.readUInt32BE(20) }
}

/** What was written and drawn on white paper, whatever the page looks like. */
async function expectPaper(page: Page, bytes: Buffer): Promise<void> {
  expect(sizeOfPng(bytes)).toEqual(paper)
  const at = await patchesOf(page, bytes, [margin, caption, wall, key, marks])
  const share = (place: number, colour: readonly [number, number, number], within: number) =>
    shareNear(at[place] ?? [], colour, within)
  expect(share(0, [255, 255, 255], 0), 'white paper').toBe(1)
  expect(share(1, ink, 40), 'ink of the caption').toBeGreaterThan(0.05)
  expect(share(2, [160, 188, 198], 20), 'colour of the tight wall').toBeGreaterThan(0.1)
  expect(share(3, [207, 154, 63], 12), 'loose end of the key').toBeGreaterThan(0.02)
  expect(share(3, [31, 95, 139], 12), 'smallest new on the key').toBeGreaterThan(0.005)
  expect(share(4, ink, 40), 'ink of the words beside the marks').toBeGreaterThan(0.02)
}

test.use({ colorScheme: 'dark' })

test('the text sent is the text of inspect; text and picture are copied and saved, on white paper in the dark', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write'])
  await openApp(page)
  await expect(page.locator('.picture-box canvas')).toBeVisible()
  const dialog = await openSend(page)
  await expect(dialog.getByRole('textbox', { name: send.text })).toHaveValue(printed)
  await expect(
    dialog.getByRole('img', { name: /^Picture to send\. bore 1: Inside the wear limit\./ }),
  ).toBeVisible()
  await expectAccessible(page, 'dialog')

  await way(dialog, 'copy-text').click()
  await expect(dialog.getByText(send.done.copiedText)).toBeVisible()
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(printed)
  await way(dialog, 'copy-picture').click()
  await expect(dialog.getByText(send.done.copiedPicture)).toBeVisible()
  const types = await page.evaluate(async () =>
    (await navigator.clipboard.read()).flatMap(({ types }) => types),
  )
  expect(types).toContain('image/png')

  const text = await saved(page, way(dialog, 'save-text'))
  expect(text.name).toMatch(/^garden-saw-invented-\d{4}-\d\d-\d\d\.txt$/)
  expect(text.bytes.toString('utf8')).toBe(printed)
  await expect(dialog.getByText(send.done.saved(text.name))).toBeVisible()
  const picture = await saved(page, way(dialog, 'save-picture'))
  expect(picture.name).toMatch(/^garden-saw-invented-bore-1-\d{4}-\d\d-\d\d\.png$/)
  await expectPaper(page, picture.bytes)
  const toPrint = await saved(page, dialog.getByRole('button', { name: send.saveForPrint }))
  expect(toPrint.name).toMatch(/-print\.png$/)
  expect(sizeOfPng(toPrint.bytes)).toEqual({ width: 2 * paper.width, height: 2 * paper.height })

  await page.keyboard.press('Escape')
  await expect(dialog).toBeHidden()
  await expect(page.getByRole('button', { name: send.open, exact: true })).toBeFocused()
})

interface ShareProbe {
  answers: string[]
  shared: ShareData[]
}

declare global {
  interface Window {
    shareProbe: ShareProbe
  }
}

/** A system share sheet that answers as told, one answer for each time it is opened; no WebGL. */
async function withShareSheet(page: Page, answers: readonly string[]): Promise<void> {
  await page.addInitScript((told) => {
    const plain = HTMLCanvasElement.prototype.getContext
    Object.defineProperty(HTMLCanvasElement.prototype, 'getContext', {
      value(this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
        return kind === '2d' ? Reflect.apply(plain, this, [kind, ...rest]) : null
      },
    })
    window.shareProbe = { answers: [...told], shared: [] }
    const share = async (data: ShareData) => {
      const answer = window.shareProbe.answers.shift() ?? ''
      if (answer !== 'taken') throw new DOMException('refused by the test', answer)
      window.shareProbe.shared.push(data)
    }
    Object.defineProperty(navigator, 'share', { value: share })
    Object.defineProperty(navigator, 'canShare', { value: () => true })
  }, answers)
}

test('text and flat map go to the share sheet without WebGL; closing the sheet is no failure, a refusal is told', async ({
  page,
}) => {
  await withShareSheet(page, ['AbortError', 'NotAllowedError', 'taken'])
  await openApp(page)
  const dialog = await openSend(page)
  await expect(dialog.getByText(send.flat)).toBeVisible()
  await expectAccessible(page, 'dialog')
  const share = way(dialog, 'share')
  await share.click()
  await expect(dialog.getByText(send.cancelled)).toBeVisible()
  await share.click()
  await expect(dialog.getByText(send.failed.share)).toBeVisible()
  await share.click()
  await expect(dialog.getByText(send.done.share)).toBeVisible()
  const shared = await page.evaluate(() =>
    Promise.all(
      window.shareProbe.shared.map(async ({ text, files = [] }) => {
        const pictures = files.map(async (file) => ({
          type: file.type,
          address: await new Promise<string>((resolve) => {
            const reader = new FileReader()
            reader.onload = () => resolve(String(reader.result))
            reader.readAsDataURL(file)
          }),
        }))
        return { text, pictures: await Promise.all(pictures) }
      }),
    ),
  )
  expect(shared).toHaveLength(1)
  expect(shared[0]?.text).toBe(printed)
  const [picture, ...more] = shared[0]?.pictures ?? []
  expect(more).toEqual([])
  expect(picture?.type).toBe('image/png')
  await expectPaper(page, Buffer.from(picture?.address.split(',')[1] ?? '', 'base64'))
})

test('where nothing can be drawn the text is sent alone, what the clipboard refuses is said, and the wall is saved as a model', async ({
  page,
}) => {
  await withoutPicture(page)
  await page.addInitScript(() => {
    const writeText = () => Promise.reject(new DOMException('refused by the test', 'NotAllowedError'))
    Object.defineProperty(navigator, 'clipboard', { value: { writeText } })
  })
  await openApp(page)
  const dialog = await openSend(page)
  await expect(dialog.getByText(send.noPicture.failed)).toBeVisible()
  await expect(way(dialog, 'save-picture')).toBeHidden()
  await way(dialog, 'copy-text').click()
  await expect(dialog.getByText(send.failed['copy-text'])).toBeVisible()
  const text = await saved(page, way(dialog, 'save-text'))
  expect(text.bytes.toString('utf8')).toBe(printed)
  for (const [kind, start] of [
    ['stl', 'Bore wall drawn x500, scale 1:1, mm.'],
    ['glb', 'glTF'],
  ] as const) {
    const button = dialog.getByRole('button', { name: words.model.ways[kind], exact: true })
    const { name, bytes } = await saved(page, button)
    expect(name).toMatch(/^bore-1-garden-saw-invented-drawn-x500-scale-1-1-\d{4}-\d\d-\d\d\.(stl|glb)$/)
    expect(bytes.subarray(0, start.length).toString('latin1')).toBe(start)
    await expect(dialog.getByText(`Saved as ${name}: 88 mm high`)).toBeVisible()
  }
  await page.keyboard.press('Escape')

  await page.getByRole('button', { name: words.file.menu, exact: true }).click()
  await page.getByRole('button', { name: words.file.new, exact: true }).click()
  const empty = await openSend(page)
  await expect(empty.getByText(send.noPicture['no-readings'])).toBeVisible()
  await expect(empty.getByRole('textbox', { name: send.text })).toHaveValue(/No readings yet\./)
})
