import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises'
import { SourceMap, type SourceMapPayload } from 'node:module'
import { tmpdir } from 'node:os'
import { dirname, join, relative, resolve } from 'node:path'
import type { Browser, CDPSession, Page } from '@playwright/test'
import { build } from 'vite'
import { freePort } from '../../src/cli/free-port.mjs'
import { servePage } from '../../src/cli/page-server.mjs'

/** What frames of a turning picture allocate, whether it is kept or let go of at once. */
export interface FrameBytes {
  readonly frames: number
  /** Bytes for each frame in functions of our own, by what they call of the browser's too. */
  readonly own: number
  /** The same in functions of the libraries. */
  readonly libraries: number
  /** Our own functions that allocate most, with their bytes for each frame. */
  readonly most: readonly string[]
}

type Profile = Awaited<ReturnType<typeof sampled>>
type ProfileNode = Profile['head']

/** So many frames before any is counted: by then the browser has compiled what each frame runs through. */
const warmFrames = 900
const countedFrames = 300
/** A sample is taken about every so many bytes. */
const samplingInterval = 128
const frameLibraries = ['@react-three', 'camera-controls']

declare global {
  interface Window {
    framesDrawn: number
  }
}

/**
 * Turns the picture at each of these addresses of the page and tells what its frames allocate, by the browser's own
 * sampling of its heap. The page is built with its names for that. Nothing is drawn by the graphics, and frames
 * follow one another at once: what runs for each of them stays the same.
 */
export async function frameBytes(
  browser: Browser,
  root: string,
  addresses: readonly string[],
): Promise<readonly FrameBytes[]> {
  const outDir = await mkdtemp(join(tmpdir(), 'borewall-frames-'))
  const port = await freePort()
  await build({
    root,
    logLevel: 'error',
    build: { outDir, emptyOutDir: true, minify: false, sourcemap: true },
  })
  const server = await servePage({ outDir, port, version: 'test' })
  try {
    const found: FrameBytes[] = []
    for (const address of addresses) {
      const page = await browser.newPage({
        viewport: { width: 1440, height: 900 },
        reducedMotion: 'no-preference',
      })
      await page.addInitScript(drawNothing)
      await page.goto(`${server.address}${address}`)
      const { frames, profile } = await turned(page)
      await page.close()
      found.push(await summed(profile, frames, { root, outDir }))
    }
    return found
  } finally {
    await server.close()
    await rm(outDir, { recursive: true, force: true })
  }
}

/** Runs in the page before its own scripts. */
function drawNothing(): void {
  window.framesDrawn = 0
  let isCounted = false
  for (const name of [
    'drawArrays',
    'drawElements',
    'drawArraysInstanced',
    'drawElementsInstanced',
  ] as const) {
    Object.defineProperty(WebGL2RenderingContext.prototype, name, {
      value() {
        if (isCounted) return
        isCounted = true
        window.framesDrawn += 1
        queueMicrotask(() => {
          isCounted = false
        })
      },
    })
  }
  const next = new MessageChannel()
  const waiting = new Map<number, FrameRequestCallback>()
  let last = 0
  next.port1.onmessage = () => {
    const due = [...waiting.values()]
    waiting.clear()
    for (const callback of due) callback(performance.now())
  }
  window.requestAnimationFrame = (callback) => {
    last += 1
    waiting.set(last, callback)
    next.port2.postMessage(null)
    return last
  }
  window.cancelAnimationFrame = (handle) => {
    waiting.delete(handle)
  }
}

async function turned(page: Page): Promise<{ readonly frames: number; readonly profile: Profile }> {
  const picture = page.locator('.bore-picture')
  await picture.focus()
  await quiet(page)
  await turn(page, warmFrames)
  const session = await page.context().newCDPSession(page)
  let frames = 0
  const profile = await sampled(session, async () => {
    frames = await turn(page, countedFrames)
  })
  return { frames, profile }
}

/** Waits until no frame has been drawn for a while. */
async function quiet(page: Page): Promise<void> {
  let before = -1
  for (let now = 0; now !== before; now = await page.evaluate(() => window.framesDrawn)) {
    before = now
    await page.waitForTimeout(700)
  }
}

/** Turns by keys, then by a hand that drags, until so many frames were drawn; how many it were. */
async function turn(page: Page, wanted: number): Promise<number> {
  const drawn = () => page.evaluate(() => window.framesDrawn)
  const before = await drawn()
  while ((await drawn()) - before < wanted) {
    await page.keyboard.press('ArrowRight')
    await page.waitForTimeout(150)
  }
  const box = await page.locator('.bore-picture').boundingBox()
  if (!box) throw new Error('no picture')
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2)
  await page.mouse.down()
  await page.mouse.move(box.x + box.width / 2 + 60, box.y + box.height / 2 + 10, { steps: 12 })
  await page.mouse.up()
  await quiet(page)
  return (await drawn()) - before
}

async function sampled(session: CDPSession, work: () => Promise<void>) {
  await session.send('HeapProfiler.startSampling', {
    samplingInterval,
    includeObjectsCollectedByMajorGC: true,
    includeObjectsCollectedByMinorGC: true,
  })
  await work()
  const { profile } = await session.send('HeapProfiler.stopSampling')
  return profile
}

interface Built {
  readonly root: string
  readonly outDir: string
}

/** Adds up what was allocated below the libraries that run each frame, by the file of the nearest caller. */
async function summed(profile: Profile, frames: number, built: Built): Promise<FrameBytes> {
  const sourceOf = await sourceFinder(built)
  const byFunction = new Map<string, number>()
  let libraries = 0
  const visit = (node: ProfileNode, caller: string, wasInFrame: boolean): void => {
    const source = sourceOf(node.callFrame)
    const owner = source === undefined ? caller : `${source} ${node.callFrame.functionName}`
    const isInFrame = wasInFrame || frameLibraries.some((name) => source?.includes(`/${name}/`))
    if (isInFrame && owner.startsWith('src/')) {
      byFunction.set(owner, (byFunction.get(owner) ?? 0) + node.selfSize)
    } else if (isInFrame) libraries += node.selfSize
    for (const child of node.children) visit(child, owner, isInFrame)
  }
  visit(profile.head, '', false)
  const own = [...byFunction].sort(([, one], [, other]) => other - one)
  return {
    frames,
    own: own.reduce((sum, [, bytes]) => sum + bytes, 0) / frames,
    libraries: libraries / frames,
    most: own.slice(0, 8).map(([name, bytes]) => `${name}: ${(bytes / frames).toFixed(0)}`),
  }
}

/** Tells the file, from the root of the project, that a function of the built page was written in. */
async function sourceFinder({ root, outDir }: Built) {
  const files = (await readdir(outDir, { recursive: true })).filter((file) => file.endsWith('.js.map'))
  const maps = new Map<string, { readonly map: SourceMap; readonly folder: string }>()
  for (const file of files) {
    const payload: SourceMapPayload = JSON.parse(await readFile(join(outDir, file), 'utf8'))
    maps.set(`/${file.slice(0, -'.map'.length)}`, {
      map: new SourceMap(payload),
      folder: dirname(join(outDir, file)),
    })
  }
  return ({ url, lineNumber, columnNumber }: ProfileNode['callFrame']): string | undefined => {
    if (!url.startsWith('http')) return undefined
    const found = maps.get(new URL(url).pathname)
    const entry = found?.map.findEntry(lineNumber, columnNumber)
    if (!found || !entry || !('originalSource' in entry)) return url
    return relative(root, resolve(found.folder, entry.originalSource))
  }
}
