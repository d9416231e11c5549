import type { Page } from '@playwright/test'
import type { ExampleName } from '../../../src/app/examples'
import { words } from '../../../src/words/words'

/** A picture of README: an example, made ready, and the parts of the page that are shown of it. */
export interface Picture {
  /** Its file among the scenarios. */
  readonly file: string
  readonly example: ExampleName
  readonly prepare?: (page: Page) => Promise<void>
  /** Selectors of parts, shown with all that lies between them; absent: the whole page. */
  readonly parts?: readonly string[]
}

export const pictures: readonly Picture[] = [
  { file: 'bench.png', example: 'A' },
  { file: 'block.png', example: 'B', prepare: showBlock },
  { file: 'slip.png', example: 'B-as-typed', prepare: chooseFourthBore, parts: ['.wall', '.proof'] },
  { file: 'warm.png', example: 'C', prepare: chooseThirdSurvey },
]

async function showBlock(page: Page): Promise<void> {
  await chooseBore(page, 2)
  await page.getByRole('button', { name: words.picture.allBores }).click()
}

async function chooseFourthBore(page: Page): Promise<void> {
  await chooseBore(page, 3)
}

async function chooseBore(page: Page, index: number): Promise<void> {
  await page.getByRole('tablist', { name: words.bar.bores }).getByRole('tab').nth(index).click()
}

async function chooseThirdSurvey(page: Page): Promise<void> {
  await page.getByRole('combobox', { name: words.setUp.surveyLabels.which }).selectOption({ index: 2 })
}
