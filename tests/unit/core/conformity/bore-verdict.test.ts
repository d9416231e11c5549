import { describe, expect, it } from 'vitest'
import type { BoreFinding } from '../../../../src/core/findings'
import type { Spec } from '../../../../src/core/measured'
import { studentQuantile } from '../../../../src/core/statistics/student'
import { findingOf, first, measuredBore } from '../measured-bore'

function known(finding: BoreFinding) {
  if (!finding.verdict.known) throw new Error(finding.verdict.why)
  return finding.verdict
}

const axesDegrees = [0, 45, 90, 135]
const levelsMm = [10, 30, 50, 70]

/** 16 stations 20 µm inside the max, but for one. */
function oneOf16(sizeMm: number, spec: Spec = { wearLimitMm: 80.05 }): BoreFinding {
  const rows = levelsMm.map((_, i) => axesDegrees.map((__, j) => (i === 1 && j === 2 ? sizeMm : 80.03)))
  return findingOf(measuredBore({ levelsMm, axesDegrees, rows }, { spec }))
}

const at = { depthMm: 30, axisDegrees: 90 }

describe('the verdict on a bore', () => {
  it('is inside when every station is', () => {
    expect(known(oneOf16(80.03))).toMatchObject({ verdict: 'inside', stations: 16, above: [], tooClose: [] })
  })

  it('is above when one station is past the limit by the factor for all', () => {
    const verdict = known(oneOf16(80.075))
    expect(verdict).toMatchObject({
      verdict: 'above',
      above: [at],
      provenAbove: [at],
      deciding: at,
      lean: 'above',
    })
  })

  it('is too close to call when a station is over by its own rule only, and says which and what would settle it', () => {
    const probe = oneOf16(80.06)
    const u = first(probe.stations.filter((s) => s.diameterMm > 80.05)).standardUncertaintyMm
    const nu = first(probe.stations).degreesOfFreedom
    const { factor } = known(probe)
    expect(factor).toBeGreaterThan(studentQuantile(0.95, nu) + 0.2)
    const between = oneOf16(80.05 + ((factor + studentQuantile(0.95, nu)) / 2) * u)
    const verdict = known(between)
    expect(verdict).toMatchObject({
      verdict: 'too-close',
      above: [at],
      provenAbove: [],
      deciding: at,
      lean: 'above',
    })
    const station = first(between.stations.filter((s) => s.diameterMm > 80.05))
    expect(station.conformity?.verdict).toBe('above')
    expect(verdict.settledByExpandedMm).toBeLessThan(station.expandedMm)
    expect(verdict.settledByExpandedMm).toBeGreaterThan(station.expandedMm / 2)
  })

  it('is decided by the station furthest out, also where several are far beyond doubt', () => {
    const table = { levelsMm: [10], axesDegrees: [0, 60, 120], rows: [[80.3, 80.5, 80.4]] }
    const over = findingOf(measuredBore(table, { spec: { wearLimitMm: 80.05 } }))
    expect(over.stations.map((s) => s.conformity?.probabilityAbove)).toEqual([1, 1, 1])
    expect(known(over).deciding).toEqual({ depthMm: 10, axisDegrees: 60 })
    const under = findingOf(measuredBore(table, { spec: { newMinMm: 80.9, newMaxMm: 81 } }))
    expect(known(under)).toMatchObject({ verdict: 'below', deciding: { axisDegrees: 0 }, lean: 'below' })
  })

  it('is decided by the station nearest to the limit where all are inside', () => {
    expect(known(oneOf16(80.032)).deciding).toEqual(at)
    expect(known(oneOf16(80.032)).lean).toBe('inside')
  })

  it('names both sides where one station is over and another under', () => {
    const spec = { newMinMm: 80, newMaxMm: 80.05 }
    const rows = [[80.2], [79.8]]
    const finding = findingOf(measuredBore({ levelsMm: [10, 20], axesDegrees: [0], rows }, { spec }))
    expect(known(finding)).toMatchObject({
      verdict: 'above',
      provenAbove: [{ depthMm: 10 }],
      provenBelow: [{ depthMm: 20 }],
    })
  })

  it('leans to the side that is likelier at the deciding station', () => {
    const verdict = known(oneOf16(80.051))
    expect(verdict).toMatchObject({ verdict: 'too-close', lean: 'above', tooClose: [at] })
    expect(verdict.leanProbability).toBeGreaterThan(0.5)
    expect(verdict.settledByExpandedMm).toBeGreaterThan(0)
  })
})

describe('the pair of limits', () => {
  const spec = {
    grades: [
      { name: 'A', minMm: 80, maxMm: 80.01 },
      { name: 'B', minMm: 80.01, maxMm: 80.02 },
    ],
  }
  const pair = (given: Spec, grade?: string) =>
    findingOf(
      measuredBore(
        { levelsMm: [10], axesDegrees: [0], rows: [[80]] },
        { spec: given, bore: grade ? { grade } : {} },
      ),
    ).pair

  it('is the grade stamped on the bore, else all grades together, else the band', () => {
    expect(pair(spec, 'B')).toEqual({ kind: 'grade', gradeName: 'B', minMm: 80.01, maxMm: 80.02 })
    expect(pair(spec)).toEqual({ kind: 'band', minMm: 80, maxMm: 80.02 })
    expect(pair(spec, 'unknown')).toEqual({ kind: 'band', minMm: 80, maxMm: 80.02 })
    expect(pair({ newMinMm: 80, newMaxMm: 80.03 })).toEqual({ kind: 'band', minMm: 80, maxMm: 80.03 })
  })

  it('is the smallest new size and the wear limit where there is one, with the largest new size drawn', () => {
    expect(pair({ ...spec, wearLimitMm: 80.1 }, 'B')).toEqual({
      kind: 'wear',
      minMm: 80.01,
      maxMm: 80.1,
      newMaxMm: 80.02,
    })
    expect(pair({ wearLimitMm: 80.1 })).toEqual({ kind: 'wear', maxMm: 80.1 })
  })
})
