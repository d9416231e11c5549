import { describe, expect, it } from 'vitest'
import { keptValue, meaningOfHead, saysRadius, unitIn } from '../../../src/formats/column-meaning'

describe('the head of a column', () => {
  it.each([
    ['depth_mm', 'depth-mm'],
    ['Depth (in)', 'depth-inch'],
    ['level', 'depth-open'],
    ['axis_deg', 'axis'],
    ['Angle, °', 'axis'],
    ['read1_mm', 'size-mm'],
    ['Reading 2', 'value-open'],
    ['size_in', 'size-inch'],
    ['Diameter [0.0001 in]', 'size-ten-thousandth'],
    ['Deviation µm', 'deviation-um'],
    ['deviation (\u03bcm)', 'deviation-um'],
    ['dev. 0,0001"', 'deviation-ten-thousandth'],
    ['deviation mm', 'deviation-mm'],
    ['dial_um', 'dial-um'],
    ['dial_0.0001in', 'dial-ten-thousandth'],
    ['dial', 'value-open'],
    ['value 0.0001 in', 'value-open'],
    ['bore', 'bore'],
    ['bore_mm', 'size-mm'],
    ['Cylinder no.', 'bore'],
    ['state', 'survey'],
    ['Date', 'date'],
    ['hours', 'hours'],
    ['repeat', 'repeat'],
    ['temp_part_C', 'ignored'],
    ['radial_um', 'ignored'],
    ['remarks', undefined],
    ['', undefined],
  ])('%j says %j', (head, meaning) => {
    expect(meaningOfHead(head)).toBe(meaning)
  })

  it('says of radii that they are none of its diameters', () => {
    expect(['radial_um', 'Radius, mm', 'diameter', 'traditional'].map(saysRadius)).toEqual([
      true,
      true,
      false,
      false,
    ])
  })

  it('names a unit only as a word of its own', () => {
    expect(['summary', 'in', 'Bohrung', 'drum', 'mm', 'x 10 in'].map(unitIn)).toEqual([
      undefined,
      'inch',
      undefined,
      undefined,
      'mm',
      'inch',
    ])
  })
})

describe('a reading in inches', () => {
  // The international inch is 25.4 mm exactly (ISO 31-1; 1959 agreement); so 0.0001 in is 2.54 µm.
  it.each([
    [2.126, 'size-inch', { as: 'size', value: 54.0004 }],
    [21260, 'size-ten-thousandth', { as: 'size', value: 54.0004 }],
    [-3, 'deviation-ten-thousandth', { as: 'deviation', value: -7.62 }],
    [0.0005, 'deviation-inch', { as: 'deviation', value: 12.7 }],
    [4, 'dial-ten-thousandth', { as: 'dial', value: 10.16 }],
    [0.012, 'deviation-mm', { as: 'deviation', value: 12 }],
    [12, 'value-open', undefined],
  ] as const)('of %s as %s is kept as %j', (value, meaning, kept) => {
    expect(keptValue(value, meaning)).toEqual(kept)
  })
})
