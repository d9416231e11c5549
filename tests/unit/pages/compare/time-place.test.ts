import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { placeInTime, timeAtPlace } from '../../../../src/pages/compare/time-place'

const places = [0, 0.3, 0.65, 1]

describe('the line through the surveys of a bore', () => {
  it('has each survey at its own place, and half way between two half way between their places', () => {
    expect(places.map((_, index) => placeInTime(places, index))).toEqual(places)
    expect(placeInTime(places, 0.5)).toBeCloseTo(0.15, 12)
    expect(placeInTime(places, 2.5)).toBeCloseTo(0.825, 12)
  })

  it('is exactly at a survey where a hand comes near it', () => {
    expect(timeAtPlace(places, 0.31)).toBe(1)
    expect(timeAtPlace(places, 0.29)).toBe(1)
    expect(timeAtPlace(places, 0.005)).toBe(0)
    expect(timeAtPlace(places, 1)).toBe(3)
  })

  it('goes on past the last survey where hours to come are named, the surveys nearer together by as much', () => {
    expect(placeInTime(places, 3, 0.6)).toBeCloseTo(0.6, 12)
    expect(placeInTime(places, 1, 0.6)).toBeCloseTo(0.18, 12)
    expect(placeInTime(places, 3.5, 0.6)).toBeCloseTo(0.8, 12)
    expect(placeInTime(places, 4, 0.6)).toBe(1)
    expect(timeAtPlace(places, 0.61, 0.6)).toBe(3)
    expect(timeAtPlace(places, 0.8, 0.6)).toBeCloseTo(3.5, 12)
    expect(timeAtPlace(places, 1, 0.6)).toBeCloseTo(4, 12)
    // Without any, it ends with the last survey.
    expect(timeAtPlace(places, 1)).toBe(3)
    expect(placeInTime(places, 3)).toBe(1)
  })

  it('leads to a time and back with hours to come too, 200 places from seed 4', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0.5, max: 0.95, noNaN: true }),
        (place, measured) => {
          const at = timeAtPlace(places, place, measured)
          const there = placeInTime(places, at, measured)
          expect(Math.abs(there - place)).toBeLessThan(Number.isInteger(at) ? 0.021 : 1e-9)
        },
      ),
      { seed: 4, numRuns: 200 },
    )
  })

  it('leads from a place to its time and back, 200 places from seed 3', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (place) => {
        const at = timeAtPlace(places, place)
        const there = placeInTime(places, at)
        expect(Math.abs(there - place)).toBeLessThan(Number.isInteger(at) ? 0.021 : 1e-9)
      }),
      { seed: 3, numRuns: 200 },
    )
  })
})
