import type { Page } from '@playwright/test'
import type { ExampleName } from '../../../src/app/examples'
import { words } from '../../../src/words/words'

/** One picture on the contact sheet: a page, made ready, at a size and in a theme. */
export interface View {
  readonly title: string
  readonly width: number
  readonly height: number
  readonly theme: 'light' | 'dark'
  readonly media?: 'print'
  /** A screen for fingers. */
  readonly touch?: boolean
  /** The example on the bench; absent: the first page. */
  readonly example?: ExampleName
  /** Runs in the page before its own scripts. */
  readonly before?: () => void
  readonly prepare?: (page: Page) => Promise<void>
}

const desktop = { width: 1440, height: 900 }
const small = { width: 1100, height: 800 }
const phone = { width: 390, height: 844 }
const themes = ['light', 'dark'] as const
const benchOfA = { title: 'Bench, example A, used bore', example: 'A' } as const

/** A profile with surface findings beside it. */
const flatOf = { section: { example: 'A' }, profile: { example: 'D1' } } as const

/** The pages in every theme at the desktop's size, then what differs by size, on paper and without WebGL. */
export const views: readonly View[] = [
  ...themes.map((theme) => ({ title: 'First page', ...desktop, theme })),
  ...themes.map((theme) => ({ title: 'First page', ...phone, theme })),
  ...themes.map((theme) => ({ ...benchOfA, ...desktop, theme })),
  ...themes.map((theme) => ({
    ...benchOfA,
    title: 'Bench, example A, new bore',
    ...desktop,
    theme,
    prepare: showSecondBore,
  })),
  ...themes.flatMap((theme) =>
    (['section', 'profile'] as const).map((name) => ({
      ...flatOf[name],
      title: `Bench, ${name}`,
      ...desktop,
      theme,
      prepare: (page: Page) => showFlat(page, name),
    })),
  ),
  ...themes.flatMap((theme) =>
    (['B', 'C', 'D1', 'D2', 'E', 'E-72'] as const).map((example) => ({
      title: `Bench, example ${example}`,
      example,
      ...desktop,
      theme,
    })),
  ),
  ...themes.flatMap((theme) =>
    (['A', 'B', 'C'] as const).map((example) => ({
      title: `Compare, example ${example}`,
      example,
      ...desktop,
      theme,
      prepare: showCompare,
    })),
  ),
  ...themes.map(
    (theme) => ({ title: 'Kept jobs', example: 'A', ...desktop, theme, prepare: showKept }) as const,
  ),
  ...themes.map((theme) => ({ title: 'Bench, empty job', ...desktop, theme, prepare: startOwnJob })),
  { ...benchOfA, title: 'Bench, no WebGL', ...desktop, theme: 'light', before: withoutWebGl },
  { ...benchOfA, title: 'Bench, smaller window', ...small, theme: 'light' },
  ...(['A', 'B', 'C', 'D1', 'D2'] as const).map(
    (example) =>
      ({
        title: `Bench on paper, example ${example}`,
        example,
        ...desktop,
        theme: 'light',
        media: 'print',
      }) as const,
  ),
  {
    title: 'Compare on paper',
    example: 'A',
    ...desktop,
    theme: 'light',
    media: 'print',
    prepare: showCompare,
  },
  ...touchViews(),
]

async function showSecondBore(page: Page): Promise<void> {
  await page.getByRole('tablist', { name: words.bar.bores }).getByRole('tab').nth(1).click()
}

async function showFlat(page: Page, name: 'section' | 'profile'): Promise<void> {
  await page.getByRole('tab', { name: words.charts.views[name] }).click()
  await page.locator('.wall-chart').waitFor()
}

async function showCompare(page: Page): Promise<void> {
  await page.evaluate(() => {
    location.hash = `${location.hash}&page=compare`
  })
  await page.locator('canvas').first().waitFor()
}

/** One job of its own on the shelf, as it was saved after a change. */
async function showKept(page: Page): Promise<void> {
  await page.locator('[data-cell]').first().focus()
  await page.keyboard.press('Delete')
  await page.getByRole('button', { name: /^Saved / }).waitFor()
  await page.evaluate(() => {
    location.hash = '#shelf'
  })
  await page.getByRole('table', { name: words.shelf.title }).waitFor()
}

async function startOwnJob(page: Page): Promise<void> {
  await page.getByRole('button', { name: words.firstPage.measure }).click()
}

function withoutWebGl(): void {
  const getContext = HTMLCanvasElement.prototype.getContext
  Object.defineProperty(HTMLCanvasElement.prototype, 'getContext', {
    value(this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
      return kind.startsWith('webgl') ? null : Reflect.apply(getContext, this, [kind, ...rest])
    },
  })
}

/** Phone and tablet: each part, upright and on its side, then what a hand or a chosen place changes. */
function touchViews(): readonly View[] {
  const tall = { width: 390, height: 844 }
  const short = { width: 390, height: 664 }
  const onSide = { width: 844, height: 390 }
  const tablet = { width: 1024, height: 768 }
  const parts = [
    { title: 'Phone, a station', prepare: takeStation },
    { title: 'Phone, wall', prepare: (page: Page) => showPart(page, words.parts.narrow.wall) },
    {
      title: 'Phone, section',
      prepare: async (page: Page) => {
        await showPart(page, words.parts.narrow.wall)
        await showFlat(page, 'section')
      },
    },
    { title: 'Phone, findings', prepare: (page: Page) => showPart(page, words.parts.narrow.findings) },
    { title: 'Phone, set-up', prepare: (page: Page) => showPart(page, words.parts.narrow.setUp) },
  ]
  const of = { example: 'B-as-typed', touch: true } as const
  return [
    ...themes.flatMap((theme) => parts.map((part) => ({ ...of, ...part, ...tall, theme }))),
    ...parts.map((part) => ({ ...of, ...part, ...short, theme: 'light' as const })),
    ...parts.map((part) => ({ ...of, ...part, ...onSide, theme: 'dark' as const })),
    { ...of, title: 'Phone, left hand', ...tall, theme: 'light', prepare: takeStation, before: leftHand },
    { ...of, title: 'Phone, left hand', ...onSide, theme: 'light', prepare: takeStation, before: leftHand },
    ...themes.map((theme) => ({ ...of, title: 'Tablet', ...tablet, theme, prepare: takeStation })),
    { ...of, title: 'Tablet, findings', ...tablet, theme: 'light', prepare: showFindingsOfFourth },
  ]
}

async function showPart(page: Page, name: string): Promise<void> {
  await page
    .getByRole('navigation', { name: words.phone.parts })
    .getByRole('button', { name: new RegExp(`^${name}`) })
    .tap()
}

/** The second station of the plan, with its repeats. */
async function takeStation(page: Page): Promise<void> {
  await showPart(page, words.parts.narrow.setUp)
  await page.locator('.plan-grid .station').nth(1).tap()
}

async function showFindingsOfFourth(page: Page): Promise<void> {
  await page.getByRole('button', { name: words.bar.boreChip(1, 4) }).tap()
  await page.getByRole('button', { name: /^Bore 4/ }).tap()
  await showPart(page, words.parts.narrow.setUp)
  await showPart(page, words.parts.narrow.findings)
}

function leftHand(): void {
  localStorage.setItem('borewall-hand', 'left')
}
