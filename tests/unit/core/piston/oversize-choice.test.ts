import { describe, expect, it } from 'vitest'
import { inspect } from '../../../../src/core/inspect'
import type { Bore, Measured, Spec } from '../../../../src/core/measured'
import { oversizeChoice } from '../../../../src/core/piston/oversize-choice'
import { boreOf, first, measuredBore, onlyScaleDoubt } from '../measured-bore'

const spec: Spec = { newMinMm: 86, newMaxMm: 86.02, oversizesMm: [0.5, 0.25], cleanUpMm: 0.12 }

/** Bores by their largest size; the smallest is 86 mm. */
function engine(
  largestMm: readonly (number | undefined)[],
  ofSpec: Spec = spec,
  given: Partial<Bore> = {},
): Measured {
  const certain = onlyScaleDoubt(1)
  const base = measuredBore({ levelsMm: [20], axesDegrees: [0], rows: [[86]] }, { ...certain, spec: ofSpec })
  const bores = largestMm.map((size, index) => {
    const rows = size === undefined ? [] : [[size], [86]]
    const table = { levelsMm: [20, 80], axesDegrees: [0], rows }
    return boreOf(table, first(base.setUps), { ...certain.bore, id: `${index + 1}`, ...given })
  })
  return { ...base, bores }
}

const choice = (measured: Measured) => oversizeChoice(measured, inspect(measured))

describe('the next oversize that cleans up', () => {
  it('is the smallest listed one that the worst bore fits into with its clean-up, for all bores alike', () => {
    const found = choice(engine([86.052, 86.098, 86.06]))
    expect(found).toMatchObject({
      known: true,
      alike: true,
      oversizeMm: 0.25,
      cleanUpIsHint: false,
      notMeasured: [],
    })
    if (!found.known) throw new Error(found.why)
    expect(found.bores.map(({ boreId, verdict }) => [boreId, verdict])).toEqual([
      ['2', 'inside'],
      ['3', 'inside'],
      ['1', 'inside'],
    ])
    expect(found.bores[0]?.neededMm).toBeCloseTo(86.218, 9)
    expect(found.bores[0]?.takenOff?.leastMm).toBeCloseTo(0.152, 9)
    expect(found.bores[0]?.takenOff?.mostMm).toBeCloseTo(0.27, 9)
  })

  it('is of each bore by itself where the manual says so', () => {
    const found = choice(engine([86.05, 86.2], { ...spec, oversizesAlike: false }))
    expect(found).toMatchObject({
      known: true,
      alike: false,
      bores: [
        { boreId: '2', ownOversizeMm: 0.5 },
        { boreId: '1', ownOversizeMm: 0.25 },
      ],
    })
    expect(choice(engine([86.05, 86.2]))).toMatchObject({ alike: true, oversizeMm: 0.5 })
  })

  it('takes the clean-up of the trade as a hint where the manual gives none', () => {
    const { cleanUpMm: _, ...without } = spec
    expect(choice(engine([86.05], without))).toMatchObject({ cleanUpMm: 0.12, cleanUpIsHint: true })
  })

  it('is too close to call where the worst bore with its clean-up all but fills it', () => {
    expect(choice(engine([86.1295]))).toMatchObject({ oversizeMm: 0.25, bores: [{ verdict: 'too-close' }] })
    expect(choice(engine([86.1305]))).toMatchObject({ oversizeMm: 0.5, bores: [{ verdict: 'inside' }] })
  })

  it('is larger than the oversize that a bore already has', () => {
    expect(choice(engine([86.26], spec, { oversizeMm: 0.25 }))).toMatchObject({ oversizeMm: 0.5 })
  })

  it('names pistons on offer for it, and bores that nobody measured', () => {
    const measured: Measured = {
      ...engine([86.05, undefined]),
      pistons: [
        { id: 'over', state: 'obtainable', oversizeMm: 0.25 },
        { id: 'standard', state: 'at-hand' },
      ],
    }
    expect(choice(measured)).toMatchObject({ pistonIds: ['over'], notMeasured: ['2'] })
  })
})

describe('no oversize', () => {
  it.each([
    ['plated', { kind: 'plated-aluminium' }],
    ['own-process', { kind: 'aluminium-silicon' }],
    ['manual-forbids', { kind: 'grey-iron', mayBeBored: false }],
  ] as const)('is chosen for a wall that may not be bored: %s', (why, wall) => {
    expect(choice(engine([86.05], spec, { wall }))).toEqual({ known: false, why, boreId: '1' })
  })

  it('is refused to a plated wall where the manual has it bored', () => {
    const wall = { kind: 'plated-aluminium', mayBeBored: true } as const
    expect(choice(engine([86.05], spec, { wall })).known).toBe(true)
  })

  it.each([
    ['none-given', {}, 86.05],
    ['none-large-enough', { oversizesMm: [0.25] }, 86.2],
    ['no-standard-size', { newMinMm: undefined, oversizesMm: [0.25] }, 86.05],
    ['no-readings', { oversizesMm: [0.25] }, undefined],
  ] as const)('is there: %s', (why, change, largest) => {
    const ofSpec: Spec = 'newMinMm' in change ? { oversizesMm: [0.25] } : { newMinMm: 86, ...change }
    expect(choice(engine([largest], ofSpec))).toMatchObject({ known: false, why })
  })

  it('is chosen while nobody said what the wall is', () => {
    const { wall: _, ...bore } = first(engine([86.05]).bores)
    expect(choice({ ...engine([86.05]), bores: [bore] })).toMatchObject({
      known: false,
      why: 'wall-not-recorded',
    })
  })
})
