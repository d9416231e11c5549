import { readFile } from 'node:fs/promises'
import type { Page } from '@playwright/test'
import { words } from '../../src/words/words'

const { file } = words

export async function pickFromMenu(page: Page, item: string): Promise<void> {
  await page.getByRole('button', { name: file.menu, exact: true }).click()
  await page.getByRole('button', { name: item, exact: true }).click()
}

export async function chooseFile(page: Page, name: string, text: string): Promise<void> {
  const chooser = page.waitForEvent('filechooser')
  await pickFromMenu(page, file.open)
  await (await chooser).setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) })
}

/** Drops files on the page as the system's file manager does. */
export async function dropFiles(page: Page, files: readonly { name: string; text: string }[]): Promise<void> {
  await page.evaluate((dropped) => {
    const dataTransfer = new DataTransfer()
    for (const { name, text } of dropped) dataTransfer.items.add(new File([text], name))
    for (const type of ['dragover', 'drop']) {
      document.body.dispatchEvent(new DragEvent(type, { bubbles: true, cancelable: true, dataTransfer }))
    }
  }, files)
}

/** As in browsers that cannot write to a file of the user's choice. */
export async function withoutFilePicker(page: Page): Promise<void> {
  await page.addInitScript(() => Reflect.deleteProperty(window, 'showSaveFilePicker'))
}

export async function savedFile(page: Page): Promise<{ name: string; text: string }> {
  const download = page.waitForEvent('download')
  await pickFromMenu(page, file.save)
  const done = await download
  return { name: done.suggestedFilename(), text: await readFile(await done.path(), 'utf8') }
}
