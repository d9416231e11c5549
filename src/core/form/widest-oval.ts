import type { WidestOval } from '../findings'
import { fittedOval, fittedOvalMm } from './fitted-oval'
import type { Level } from './level'

/** The widest fitted oval of the levels outside lands, judged as the widest of them all. */
export function widestOval(levels: readonly Level[]): WidestOval | undefined {
  const fits = levels
    .filter((level) => !level.land)
    .flatMap((level) => {
      const ovalMm = fittedOvalMm(level.stations)
      return ovalMm === undefined ? [] : [{ level, ovalMm }]
    })
  const [first, ...rest] = fits
  if (!first) return undefined
  const { level } = rest.reduce((a, b) => (b.ovalMm > a.ovalMm ? b : a), first)
  const oval = fittedOval(level.stations, fits.length)
  return oval && { ...oval, depthMm: level.depthMm, levels: fits.length }
}
