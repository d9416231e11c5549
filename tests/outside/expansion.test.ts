import { describe, expect, it } from 'vitest'
import { diameterAt20 } from '../../src/core/diameter/diameter-at-20'
import type { WallKind } from '../../src/core/measured'
import { standardExpansion, wallExpansion } from '../../src/core/temperature/expansion'

/**
 * Coefficients of linear expansion, per million and kelvin, room temperature to 100 °C, as printed in:
 * a university textbook of materials science, table B.6 (grey iron G1800 to G4000 11.4; steels 1040 11.3,
 * 1020 11.7, 4140 12.3; aluminium 356.0 21.5 and 6061 23.6); two handbook tables (grey iron 6.0 per million
 * and °F, which is 10.8); a die-casting association's table A-3-2 (aluminium-silicon 390 18.0, 380 22.0).
 */
const printed: Record<WallKind, { least: number; most: number }> = {
  'grey-iron': { least: 10.8, most: 11.4 },
  steel: { least: 11.3, most: 12.3 },
  'aluminium-silicon': { least: 18.0, most: 22.0 },
  'plated-aluminium': { least: 21.5, most: 23.6 },
}

const at20 = {
  settingMm: 80,
  standardErrorMm: 0,
  standardPerK: 0,
  wallPerK: 0,
  referenceC: 20,
  boreC: 20,
  deviationMm: 0,
}

describe('expansion against handbook tables', () => {
  it.each(Object.entries(printed))(
    'has for a wall of %s a typical coefficient whose stated doubt reaches the printed ones',
    (kind, { least, most }) => {
      const { perK, doubtPerK } = wallExpansion({ kind: kind as WallKind })
      const reach = doubtPerK * Math.sqrt(3)
      expect((perK - reach) * 1e6).toBeLessThanOrEqual(most)
      expect((perK + reach) * 1e6).toBeGreaterThanOrEqual(least)
      expect(Math.abs(perK * 1e6 - (least + most) / 2)).toBeLessThanOrEqual((most - least) / 2 + 1.1)
    },
  )

  it('takes for a setting standard the 11.5 per million and kelvin of GUM (JCGM 100:2008) H.1', () => {
    expect(standardExpansion({ id: 's', kind: 'ring' }).perK).toBeCloseTo(11.5e-6, 12)
  })
})

describe('a bore of 80 mm, 15 K above the 20 °C of ISO 1:2022', () => {
  // 80 mm × 15 K × the printed coefficient.
  it.each([
    ['grey iron of 11.4', 11.4e-6, 13.68],
    ['aluminium 356.0 of 21.5', 21.5e-6, 25.8],
    ['aluminium-silicon 390 of 18.0', 18e-6, 21.6],
    ['steel of 11.5', 11.5e-6, 13.8],
  ])('reads large by the printed coefficient times length times kelvin: %s', (_, wallPerK, um) => {
    const read = 80 * (1 + wallPerK * 15)
    const d = diameterAt20({ ...at20, wallPerK, boreC: 35, deviationMm: read - 80 })
    expect(d).toBeCloseTo(80, 12)
    expect((read - d) * 1000).toBeCloseTo(um, 9)
  })

  it('reads 12.000 µm large in aluminium 356.0 from a steel standard at the same temperature', () => {
    const read = 80 * (1 + 21.5e-6 * 15) - 80 * 11.5e-6 * 15
    expect((read - 80) * 1000).toBeCloseTo(12, 9)
    const d = diameterAt20({
      ...at20,
      standardPerK: 11.5e-6,
      wallPerK: 21.5e-6,
      referenceC: 35,
      boreC: 35,
      deviationMm: read - 80,
    })
    expect(d).toBeCloseTo(80, 12)
  })

  it('needs no correction at 20 °C, the reference temperature of ISO 1:2022, whatever it is made of', () => {
    expect(diameterAt20({ ...at20, wallPerK: 23e-6, standardPerK: 11.5e-6, deviationMm: 0.012 })).toBe(80.012)
  })
})
