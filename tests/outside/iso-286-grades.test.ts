import { describe, expect, it } from 'vitest'
import type { Spec } from '../../src/core/measured'
import { findingOf, measuredBore, onlyScaleDoubt } from '../unit/core/measured-bore'

/**
 * ISO 286-1:2010 table 1, µm (found in two stored tables that agree): IT6, IT7, IT8 over 50 up to and including
 * 80 mm, and over 80 up to and including 120 mm. H has its lower limit at the nominal size.
 */
const grades = {
  80: { H6: 19, H7: 30, H8: 46 },
  100: { H6: 22, H7: 35, H8: 54 },
} as const

function gradesAt(nominalMm: 80 | 100, aboveNominalUm: number) {
  const spec: Spec = {
    wearLimitMm: nominalMm + 1,
    grades: Object.entries(grades[nominalMm]).map(([name, um]) => ({
      name,
      minMm: nominalMm,
      maxMm: nominalMm + um / 1000,
    })),
  }
  const rows = [[nominalMm + aboveNominalUm / 1000]]
  const finding = findingOf(
    measuredBore({ levelsMm: [30], axesDegrees: [0], rows }, { ...onlyScaleDoubt(0.3), spec }),
  )
  return Object.fromEntries(finding.grades.map(({ gradeName, verdict }) => [gradeName, verdict]))
}

describe('the tolerances of ISO 286-1:2010 as size grades, u = 0.3 µm at one station', () => {
  it.each([
    [80, 18, { H6: 'inside', H7: 'inside', H8: 'inside' }],
    [80, 19, { H6: 'too-close', H7: 'inside', H8: 'inside' }],
    [80, 20, { H6: 'above', H7: 'inside', H8: 'inside' }],
    [80, 29, { H6: 'above', H7: 'inside', H8: 'inside' }],
    [80, 31, { H6: 'above', H7: 'above', H8: 'inside' }],
    [80, 45, { H6: 'above', H7: 'above', H8: 'inside' }],
    [80, 47, { H6: 'above', H7: 'above', H8: 'above' }],
    [100, 21, { H6: 'inside', H7: 'inside', H8: 'inside' }],
    [100, 23, { H6: 'above', H7: 'inside', H8: 'inside' }],
    [100, 36, { H6: 'above', H7: 'above', H8: 'inside' }],
    [100, 55, { H6: 'above', H7: 'above', H8: 'above' }],
  ] as const)('are told apart by a bore of %s mm that is %s µm larger', (nominal, um, verdicts) => {
    expect(gradesAt(nominal, um)).toEqual(verdicts)
  })
})
