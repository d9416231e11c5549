import { readFileSync } from 'node:fs'
import type { Locator, Page } from '@playwright/test'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'

const { charts } = words

const tab = (page: Page, name: 'map' | 'section' | 'profile' | 'hours') =>
  page.getByRole('tablist', { name: charts.views.label }).getByRole('tab', { name: charts.views[name] })

async function middleOf(mark: Locator): Promise<{ x: number; y: number }> {
  const box = await mark.boundingBox()
  if (!box) throw new Error('no such mark')
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 }
}

async function pointTo(page: Page, mark: Locator): Promise<void> {
  const { x, y } = await middleOf(mark)
  await page.mouse.move(x, y)
}

test('map, section and profile are chosen and gone through by keyboard, and each place pointed at is lit in all', async ({
  page,
}) => {
  await withoutPicture(page)
  await openApp(page)
  const readOut = page.locator('.read-out p')
  const lit = page.locator('.station.is-pointed')

  await tab(page, 'map').focus()
  await page.keyboard.press('ArrowDown')
  await expect(tab(page, 'section')).toBeFocused()
  await expect(page.getByRole('img', { name: /^Round section at 8 mm\. Mean 54\.022/ })).toBeVisible()
  await expect(page.locator('.chart-side')).toContainText(words.section.twoContacts)
  await page.keyboard.press('Tab')
  await page.keyboard.press('Tab')
  const list = page.getByRole('listbox', { name: words.section.list('8 mm') })
  await expect(list).toBeFocused()
  await expect(list.getByRole('option')).toHaveCount(8)
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('ArrowRight')
  await expect(readOut).toHaveText('16 mm · 225° · 54.017 ± 0.007 · a reading')
  await expect(page.locator('.chart-list').getByRole('option', { selected: true })).toHaveText(
    '16 mm, 225°: 54.017 ± 0.007',
  )
  await expect(lit).toHaveCount(1)
  await expectAccessible(page, '.flat-wall')

  // Discs stand in the order of the stations, both contacts of each.
  await pointTo(page, page.locator('.wall-chart .map-station').nth(4))
  await expect(readOut).toHaveText('16 mm · 90° · 54.012 ± 0.007 · a reading')
  await tab(page, 'profile').click()
  await expect(page.getByRole('img', { name: /^Profile along 90°\. Largest 54\.016/ })).toBeVisible()
  await expect(page.locator('.wall-chart .map-port')).toHaveCount(2)
  await pointTo(page, page.locator('.wall-chart .map-station').nth(3))
  await expect(readOut).toHaveText('35 mm · 90° · 54.014 ± 0.007 · a reading')
  await expect(lit).toHaveCount(1)
  const drawn = await middleOf(page.locator('.wall-chart .map-station').nth(3))
  await page.mouse.move(drawn.x, drawn.y - 18)
  await expect(readOut).toContainText('nearest reading')
  await page.getByRole('button', { name: words.profile.after }).click()
  await expect(page.getByRole('img', { name: /^Profile along 135°/ })).toBeVisible()
  await expectAccessible(page, '.flat-wall')

  await tab(page, 'map').click()
  await page.locator('.station').first().focus()
  await expect(page.locator('.unrolled-map .map-pointer circle')).toHaveCount(1)
  await tab(page, 'section').click()
  await expect(page.getByRole('img', { name: /^Round section at 8 mm/ })).toBeVisible()
})

test('each view is saved as a drawing by itself, in the colours of paper, with what it is and without anything that runs', async ({
  page,
}) => {
  await page.emulateMedia({ colorScheme: 'dark' })
  await withoutPicture(page)
  await openApp(page)
  for (const name of ['map', 'section', 'profile', 'hours'] as const) {
    await tab(page, name).click()
    if (name !== 'map') await expect(page.locator('.wall-chart')).toBeVisible()
    const download = page.waitForEvent('download')
    await page.getByRole('button', { name: charts.save }).click()
    const file = await download
    expect(file.suggestedFilename()).toMatch(new RegExp(`^garden-saw-invented-bore-1-${name}-[\\d-]+\\.svg$`))
    const text = readFileSync(await file.path(), 'utf8')
    const found = await page.evaluate((svg) => {
      const { documentElement: root } = new DOMParser().parseFromString(svg, 'image/svg+xml')
      return {
        tag: root.tagName,
        said: root.textContent,
        tags: [...new Set([...root.querySelectorAll('*')].map((one) => one.tagName))],
        ground: root.querySelector('rect')?.getAttribute('fill'),
        ink: root.querySelector('text[font-weight="600"]')?.getAttribute('fill'),
      }
    }, text)
    expect(found.tag).toBe('svg')
    expect(found.ground).toBe('#ffffff')
    expect(found.ink).toBe('#20231f')
    // The ink of paper, and none of that of the dark page.
    expect(text).toContain('rgb(32, 35, 31)')
    expect(text).not.toContain('rgb(233, 230, 222)')
    expect(found.said).toContain('Garden saw (invented)')
    expect(found.said).toContain('Hours run: 185.')
    expect(found.said).toContain(charts.between)
    expect(found.tags).not.toContain('script')
    expect(text).not.toMatch(/var\(--|href|aria-|light-dark/)
    if (name === 'hours') expect(found.said).toContain('Size over hours run at 8 mm, 0°. Hours run across')
    if (name === 'section') expect(found.said).toContain('Round section at 8 mm. Form drawn × 500.')
  }
})

test('the course over hours is read out survey by survey, for the station that is chosen, with when the limit is met', async ({
  page,
}) => {
  await withoutPicture(page)
  await openApp(page, 'C')
  await page.getByRole('button', { name: words.growth.outlook, exact: true }).click()
  await expect(tab(page, 'hours')).toHaveAttribute('aria-selected', 'true')
  await expect(
    page.getByRole('img', { name: /^Size over hours run at 18 mm, 0°\. Meets 130\.200/ }),
  ).toBeVisible()
  await expect(page.locator('.hours-line')).toHaveCount(2)
  await expectAccessible(page, '.flat-wall')
  const list = page.getByRole('listbox', { name: words.hours.list('18 mm, 0°') })
  await list.focus()
  await page.keyboard.press('ArrowRight')
  await expect(page.locator('.hours-pointed')).toHaveText(/^Survey 1 on 6 May 2019, 0 h: 130\.01\d ± 0\.008$/)
  await page.keyboard.press('End')
  await expect(page.locator('.hours-pointed')).toHaveText(/the latest that it meets its limit$/)
  await expect(list.getByRole('option', { selected: true })).toHaveText(/the latest/)
  await page
    .getByRole('combobox', { name: words.hours.station, exact: true })
    .selectOption({ label: '70 mm, 0°' })
  await expect(page.getByRole('img', { name: /^Size over hours run at 70 mm, 0°\./ })).toBeVisible()
  await page.emulateMedia({ media: 'print' })
  await expect(page.locator('.unrolled-map')).toBeVisible()
  await expect(page.locator('.hours-chart')).toBeVisible()
})

test.describe('on a phone in the dark', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, colorScheme: 'dark' })

  const tapped = {
    section: { reading: 4, said: '8 mm · 90° · 54.016 ± 0.007 · a reading' },
    profile: { reading: 2, said: '25 mm · 90° · 54.013 ± 0.007 · a reading' },
    hours: { reading: 1, said: 'Survey 1, 185 h: 54.030 ± 0.007' },
  }

  test('the views are chosen by tabs for gloves, and a tap on a reading points at it', async ({ page }) => {
    await withoutPicture(page)
    await openApp(page)
    await page.getByRole('navigation').getByRole('button', { name: words.parts.narrow.wall }).tap()
    // What is said in the picture's place moves the views down.
    await expect(page.getByText(words.picture.trouble['no-webgl'])).toBeVisible()
    for (const name of ['section', 'profile', 'hours'] as const) {
      await tab(page, name).tap()
      const chart = page.locator('.wall-chart')
      await expect(chart).toBeVisible()
      await chart.locator('.map-station').nth(tapped[name].reading).tap()
      await expect(page.locator(name === 'hours' ? '.hours-pointed' : '.read-out p')).toHaveText(
        tapped[name].said,
      )
      const small = await page
        .locator('.flat-wall button')
        .evaluateAll(
          (all) =>
            all
              .map((one) => one.getBoundingClientRect())
              .filter(({ width, height }) => width < 44 || height < 44).length,
        )
      expect(small).toBe(0)
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390)
      await expectAccessible(page, '.flat-wall')
    }
  })
})
