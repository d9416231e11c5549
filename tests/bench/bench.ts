import { cpus } from 'node:os'
import { withBuiltPage } from '../browser/built-page'
import type { Setting } from '../run/setting'
import { coreTimes } from './core-times'
import { eightBoreTimes } from './eight-bores'
import { type Figure, table } from './figures'
import { wholePage } from './page-bytes'
import { changeTimes, loadTimes } from './page-times'
import { shelfTimes } from './shelf-times'

/** Measures and prints; nothing is asserted, since times belong to the machine. */
export async function run(setting: Setting): Promise<void> {
  const figures: Figure[] = [...coreTimes(setting.root), wholePage(setting.outDir)]
  await withBuiltPage(setting, async (browser, address) => {
    figures.push(...(await loadTimes(browser, address, setting.outDir)))
    figures.push(...(await changeTimes(browser, address)))
    figures.push(...(await eightBoreTimes(browser, address, setting.root)))
    figures.push(...(await shelfTimes(browser, address)))
  })
  const processor = cpus()[0]?.model ?? 'unknown processor'
  process.stdout.write(
    `${cpus().length} × ${processor}, Node ${process.version}, graphics drawn on the processor\n`,
  )
  process.stdout.write(`${table(figures)}\n`)
}
