import { describe, expect, it } from 'vitest'
import type { Spec, Wall } from '../../src/core/measured'
import { blockedBy } from '../../src/core/ports/blocked'
import { type Circumstances, findingOf, first, measuredBore } from '../unit/core/measured-bore'

/** Figures of this file: common practice, no published source. */
const spec: Spec = {
  grades: [
    { name: '1', minMm: 66.4, maxMm: 66.412 },
    { name: '2', minMm: 66.412, maxMm: 66.424 },
  ],
}

const dial: Circumstances = {
  spec,
  gauge: { kind: 'dial-0.001-micrometer' },
  bore: { grade: '1', wall: { kind: 'plated-aluminium' } },
  setUp: { entry: 'deviation', settingSizeMm: 66.4 },
}

function station(deviationUm: number, given: Circumstances = dial) {
  const table = { levelsMm: [20], axesDegrees: [0], rows: [[[deviationUm, deviationUm, deviationUm]]] }
  return first(findingOf(measuredBore(table, given)).stations)
}

describe('a bore gauge with one-micron marks, zeroed at 66.400 mm (common practice, no published source)', () => {
  it.each(['clockwise', 'anticlockwise'] as const)(
    'reads 66.410 mm ten marks to the side that the direction test found larger, %s',
    (largerIs) => {
      const marks = largerIs === 'clockwise' ? 10 : -10
      const given = { ...dial, setUp: { ...dial.setUp, largerIs } }
      expect(station(marks, given).diameterMm).toBeCloseTo(66.41, 9)
      expect(station(-marks, given).diameterMm).toBeCloseTo(66.39, 9)
    },
  )

  it.each([
    [66.414, 2],
    [66.413, 1],
  ])(
    'is at %s mm past a band of 66.400 to 66.412 mm by %s µm, too close to call, leaning over',
    (size, past) => {
      const found = station((size - 66.4) * 1000)
      expect((found.diameterMm - 66.412) * 1000).toBeCloseTo(past, 6)
      expect(found.conformity).toMatchObject({ verdict: 'too-close', lean: 'above' })
      expect(found.conformity?.leanProbability).toBeGreaterThan(0.5)
    },
  )

  it('judges a bore of the second grade, 12 µm larger, by its own band', () => {
    const finding = findingOf(
      measuredBore(
        { levelsMm: [20], axesDegrees: [0], rows: [[18]] },
        { ...dial, bore: { ...dial.bore, grade: '2' } },
      ),
    )
    expect(finding.pair).toMatchObject({ kind: 'grade', gradeName: '2', minMm: 66.412, maxMm: 66.424 })
    expect(first(finding.stations).diameterMm).toBeCloseTo(66.418, 9)
  })
})

describe('ten kelvin at 72 mm from a steel micrometer (common practice, no published source)', () => {
  const aluminium: Wall = { kind: 'plated-aluminium' }
  const iron: Wall = { kind: 'grey-iron' }

  // Corrections to 20 °C, the reference temperature of ISO 1:2022.
  it.each([
    ['aluminium, both warm', aluminium, 30, 30, 8.28],
    ['iron, both warm', iron, 30, 30, -0.72],
    ['aluminium, the part alone warm', aluminium, 30, 20, 16.56],
    ['iron, the part alone warm', iron, 30, 20, 7.56],
  ])('make %s read large by the figure known', (_, wall, boreTemperatureC, referenceTemperatureC, um) => {
    const finding = findingOf(
      measuredBore(
        { levelsMm: [20], axesDegrees: [0], rows: [[72]] },
        {
          setUp: { settingSizeMm: 72, boreTemperatureC, referenceTemperatureC },
          bore: { wall },
        },
      ),
    )
    expect(-1000 * first(finding.stations).correctionMm).toBeCloseTo(um, 2)
    expect(-1000 * (finding.temperature?.totalMm ?? 0)).toBeCloseTo(um, 2)
  })
})

describe('ports that bar the middle of a bore (common practice, no published source)', () => {
  it('leave levels about 20 mm from each end to two contacts', () => {
    const band = { fromDepthMm: 32, toDepthMm: 60 }
    const bore = {
      ports: [
        { id: 'e', name: 'exhaust', fromDegrees: 320, toDegrees: 40, ...band },
        { id: 'l', name: 'left transfer', fromDegrees: 60, toDegrees: 120, ...band },
        { id: 'b', name: 'boost', fromDegrees: 140, toDegrees: 220, ...band },
        { id: 'r', name: 'right transfer', fromDegrees: 240, toDegrees: 300, ...band },
      ],
      belts: [],
    }
    const gauge = { kind: 'dial-0.001-micrometer' } as const
    const lengthMm = 92
    for (const axisDegrees of [0, 45, 90, 135]) {
      expect(blockedBy(bore, gauge, { depthMm: 20, axisDegrees }, 66.4)).toEqual([])
      expect(blockedBy(bore, gauge, { depthMm: lengthMm - 20, axisDegrees }, 66.4)).toEqual([])
    }
    for (const axisDegrees of [0, 90]) {
      expect(blockedBy(bore, gauge, { depthMm: lengthMm / 2, axisDegrees }, 66.4)).not.toEqual([])
    }
  })
})
