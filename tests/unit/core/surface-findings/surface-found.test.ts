import { describe, expect, it } from 'vitest'
import { inspect } from '../../../../src/core/inspect'
import type { Bore, SurfaceFinding } from '../../../../src/core/measured'
import { surfaceFound } from '../../../../src/core/surface-findings/surface-found'
import { measuredBore } from '../measured-bore'

const finding: SurfaceFinding = {
  id: 'one',
  kind: 'scratch',
  shape: 'patch',
  fromDepthMm: 10,
  toDepthMm: 30,
  fromDegrees: 350,
  toDegrees: 10,
}

function found(patch: Partial<SurfaceFinding>, ringTravelMm?: Bore['ringTravelMm']) {
  const [first] = surfaceFound(
    { surfaceFindings: [{ ...finding, ...patch }] },
    ringTravelMm ? { ringTravelMm } : {},
    180,
  )
  return first
}

describe('a surface finding with its size', () => {
  it('is as wide as its arc: 20° of a bore of 180 mm are 10π mm (circumference = π·D)', () => {
    expect(found({})?.across?.mm).toBeCloseTo(31.415926536, 9)
    expect(found({})).toMatchObject({ across: { from: 'place' }, along: { mm: 20, from: 'place' } })
  })

  it('has the width and the length that were measured, and says so', () => {
    expect(found({ acrossMm: 0.4, alongMm: 12 })).toMatchObject({
      across: { mm: 0.4, from: 'measured' },
      along: { mm: 12, from: 'measured' },
    })
  })

  it('has no width where its place is a line along the stroke, and no length where it is at one depth', () => {
    expect(found({ fromDegrees: 90, toDegrees: 90 })).not.toHaveProperty('across')
    expect(found({ toDepthMm: 10 })).not.toHaveProperty('along')
  })

  it('throws for a bore without a diameter', () => {
    expect(() => surfaceFound({}, {}, 0)).toThrow(/above 0 mm, got 0/)
  })
})

describe('what can end a bore that is in size', () => {
  it.each([
    [{ kind: 'bare-aluminium' }, 'bare-aluminium'],
    [{ kind: 'flaking', catchesNail: false }, 'flaking'],
    [{ kind: 'scratch', catchesNail: true }, 'catches-nail'],
    [{ kind: 'ridge', catchesNail: true }, 'catches-nail'],
    [{ kind: 'scuff', catchesNail: true }, 'catches-nail'],
    [{ kind: 'scratch', catchesNail: false }, undefined],
    [{ kind: 'scratch' }, undefined],
    [{ kind: 'pits' }, 'pits-perhaps-in-ring-path'],
    [{ kind: 'rust' }, undefined],
    [{ kind: 'glaze', catchesNail: true }, undefined],
    [{ kind: 'stuck-metal', catchesNail: true }, undefined],
    [{ kind: 'cross-hatch-worn-off' }, undefined],
    [{ kind: 'cross-hatch-seen' }, undefined],
  ] as const)('%o: %s', (patch, stop) => {
    expect(found(patch)?.stop).toBe(stop)
  })

  it('pits are in the ring path where they touch it, and outside of it they end nothing', () => {
    expect(found({ kind: 'pits' }, { from: 30, to: 60 })?.stop).toBe('pits-in-ring-path')
    expect(found({ kind: 'pits' }, { from: 30.1, to: 60 })?.stop).toBeUndefined()
    expect(found({ kind: 'pits' }, { from: 2, to: 9.9 })?.stop).toBeUndefined()
  })

  it('a scratch on which no fingernail was tried asks for one', () => {
    expect(found({})?.nailWouldTell).toBe(true)
    expect(found({ catchesNail: false })?.nailWouldTell).toBe(false)
    expect(found({ kind: 'rust' })?.nailWouldTell).toBe(false)
  })
})

describe('a wall whose length is not known', () => {
  it('is drawn past its deepest level, or past a mark that lies deeper', () => {
    const table = { levelsMm: [10, 50], axesDegrees: [0], rows: [[80.01], [80.012]] }
    const plain = measuredBore(table)
    const [bore] = plain.bores
    const [survey] = bore?.surveys ?? []
    if (!bore || !survey) throw new Error('no survey')
    const { lengthMm: _, ...unknown } = bore
    const drawn = (toDepthMm: number) => {
      const marked = { ...survey, surfaceFindings: [{ ...finding, toDepthMm }] }
      return inspect({ ...plain, bores: [{ ...unknown, surveys: [marked] }] }).bores[0]?.drawnLengthMm
    }
    expect(drawn(40)).toBe(60)
    expect(drawn(95)).toBe(105)
  })
})

describe('surface findings among what the readings prove', () => {
  it('stand beside the verdict and change no figure of it', () => {
    const table = {
      levelsMm: [10, 50],
      axesDegrees: [0, 90],
      rows: [
        [80.01, 80.011],
        [80.012, 80.01],
      ],
    }
    const clean = measuredBore(table, { spec: { newMinMm: 80, newMaxMm: 80.03 } })
    const [bore] = clean.bores
    const [survey] = bore?.surveys ?? []
    if (!bore || !survey) throw new Error('no survey')
    const scored = { ...survey, surfaceFindings: [{ ...finding, catchesNail: true }] }
    const before = inspect(clean).bores[0]
    const after = inspect({ ...clean, bores: [{ ...bore, surveys: [scored] }] }).bores[0]
    expect(before?.surface).toEqual([])
    expect(after?.surface).toMatchObject([{ id: 'one', stop: 'catches-nail' }])
    expect({ ...after, surface: [] }).toEqual(before)
  })
})
