import { isOfSizes, roughSizeMm } from '../../core/diameter/entry'
import type { Gauge, SetUp } from '../../core/measured'
import { readNumber } from '../../words/read-number'
import { words } from '../../words/words'
import { dialMarks, type Marks, sizeMarks } from './marks'

export type ReadRepeats =
  | { readonly ok: true; readonly values: readonly number[] }
  | { readonly ok: false; readonly why: string }

/** A size this far from the setting, as a share of it, was read off another gauge or mistyped. */
const farShare = 0.2

/** How readings of a set-up are typed: sizes or dial readings, in the unit that the gauge is marked in. */
export function readingMarks(setUp: SetUp, gauge: Gauge): Marks {
  return isOfSizes(setUp.entry) ? sizeMarks(gauge.markedIn) : dialMarks(gauge.markedIn)
}

/**
 * One number, or several apart by spaces or semicolons, as repeats of a station: sizes or dial readings as the
 * gauge shows them, given as mm or µm. A number that cannot belong to this set-up is refused with what to do; a
 * dial reading also while nobody has entered the setting (`isOpen`).
 */
export function readRepeats(typed: string, setUp: SetUp, gauge: Gauge, isOpen = false): ReadRepeats {
  if (isOpen && !isOfSizes(setUp.entry)) return { ok: false, why: words.next.settingFirst }
  const values: number[] = []
  const marks = readingMarks(setUp, gauge)
  const nearMm = roughSizeMm(setUp)
  for (const piece of typed.trim().split(/[\s;]+/)) {
    const read = readNumber(piece)
    if (!read.ok) return { ok: false, why: words.number.refused[read.why] }
    const value = marks.kept(read.value)
    const offMm = isOfSizes(setUp.entry) ? value - nearMm : value / 1000
    if (Math.abs(offMm) > farShare * nearMm) {
      const near = sizeMarks(gauge.markedIn)
      const nearText = words.setUp.withUnit(near.written(nearMm), near.unit)
      return {
        ok: false,
        why: isOpen ? words.next.farFromTaken(piece, nearText) : words.next.farFromSetting(piece, nearText),
      }
    }
    values.push(value)
  }
  return { ok: true, values }
}
