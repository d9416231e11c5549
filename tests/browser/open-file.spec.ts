import { readFile } from 'node:fs/promises'
import type { Page } from '@playwright/test'
import type { Job } from '../../src/job/schema'
import { words } from '../../src/words/words'
import { expect, openApp, test, withoutPicture } from './bench-fixture'
import { chooseFile, dropFiles, pickFromMenu } from './job-files'

const { bar, bore, file, kept, limits, saving, setUp, undo } = words

function field(page: Page, label: string) {
  return page.getByRole('textbox', { name: label, exact: true })
}

/** The example of a used cylinder as somebody may have changed it by hand. */
async function changedByHand(): Promise<string> {
  const job: Job = JSON.parse(await readFile('scenarios/A-two-stroke-single.json', 'utf8'))
  const [used, ...others] = job.bores
  const [survey] = used?.surveys ?? []
  const [first, ...readings] = survey?.readings ?? []
  const [set] = job.setUps
  if (!used || !survey || !first || !set) throw new Error('The example is not as it was')
  const { zeroCloseUm: _, ...withoutClosing } = set
  return JSON.stringify({
    ...job,
    id: 'by-hand',
    name: 'Saw, changed by hand',
    spec: { ...job.spec, wearLimitMm: 54.01 },
    setUps: [{ ...withoutClosing, boreTemperatureC: 20, referenceTemperatureC: 20 }],
    bores: [
      {
        ...used,
        ports: used.ports.filter(({ name }) => name !== 'boost'),
        surveys: [{ ...survey, readings: [{ ...first, sizesMm: [54.041, 54.043] }, ...readings] }],
      },
      ...others,
    ],
  })
}

test('a file changed by hand is opened by the file chooser or by dropping it, with every change in it, and the job before it stays kept', async ({
  page,
}) => {
  await withoutPicture(page)
  await openApp(page)
  await field(page, bar.jobName).fill('The job before')
  await field(page, bar.jobName).press('Enter')
  const text = await changedByHand()
  await chooseFile(page, 'by-hand.json', text)
  await expect(field(page, bar.jobName)).toHaveValue('Saw, changed by hand')
  await expect(page.getByText(file.opened('by-hand.json'))).toBeVisible()
  await expect(field(page, limits.labels.wearLimit)).toHaveValue('54.010')
  await expect(field(page, setUp.labels.zeroClose)).toHaveValue('')
  await expect(field(page, setUp.labels.boreTemperature)).toHaveValue('20')
  await expect(page.locator('.openings summary')).toContainText(`${bore.ports.title} (5)`)
  // At 20 °C nothing is corrected: the mean of what was written.
  await expect(page.getByRole('button', { name: /^8 mm, 0°: 54\.042, / })).toHaveText(/54\.042.*spread 2 µm/)
  await expect(page.locator('.verdict')).toHaveText(/^Over the wear limit/)
  await expect(page.getByRole('button', { name: undo.nothing, exact: true })).toBeDisabled()

  // As an editor of texts may save it: with a mark of its encoding and other line ends.
  const again = `\uFEFF${JSON.stringify({ ...JSON.parse(text), name: 'Once more' }, undefined, 2).replaceAll('\n', '\r\n')}`
  await dropFiles(page, [{ name: 'again.json', text: again }])
  await page.getByRole('dialog').getByRole('button', { name: file.openAsCopy }).click()
  await expect(field(page, bar.jobName)).toHaveValue('Once more')
  await expect(page.locator('.verdict')).toHaveText(/^Over the wear limit/)
  await expect(page.getByText(/^Saved \d\d:\d\d$/)).toBeVisible()
  await pickFromMenu(page, file.kept)
  for (const name of ['Once more', 'Saw, changed by hand', 'The job before']) {
    await expect(page.getByRole('button', { name: kept.open(name) })).toBeVisible()
  }
  await expect(page.getByText(saving.failed, { exact: true })).toBeHidden()
})
