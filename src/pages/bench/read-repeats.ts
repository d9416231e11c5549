import { isOfSizes } from '../../core/diameter/entry'
import type { SetUp } from '../../core/measured'
import { size } from '../../words/numbers'
import { readNumber } from '../../words/read-number'
import { words } from '../../words/words'

export type ReadRepeats =
  | { readonly ok: true; readonly values: readonly number[] }
  | { readonly ok: false; readonly why: string }

/** A size this far from the setting, as a share of it, was read off another gauge or mistyped. */
const farShare = 0.2

/**
 * One number, or several apart by spaces or semicolons, as repeats of a station: sizes in mm or dial
 * deviations in µm. A number that cannot belong to this set-up is refused with what to do.
 */
export function readRepeats(typed: string, { entry, settingSizeMm }: SetUp): ReadRepeats {
  const values: number[] = []
  for (const piece of typed.trim().split(/[\s;]+/)) {
    const read = readNumber(piece)
    if (!read.ok) return { ok: false, why: words.number.refused[read.why] }
    const off = isOfSizes(entry) ? read.value - settingSizeMm : read.value / 1000
    if (Math.abs(off) > farShare * settingSizeMm) {
      return { ok: false, why: words.next.farFromSetting(piece, size(settingSizeMm)) }
    }
    values.push(read.value)
  }
  return { ok: true, values }
}
