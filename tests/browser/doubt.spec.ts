import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test } from './bench-fixture'

const { doubt } = words

declare global {
  interface Window {
    /** How many times the far wall, the glass and the rest were drawn by WebGL. */
    drawnParts: number
  }
}

test('other walls are drawn on request with what they are beside them, by a button where less motion is asked for, else by themselves, and nothing is drawn once Escape ended them', async ({
  page,
}) => {
  await page.addInitScript(() => {
    window.drawnParts = 0
    const draw = WebGL2RenderingContext.prototype.drawElements
    WebGL2RenderingContext.prototype.drawElements = function (this: WebGL2RenderingContext, ...values) {
      window.drawnParts += 1
      draw.apply(this, values)
    }
  })
  const drawn = () => page.evaluate(() => window.drawnParts)
  await openApp(page)
  await expect(page.locator('.picture-box canvas')).toBeVisible()
  const button = page.getByRole('button', { name: doubt.show, exact: true })
  await button.click()
  const note = page.getByRole('region', { name: doubt.title })
  await expect(note).toContainText(doubt.eyeOnly)
  await expect(note).toContainText(
    'ρ(depth apart / 20 mm) · ρ(turn apart / 30°), ρ(r) = (1 + √3·r)·e^(−√3·r)',
  )
  await expectAccessible(page, '.wall')
  await page.waitForTimeout(1000)
  const still = await drawn()
  await page.waitForTimeout(1600)
  expect(await drawn(), 'drawn while nobody steps on').toBe(still)
  await note.getByRole('button', { name: doubt.next }).click()
  await expect.poll(drawn).toBeGreaterThan(still)

  await page.emulateMedia({ reducedMotion: 'no-preference' })
  await expect(note.getByRole('button', { name: doubt.next })).toBeHidden()
  const moving = await drawn()
  await expect.poll(drawn, { timeout: 8000 }).toBeGreaterThan(moving)
  const later = await drawn()
  await expect.poll(drawn, { timeout: 8000 }).toBeGreaterThan(later)

  await page.keyboard.press('Escape')
  await expect(note).toBeHidden()
  await expect(button).toHaveAttribute('aria-pressed', 'false')
  await page.waitForTimeout(1000)
  const ended = await drawn()
  await page.waitForTimeout(1600)
  expect(await drawn(), 'drawn after Escape').toBe(ended)
})
