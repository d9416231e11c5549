/**
 * The unit that lengths are written in: that of the job in hand, one at a time. It is set where a job is taken in
 * hand, before anything of it is written; what was written before in another unit has to be written anew.
 */
import type { Marking } from '../core/measured'
import { words } from './words'

/** The international inch, exact. */
export const mmPerInch = 25.4

let unit: Marking = 'mm'

/** Writes all lengths in a unit from now on. */
export function writeLengthsIn(next: Marking): void {
  unit = next
}

/** The unit that lengths are written in. */
export function lengthUnit(): Marking {
  return unit
}

/** Writes something of a job in that job's own unit, whatever is in hand. */
export function writtenIn<Text>(own: Marking, write: () => Text): Text {
  const before = unit
  unit = own
  try {
    return write()
  } finally {
    unit = before
  }
}

/** What stands behind a size or a depth. */
export function unitText(): string {
  return words.setUp.units.size[unit]
}

/** What stands behind a difference of sizes. */
export function differenceUnitText(): string {
  return unit === 'inch' ? unitText() : 'µm'
}

/** Round numbers of a length are multiples of this: a µm, or a ten-thousandth of an inch; µm. */
export function roundStepUm(): number {
  return unit === 'inch' ? (mmPerInch * 1000) / 1e4 : 1
}

/** Round sizes within a span of mm, mm. */
export function roundSizes(ticks: (perUnit: number) => readonly number[]): readonly number[] {
  const perUnit = unit === 'inch' ? mmPerInch : 1
  return ticks(perUnit).map((one) => one * perUnit)
}

/** A text with fields for lengths, or what such a field is called: its mm and µm in the unit that is written in. */
export function inShownUnit(text: string, marking: Marking = unit): string {
  return marking === 'inch' ? text.replace(/(?<!\p{L})(mm|µm)(?!\p{L})/gu, words.setUp.units.size.inch) : text
}
