import { describe, expect, it } from 'vitest'
import { type Wall, wallOf } from '../../../../src/core/surface/wall'
import { inventedCylinder, made, type Plan } from './invented-cylinder'

const rad = Math.PI / 180

function wall(plan: Plan): Wall {
  const { bore, finding } = made(plan)
  const found = wallOf(bore, finding)
  if (!found) throw new Error('expected a wall')
  return found
}

function cylinder(plan: Partial<Plan> = {}): Wall {
  const { bore, finding } = inventedCylinder(plan)
  const found = wallOf(bore, finding)
  if (!found) throw new Error('expected a wall')
  return found
}

/** Two levels × two axes, all read. */
const box = [
  { depthMm: 10, axisDegrees: 0, diameterMm: 54.02 },
  { depthMm: 10, axisDegrees: 90, diameterMm: 54.01 },
  { depthMm: 40, axisDegrees: 0, diameterMm: 54.04 },
  { depthMm: 40, axisDegrees: 90, diameterMm: 54.03 },
]

describe('the wall of the invented cylinder', () => {
  it('returns each of its 21 readings exactly, at both contacts, and says that they are readings', () => {
    const drawn = cylinder()
    expect(drawn.stations).toHaveLength(21)
    for (const station of drawn.stations) {
      for (const degrees of [station.axisDegrees, station.axisDegrees + 180, station.axisDegrees - 360]) {
        expect(drawn.at(station.depthMm, degrees * rad)).toBe(station.diameterMm)
        const state = drawn.state(station.depthMm, degrees * rad)
        expect(state.isReading).toBe(true)
        expect(state.nearest).toBe(station)
        expect(state.nearestDistanceMm).toBeCloseTo(0, 9)
      }
    }
  })

  it('takes each blocked axis at 35 mm from its own curve: 54.02506, 54.01968 and 54.01699 by PchipInterpolator of SciPy 1.10.1', () => {
    const drawn = cylinder()
    expect(drawn.at(35, 0)).toBeCloseTo(54.02505771951645, 9)
    expect(drawn.at(35, 45 * rad)).toBeCloseTo(54.019683820471535, 9)
    expect(drawn.at(35, 135 * rad)).toBeCloseTo(54.01698876718739, 9)
  })

  it('does not draw 35 mm as the circle of its one reading, which would be 7 µm out on 0°', () => {
    const drawn = cylinder()
    const circle = 54.018
    expect(drawn.at(35, 90 * rad)).toBeCloseTo(circle, 12)
    expect((drawn.at(35, 0) - circle) * 1000).toBeCloseTo(7.06, 2)
    for (let degrees = 0; degrees < 180; degrees += 1) {
      const place = drawn.at(35, degrees * rad)
      const corners = [45 * Math.floor(degrees / 45), 45 * (Math.floor(degrees / 45) + 1)]
      const nodes = corners.map((corner) => drawn.at(35, corner * rad))
      expect(place).toBeGreaterThanOrEqual(Math.min(...nodes))
      expect(place).toBeLessThanOrEqual(Math.max(...nodes))
    }
  })

  it('is hatched all round between 25 and 62 mm, where most axes have no reading at 35 mm', () => {
    const drawn = cylinder()
    for (let depth = 25.01; depth < 62; depth += 0.73) {
      for (let degrees = 0; degrees < 360; degrees += 5) {
        expect(drawn.state(depth, degrees * rad).hatched).toBe(true)
      }
    }
    expect(drawn.state(35, 90 * rad)).toMatchObject({ hatched: true, isReading: true })
    expect(drawn.state(25, 20 * rad).hatched).toBe(false)
    expect(drawn.state(62, 20 * rad).hatched).toBe(false)
  })

  it('is measured between levels within 8 mm of one, hatched beyond, and hatched past the outermost', () => {
    const drawn = cylinder()
    const hatched = (depth: number) => drawn.state(depth, 20 * rad).hatched
    expect([8, 12, 16, 20.5, 25].map(hatched)).toEqual([false, false, false, false, false])
    expect([70, 70.01, 71.99, 72].map(hatched)).toEqual([false, true, true, false])
    expect([0, 7.99, 80.01, 90].map(hatched)).toEqual([true, true, true, true])
  })

  it('is held constant past the outermost levels', () => {
    const drawn = cylinder()
    for (const degrees of [0, 20, 90, 170]) {
      expect(drawn.at(0, degrees * rad)).toBe(drawn.at(8, degrees * rad))
      expect(drawn.at(90, degrees * rad)).toBe(drawn.at(80, degrees * rad))
    }
  })

  it('names the port that a place lies in, edges included, also across 0°', () => {
    const drawn = cylinder()
    expect(drawn.state(40, 0).port).toBe('exhaust')
    expect(drawn.state(29, -45 * rad).port).toBe('exhaust')
    expect(drawn.state(40, 315 * rad).port).toBe('exhaust')
    expect(drawn.state(48, 180 * rad).port).toBe('boost')
    expect(drawn.state(48, 145 * rad).port).toBeUndefined()
    expect(drawn.state(28.9, 0).port).toBeUndefined()
  })
})

describe('the nearest reading', () => {
  it('of a place on an axis is measured along the depth', () => {
    const state = cylinder().state(20, Math.PI)
    expect(state.nearest).toMatchObject({ depthMm: 16, axisDegrees: 0 })
    expect(state.nearestDistanceMm).toBeCloseTo(4, 9)
    expect(state.isReading).toBe(false)
  })

  it('beside an axis is measured straight on the wall unrolled at the mean diameter, to either contact', () => {
    const drawn = wall({ spots: box })
    const state = drawn.state(14, 185 * rad)
    // Arc of 5° on a radius of 27.0125 mm, 4 mm along the depth: own arithmetic.
    expect(state.nearest).toMatchObject({ depthMm: 10, axisDegrees: 0 })
    expect(state.nearestDistanceMm).toBeCloseTo(Math.hypot(4, 5 * rad * 27.0125), 9)
  })

  it('is the reading itself within 0.01 mm and 0.01°', () => {
    const drawn = wall({ spots: box })
    expect(drawn.state(10.009, 90.009 * rad).isReading).toBe(true)
    expect(drawn.state(10.011, 90 * rad).isReading).toBe(false)
    expect(drawn.state(10, 90.011 * rad).isReading).toBe(false)
    expect(drawn.state(10, 359.995 * rad).isReading).toBe(true)
  })
})

describe('hatching', () => {
  it('covers a belt, its edges left out unless another belt or the end adjoins', () => {
    const belt = (name: string, fromDepthMm: number, toDepthMm: number) => ({
      id: name,
      name,
      fromDepthMm,
      toDepthMm,
    })
    const drawn = wall({ spots: box, belts: [belt('a', 13, 15), belt('b', 15, 17)] })
    const hatched = (depth: number) => drawn.state(depth, 1).hatched
    expect([12.9, 13, 13.1, 15, 16.9, 17, 17.1].map(hatched)).toEqual([
      false,
      false,
      true,
      true,
      true,
      false,
      false,
    ])
  })

  it('covers the cells beside a filled node, their common edge too, and no cell further', () => {
    const axes = [0, 30, 60, 90, 120, 150]
    const spots = [10, 18].flatMap((depthMm) =>
      axes.map((axisDegrees) => ({ depthMm, axisDegrees, diameterMm: 54 })),
    )
    const missing = spots.filter((s) => !(s.depthMm === 18 && s.axisDegrees === 60))
    const drawn = wall({ spots: missing, levelsMm: [10, 18], axesDegrees: axes })
    const hatched = (degrees: number) => drawn.state(14, degrees * rad).hatched
    expect([29.9, 30, 30.1, 60, 89.9, 90, 90.1].map(hatched)).toEqual([
      false,
      false,
      true,
      true,
      true,
      false,
      false,
    ])
    expect([210, 240, 270].map(hatched)).toEqual([false, true, false])
  })

  it('covers everything where there is one level only', () => {
    const drawn = wall({ spots: box.slice(0, 2) })
    expect(drawn.state(10, 0)).toMatchObject({ hatched: true, isReading: true })
    expect(drawn.state(14, 0).hatched).toBe(true)
  })

  it('covers a planned level and a planned axis that nobody has read', () => {
    const drawn = wall({ spots: box, levelsMm: [10, 40, 80], axesDegrees: [0, 45, 90] })
    expect(drawn.state(12, 30 * rad).hatched).toBe(true)
    expect(drawn.state(12, 120 * rad).hatched).toBe(false)
    expect(drawn.state(41, 120 * rad).hatched).toBe(true)
  })
})

describe('a filled node', () => {
  it('takes its level where its axis has readings on one side only', () => {
    const spots = box.filter((s) => !(s.depthMm === 40 && s.axisDegrees === 90))
    const more = [...spots, { depthMm: 40, axisDegrees: 45, diameterMm: 54.05 }]
    // Two readings at 40 mm, on 0° and 45°: 90° lies a third of the way from 45° on to 180°, with zero slopes.
    const share = 1 / 3
    const expected = 54.05 - 0.01 * share ** 2 * (3 - 2 * share)
    expect(wall({ spots: more }).at(40, 90 * rad)).toBeCloseTo(expected, 9)
  })

  it('takes the nearest reading of its axis where its level has one reading', () => {
    const spots = box.filter((s) => !(s.depthMm === 40 && s.axisDegrees === 90))
    expect(wall({ spots }).at(40, 90 * rad)).toBe(54.01)
  })

  it('takes the one reading of its level where its axis has none', () => {
    const spots = box.filter((s) => s.axisDegrees === 0)
    const drawn = wall({ spots, axesDegrees: [0, 90] })
    expect(drawn.at(10, 90 * rad)).toBe(54.02)
    expect(drawn.at(40, 90 * rad)).toBe(54.04)
  })

  it('is filled last, along its axis, where neither its axis nor its level has a reading', () => {
    const spots = box.filter((s) => s.axisDegrees === 0)
    const drawn = wall({ spots, axesDegrees: [0, 90], levelsMm: [10, 25, 40, 60] })
    expect(drawn.at(25, 90 * rad)).toBeCloseTo(54.03, 12)
    expect(drawn.at(60, 90 * rad)).toBe(54.04)
  })
})

describe('readings that do not count', () => {
  const notCounted = { depthMm: 25, axisDegrees: 0, diameterMm: 60, counted: false }
  const spots = [...box, notCounted]

  it('leave the wall as it is without them', () => {
    const drawn = wall({ spots, levelsMm: [10, 40] })
    expect(drawn.at(25, 0)).toBeCloseTo(54.03, 12)
    expect(drawn.state(25, 0).isReading).toBe(false)
  })

  it('make no wall alone', () => {
    const { bore, finding } = made({ spots: [notCounted] })
    expect(wallOf(bore, finding)).toBeUndefined()
  })
})

describe('a three-contact micrometer', () => {
  const spots = [
    { depthMm: 10, axisDegrees: 0, diameterMm: 54.02 },
    { depthMm: 14, axisDegrees: 0, diameterMm: 54.04 },
  ]
  const drawn = wall({ spots, gaugeKind: 'three-contact-micrometer' })

  it('is drawn as a round ring at each level', () => {
    for (let degrees = 0; degrees < 360; degrees += 7) {
      expect(drawn.at(10, degrees * rad)).toBe(54.02)
      expect(drawn.at(12, degrees * rad)).toBeCloseTo(54.03, 12)
    }
  })

  it('is hatched save under its three contacts', () => {
    const hatched = (degrees: number) => drawn.state(12, degrees * rad).hatched
    expect([0, 5, 120, 240, 355].map(hatched)).toEqual([false, false, false, false, false])
    expect([6, 60, 90, 180, 270, 354].map(hatched)).toEqual([true, true, true, true, true, true])
    expect(drawn.state(8, 0).hatched).toBe(true)
  })

  it('touches at 120° and 240°, and not across', () => {
    expect(drawn.state(10, 240 * rad).isReading).toBe(true)
    expect(drawn.state(10, 180 * rad).isReading).toBe(false)
  })

  it('is the mean of the readings of a level', () => {
    const two = [...spots, { depthMm: 10, axisDegrees: 60, diameterMm: 54.03 }]
    expect(wall({ spots: two, gaugeKind: 'three-contact-micrometer' }).at(10, 1)).toBeCloseTo(54.025, 12)
  })
})

describe('wallOf', () => {
  it('refuses a place that is no number', () => {
    const drawn = wall({ spots: box })
    expect(() => drawn.at(Number.NaN, 0)).toThrow(RangeError)
    expect(() => drawn.state(10, Number.POSITIVE_INFINITY)).toThrow(RangeError)
  })

  it('refuses a finding of another bore', () => {
    const { bore, finding } = made({ spots: box })
    expect(() => wallOf(bore, { ...finding, surveyId: 'other' })).toThrow(/no survey other/)
  })

  it('has the length that the finding draws', () => {
    expect(wall({ spots: box, lengthMm: 77 }).lengthMm).toBe(77)
  })
})
