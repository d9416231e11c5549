import type { Measured } from '../../../../src/core/measured'
import { type Circumstances, measuredBore } from '../measured-bore'

/** An invented cylinder on an invented bench, with everything true and known. */
export interface TrueBench {
  /** Diameters at 20 °C at 10, 40 and 70 mm on the axes 0° and 90°, mm. */
  readonly diametersMm: readonly (readonly number[])[]
  readonly wallPerK: number
  readonly boreC: number
  readonly standardPerK: number
  readonly referenceC: number
  /** What the standard shows too much, µm. */
  readonly errorUm: number
  /** Which way the needle goes for larger, and where it stands when the gauge is as long as the standard. */
  readonly larger: 1 | -1
  readonly needleUm: number
  /** Size that the standard shows, mm. */
  readonly shownMm: number
}

const levelsMm = [10, 40, 70]
const axesDegrees = [0, 90]

/** Length of the bore when it was measured, mm. */
function warm(diameterMm: number, b: TrueBench): number {
  return diameterMm * (1 + b.wallPerK * (b.boreC - 20))
}

/** Length of what the standard shows as a size, when it was used, mm. */
function standardLength(shownMm: number, b: TrueBench): number {
  return (shownMm - b.errorUm / 1000) * (1 + b.standardPerK * (b.referenceC - 20))
}

function circumstances(b: TrueBench, kind: 'ring' | 'micrometer'): Circumstances {
  return {
    standard: { kind, errorUm: b.errorUm, expansionPerK: b.standardPerK },
    bore: { wall: { kind: 'steel', expansionPerK: b.wallPerK } },
    setUp: {
      settingSizeMm: b.shownMm,
      largerIs: b.larger === 1 ? 'clockwise' : 'anticlockwise',
      boreTemperatureC: b.boreC,
      referenceTemperatureC: b.referenceC,
    },
  }
}

/** The dial in the bore, µm, of a gauge whose needle stands at `needleUm` when it is `lengthMm` long. */
function dials(b: TrueBench, lengthMm: number) {
  return b.diametersMm.map((row) =>
    row.map((diameter) => b.needleUm + b.larger * 1000 * (warm(diameter, b) - lengthMm)),
  )
}

/** The gauge is set to a standard, and deviates from it in the bore. */
export function byDeviation(b: TrueBench): Measured {
  const given = circumstances(b, 'ring')
  const rows = dials(b, standardLength(b.shownMm, b))
  const zeros = { zeroOpenUm: b.needleUm, zeroCloseUm: b.needleUm }
  return measuredBore(
    { levelsMm, axesDegrees, rows },
    { ...given, setUp: { ...given.setUp, ...zeros, entry: 'deviation' } },
  )
}

/** The gauge is zeroed in the bore at the first station, and then measured over its contacts. */
export function byReverse(b: TrueBench): Measured {
  const given = circumstances(b, 'micrometer')
  const zeroedAt = warm(b.diametersMm[0]?.[0] ?? Number.NaN, b)
  const rows = dials({ ...b, needleUm: 0 }, zeroedAt)
  const contacts = {
    overContactsMm: b.shownMm,
    dialOverContactsUm: b.larger * 1000 * (standardLength(b.shownMm, b) - zeroedAt),
  }
  return measuredBore(
    { levelsMm, axesDegrees, rows },
    { ...given, setUp: { ...given.setUp, ...contacts, entry: 'reverse' } },
  )
}

/** An internal micrometer shows sizes of its own. */
export function byDirectReading(b: TrueBench): Measured {
  const given = circumstances(b, 'micrometer')
  const rows = b.diametersMm.map((row) =>
    row.map((d) => warm(d, b) / (1 + b.standardPerK * (b.referenceC - 20)) + b.errorUm / 1000),
  )
  return measuredBore(
    { levelsMm, axesDegrees, rows },
    { ...given, gauge: { kind: 'internal-micrometer-rods' }, setUp: { ...given.setUp, entry: 'direct' } },
  )
}

/** Sizes are written down from a gauge set to a standard. */
export function bySize(b: TrueBench): Measured {
  const given = circumstances(b, 'micrometer')
  const rows = b.diametersMm.map((row) =>
    row.map((d) => b.shownMm + warm(d, b) - standardLength(b.shownMm, b)),
  )
  return measuredBore({ levelsMm, axesDegrees, rows }, given)
}
