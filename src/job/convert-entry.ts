import { deviationFromDial } from '../core/diameter/diameter-at-20'
import type { Entry, Reading, SetUp } from '../core/measured'

/**
 * A reading in the other way of writing it down, so that its diameter stays the same: the size is the
 * setting plus the deviation of the dial from its zero. Figures are rounded to 0.001 µm, far below any
 * step that can be read, so that no digits of binary arithmetic show up in the file.
 */
export function convertReading(reading: Reading, setUp: SetUp, entry: Entry): Reading {
  const { sizesMm, dialUm, ...rest } = reading
  if (entry === 'deviation' && sizesMm) return { ...rest, dialUm: sizesMm.map((size) => dialOf(size, setUp)) }
  if (entry === 'size' && dialUm) return { ...rest, sizesMm: dialUm.map((dial) => sizeOf(dial, setUp)) }
  return reading
}

/** Where the dial stood on the standard, µm: the mean of both zeros, else the opening one, else 0. */
function zeroOf({ zeroOpenUm = 0, zeroCloseUm }: SetUp): number {
  return zeroCloseUm === undefined ? zeroOpenUm : (zeroOpenUm + zeroCloseUm) / 2
}

function sizeOf(dialUm: number, setUp: SetUp): number {
  const deviationMm = deviationFromDial(dialUm, zeroOf(setUp), setUp.largerIs ?? 'clockwise')
  return rounded(setUp.settingSizeMm + deviationMm, 1e6)
}

function dialOf(sizeMm: number, setUp: SetUp): number {
  const deviationUm = (sizeMm - setUp.settingSizeMm) * 1000
  const clockwiseUm = setUp.largerIs === 'anticlockwise' ? -deviationUm : deviationUm
  return rounded(zeroOf(setUp) + clockwiseUm, 1e3)
}

function rounded(value: number, perUnit: number): number {
  return Math.round(value * perUnit) / perUnit + 0
}
