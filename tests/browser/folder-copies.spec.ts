import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'

const { folder, keeping } = words

/** A browser whose picker gives a folder of the page's own (there is no one to pick one), which can be taken away. */
test('a job is written into a picked folder anew after each save, also in a later session, and a folder that is gone is told of', async ({
  page,
}) => {
  await withoutPicture(page)
  await page.addInitScript(() => {
    window.showDirectoryPicker = async () =>
      (await navigator.storage.getDirectory()).getDirectoryHandle('copies', { create: true })
  })
  const inFolder = () =>
    page.evaluate(async () => {
      const root = await navigator.storage.getDirectory()
      const copies = await root.getDirectoryHandle('copies')
      const found: { name: string; text: string }[] = []
      for await (const [name, handle] of copies.entries()) {
        if (handle instanceof FileSystemFileHandle)
          found.push({ name, text: await (await handle.getFile()).text() })
      }
      return found
    })
  const openDetails = async () => {
    await page.getByRole('button', { name: /^Saved / }).click()
    const dialog = page.getByRole('dialog', { name: keeping.title })
    await expect(dialog).toBeVisible()
    return dialog
  }
  const correct = async (size: string) => {
    await page.locator('[data-cell]').first().focus()
    await page.keyboard.press('Delete')
    const field = page.getByRole('region', { name: words.next.label }).getByRole('textbox')
    await field.fill(size)
    await field.press('Enter')
  }

  await openApp(page)
  await correct('54.033')
  const dialog = await openDetails()
  await dialog.getByRole('button', { name: folder.pick }).click()
  await expect(dialog.getByText(/stands in the folder copies as garden-saw-invented-/)).toBeVisible()
  await expect(dialog.getByText(keeping.notCopied)).toBeHidden()
  await expectAccessible(page, 'dialog')
  await page.keyboard.press('Escape')
  const [first] = await inFolder()
  expect(first?.name).toMatch(/^garden-saw-invented-[a-z0-9-]+\.json$/)
  expect(first?.text).toContain('54.033')

  await page.reload()
  await expect(page.locator('[data-cell]').first()).toBeVisible()
  await correct('54.031')
  await expect.poll(async () => (await inFolder())[0]?.text).toContain('54.031')
  expect(await inFolder()).toHaveLength(1)

  await page.evaluate(async () => {
    await (await navigator.storage.getDirectory()).removeEntry('copies', { recursive: true })
  })
  await correct('54.032')
  const again = await openDetails()
  await expect(again.getByText(folder.failed.gone('copies'))).toBeVisible()
  await again.getByRole('button', { name: folder.leave }).click()
  await expect(again.getByText(folder.off)).toBeVisible()
})
