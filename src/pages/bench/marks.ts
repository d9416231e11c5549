import type { Marking } from '../../core/measured'
import { plain, withDecimals } from '../../words/numbers'
import { words } from '../../words/words'

/** Figures as an instrument shows them, for figures kept in mm or µm. */
export interface Marks {
  readonly marking: Marking
  readonly unit: string
  /** As shown, from as kept. */
  readonly shown: (kept: number) => number
  /** As kept, from as shown. */
  readonly kept: (shown: number) => number
  /** A kept figure as it is written, without its unit. */
  readonly written: (kept: number) => string
  /** A kept figure in the other unit, with it. */
  readonly echo: (kept: number) => string
}

/** The international inch, exact. */
const mmPerInch = 25.4
const umPerTenThousandth = mmPerInch / 10

/** Sizes in mm or in inches. */
export function sizeMarks(marking: Marking = 'mm'): Marks {
  const unit = words.setUp.units.size[marking]
  if (marking === 'inch') {
    return {
      marking,
      unit,
      shown: (mm) => mm / mmPerInch,
      kept: (inches) => rounded(inches * mmPerInch, 1e6),
      written: (mm) => withDecimals(mm / mmPerInch, 4, 6),
      echo: (mm) => words.setUp.withUnit(plain(mm, 4), words.setUp.units.size.mm),
    }
  }
  return {
    marking,
    unit,
    shown: (mm) => mm,
    kept: (mm) => mm,
    written: (mm) => withDecimals(mm, 3, 6),
    echo: (mm) => words.setUp.withUnit(plain(mm / mmPerInch, 5), words.setUp.units.size.inch),
  }
}

/** Deviations in µm or in ten-thousandths of an inch. */
export function dialMarks(marking: Marking = 'mm'): Marks {
  const unit = words.setUp.units.dial[marking]
  if (marking === 'inch') {
    return {
      marking,
      unit,
      shown: (um) => um / umPerTenThousandth,
      kept: (marks) => rounded(marks * umPerTenThousandth, 1e3),
      written: (um) => plain(um / umPerTenThousandth, 3),
      echo: (um) => words.setUp.withUnit(plain(um, 2), words.setUp.units.dial.mm),
    }
  }
  return {
    marking,
    unit,
    shown: (um) => um,
    kept: (um) => um,
    written: (um) => plain(um, 6),
    echo: (um) => words.setUp.withUnit(plain(um / 1000 / mmPerInch, 6), words.setUp.units.size.inch),
  }
}

function rounded(value: number, perUnit: number): number {
  return Math.round(value * perUnit) / perUnit
}
