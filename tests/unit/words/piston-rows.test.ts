import { describe, expect, it } from 'vitest'
import { inspect } from '../../../src/core/inspect'
import type { Bore, Measured, Piston, RingGap, Spec } from '../../../src/core/measured'
import { pistonRows } from '../../../src/words/piston-rows'
import type { Row } from '../../../src/words/row'
import { boreOf, first, measuredBore, onlyScaleDoubt } from '../core/measured-bore'
import { certainPiston, withPistons } from '../core/piston/measured-fit'

const sizes = { top: [80.06, 80.052], bottom: [80.042, 80.04] } as const
const spec: Spec = { clearanceMinMm: 0.03, clearanceMaxMm: 0.07, clearanceLimitMm: 0.1 }

function rowsOf(measured: Measured): { readonly bore: readonly Row[]; readonly engine: readonly Row[] } {
  const findings = inspect(measured)
  const rows = pistonRows(measured, findings)
  return { bore: rows.ofBore(first(findings.bores)), engine: rows.ofEngine }
}

const named = (readMm: number, given: Partial<Piston> = {}) =>
  certainPiston(readMm, { name: 'Old', ...given })

describe('rows about clearance', () => {
  it('give least and most with their doubt, the window, the rule, and the end that decides as a bar', () => {
    const [row] = rowsOf(withPistons(sizes, [named(79.98, { state: 'fitted' })], { spec })).bore
    expect(row).toMatchObject({
      name: 'Clearance, Old',
      figure: '60 ± 2 to 80 ± 2 µm',
      verdict: 'inside',
      verdictText: 'fits',
      bar: { limit: 0.1 },
      place: { depthMm: 20, axisDegrees: 0 },
    })
    expect(row?.detail).toBe(
      'ran here · at least 30 µm, in service at most 100 µm · looser than new parts may be, 70 µm · smallest bore less piston to largest bore less piston · piston 79.980 at 20 °C · at rest at 20 °C',
    )
  })

  it('point at the tight end where that is nearer its limit', () => {
    const [row] = rowsOf(withPistons(sizes, [named(80.02)], { spec })).bore
    expect(row).toMatchObject({
      verdict: 'below',
      verdictText: 'too tight',
      bar: { limit: 0.03 },
      place: { depthMm: 100, axisDegrees: 90 },
    })
  })

  it('tell grades of bore and piston that differ', () => {
    const given = { spec: { ...spec, grades: [{ name: 'A', minMm: 80, maxMm: 80.1 }] }, bore: { grade: 'A' } }
    const detail = (grade: string) =>
      rowsOf(withPistons(sizes, [named(80, { grade })], given)).bore[0]?.detail
    expect(detail('B')).toContain('the bore is stamped A, the piston B')
    expect(detail('A')).not.toContain('stamped')
  })

  it('never call it the clearance of a running engine', () => {
    const { bore, engine } = rowsOf(withPistons(sizes, [named(80)], { spec }))
    expect([...bore, ...engine].map(({ name, detail }) => `${name} ${detail}`).join(' ')).not.toMatch(
      /running/i,
    )
  })

  it('say the chances where it is too close to call, and what was not recorded', () => {
    const bare: Piston = { id: 'piston', state: 'at-hand', readMm: 80.01 }
    const [row] = rowsOf(withPistons(sizes, [bare], { spec })).bore
    expect(row).toMatchObject({ name: 'Clearance, piston 1', verdictText: 'too close to call' })
    expect(row?.detail).toContain('about even whether it fits')
    expect(row?.detail).toContain('provisional: not recorded which micrometer measured the piston')
  })

  it('say why there is none, and stand without a mark where the manual gives no window', () => {
    const [none] = rowsOf(withPistons(sizes, [{ id: 'piston', state: 'at-hand' }], { spec })).bore
    expect(none).toMatchObject({
      figure: 'not yet',
      detail: 'nobody measured it and no sizes are given for it',
    })
    const [open] = rowsOf(withPistons(sizes, [named(80)])).bore
    expect(open?.verdictText).toBeUndefined()
    expect(open?.detail).toContain('no clearance from the manual entered')
  })

  it('gather the other pistons in one row, each with why it does not fit', () => {
    const pistons = [
      named(79.9, { id: 'old', state: 'fitted', boreId: 'bore' }),
      { id: 'a', state: 'obtainable', grade: 'A', minMm: 79.998, maxMm: 80 },
      { id: 'b', state: 'obtainable', grade: 'B', minMm: 80.03, maxMm: 80.032 },
      { id: 'over', state: 'obtainable', oversizeMm: 0.5, minMm: 80.5, maxMm: 80.51 },
    ] as const
    const { bore, engine } = rowsOf(withPistons(sizes, pistons, { spec }))
    expect(bore.map(({ name, figure }) => [name, figure])).toEqual([
      ['Clearance, Old', '140 ± 2 to 160 ± 2 µm'],
      ['Clearance, piston of grade A', '41 ± 3 to 61 ± 3 µm'],
      ['Other pistons', 'none fits'],
    ])
    expect(bore[2]?.detail).toBe(
      'piston of grade B: 9 ± 3 to 29 ± 3 µm, too tight · piston 4, +0.5 mm: it is for another oversize',
    )
    expect(engine[0]).toMatchObject({
      name: 'Piston nearest the middle of the window',
      figure: 'piston of grade A',
      detail: 'at its worst 11 µm off it, 50 µm · not needed: Old',
    })
  })
})

describe('rows about the engine', () => {
  const engine = (largest: readonly number[], ofSpec: Spec, given: Partial<Bore> = {}): Measured => {
    const certain = onlyScaleDoubt(1)
    const base = measuredBore(
      { levelsMm: [20], axesDegrees: [0], rows: [[80]] },
      { ...certain, spec: ofSpec },
    )
    const bores = largest.map((size, index) => {
      const table = { levelsMm: [20, 80], axesDegrees: [0], rows: [[size], [80]] }
      return boreOf(table, first(base.setUps), { ...certain.bore, id: `${index + 1}`, ...given })
    })
    return { ...base, bores }
  }
  const oversizes: Spec = { newMinMm: 80, newMaxMm: 80.02, oversizesMm: [0.25, 0.5] }

  it('name the oversize, the order and what comes off each, and call the clean-up a hint', () => {
    const [row] = rowsOf(engine([80.05, 80.09], oversizes)).engine
    expect(row).toMatchObject({ name: 'Next oversize', figure: '+0.25 mm', verdictText: 'cleans up' })
    expect(row?.detail).toContain('all cylinders alike')
    expect(row?.detail).toContain(
      'the worst first: 2 (80.090 + 0.12 = 80.210, 0.160 to 0.270 mm off), 1 (80.050 + 0.12 = 80.170, ',
    )
    expect(row?.detail).toContain('a hint from memory of the trade')
  })

  it('say why a wall is not bored', () => {
    const plated = engine([80.05], oversizes, { wall: { kind: 'plated-aluminium' } })
    expect(rowsOf(plated).engine[0]).toMatchObject({ figure: 'none' })
    expect(rowsOf(plated).engine[0]?.detail).toContain('bore 1 is plated')
    const large = engine([80.45], oversizes)
    expect(rowsOf(large).engine[0]?.detail).toContain('none in the manual is large enough for bore 1')
  })

  it('are none where the manual has no oversize and no piston is on the list', () => {
    expect(rowsOf(engine([80.05], { newMinMm: 80, wearLimitMm: 80.01 })).engine).toEqual([])
  })

  it('pair pistons with bores, and name bores that none fits', () => {
    const measured = {
      ...engine([80, 80.3], { clearanceMinMm: 0.03, clearanceMaxMm: 0.05 }),
      pistons: [named(79.96, { id: 'a', name: 'Anvil' }), named(79.5, { id: 'b', name: 'Box' })],
    }
    expect(rowsOf(measured).engine[0]).toMatchObject({
      name: 'Which piston in which bore',
      figure: '1 of 2 bores served',
      detail:
        '1: Anvil · at its worst 0 µm off the middle of the window, 40 µm, in bore 1 · no piston on offer fits 2 · not needed: Box',
    })
  })
})

describe('rows about ring gaps', () => {
  const gapped = (gaps: readonly (readonly [number, number])[], ofSpec: Spec): Measured => {
    const base = withPistons(sizes, [], { spec: ofSpec })
    const bore = first(base.bores)
    const ringGaps = gaps.map(([depthMm, gapMm]): RingGap => ({ depthMm, gapMm }))
    return { ...base, bores: [{ ...bore, surveys: [{ ...first(bore.surveys), ringGaps }] }] }
  }
  const limits: Spec = { ringGapMinMm: 0.2, ringGapMaxMm: 0.4, ringGapLimitMm: 0.8 }

  it('stand against the limits of the manual, with the taper that they tell beside that of the gauge', () => {
    const rows = rowsOf(
      gapped(
        [
          [20, 0.36],
          [100, 0.31],
        ],
        limits,
      ),
    ).bore
    expect(rows.map(({ name, figure, verdictText }) => [name, figure, verdictText])).toEqual([
      ['Ring gap', '0.31 to 0.36 mm', 'inside'],
      ['Taper by ring gaps', '+16 ± 11 µm', undefined],
    ])
    expect(rows[0]).toMatchObject({ placeText: 'larger at 20 mm; smaller at 100 mm' })
    expect(rows[0]?.detail).toBe(
      'at least 0.2 mm · in service at most 0.8 mm · each ± 0.024 mm by feeler · the doubt of the feeler is a typical one',
    )
    expect(rows[1]?.detail).toContain('the gauge says +15 ± 2 µm: they agree as far as a feeler can tell')
  })

  it('say where a taper is too small for a feeler, and where gauge and gaps differ', () => {
    const small = rowsOf(
      gapped(
        [
          [20, 0.31],
          [100, 0.31],
        ],
        limits,
      ),
    ).bore[1]
    expect(small?.detail).toContain('too coarse to tell a taper under 11 µm')
    expect(
      rowsOf(
        gapped(
          [
            [20, 0.51],
            [100, 0.31],
          ],
          limits,
        ),
      ).bore[1]?.detail,
    ).toContain('one of the two has a slip')
  })

  it('say the chances of one too close to call, and that one in a land is not judged', () => {
    expect(rowsOf(gapped([[20, 0.81]], limits)).bore[0]).toMatchObject({ verdictText: 'too close to call' })
    expect(rowsOf(gapped([[20, 0.81]], {})).bore[0]?.detail).toContain('no ring gap from the manual entered')
  })
})
