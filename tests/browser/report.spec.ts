import { readFileSync } from 'node:fs'
import type { Page } from '@playwright/test'
import type { ExampleName } from '../../src/app/examples'
import { readJob } from '../../src/job/read-job'
import type { Job } from '../../src/job/schema'
import { findingsOf } from '../../src/job/selectors'
import { writeJob } from '../../src/job/write-job'
import { decisionTexts } from '../../src/words/decision'
import { decidedOf } from '../../src/words/decision-passages'
import { findingRows } from '../../src/words/findings'
import { growthRows } from '../../src/words/growth-rows'
import { sizeWithDoubt } from '../../src/words/numbers'
import { paperWords } from '../../src/words/paper-words'
import { pistonRows } from '../../src/words/piston-rows'
import { verdictSentence } from '../../src/words/verdict'
import { words } from '../../src/words/words'
import { expect, expectAccessible, openApp, test, withoutPicture } from './bench-fixture'
import { hostileJob, hostileText } from './hostile-job'
import { chooseFile } from './job-files'

const said = paperWords.page

const files: Readonly<Record<Exclude<ExampleName, 'B-as-typed'>, string>> = {
  A: 'A-two-stroke-single.json',
  B: 'B-four-cylinder-iron.json',
  C: 'C-wet-liner-diesel.json',
  D1: 'D1-compressor.json',
  D2: 'D2-hydraulic-tube.json',
  E: 'E-scuff-scan-360.json',
  'E-72': 'E-scuff-scan-72.json',
}

function scenario(name: keyof typeof files): Job {
  const read = readJob(readFileSync(new URL(`../../scenarios/${files[name]}`, import.meta.url)))
  if (!read.ok) throw new Error(`${name} is no job`)
  return read.job
}

async function openReport(page: Page, example: ExampleName): Promise<void> {
  await page.goto('about:blank')
  await page.goto(`./#example=${example}&page=report`)
  await expect(page.locator('.report-said')).toContainText(/sheet/, { timeout: 60_000 })
}

/** What the sheets say, with plain spaces. */
async function textOf(page: Page): Promise<string> {
  const text = (await page.locator('.report-sheets').textContent()) ?? ''
  return text.replaceAll('\u00a0', ' ')
}

/** The pages of the PDF that the browser makes of the page, and the size of the first, points. */
async function printed(page: Page) {
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1')
  const box = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf)
  return {
    pages: pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length,
    size: box?.slice(1).map((side) => Math.round(Number(side))),
  }
}

const paperSizes = { a4: [595, 842], letter: [612, 792] } as const

async function expectPages(page: Page, pages: number): Promise<void> {
  for (const paper of ['a4', 'letter'] as const) {
    await page.getByRole('radio', { name: said.sizes[paper] }).check()
    await expect(page.locator('.report-sheet')).toHaveCount(pages)
    expect(await printed(page), paper).toEqual({ pages, size: paperSizes[paper] })
  }
}

/** Each diameter, each row, the verdict and the decision of a bore, as the findings have them. */
function figuresOf(job: Job, boreId: string): string[] {
  const findings = findingsOf(job)
  const finding = findings.bores.find((one) => one.boreId === boreId)
  if (!finding) throw new Error(`no finding of ${boreId}`)
  const decided = decidedOf(job, findings, finding)
  const texts = decided && decisionTexts(decided)
  const told = /^(widest-mean$|grades$|difference:|mean-difference:)/
  const rows = [
    ...findingRows(finding, findings),
    ...growthRows(job, findings, finding),
    ...pistonRows(job, findings).ofBore(finding),
  ].filter(({ id, rank }) => rank === 'main' && !told.test(id))
  return [
    verdictSentence(finding),
    ...(texts ? [texts.headline, ...texts.reasons.map(({ text }) => text)] : []),
    ...finding.stations.map(({ diameterMm, expandedMm }) => sizeWithDoubt(diameterMm, expandedMm)),
    ...rows.map(({ figure }) => figure),
  ]
}

test('the report of a bore says what the findings say, on one sheet of A4 or of Letter', async ({ page }) => {
  test.slow()
  await withoutPicture(page)
  for (const name of ['A', 'C', 'D1', 'D2', 'E', 'E-72'] as const) {
    const job = scenario(name)
    const [bore] = job.bores.filter(({ role }) => role === 'of-this-engine')
    await openReport(page, name)
    const text = await textOf(page)
    for (const figure of figuresOf(job, bore?.id ?? '')) expect(text, name).toContain(figure)
    expect(text, name).not.toMatch(/NaN|Infinity|undefined/)
    await expectPages(page, 1)
    if (name !== 'A') continue
    await expect(page.locator('.report-said')).toContainText(said.flatOnly)
    await expectAccessible(page)
  }
})

test('the report of an engine has two sheets, each of its bores has one, and a printed one has a name', async ({
  page,
}) => {
  test.slow()
  await withoutPicture(page)
  await openReport(page, 'B')
  const job = scenario('B')
  const text = await textOf(page)
  for (const finding of findingsOf(job).bores) {
    expect(text).toContain(verdictSentence(finding))
    for (const { diameterMm, expandedMm } of finding.stations) {
      expect(text).toContain(sizeWithDoubt(diameterMm, expandedMm))
    }
  }
  await expectPages(page, 2)
  await expectAccessible(page)
  const third = job.bores[2]
  await page.getByLabel(said.of).selectOption(third?.id ?? '')
  const ofThird = await textOf(page)
  for (const figure of figuresOf(job, third?.id ?? '')) expect(ofThird).toContain(figure)
  await expectPages(page, 1)

  const before = await page.title()
  await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')))
  expect(await page.title()).toBe('2025-03-08 Four-cylinder block (invented) bore 3')
  await page.evaluate(() => window.dispatchEvent(new Event('afterprint')))
  expect(await page.title()).toBe(before)
  await page.emulateMedia({ media: 'print' })
  await expect(page.locator('.bar')).toBeHidden()
  await expect(page.getByRole('button', { name: said.print })).toBeHidden()
})

/** The used bore of the first example with an eighth level and two marks on its wall. */
function fullJob(): Job {
  const job = scenario('A')
  return {
    ...job,
    customer: 'J. Example',
    bores: job.bores.map((bore, index) => ({
      ...bore,
      surveys: bore.surveys.map((survey) => ({
        ...survey,
        levelsMm: [...survey.levelsMm, 73],
        readings: [
          ...survey.readings,
          ...survey.readings.filter(({ depthMm }) => depthMm === 80).map((one) => ({ ...one, depthMm: 73 })),
        ],
        ...(index === 0 ? { surfaceFindings: [mark('1', 10, 350), mark('2', 60, 80)] } : {}),
      })),
    })),
  }
}

function mark(id: string, fromDepthMm: number, fromDegrees: number) {
  const place = { fromDepthMm, toDepthMm: fromDepthMm + 15, fromDegrees, toDegrees: fromDegrees + 5 }
  return {
    id,
    kind: 'scratch',
    shape: 'streak',
    catchesNail: true,
    note: 'dull, along the stroke',
    ...place,
  } as const
}

test('eight levels on four axes, pistons and two marks on the wall have room on one sheet', async ({
  page,
}) => {
  await withoutPicture(page)
  await openApp(page)
  const job = fullJob()
  await chooseFile(page, 'full.json', writeJob(job))
  await page
    .getByRole('navigation', { name: words.pages.label })
    .getByRole('button', { name: words.pages.report, exact: true })
    .click()
  await expect(page.locator('.sheet-stations tbody tr')).toHaveCount(8)
  await expect(page.locator('.sheet-surface')).toHaveCount(2)
  const text = await textOf(page)
  for (const figure of figuresOf(job, job.bores[0]?.id ?? '')) expect(text).toContain(figure)
  await expectPages(page, 1)
})

test('pictures of the used bore and the new one stand on the report, at 300 dots to the inch', async ({
  page,
}) => {
  test.slow()
  await openReport(page, 'A')
  await expect(page.getByRole('button', { name: said.print })).toBeEnabled({ timeout: 60_000 })
  const pictures = page.locator('.sheet-picture img')
  await expect(pictures).toHaveCount(2)
  const dots = await pictures.evaluateAll((images) =>
    images.map((image) => {
      const { naturalWidth, naturalHeight, clientWidth, clientHeight } = image as HTMLImageElement
      return Math.max(naturalWidth / clientWidth, naturalHeight / clientHeight) * 96
    }),
  )
  for (const each of dots) expect(each).toBeGreaterThanOrEqual(299)
})

test('a hostile job goes on over as many sheets as it needs, as text, and nothing runs out of a sheet', async ({
  page,
}) => {
  test.slow()
  await withoutPicture(page)
  await openApp(page)
  await chooseFile(page, 'hostile.json', writeJob(hostileJob(scenario('A'))))
  await page
    .getByRole('navigation', { name: words.pages.label })
    .getByRole('button', { name: words.pages.report, exact: true })
    .click()
  await page.getByLabel(said.note).check()
  const sheets = page.locator('.report-sheet')
  await expect.poll(() => sheets.count()).toBeGreaterThan(2)
  // Both notes of ten thousand letters, whole, in pieces one after the other.
  for (const id of ['surface 0', 'note 0']) {
    const pieces = page.locator(`[data-part="${id}"], [data-part^="${id} piece"]`)
    expect((await pieces.allTextContents()).join('')).toContain(hostileText(10_000))
  }
  expect(await page.evaluate(() => 'ran' in window)).toBe(false)
  const outside = await sheets.evaluateAll((all) =>
    all.flatMap((sheet) => {
      const edge = sheet.getBoundingClientRect()
      return [...sheet.querySelectorAll('.sheet-part, .sheet-line, h2, dd')]
        .map((one) => one.getBoundingClientRect())
        .filter(({ right, bottom }) => right > edge.right + 1 || bottom > edge.bottom + 1)
    }),
  )
  expect(outside).toEqual([])
  const { pages } = await printed(page)
  expect(pages).toBe(await sheets.count())
})
