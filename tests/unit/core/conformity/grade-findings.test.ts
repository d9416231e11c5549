import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { GradeFinding } from '../../../../src/core/findings'
import type { Grade, Spec } from '../../../../src/core/measured'
import { findingOf, measuredBore, onlyScaleDoubt } from '../measured-bore'

/** Four invented grades, 10 µm wide, and one of 3 µm. */
const grades: readonly Grade[] = [
  { name: 'A', minMm: 80, maxMm: 80.01 },
  { name: 'B', minMm: 80.01, maxMm: 80.02 },
  { name: 'C', minMm: 80.02, maxMm: 80.03 },
  { name: 'fine', minMm: 80.012, maxMm: 80.015 },
]

/** One station with u = 1 µm that is known, so that probabilities are those of the normal table. */
function oneStation(sizeMm: number, spec: Spec = { grades }): readonly GradeFinding[] {
  const table = { levelsMm: [10], axesDegrees: [0], rows: [[sizeMm]] }
  return findingOf(measuredBore(table, { spec, ...onlyScaleDoubt(1) })).grades
}

const verdicts = (found: readonly GradeFinding[]) =>
  Object.fromEntries(found.map(({ gradeName, verdict }) => [gradeName, verdict]))

describe('the verdict for each grade', () => {
  it('proves with 1.645 u, within which lie 90 % of a normal distribution (GUM, JCGM 100:2008, table G.1)', () => {
    expect(verdicts(oneStation(80.01165))).toMatchObject({ A: 'above', B: 'inside', C: 'below' })
    expect(verdicts(oneStation(80.01164))).toMatchObject({ A: 'too-close', B: 'too-close', C: 'below' })
    expect(verdicts(oneStation(80.01))).toMatchObject({ A: 'too-close', B: 'too-close', C: 'below' })
    const [, grade] = oneStation(80.0116)
    expect(grade).toMatchObject({ lean: 'inside', deciding: { depthMm: 10, axisDegrees: 0 } })
    // Φ(1.6)
    expect(grade?.leanProbability).toBeCloseTo(0.9452, 4)
  })

  it('says that a grade is too narrow for the gauge where its middle is not proven: 3.92 u is the least', () => {
    const found = oneStation(80.0135)
    expect(found.map(({ canBeProven }) => canBeProven)).toEqual([true, true, true, false])
    expect(verdicts(found)).toMatchObject({ B: 'inside', fine: 'too-close' })
    const narrow = (width: number) =>
      oneStation(80, { wearLimitMm: 81, grades: [{ name: 'n', minMm: 80, maxMm: 80 + width }] })[0]
    expect(narrow(0.003919)?.canBeProven).toBe(false)
    expect(narrow(0.003921)?.canBeProven).toBe(true)
  })

  it('is the same beside a wear limit, and is left out where one grade is all there is to judge', () => {
    expect(oneStation(80.015, { grades, wearLimitMm: 80.1 })).toEqual(oneStation(80.015))
    expect(oneStation(80.015, { grades: grades.slice(0, 1) })).toEqual([])
    expect(oneStation(80.015, { grades: grades.slice(0, 1), wearLimitMm: 80.1 })).toHaveLength(1)
    expect(oneStation(80.015, { wearLimitMm: 80.1 })).toEqual([])
    const table = { levelsMm: [10], axesDegrees: [0], rows: [[80.015]] }
    const compared = measuredBore(table, { spec: { grades }, bore: { role: 'for-comparison' } })
    expect(findingOf(compared).grades).toEqual([])
  })

  it('is that of the bore itself were it stamped with the grade (random surveys, seed 61)', () => {
    const size = fc.integer({ min: -80, max: 80 }).map((tenths) => 80.015 + tenths / 10_000)
    fc.assert(
      fc.property(
        fc.array(size, { minLength: 4, maxLength: 4 }),
        fc.constantFrom(0.6, 2.5),
        (sizes, scale) => {
          const table = {
            levelsMm: [10, 30],
            axesDegrees: [0, 90],
            rows: [sizes.slice(0, 2), sizes.slice(2)],
          }
          const finding = (grade?: string) =>
            findingOf(
              measuredBore(table, {
                spec: { grades },
                gauge: { scaleUm: scale, settingUm: 0.75 },
                bore: grade === undefined ? {} : { grade },
              }),
            )
          for (const each of finding().grades) {
            const { verdict } = finding(each.gradeName)
            if (!verdict.known) throw new Error(verdict.why)
            expect(each).toMatchObject({
              verdict: verdict.verdict,
              provenAbove: verdict.provenAbove,
              provenBelow: verdict.provenBelow,
              deciding: verdict.deciding,
              lean: verdict.lean,
            })
            expect(each.leanProbability).toBeCloseTo(verdict.leanProbability, 12)
          }
        },
      ),
      { seed: 61, numRuns: 40 },
    )
  })
})
