import type { Page } from '@playwright/test'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutWebgl } from './bench-fixture'
import { chooseFile, savedFile, withoutFilePicker } from './job-files'
import { tabTo } from './keyboard'

const { surface, photographs, undo, saving, parts } = words

const map = (page: Page) => page.locator('.unrolled-map:visible svg').first()
const rows = (page: Page) => page.locator('.surface-findings li')
const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true })
const choice = (page: Page, name: string) => page.getByRole('combobox', { name, exact: true })

/** A place of the map, as shares of the wall across and down, in pixels of the page. */
async function onWall(page: Page, across: number, down: number): Promise<{ x: number; y: number }> {
  const wall = await map(page).locator('.map-frame').boundingBox()
  if (!wall) throw new Error('no map')
  return { x: wall.x + across * wall.width, y: wall.y + down * wall.height }
}

/** A wide photograph as a camera writes it, with a mark in its APP1 segment where a place would stand. */
async function photograph(page: Page, secret: string, colour = '#a05030'): Promise<Buffer> {
  const base64 = await page.evaluate((colour) => {
    const canvas = document.createElement('canvas')
    canvas.width = 2000
    canvas.height = 1000
    const pen = canvas.getContext('2d')
    if (!pen) throw new Error('nothing to draw with')
    pen.fillStyle = colour
    pen.fillRect(0, 0, 2000, 500)
    return canvas.toDataURL('image/jpeg').split(',')[1] ?? ''
  }, colour)
  const jpeg = Buffer.from(base64, 'base64')
  const content = Buffer.from(`Exif\0\0${secret}`, 'latin1')
  const head = Buffer.from([0xff, 0xe1, 0, content.length + 2])
  return Buffer.concat([jpeg.subarray(0, 2), head, content, jpeg.subarray(2)])
}

test('a mark dragged across 180° is told more of, photographed, kept over a reload and in a file, and undone', async ({
  page,
  browser,
  baseURL,
}) => {
  test.setTimeout(90_000)
  await withoutWebgl(page)
  await withoutFilePicker(page)
  await openApp(page)
  await expect(page.locator('.wall.is-flat')).toBeVisible()
  await expect(rows(page)).toHaveCount(0)

  const from = await onWall(page, 0.97, 0.3)
  const to = { x: (await onWall(page, 1, 0)).x + 8, y: (await onWall(page, 0, 0.6)).y }
  const drag = async () => {
    await page.mouse.move(from.x, from.y)
    await page.mouse.down()
    await page.mouse.move(to.x, to.y, { steps: 3 })
    await expect(page.locator('.map-drawn-text')).toHaveText(/^\d[\d.]* to \d[\d.]* mm, 1\d\d° to 1\d\d°$/)
  }
  await drag()
  await page.keyboard.press('Escape')
  await expect(page.locator('.map-drawn-text')).toHaveCount(0)
  await page.mouse.up()
  await expect(rows(page)).toHaveCount(0)

  await drag()
  const drawn = (await page.locator('.map-drawn-text').textContent()) ?? ''
  await page.mouse.up()
  await expect(rows(page)).toHaveCount(1)
  await expect(rows(page)).toContainText(`1 scratch ${drawn}`)
  // Cut by the edge of the map, the outline is open there and goes on at the other edge.
  await expect(page.locator('.map-surface .map-surface-ink')).toHaveAttribute('d', /^M[^Z]*M[^Z]*$/)

  const kind = choice(page, `1 scratch: ${surface.labels.kind}`)
  await expect(kind).toBeFocused()
  await kind.selectOption('bare-aluminium')
  await expect(page.locator('.surface-caution')).toContainText(surface.lead)
  await expect(page.locator('.surface-caution')).toContainText('Bare aluminium at')
  await expect(page.locator('.verdict')).not.toContainText('aluminium')
  await choice(page, `1 bare aluminium: ${surface.labels.nail}`).selectOption('yes')
  await expect(rows(page)).toContainText(surface.nail.yes)
  const across = field(page, `1 bare aluminium: ${surface.labels.acrossMm}`)
  await across.fill('2,5')
  await across.press('Enter')
  await expect(rows(page)).toContainText('2.5 mm wide as measured')

  const secret = 'where it was taken'
  const camera = await photograph(page, secret)
  const chooser = page.locator('.photographs input[type=file]').first()
  await chooser.setInputFiles({ name: 'wall.jpg', mimeType: 'image/jpeg', buffer: camera })
  const thumbnail = page.getByRole('button', { name: photographs.shown('wall.jpg') })
  const isShown = () =>
    thumbnail.locator('img').evaluate((image: HTMLImageElement) => image.naturalWidth / image.naturalHeight)
  await expect(thumbnail.locator('img')).toBeVisible()
  expect(await isShown()).toBe(2)
  await chooser.setInputFiles({
    name: 'notes.txt',
    mimeType: 'text/plain',
    buffer: Buffer.from('no picture'),
  })
  await expect(page.getByRole('alert')).toHaveText(photographs.unreadable('notes.txt'))
  await expectAccessible(page)
  // The same picture again is not another one; another one is dropped where it belongs, and opens no file.
  await chooser.setInputFiles({ name: 'again.jpg', mimeType: 'image/jpeg', buffer: camera })
  const second = (await photograph(page, '', '#305080')).toString('base64')
  await page.locator('.photographs').evaluate((element, base64) => {
    const dataTransfer = new DataTransfer()
    const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))
    dataTransfer.items.add(new File([bytes], 'dropped.jpg', { type: 'image/jpeg' }))
    for (const type of ['dragover', 'drop']) {
      element.dispatchEvent(new DragEvent(type, { bubbles: true, cancelable: true, dataTransfer }))
    }
  }, second)
  const dropped = page.getByRole('button', { name: photographs.shown('dropped.jpg') })
  await expect(dropped).toBeVisible()
  await expect(page.locator('.thumbnail')).toHaveCount(2)
  await expect(page.locator('.drop-here')).toHaveCount(0)
  await expect(page.getByRole('dialog')).toHaveCount(0)
  await page.getByRole('button', { name: photographs.remove('dropped.jpg') }).click()
  await expect(page.locator('.thumbnail')).toHaveCount(1)

  // A full disk keeps no photograph and says so, in the words of saving.
  await page.evaluate(() => {
    const own = IDBObjectStore.prototype.put
    IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...record: Parameters<typeof own>) {
      if (this.name === 'photos') throw new DOMException('full', 'QuotaExceededError')
      return Reflect.apply(own, this, record)
    }
  })
  await chooser.setInputFiles({ name: 'other.jpg', mimeType: 'image/jpeg', buffer: camera })
  await expect(page.getByRole('alert')).toHaveText(photographs.notKept('other.jpg', saving.errors.quota))
  await expect(page.locator('.thumbnail')).toHaveCount(1)

  await thumbnail.click()
  const dialog = page.getByRole('dialog')
  await expect(dialog.locator('img')).toBeVisible()
  await expectAccessible(page, 'dialog')
  await page.keyboard.press('Escape')

  const { text } = await savedFile(page)
  const file = JSON.parse(text)
  const photo = file.bores[0].surveys.at(-1).surfaceFindings[0].photos[0]
  expect(photo).toMatchObject({ name: 'wall.jpg', widthPx: 1600, heightPx: 800 })
  expect(file.photographs).toMatchObject([{ hash: photo.hash, type: 'image/jpeg' }])
  const kept = Buffer.from(file.photographs[0].base64, 'base64')
  expect(camera.includes(secret)).toBe(true)
  expect(kept.includes(secret)).toBe(false)

  await expect(page.getByText(/^Saved \d/).first()).toBeVisible()
  await page.goto('./')
  await page.reload()
  await page.locator('.surface-name').click()
  await expect(thumbnail.locator('img')).toBeVisible()
  await page.getByRole('button', { name: surface.remove('1 bare aluminium') }).click()
  await expect(rows(page)).toHaveCount(0)
  await expect(page.locator('.map-surface')).toHaveCount(0)
  await page.getByRole('button', { name: new RegExp(`^${undo.undo}`) }).click()
  await expect(rows(page)).toHaveCount(1)

  // Another browser has the photograph from the file; from a file without it, it says what is missing.
  const elsewhere = await browser.newPage({ ...(baseURL === undefined ? {} : { baseURL }) })
  await withoutWebgl(elsewhere)
  await openApp(elsewhere)
  const { photographs: _, ...bare } = file
  await chooseFile(elsewhere, 'bare.json', JSON.stringify({ ...bare, id: 'bare' }))
  await elsewhere.locator('.surface-name').click()
  await expect(elsewhere.locator('.photographs')).toContainText(`wall.jpg: ${photographs.notHere}`)
  await chooseFile(elsewhere, 'whole.json', text)
  await elsewhere.locator('.surface-name').click()
  await expect(elsewhere.getByRole('button', { name: photographs.shown('wall.jpg') })).toBeVisible()
  await elsewhere.close()
})

test('a surface finding is typed, corrected and lit by keyboard alone, and a place past the end of the bore is refused', async ({
  page,
}) => {
  await withoutWebgl(page)
  await openApp(page)
  await tabTo(page, page.getByRole('button', { name: surface.add, exact: true }))
  await page.keyboard.press('Enter')
  const kind = choice(page, surface.labels.kind)
  await expect(kind).toBeFocused()
  await page.keyboard.type('rust')
  const typed = async (label: string, text: string) => {
    await tabTo(page, field(page, label))
    await page.keyboard.press('ControlOrMeta+a')
    await page.keyboard.type(text)
  }
  await typed(surface.labels.fromDepthMm, '20,5')
  await typed(surface.labels.toDepthMm, '900')
  await tabTo(page, page.getByRole('button', { name: surface.record, exact: true }))
  await page.keyboard.press('Enter')
  await expect(page.getByRole('alert')).toHaveText(
    surface.missing([surface.labels.fromDegrees, surface.labels.toDegrees]),
  )
  await page.keyboard.press('Shift+Tab')
  await page.keyboard.press('Shift+Tab')
  await page.keyboard.type('350')
  await page.keyboard.press('Tab')
  await page.keyboard.type('10')
  await tabTo(page, page.getByRole('button', { name: surface.record, exact: true }))
  await page.keyboard.press('Enter')
  await expect(page.getByRole('alert')).toHaveText(/^900 mm is deeper than the bore is long/)
  await expect(rows(page)).toHaveCount(0)
  await page.keyboard.press('Shift+Tab')
  await page.keyboard.press('Shift+Tab')
  await page.keyboard.press('Shift+Tab')
  await page.keyboard.press('ControlOrMeta+a')
  await page.keyboard.type('40')
  await tabTo(page, page.getByRole('button', { name: surface.record, exact: true }))
  await page.keyboard.press('Enter')
  await expect(rows(page)).toContainText('1 rust 20.5 to 40 mm, 350° to 10°')

  // The row lights its place on the map, and its place on the map lights the row.
  const name = page.locator('.surface-name')
  await name.focus()
  await expect(page.locator('.map-surface')).toHaveClass(/is-lit/)
  await expect(page.locator('.read-out')).toContainText('here: 1 rust')
  const { x, y } = await onWall(page, 0.5, 0.9)
  await page.mouse.move(x, y)
  await expect(rows(page)).not.toHaveClass(/is-lit/)
  const inside = await onWall(page, 0.51, 30 / 90)
  await page.mouse.move(inside.x, inside.y)
  await expect(rows(page)).toHaveClass(/is-lit/)
})

test.describe('on a phone', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true })

  test('a finger scrolls over the map until Mark is pressed; then it draws, and the finding opens among the findings', async ({
    page,
  }) => {
    await withoutWebgl(page)
    await openApp(page)
    await page.getByRole('button', { name: parts.narrow.wall, exact: true }).tap()
    const hand = await page.context().newCDPSession(page)
    const drag = async () => {
      const from = await onWall(page, 0.4, 0.3)
      const to = await onWall(page, 0.45, 0.7)
      const at = (share: number) => [
        { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share, id: 0 },
      ]
      await hand.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(0) })
      for (const share of [0.2, 0.5, 0.8, 1]) {
        await hand.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(share) })
      }
      await hand.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] })
    }
    await drag()
    await expect(page.locator('.map-surface')).toHaveCount(0)
    const mark = page.locator('.narrow-part:visible .mark-button')
    await mark.tap()
    await expect(page.locator('.read-out:visible')).toHaveText(surface.marking)
    await drag()
    await expect(rows(page)).toContainText('1 scratch')
    await expect(rows(page)).toBeVisible()
    const box = await choice(page, `1 scratch: ${surface.labels.kind}`).boundingBox()
    expect(box?.height).toBeGreaterThanOrEqual(44)
    await expect(page.getByRole('button', { name: photographs.camera })).toBeVisible()
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390)
    await expectAccessible(page)
    await expect(page.getByText(saving.failed)).toHaveCount(0)
  })
})

test('a surface finding is drawn on the wall in the picture, named there, and gone with it', async ({
  page,
}) => {
  test.setTimeout(90_000)
  await openApp(page, 'D2')
  const canvas = page.locator('.picture-box canvas')
  await expect(canvas).toBeVisible({ timeout: 60_000 })
  await page.getByRole('button', { name: words.picture.views.rear, exact: true }).click()
  const label = page.locator('.picture-label-surface')
  await expect(label).toHaveText('1 scratch')
  await expect(label).toBeVisible()
  await expect(page.locator('.picture-legend')).toContainText(words.legend.surface)
  const at = await label.boundingBox()
  if (!at) throw new Error('no label')
  const clip = { x: at.x - 40, y: at.y - 10, width: 160, height: 40 }
  const before = await page.screenshot({ clip })
  await page.getByRole('button', { name: surface.remove('1 scratch') }).click()
  await expect(label).toHaveCount(0)
  await expect(page.locator('.picture-legend')).not.toContainText(words.legend.surface)
  await expect.poll(async () => (await page.screenshot({ clip })).equals(before)).toBe(false)
})
