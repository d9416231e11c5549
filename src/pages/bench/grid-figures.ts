import type { Gauge } from '../../core/measured'
import { lengthUnit, mmPerInch, writtenIn } from '../../words/length-unit'
import { inMicrons, size, sizeWithUnit, withDecimals } from '../../words/numbers'
import { words } from '../../words/words'

/** How the grid writes what was worked out from readings, in the unit that the gauge is marked in. */
export interface GridFigures {
  /** A diameter in mm: 54.012, or 2.12646. */
  readonly size: (mm: number) => string
  /** The same to be read out, with a unit where it is not mm. */
  readonly spoken: (mm: number) => string
  /** A difference of diameters in mm: 24 µm, or 0.00094 in. */
  readonly difference: (mm: number) => string
  /** What stands beneath a figure for its spread. */
  readonly spread: (mm: number) => string
  /** The unit, where the heads have to say it. */
  readonly unit: string | undefined
}

/** A hundred-thousandth of an inch is a quarter of a micron. */
const inchDecimals = 5

export function gridFigures({ markedIn }: Pick<Gauge, 'markedIn'>): GridFigures {
  if (markedIn !== 'inch') {
    const inMm = (write: () => string) => writtenIn('mm', write)
    const isAlone = lengthUnit() === 'inch'
    return {
      size: (mm) => inMm(() => size(mm)),
      spoken: (mm) => inMm(() => (isAlone ? sizeWithUnit(mm) : size(mm))),
      difference: (mm) => inMm(() => inMicrons(mm)),
      spread: (mm) => inMm(() => words.grid.spread(inMicrons(mm))),
      unit: isAlone ? words.setUp.units.size.mm : undefined,
    }
  }
  const unit = words.setUp.units.size.inch
  const inches = (mm: number) => withDecimals(mm / mmPerInch, inchDecimals, inchDecimals)
  const withUnit = (mm: number) => words.setUp.withUnit(inches(mm), unit)
  return { size: inches, spoken: withUnit, difference: withUnit, spread: withUnit, unit }
}
