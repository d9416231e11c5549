import type { Locator, Page } from '@playwright/test'

/** Walks on with Tab until the element has the focus. */
export async function tabTo(page: Page, target: Locator): Promise<void> {
  // Looked for by its name once, not at each step, unless it is drawn anew meanwhile.
  let element = await target.elementHandle()
  for (let step = 0; step < 150; step++) {
    const state = await element?.evaluate((node) =>
      node === document.activeElement ? 'here' : node.isConnected ? 'elsewhere' : 'gone',
    )
    if (state === 'here') return
    if (state === 'elsewhere') await page.keyboard.press('Tab')
    else element = await target.elementHandle()
  }
  throw new Error('Tab does not lead to the element')
}

export async function fillByKeyboard(page: Page, label: string | RegExp, text: string): Promise<void> {
  await tabTo(page, page.getByRole('textbox', { name: label, exact: true }))
  await page.keyboard.press('ControlOrMeta+a')
  await page.keyboard.type(text)
  await page.keyboard.press('Enter')
}

export async function pressByKeyboard(page: Page, name: string): Promise<void> {
  await tabTo(page, page.getByRole('button', { name, exact: true }))
  await page.keyboard.press('Enter')
}

/** Types readings one after the other into the field for the next one. */
export async function typeReadings(
  page: Page,
  readings: readonly string[],
  field: RegExp = /^Size, mm: /,
): Promise<void> {
  await tabTo(page, page.getByRole('textbox', { name: field }))
  for (const reading of readings) {
    await page.keyboard.type(reading)
    await page.keyboard.press('Enter')
  }
}
