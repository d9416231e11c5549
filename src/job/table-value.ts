import { isOfSizes } from '../core/diameter/entry'
import type { SetUp, Standard } from '../core/measured'
import type { KeptValue } from '../formats/column-meaning'
import { readingConverter } from './convert-entry'
import { rangeOf } from './field-ranges'
import { isSettingOpen } from './setting-size'

export type WriteRefusal =
  | 'out-of-range'
  /** What a dial showed cannot stand among sizes: how it is counted is not known there. */
  | 'dial-among-sizes'
  /** It is counted from a setting whose size nobody has written down yet. */
  | 'setting-open'
  /** It is counted from a setting, and this set-up has none. */
  | 'no-setting'
  /** Sizes cannot be turned into dial readings before the gauge was measured over its contacts. */
  | 'no-size-over-contacts'

/**
 * How a value of a table is written under a set-up, so that its diameter stays: mm for sizes, µm for what the dial
 * showed. A deviation is how much larger than the setting; what the dial showed is taken as it is.
 */
export function valueWriter(
  setUp: SetUp,
  standards: readonly Standard[],
): (kept: KeptValue) => number | WriteRefusal {
  const ofSizes = isOfSizes(setUp.entry)
  const convert = readingConverter({ ...setUp, entry: 'size' }, setUp, standards)
  const hasSetting = setUp.entry === 'size' || setUp.entry === 'deviation'
  const fromSize = (sizeMm: number): number | WriteRefusal => {
    if (ofSizes) return checked(sizeMm, 'sizesMm')
    if (setUp.entry === 'reverse' && setUp.overContactsMm === undefined) return 'no-size-over-contacts'
    if (isSettingOpen(setUp)) return 'setting-open'
    const { dialUm: [dialUm] = [] } = convert({ depthMm: 0, axisDegrees: 0, sizesMm: [sizeMm] })
    if (dialUm === undefined) throw new Error('A size turned into a dial reading has no value')
    return checked(dialUm, 'dialUm')
  }
  return ({ as, value }) => {
    if (as === 'size') return fromSize(value)
    if (as === 'dial') {
      if (ofSizes) return 'dial-among-sizes'
      return isSettingOpen(setUp) ? 'setting-open' : checked(value, 'dialUm')
    }
    if (!hasSetting) return 'no-setting'
    if (isSettingOpen(setUp)) return 'setting-open'
    return fromSize(Math.round((setUp.settingSizeMm + value / 1000) * 1e6) / 1e6)
  }
}

function checked(value: number, field: 'sizesMm' | 'dialUm'): number | 'out-of-range' {
  const range = rangeOf(field)
  return range && value >= range.least && value <= range.most ? value : 'out-of-range'
}
