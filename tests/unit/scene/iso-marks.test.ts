import { describe, expect, it } from 'vitest'
import { deviationAt } from '../../../src/scene/grid-reading'
import { isoMarks } from '../../../src/scene/iso-marks'
import { evenGrid } from './drawn-cylinder'

describe('marks on iso-lines', () => {
  const slanted = evenGrid((row, column) => row * 3 - 9 + Math.cos((column / 12) * 2 * Math.PI))

  it('stand where the wall has just that deviation', () => {
    const marks = isoMarks(slanted, 2)
    expect(marks.length).toBeGreaterThan(8)
    for (const { deviationUm, places } of marks) {
      for (const { depthMm, angle } of places) {
        expect(deviationAt(slanted, depthMm, angle)).toBeCloseTo(deviationUm, 4)
      }
    }
  })

  it('name each whole multiple of the step between the smallest and the largest deviation', () => {
    // From −9 − 1 to 15 + 1.
    expect(isoMarks(slanted, 5).map(({ deviationUm }) => deviationUm)).toEqual([-10, -5, 0, 5, 10, 15])
  })

  it('leave out wall that nobody measured and patches that have their own sign', () => {
    const hatched = { ...slanted, hatched: slanted.hatched.map(() => 1) }
    const proven = { ...slanted, proven: slanted.proven.map(() => 1) }
    expect(isoMarks(hatched, 2)).toEqual([])
    expect(isoMarks(proven, 2)).toEqual([])
  })

  it('are none on a wall without any difference', () => {
    expect(
      isoMarks(
        evenGrid(() => 3.3),
        1,
      ),
    ).toEqual([])
  })
})
