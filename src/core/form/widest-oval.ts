import type { WidestOval } from '../findings'
import { fittedOval } from './fitted-oval'
import type { Level } from './level'

/** The widest fitted oval of the levels outside lands, judged as the widest of them all. */
export function widestOval(levels: readonly Level[]): WidestOval | undefined {
  const fits = levels
    .filter((level) => !level.land)
    .flatMap((level) => {
      const fitted = fittedOval(level.stations)
      return fitted ? [{ level, fitted }] : []
    })
  const [first, ...rest] = fits
  if (!first) return undefined
  const { level } = rest.reduce((a, b) => (b.fitted.ovalMm > a.fitted.ovalMm ? b : a), first)
  const oval = fittedOval(level.stations, fits.length)
  return oval && { ...oval, depthMm: level.depthMm, levels: fits.length }
}
