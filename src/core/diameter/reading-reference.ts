import type { Gauge, SetUp, Standard } from '../measured'
import { deviationFromDial } from './diameter-at-20'
import { entryOf } from './entry'

/** What the readings of a set-up are counted from. */
export interface ReadingReference {
  /** Size as the standard or the micrometer shows it, mm. */
  readonly sizeMm: number
  /** What the dial showed at that size, µm, counted positive clockwise. */
  readonly dialUm: number
}

/**
 * The closing zero, µm, as it would have been had the standard kept its temperature: a standard that warmed
 * by ΔT is longer by S·α_r·ΔT and moves the dial by as much (σ·S·α_r·ΔT, σ = −1 where larger is
 * anticlockwise). Undefined without a closing zero. The reverse method has its zeros in the bore, and there
 * the dial stands as it was read. Own derivation.
 */
export function closingZeroUm(setUp: SetUp, standardPerK: number): number | undefined {
  const { zeroCloseUm, referenceTemperatureC: before, referenceTemperatureCloseC: after } = setUp
  if (zeroCloseUm === undefined || setUp.entry === 'reverse') return zeroCloseUm
  if (before === undefined || after === undefined) return zeroCloseUm
  const longerUm = 1000 * setUp.settingSizeMm * standardPerK * (after - before)
  const isMirrored = setUp.largerIs === 'anticlockwise' && setUp.entry !== 'direct'
  return isMirrored ? zeroCloseUm + longerUm : zeroCloseUm - longerUm
}

/**
 * What the closing zero is compared with to see a drift, µm: the opening zero; for an internal instrument,
 * which has none, what it read too much on its own standard before. Undefined where neither was recorded.
 */
export function openingZeroUm(setUp: SetUp, gauge: Gauge, standard: Standard): number | undefined {
  return setUp.zeroOpenUm ?? (entryOf(setUp, gauge) === 'direct' ? standard.errorUm : undefined)
}

/**
 * What the readings are counted from: the setting with the mean of opening and closing zero (the opening
 * alone without a closing one, 0 where none was recorded), or, in the reverse method, the micrometer over the
 * gauge's contacts with the dial between its faces (0 where not recorded). Undefined in the reverse method
 * while the gauge was not measured over its contacts: the readings then have no size. Own derivation.
 */
export function readingReference(setUp: SetUp, standardPerK: number): ReadingReference | undefined {
  if (setUp.entry === 'reverse') {
    if (setUp.overContactsMm === undefined) return undefined
    return { sizeMm: setUp.overContactsMm, dialUm: setUp.dialOverContactsUm ?? 0 }
  }
  const open = setUp.zeroOpenUm ?? 0
  const close = closingZeroUm(setUp, standardPerK)
  return { sizeMm: setUp.settingSizeMm, dialUm: close === undefined ? open : (open + close) / 2 }
}

/**
 * The size that a dial reading stands for before any temperature is reckoned with, mm. Where the direction
 * test was not recorded, larger is taken to be clockwise.
 */
export function sizeFromDial(dialUm: number, from: ReadingReference, largerIs: SetUp['largerIs']): number {
  return from.sizeMm + deviationFromDial(dialUm, from.dialUm, largerIs ?? 'clockwise')
}
