import AxeBuilder from '@axe-core/playwright'
import { type BrowserContext, test as base, expect, type Page } from '@playwright/test'
import { type ExampleName, exampleAddress } from '../../src/app/examples'

const knownWarnings = [
  // Three says this once for each load, about a class that its React binding still uses.
  /THREE\.Clock: This module has been deprecated/,
  // The browser itself, copying the picture into a page that these tests have it compose on the processor.
  /GL Driver Message \(OpenGL, Performance, GL_CLOSE_PATH_NV, High\): GPU stall due to ReadPixels/,
]

/**
 * Collects, while a page is used, what it complains of on the console, what it throws, each breach of the
 * content security policy (which the browser reports on the console) and each request to another host.
 */
export function complaintsOf(
  context: BrowserContext,
  home: string,
  expected: readonly RegExp[] = [],
): string[] {
  const complaints: string[] = []
  const complain = (text: string) => {
    if (![...knownWarnings, ...expected].some((pattern) => pattern.test(text))) complaints.push(text)
  }
  context.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') {
      complain(`${message.type()}: ${message.text()} (${message.location().url})`)
    }
  })
  context.on('weberror', (error) => complain(`thrown: ${error.error().stack ?? error.error().message}`))
  context.on('request', (request) => {
    const { protocol, origin } = new URL(request.url())
    const isOwn = protocol === 'blob:' || protocol === 'data:' || origin === new URL(home).origin
    if (!isOwn) complain(`request to another host: ${request.url()}`)
  })
  return complaints
}

interface Guard {
  /** Complaints that a test brings about on purpose: `test.use({ expectedComplaints: [/…/] })`. */
  expectedComplaints: RegExp[]
  guard: undefined
}

/** Playwright's test, failing also when the page gives cause for a complaint that was not expected. */
export const test = base.extend<Guard>({
  expectedComplaints: [[], { option: true }],
  guard: [
    async ({ context, baseURL, expectedComplaints }, use) => {
      const complaints = complaintsOf(context, baseURL ?? '', expectedComplaints)
      await use(undefined)
      expect(complaints, 'complaints of the page').toEqual([])
    },
    { auto: true },
  ],
})

export { expect }

/** As in a browser without WebGL: drawing the picture on the processor takes most of the time of a test. */
export async function withoutPicture(page: Page): Promise<void> {
  await page.addInitScript(() => {
    Object.defineProperty(HTMLCanvasElement.prototype, 'getContext', { value: () => null })
  })
}

/** As in a browser without WebGL; pictures can be drawn all the same, as photographs and scans are. */
export async function withoutWebgl(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const own = HTMLCanvasElement.prototype.getContext
    Object.defineProperty(HTMLCanvasElement.prototype, 'getContext', {
      value(this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
        return kind === '2d' ? Reflect.apply(own, this, [kind, ...rest]) : null
      },
    })
  })
}

/**
 * Opens an example by its address and waits for the Bench; it opens anew as long as nobody changes it. What
 * the browser keeps is opened by the plain address.
 */
export async function openApp(page: Page, example: ExampleName = 'A'): Promise<void> {
  await page.goto(`./${exampleAddress(example)}`)
  await expect(page.getByRole('heading', { level: 1, name: /invented/ })).toBeVisible()
}

/** Checks a page, or a part of it, by axe's rules for WCAG 2.2 A and AA and its own good practice. */
export async function expectAccessible(page: Page, within?: string): Promise<void> {
  const builder = new AxeBuilder({ page })
  if (within !== undefined) builder.include(within)
  const { violations } = await builder.analyze()
  const found = violations.flatMap(({ id, help, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id}: ${help} at ${target.join(' ')}\n${failureSummary}`),
  )
  expect(found, 'violations found by axe').toEqual([])
}
