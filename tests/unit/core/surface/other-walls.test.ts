import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { gridOf } from '../../../../src/core/surface/grid-of'
import { otherWalls } from '../../../../src/core/surface/other-walls'
import { wallOf } from '../../../../src/core/surface/wall'
import { wallCorrelation } from '../../../../src/core/surface/wall-correlation'
import type { WallGrid } from '../../../../src/core/surface/wall-grid'
import { made, type Plan } from './invented-cylinder'
import { raggedSurveys } from './ragged-survey'

const seed = 19510401
const rad = Math.PI / 180
const few = { rows: 10, columns: 12 }

function drawnFor(plan: Plan, shares: { common?: number; individual?: number } = {}) {
  const { bore, finding } = made(plan)
  const stations = finding.stations.map((station) => ({
    ...station,
    commonMm: shares.common ?? station.commonMm,
    individualMm: shares.individual ?? station.individualMm,
  }))
  const own = { ...finding, stations }
  const wall = wallOf(bore, own)
  if (!wall) throw new Error('expected a wall')
  return { wall, grid: gridOf(wall, own, few) }
}

function wallsOf({ wall, grid }: ReturnType<typeof drawnFor>, count: number) {
  const others = otherWalls(wall, grid, seed)
  if (!others.known) throw new Error(`expected walls: ${others.why}`)
  return { spreadMm: others.spreadMm, deviationsUm: Array.from({ length: count }, () => others.next()) }
}

/** Mean and standard deviation over the walls at a depth and angle on the grid, µm from the drawn wall. */
function overWalls(grid: WallGrid, walls: readonly Float32Array[], depthMm: number, degrees: number) {
  const row = grid.depthsMm.indexOf(depthMm)
  const column = grid.angles.findIndex((angle) => Math.abs(angle - degrees * rad) < 1e-9)
  if (row < 0 || column < 0) throw new Error(`no node at ${depthMm}, ${degrees}`)
  const node = row * grid.angles.length + column
  const apart = walls.map((wall) => (wall[node] ?? 0) - (grid.deviationsUm[node] ?? 0))
  const mean = apart.reduce((a, b) => a + b) / apart.length
  const squares = apart.reduce((sum, value) => sum + (value - mean) ** 2, 0)
  return { mean, spread: Math.sqrt(squares / (apart.length - 1)) }
}

const spot = (depthMm: number, axisDegrees: number, um: number) => ({
  depthMm,
  axisDegrees,
  diameterMm: 54 + um / 1000,
})

/** Three readings so far apart that none knows of another. */
const lone = { spots: [spot(10, 0, -20), spot(250, 0, 0), spot(490, 0, 20)], lengthMm: 500 }

const draws = 2000
/** Five standard deviations of a standard deviation of so many draws, as a share of it: 1/√(2n). */
const tolerance = 5 / Math.sqrt(2 * draws)

describe(`other walls that fit the same readings (seed ${seed}, ${draws} draws)`, () => {
  it('spread at a lone reading by its own u and the shared one, and far from all by the field’s own spread', () => {
    const bore = drawnFor(lone, { common: 0.0015, individual: 0.002 })
    const { deviationsUm, spreadMm } = wallsOf(bore, draws)
    expect(spreadMm).toBeCloseTo(0.02, 10)
    // u = √(2² + 1.5²) = 2.5 µm; knowing the field to 20 µm takes half a percent off the 2 µm.
    for (const depthMm of [10, 250, 490]) {
      const { spread } = overWalls(bore.grid, deviationsUm, depthMm, 0)
      expect(spread / 2.5).toBeGreaterThan(1 - 0.005 - tolerance)
      expect(spread / 2.5).toBeLessThan(1 + tolerance)
    }
    // Halfway between readings 240 mm apart: six lengths of correlation from each.
    const middle = bore.grid.depthsMm.reduce((best, depth) =>
      Math.abs(depth - 130) < Math.abs(best - 130) ? depth : best,
    )
    const far = overWalls(bore.grid, deviationsUm, middle, 90)
    expect(far.spread / Math.hypot(20, 1.5)).toBeGreaterThan(1 - tolerance)
    expect(far.spread / Math.hypot(20, 1.5)).toBeLessThan(1 + tolerance)
  })

  it('have the drawn wall as their mean, everywhere, to what so many draws can tell', () => {
    const bore = drawnFor(lone, { common: 0.0015, individual: 0.002 })
    const { deviationsUm } = wallsOf(bore, draws)
    for (const depthMm of bore.grid.depthsMm) {
      const { mean, spread } = overWalls(bore.grid, deviationsUm, depthMm, 90)
      expect(Math.abs(mean)).toBeLessThan((5 * spread) / Math.sqrt(draws))
    }
  })

  it('spread between two near readings as kriging says, worked out here for two readings by hand', () => {
    // Two on one axis 20 mm apart, a third out of reach: the covariance of two is inverted as 2 × 2.
    const plan = { spots: [spot(30, 0, -20), spot(50, 0, 20), spot(400, 0, 0)], lengthMm: 420 }
    const bore = drawnFor(plan, { individual: 0.004 })
    const { deviationsUm, spreadMm } = wallsOf(bore, draws)
    const sigma = spreadMm * 1000
    const depthMm = bore.grid.depthsMm.find((depth) => depth > 50 && depth < 75) ?? Number.NaN
    const k = [30, 50].map((depth) => sigma ** 2 * wallCorrelation(depth - depthMm, 0, Math.PI))
    const [a, b] = [sigma ** 2 + 16, sigma ** 2 * wallCorrelation(20, 0, Math.PI)]
    const [k1 = 0, k2 = 0] = k
    const known = (a * k1 * k1 - 2 * b * k1 * k2 + a * k2 * k2) / (a * a - b * b)
    const { spread } = overWalls(bore.grid, deviationsUm, depthMm, 0)
    expect(spread / Math.sqrt(sigma ** 2 - known)).toBeGreaterThan(1 - tolerance)
    expect(spread / Math.sqrt(sigma ** 2 - known)).toBeLessThan(1 + tolerance)
  })
})

describe('the correlation of other walls', () => {
  it('is 1 at a place, 0.4834 a length away, by Matérn’s formula (Rasmussen and Williams, 2006, equation 4.17)', () => {
    // (1 + √3)·e^(−√3), worked out to ten digits from memory of e and √3: 2.7320508076 × 0.1769212063.
    expect(wallCorrelation(20, 0, Math.PI)).toBeCloseTo(0.4833577, 7)
    expect(wallCorrelation(0, 0, Math.PI)).toBe(1)
  })

  it('is that of one place at θ and θ + 180° for two contacts, and not for three', () => {
    expect(wallCorrelation(3, 200 * rad, Math.PI)).toBeCloseTo(wallCorrelation(3, 20 * rad, Math.PI), 12)
    expect(wallCorrelation(0, Math.PI, 2 * Math.PI)).toBeLessThan(0.02)
  })
})

describe(`other walls of any ragged survey (seed ${seed})`, () => {
  it('are finite and alike at θ and θ + 180°, and the same for the same seed', () => {
    fc.assert(
      fc.property(
        raggedSurveys.filter(({ spots }) => spots.length >= 3),
        (survey) => {
          const bore = drawnFor(survey)
          const { deviationsUm } = wallsOf(bore, 2)
          const columns = bore.grid.angles.length
          for (const wall of deviationsUm) {
            expect(wall.every(Number.isFinite)).toBe(true)
            wall.forEach((um, node) => {
              const start = node - (node % columns)
              const opposite = wall[start + ((node - start + columns / 2) % columns)]
              expect(opposite).toBeCloseTo(um, 3)
            })
          }
          expect(wallsOf(bore, 2).deviationsUm).toEqual(deviationsUm)
        },
      ),
      { seed, numRuns: 40 },
    )
  })

  it('are refused with fewer than three readings, and where two are at one place, told either way round', () => {
    const pair = drawnFor({ spots: [spot(10, 0, 0), spot(50, 90, 5)] })
    expect(otherWalls(pair.wall, pair.grid, seed)).toEqual({ known: false, why: 'too-few-readings' })
    const twins = drawnFor({ spots: [spot(10, 0, 0), spot(50, 90, 5), spot(10, 180, 2)] })
    expect(otherWalls(twins.wall, twins.grid, seed)).toEqual({
      known: false,
      why: 'two-readings-at-one-place',
    })
  })

  it('keep the mean of a three-contact reading and vary between its contacts', () => {
    const plan: Plan = {
      spots: [spot(10, 0, 0), spot(50, 0, 10), spot(90, 0, 20)],
      gaugeKind: 'three-contact-micrometer',
    }
    const bore = drawnFor(plan, { individual: 0.001 })
    const { deviationsUm } = wallsOf(bore, 300)
    const row = bore.grid.depthsMm.indexOf(50)
    const columns = [0, 120, 240].map((degrees) =>
      bore.grid.angles.findIndex((angle) => Math.abs(angle - degrees * rad) < 1e-4),
    )
    const means = deviationsUm.map((wall) => {
      const at = columns.map((column) => wall[row * bore.grid.angles.length + column] ?? Number.NaN)
      return at.reduce((a, b) => a + b) / 3 + bore.grid.middleMm * 1000 - 54_000
    })
    const mean = means.reduce((a, b) => a + b) / means.length
    expect(mean).toBeCloseTo(10, 0)
    expect(Math.max(...means.map((one) => Math.abs(one - 10)))).toBeLessThan(4)
    expect(overWalls(bore.grid, deviationsUm, 50, 0).spread).toBeGreaterThan(2)
  })
})
