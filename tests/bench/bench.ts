import { cpus } from 'node:os'
import type { Browser } from '@playwright/test'
import { withBuiltPage } from '../browser/built-page'
import { frameBytes } from '../browser/frame-bytes'
import type { Setting } from '../run/setting'
import { coreTimes } from './core-times'
import { eightBoreTimes } from './eight-bores'
import { type Figure, table } from './figures'
import { wholePage } from './page-bytes'
import { changeTimes, loadTimes } from './page-times'
import { scanCoreTimes, scanPageTimes } from './scan-times'
import { shelfTimes } from './shelf-times'

/** Measures and prints; nothing is asserted, since times belong to the machine. */
export async function run(setting: Setting): Promise<void> {
  const figures: Figure[] = [...coreTimes(setting.root), ...scanCoreTimes(), wholePage(setting.outDir)]
  await withBuiltPage(setting, async (browser, address) => {
    figures.push(...(await loadTimes(browser, address, setting.outDir)))
    figures.push(...(await changeTimes(browser, address)))
    figures.push(...(await eightBoreTimes(browser, address, setting.root)))
    figures.push(...(await allocations(browser, setting.root)))
    figures.push(...(await scanPageTimes(browser, address)))
    figures.push(...(await shelfTimes(browser, address)))
  })
  const processor = cpus()[0]?.model ?? 'unknown processor'
  process.stdout.write(
    `${cpus().length} × ${processor}, Node ${process.version}, graphics drawn on the processor\n`,
  )
  process.stdout.write(`${table(figures)}\n`)
}

/** What a frame allocates while the picture turns, in our own code and in the libraries. */
async function allocations(browser: Browser, root: string): Promise<Figure[]> {
  const pictures = [
    { name: 'one bore', address: '#example=A' },
    { name: 'four bores', address: '#example=B&page=compare' },
  ]
  const found = await frameBytes(
    browser,
    root,
    pictures.map(({ address }) => address),
  )
  return found.map(({ own, libraries, frames }, index) => ({
    name: `allocated for a frame of ${pictures[index]?.name} turning`,
    value: `${own.toFixed(0)} B our own, ${libraries.toFixed(0)} B libraries, n = ${frames}`,
    target: 'our own below 600 B',
  }))
}
