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
  ...themes.map((theme) => ({ title: 'Bench, empty job', ...desktop, theme, prepare: startOwnJob })),
  { ...benchOfA, title: 'Bench, no WebGL', ...desktop, theme: 'light', before: withoutWebGl },
  { ...benchOfA, title: 'Bench, smaller window', ...small, theme: 'light' },
  { ...benchOfA, title: 'Bench on paper', ...desktop, theme: 'light', media: 'print' },
]

async function showSecondBore(page: Page): Promise<void> {
  await page.getByRole('tablist', { name: words.bar.bores }).getByRole('tab').nth(1).click()
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
