import { describe, expect, it } from 'vitest'
import type { Findings } from '../../../../src/core/findings'
import { inspect } from '../../../../src/core/inspect'
import type { Measured, Piston, Spec } from '../../../../src/core/measured'
import { pairingOf } from '../../../../src/core/piston/pairing'
import { boreOf, first, measuredBore, onlyScaleDoubt } from '../measured-bore'
import { certainPiston } from './measured-fit'

const spec: Spec = { clearanceMinMm: 0.03, clearanceMaxMm: 0.05 }

/** Bores of one size each, every station with hardly any doubt. */
function engine(
  sizesMm: readonly (number | undefined)[],
  pistons: readonly Piston[],
  ofSpec: Spec = spec,
): Measured {
  const certain = onlyScaleDoubt(0.1)
  const table = (size: number | undefined) => ({
    levelsMm: [20, 80],
    axesDegrees: [0],
    rows: [[size], [size]],
  })
  const base = measuredBore(table(80), { ...certain, spec: ofSpec })
  const bores = sizesMm.map((size, index) =>
    boreOf(table(size), first(base.setUps), { ...certain.bore, id: `${index + 1}` }),
  )
  return { ...base, bores, pistons }
}

function paired(measured: Measured, findings: Findings = inspect(measured)) {
  const pairing = pairingOf(measured, findings)
  if (!pairing.known) throw new Error(pairing.why)
  return { ...pairing, pairs: pairing.pairs.map(({ boreId, pistonId }) => `${boreId}:${pistonId}`) }
}

const at = (id: string, readMm: number, given: Partial<Piston> = {}) =>
  certainPiston(readMm, { id, ...given })

describe('which piston goes in which bore', () => {
  it('is the larger in the larger, so that the worst clearance is as near the middle of the window as it can be', () => {
    const found = paired(engine([80.008, 80, 80.004], [at('a', 79.96), at('b', 79.964), at('c', 79.968)]))
    expect(found.pairs).toEqual(['1:c', '2:a', '3:b'])
    expect(found.middleMm).toBeCloseTo(0.04, 9)
    expect(found.worst?.departureMm).toBeCloseTo(0, 9)
  })

  it('counts a departure at the end of the clearance that is further out', () => {
    const measured = engine([80], [at('a', 79.96)])
    const bore = first(measured.bores)
    const survey = first(bore.surveys)
    const readings = survey.readings.map((r, i) => (i === 0 ? { ...r, sizesMm: [80.006] } : r))
    const found = paired({ ...measured, bores: [{ ...bore, surveys: [{ ...survey, readings }] }] })
    expect(found.worst?.departureMm).toBeCloseTo(0.006, 9)
  })

  it('names bores that none fits, bores left without one, and spare pistons', () => {
    const found = paired(engine([80, 80.1, 80.001, undefined], [at('a', 79.96), at('spare', 79.5)]))
    expect(found.pairs).toEqual(['1:a'])
    expect(found).toMatchObject({
      fitNone: ['2'],
      left: ['3'],
      notMeasured: ['4'],
      sparePistonIds: ['spare'],
    })
  })

  it('takes a piston that can be had as often as it is needed', () => {
    const found = paired(
      engine([80, 80.001], [{ id: 'grade', state: 'obtainable', minMm: 79.96, maxMm: 79.962 }]),
    )
    expect(found.pairs).toEqual(['1:grade', '2:grade'])
    expect(found.sparePistonIds).toEqual([])
  })

  it('leaves a used piston to the bore that it ran in', () => {
    const found = paired(engine([80, 80.1], [at('used', 79.96, { state: 'fitted', boreId: '2' })]))
    expect(found.pairs).toEqual([])
    expect(found).toMatchObject({ fitNone: ['1', '2'], sparePistonIds: ['used'] })
  })

  it('may take a piston that is too close to call, and says so', () => {
    const measured = engine([80], [at('a', 79.97)])
    expect(paired(measured).pairs).toEqual(['1:a'])
    expect(paired(measured).worst?.fit.verdict).toBe('too-close')
  })

  it('is not known without pistons, without both ends of a window, and without readings', () => {
    const why = (measured: Measured) => {
      const pairing = pairingOf(measured, inspect(measured))
      return pairing.known ? '' : pairing.why
    }
    expect(why(engine([80], []))).toBe('no-pistons')
    expect(why(engine([80], [at('a', 79.96)], { clearanceMaxMm: 0.05 }))).toBe('no-window')
    expect(why(engine([undefined], [at('a', 79.96)]))).toBe('no-readings')
    expect(why(engine([80], [at('a', 79.96)], { clearanceMinMm: 0.03, clearanceLimitMm: 0.1 }))).toBe('')
  })
})
