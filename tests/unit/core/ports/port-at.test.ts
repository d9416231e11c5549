import { describe, expect, it } from 'vitest'
import type { Port } from '../../../../src/core/measured'
import { isWithinPort, portAt, portWidthDegrees } from '../../../../src/core/ports/port-at'

const port = (fromDegrees: number, toDegrees: number): Port => ({
  id: 'p',
  name: 'exhaust',
  fromDepthMm: 29,
  toDepthMm: 55,
  fromDegrees,
  toDegrees,
})

describe('a port', () => {
  it.each([
    [-45, 45, 90],
    [315, 45, 90],
    [350, 10, 20],
    [10, 350, 340],
    [0, 360, 360],
    [90, 90, 0],
  ])('from %d° clockwise to %d° is %d° wide', (from, to, width) => {
    expect(portWidthDegrees(port(from, to))).toBe(width)
  })

  it.each([
    [315, 45],
    [-45, 45],
    [675, -315],
  ])('from %d° to %d° holds its edges and what lies between across 0°, in any turn', (from, to) => {
    for (const angle of [-45, 0, 45, 315, 359.9, 360, 405, -720]) {
      expect(isWithinPort(port(from, to), 29, angle)).toBe(true)
      expect(isWithinPort(port(from, to), 55, angle)).toBe(true)
    }
    for (const angle of [45.01, 90, 180, 314.99, -46]) {
      expect(isWithinPort(port(from, to), 40, angle)).toBe(false)
    }
  })

  it('ends at its depths', () => {
    expect(isWithinPort(port(-45, 45), 28.99, 0)).toBe(false)
    expect(isWithinPort(port(-45, 45), 55.01, 0)).toBe(false)
  })

  it('grows by a margin on every side, edges included', () => {
    expect(isWithinPort(port(-45, 45), 26, 52, 3, 7)).toBe(true)
    expect(isWithinPort(port(-45, 45), 58, -52, 3, 7)).toBe(true)
    expect(isWithinPort(port(-45, 45), 25.9, 0, 3, 7)).toBe(false)
    expect(isWithinPort(port(-45, 45), 40, 52.1, 3, 7)).toBe(false)
    expect(isWithinPort(port(10, 350), 40, 0, 0, 10)).toBe(true)
  })

  it('that goes all round is hit at every angle', () => {
    for (const angle of [0, 90, 359.99]) expect(isWithinPort(port(0, 360), 40, angle)).toBe(true)
  })
})

describe('the port at a place', () => {
  it('is the one hit, or none', () => {
    expect(portAt([port(100, 120), port(-45, 45)], 40, 350)?.fromDegrees).toBe(-45)
    expect(portAt([port(100, 120), port(-45, 45)], 40, 90)).toBeUndefined()
  })
})
