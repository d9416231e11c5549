import { execFileSync } from 'node:child_process'
import type { Page } from '@playwright/test'
import { type ExampleName, exampleAddress } from '../../src/app/examples'
import { decisionWords } from '../../src/words/decision-words'
import { whatIfWords } from '../../src/words/what-if-words'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'

interface Texts {
  readonly headline: string
  readonly reasons: readonly { readonly text: string }[]
  readonly changes: readonly string[]
  readonly hints: readonly string[]
  readonly cautions: readonly string[]
  readonly sure: readonly string[]
}

/** What `inspect` says of the first bore's decision, and of the engine's. */
function inspected(file: string): { readonly texts: Texts; readonly engine?: string } {
  const output = execFileSync('node', ['src/cli/inspect.mjs', `scenarios/${file}.json`, '--json'])
  const found: {
    bores: { decision: { texts: Texts } | null }[]
    decision: { text: string } | null
  } = JSON.parse(String(output))
  const texts = found.bores[0]?.decision?.texts
  if (!texts) throw new Error(`inspect makes no decision about ${file}`)
  return { texts, ...(found.decision ? { engine: found.decision.text } : {}) }
}

const examples: readonly (readonly [ExampleName, string])[] = [
  ['A', 'A-two-stroke-single'],
  ['B', 'B-four-cylinder-iron'],
  ['C', 'C-wet-liner-diesel'],
  ['D1', 'D1-compressor'],
  ['D2', 'D2-hydraulic-tube'],
]

const part = (page: Page) => page.getByRole('region', { name: decisionWords.title })

test('what to do is the same on the page and in inspect, and a reason leads to its figures', async ({
  page,
}) => {
  test.slow()
  await withoutPicture(page)
  for (const [name, file] of examples) {
    const { texts, engine } = inspected(file)
    await page.goto('about:blank')
    await openApp(page, name)
    const headline = engine === undefined ? texts.headline : decisionWords.byItself('1', texts.headline)
    await expect(part(page)).toContainText(headline)
    if (engine !== undefined) await expect(part(page)).toContainText(engine)
    for (const sentence of texts.sure) await expect(part(page)).toContainText(sentence)
    await part(page).getByText(decisionWords.why).click()
    const listed = [
      ...texts.reasons.map(({ text }) => text),
      ...texts.changes,
      ...texts.hints,
      ...texts.cautions,
    ]
    await expect(part(page).locator('.decision-list li')).toHaveText(listed)
  }
  await page.goto('about:blank')
  await openApp(page, 'A')
  await part(page).getByText(decisionWords.why).click()
  await expectAccessible(page, '.decision')
  await part(page)
    .getByRole('button', { name: /^Out-of-round, 14 µm/ })
    .press('Enter')
  await expect(page.locator('[data-row="ovality"] button')).toBeFocused()
})

test('what is tried out by keyboard moves the decision and never the job, and says where it tips over', async ({
  page,
}) => {
  await withoutPicture(page)
  await openApp(page, 'C')
  const said = whatIfWords
  await part(page).getByText(said.title, { exact: true }).click()
  await expect(part(page).locator('.what-if-outcome')).toHaveText(
    said.asItIs('Run on, and check again by 14375 h run.'),
  )
  const limit = part(page).getByRole('slider', { name: said.labels.plain.limit })
  const tips = part(page).locator('.what-if-tips')
  await expect(tips.filter({ hasText: said.looking })).toHaveCount(0, { timeout: 20_000 })
  await expect(limit).toHaveAccessibleDescription(
    said.tips('130.168 mm', said.off.less('32 µm'), decisionWords.short['measure-again-better']),
  )
  await limit.focus()
  for (let press = 0; press < 3; press++) await page.keyboard.press('PageDown')
  for (let press = 0; press < 12; press++) await page.keyboard.press('ArrowLeft')
  await expect(part(page).locator('.what-if-outcome')).toHaveText(/^Then: (Measure again, better|Replace)/)
  await expect(part(page).locator('.decision-outcome')).toHaveText('Run on, and check again by 14375 h run.')
  await expect(page.getByText(words.saving.notYet)).toBeVisible()
  await expectAccessible(page, '.what-if')
  await part(page).getByRole('button', { name: said.closer }).click()
  await expect(part(page)).toContainText(/From 20,?.?000 sets of true sizes/, { timeout: 20_000 })
  await part(page).getByRole('button', { name: said.reset }).click()
  await expect(part(page).locator('.what-if-outcome')).toHaveText(/^As it is: Run on/)
})

test('on a phone the decision follows the verdict, and its sliders are wide enough for a glove', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 })
  await withoutPicture(page)
  await page.goto(`./${exampleAddress('A')}`)
  await page
    .getByRole('navigation', { name: words.phone.parts })
    .getByRole('button', { name: words.parts.narrow.findings })
    .click()
  await expect(part(page)).toContainText('Measure again, better: 8 mm, 0°; 8 mm, 90°.')
  const verdict = await page.locator('.verdict').boundingBox()
  const decision = await part(page).boundingBox()
  const rows = await page.locator('.findings').first().boundingBox()
  expect(verdict?.y).toBeLessThan(decision?.y ?? 0)
  expect(decision?.y).toBeLessThan(rows?.y ?? 0)
  await part(page).getByText(whatIfWords.title, { exact: true }).click()
  await expect(part(page).getByRole('slider').first()).toBeVisible()
  await expectAccessible(page, '.decision')
})
