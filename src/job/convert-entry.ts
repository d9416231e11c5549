import { isOfSizes } from '../core/diameter/entry'
import { type ReadingReference, readingReference, sizeFromDial } from '../core/diameter/reading-reference'
import type { Reading, SetUp, Standard } from '../core/measured'
import { standardExpansion } from '../core/temperature/expansion'

/**
 * Readings under one set-up as they would be written under another, so that their diameters stay: what is kept is
 * the length that the bore had when it was measured, L = S·f + (size − S), S·f + σ·(x − z0), M·f + σ·(x − x_M) or
 * R·f, f = 1 + α_r·(T_r − 20). Sizes stay sizes as they were written, by which R differs from a size by no more
 * than (size − S)·(f − 1): 0.01 µm at 0.1 mm from the setting and 10 K. Figures are rounded to 0.001 µm, far below
 * any step that can be read, so that no digits of binary arithmetic show up in the file. Readings that have no
 * size yet keep their figures.
 */
export function readingConverter(
  before: SetUp,
  after: SetUp,
  standards: readonly Standard[],
): (reading: Reading) => Reading {
  const from = sideOf(before, standards)
  const to = sideOf(after, standards)
  if (!from || !to || (isOfSizes(before.entry) && isOfSizes(after.entry))) return (reading) => reading
  return ({ sizesMm, dialUm, ...rest }) => {
    const lengths = (sizesMm ?? dialUm ?? []).map((value) => lengthOf(value, from))
    const values = lengths.map((length) => writtenAs(length, to))
    return isOfSizes(after.entry) ? { ...rest, sizesMm: values } : { ...rest, dialUm: values }
  }
}

/** A set-up as its readings need it. */
interface Side {
  readonly setUp: SetUp
  readonly reference: ReadingReference
  /** 1 + α_r·(T_r − 20). */
  readonly factor: number
}

function sideOf(setUp: SetUp, standards: readonly Standard[]): Side | undefined {
  const standard = standards.find(({ id }) => id === setUp.standardId)
  if (!standard) throw new Error(`No standard with the id "${setUp.standardId}"`)
  const { perK } = standardExpansion(standard)
  const reference = readingReference(setUp, perK)
  const celsius = setUp.referenceTemperatureC ?? setUp.boreTemperatureC ?? 20
  return reference && { setUp, reference, factor: 1 + perK * (celsius - 20) }
}

function lengthOf(value: number, { setUp, reference, factor }: Side): number {
  if (setUp.entry === 'direct') return value * factor
  const size = setUp.entry === 'size' ? value : sizeFromDial(value, reference, setUp.largerIs)
  return reference.sizeMm * factor + (size - reference.sizeMm)
}

function writtenAs(lengthMm: number, { setUp, reference, factor }: Side): number {
  if (setUp.entry === 'direct') return rounded(lengthMm / factor, 1e6)
  const offMm = lengthMm - reference.sizeMm * factor
  if (setUp.entry === 'size') return rounded(reference.sizeMm + offMm, 1e6)
  const clockwiseUm = setUp.largerIs === 'anticlockwise' ? -1000 * offMm : 1000 * offMm
  return rounded(reference.dialUm + clockwiseUm, 1e3)
}

function rounded(value: number, perUnit: number): number {
  return Math.round(value * perUnit) / perUnit + 0
}
