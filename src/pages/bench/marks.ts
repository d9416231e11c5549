import type { Marking } from '../../core/measured'
import { lengthUnit, mmPerInch } from '../../words/length-unit'
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

/** Depths and other lengths in inches; undefined in mm, where they are written as they are kept. */
export function lengthMarks(marking: Marking): Marks | undefined {
  return marking === 'inch' ? inchMarks(mmPerInch, words.setUp.units.size.mm) : undefined
}

/** What is kept in µm, in inches; undefined where it is written as it is kept. */
export function micronMarks(marking: Marking): Marks | undefined {
  return marking === 'inch' ? inchMarks(mmPerInch * 1000, words.setUp.units.dial.mm) : undefined
}

/** Inches for something that is kept in a unit of which so many make an inch. */
function inchMarks(perInch: number, unit: string): Marks {
  const kept = (inches: number) => rounded(inches * perInch, 1e6)
  return {
    marking: 'inch',
    unit: words.setUp.units.size.inch,
    shown: (value) => value / perInch,
    kept,
    written: (value) => typedInches(value, value / perInch, kept),
    echo: (value) => words.setUp.withUnit(plain(value, 4), unit),
  }
}

/** As it was typed, where it was typed in inches; a ten-thousandth is enough for what was not. */
function typedInches(value: number, inches: number, kept: (inches: number) => number): string {
  const decimals = [0, 1, 2, 3, 4, 5, 6].find((some) => kept(Number(inches.toFixed(some))) === value)
  return plain(inches, decimals ?? (Math.abs(inches) < 0.1 ? 5 : 4))
}

/** A length as its field shows it. */
export function writtenLength(mm: number): string {
  return lengthMarks(lengthUnit())?.written(mm) ?? plain(mm, 6)
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
