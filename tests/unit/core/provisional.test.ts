import { describe, expect, it } from 'vitest'
import type { ProvisionalReason, SourceKind } from '../../../src/core/findings'
import type { Measured } from '../../../src/core/measured'
import { findingOf, first, measuredBore, type NotRecorded, without } from './measured-bore'

const spec = { wearLimitMm: 80.2 }
const one = { levelsMm: [10], axesDegrees: [0], rows: [[80.05]] }
const deviation = measuredBore({ ...one, rows: [[50]] }, { spec, setUp: { entry: 'deviation' } })

function assumed(measured: Measured): SourceKind[] {
  return first(findingOf(measured).stations)
    .contributions.filter((p) => p.assumed)
    .map((p) => p.kind)
}

describe('a verdict', () => {
  it('is firm where everything was recorded', () => {
    for (const measured of [deviation, measuredBore(one, { spec })]) {
      expect(findingOf(measured).provisional).toEqual([])
      expect(findingOf(measured).verdict).toMatchObject({ firm: true })
      expect(assumed(measured)).toEqual([])
    }
  })

  it.each<[NotRecorded, ProvisionalReason, SourceKind[]]>([
    ['zeroOpenUm', 'no-opening-zero', ['drift-measured']],
    ['zeroCloseUm', 'no-closing-zero', ['drift-preset']],
    ['boreTemperatureC', 'no-bore-temperature', ['temperature-difference']],
    ['referenceTemperatureC', 'no-reference-temperature', ['temperature-difference']],
    ['largerIs', 'no-direction-test', []],
  ])('is provisional without %s, and the assumed part is marked', (field, reason, kinds) => {
    const measured = without(deviation, field)
    expect(findingOf(measured).provisional).toEqual([reason])
    expect(findingOf(measured).verdict).toMatchObject({ known: true, firm: false })
    expect(assumed(measured)).toEqual(kinds)
  })

  it('is provisional while the setting size only stands in, where readings are counted from it', () => {
    const taken = { settingAssumed: true }
    const byDial = measuredBore({ ...one, rows: [[50]] }, { spec, setUp: { entry: 'deviation', ...taken } })
    for (const measured of [byDial, measuredBore(one, { spec, setUp: taken })]) {
      expect(findingOf(measured).provisional).toEqual(['no-setting-size'])
    }
    const direct = measuredBore(one, {
      spec,
      gauge: { kind: 'internal-micrometer-rods' },
      setUp: { entry: 'direct', ...taken },
    })
    expect(findingOf(direct).provisional).toEqual([])
  })

  it('is provisional where a micrometer was not checked or the kind of wall is not known', () => {
    const { errorUm: _, ...unchecked } = first(deviation.standards)
    const blind = { ...deviation, standards: [unchecked] }
    expect(findingOf(blind).provisional).toEqual(['no-micrometer-check'])
    expect(assumed(blind)).toEqual(['standard-error'])
    const { wall: __, ...bare } = first(deviation.bores)
    const unknown = { ...deviation, bores: [bare] }
    expect(findingOf(unknown).provisional).toEqual(['no-wall-kind'])
    expect(assumed(unknown)).toEqual(['wall-expansion'])
  })

  it('needs neither a direction test nor an opening zero for sizes, but for the drift', () => {
    const sizes = measuredBore(one, { spec })
    expect(findingOf(without(sizes, 'largerIs')).provisional).toEqual([])
    expect(findingOf(without(sizes, 'zeroOpenUm')).provisional).toEqual(['no-opening-zero'])
    expect(findingOf(without(sizes, 'zeroOpenUm', 'zeroCloseUm')).provisional).toEqual(['no-closing-zero'])
  })

  it('needs no closing zero of a gauge that holds no setting', () => {
    for (const kind of ['telescoping', 'internal-micrometer-rods'] as const) {
      const measured = without(measuredBore(one, { spec, gauge: { kind } }), 'zeroOpenUm', 'zeroCloseUm')
      expect(findingOf(measured).provisional).toEqual([])
    }
  })

  it('from three contacts is never firm, being about the mean of a level', () => {
    const finding = findingOf(measuredBore(one, { spec, gauge: { kind: 'three-contact-micrometer' } }))
    expect(finding.provisional).toEqual([])
    expect(finding.verdict).toMatchObject({ known: true, firm: false })
  })
})
