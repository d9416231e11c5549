import { describe, expect, it } from 'vitest'
import type { DepthFormName } from '../../../../src/core/findings'
import { seededRandom } from '../../../proof/seeded-random'
import { findingOf, measuredBore, onlyScaleDoubt } from '../measured-bore'

const levelsMm = [4, 12, 40, 70, 100, 125]
const axesDegrees = [0, 90]

function formOf(
  size: (depth: number) => number,
  noise: () => number = () => 0,
  ringTravel = { from: 0, to: 200 },
) {
  const rows = levelsMm.map((depth) => axesDegrees.map(() => 80 + size(depth) / 1000 + noise()))
  const doubt = onlyScaleDoubt(2)
  return findingOf(
    measuredBore(
      { levelsMm, axesDegrees, rows },
      { ...doubt, bore: { ...doubt.bore, ringTravelMm: ringTravel } },
    ),
  ).depthForm
}

describe('the form along the depth', () => {
  it.each<readonly [string, (depth: number) => number, readonly DepthFormName[]]>([
    ['a straight bore', () => 0, ['straight']],
    ['wear that fades downward', (d) => 40 - 0.3 * d, ['tapered']],
    ['a bore wide in the middle', (d) => 40 * Math.sin((Math.PI * (d - 4)) / 121), ['barrel']],
    ['a bore pinched in the middle', (d) => -40 * Math.sin((Math.PI * (d - 4)) / 121), ['waisted']],
    ['a mouth wider than a straight rest', (d) => (d === 4 ? 30 : 0), ['bell-mouthed']],
    ['a mouth at the bottom', (d) => (d === 125 ? 30 : 0), ['bell-mouthed']],
  ])('of %s is named', (_name, size, names) => {
    expect(formOf(size)?.names).toEqual(names)
  })

  it('has a step where the worn wall leaves the land', () => {
    const form = formOf((d) => (d === 4 ? 0 : 40), undefined, { from: 8, to: 200 })
    expect(form?.names).toEqual(['stepped'])
    expect(form?.step).toMatchObject({ landDepthMm: 4, depthMm: 12 })
    expect(form?.step?.valueMm).toBeCloseTo(0.04, 9)
  })

  it('is not known from one level', () => {
    const bore = measuredBore({ levelsMm: [10], axesDegrees, rows: [[80, 80]] })
    expect(findingOf(bore).depthForm).toBeUndefined()
  })

  it('calls a straight bore anything else in few surveys, 1000 from seed 21', () => {
    const random = seededRandom(21)
    let named = 0
    for (let i = 0; i < 1000; i++) {
      if (
        formOf(
          () => 0,
          () => random.normal(0.002),
        )?.names[0] !== 'straight'
      )
        named++
    }
    // Ends, middle and mouth are looked at, each at one in twenty.
    expect(named / 1000).toBeLessThan(0.13)
  })
})
