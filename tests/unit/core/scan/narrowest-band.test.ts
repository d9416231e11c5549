import { describe, expect, it } from 'vitest'
import { type Directed, lowestCover, narrowestBand } from '../../../../src/core/scan/narrowest-band'
import { seededRandom } from '../../../proof/seeded-random'

/** All ways to choose `count` of the first `of` numbers. */
function choices(of: number, count: number, from = 0): number[][] {
  if (count === 0) return [[]]
  const found: number[][] = []
  for (let i = from; i <= of - count; i++)
    for (const rest of choices(of, count - 1, i + 1)) found.push([i, ...rest])
  return found
}

/** Gaussian elimination, written for this test alone. */
function solve(rows: number[][], right: number[]): number[] | undefined {
  const a = rows.map((row, i) => [...row, right[i] ?? 0])
  const n = a.length
  for (let c = 0; c < n; c++) {
    let p = c
    for (let r = c; r < n; r++) if (Math.abs(a[r]?.[c] ?? 0) > Math.abs(a[p]?.[c] ?? 0)) p = r
    const pivot = a[p]
    if (!pivot || Math.abs(pivot[c] ?? 0) < 1e-10) return undefined
    a[p] = a[c] ?? []
    a[c] = pivot
    for (let r = 0; r < n; r++) {
      const row = a[r]
      if (!row || r === c) continue
      const f = (row[c] ?? 0) / (pivot[c] ?? 1)
      for (let k = c; k <= n; k++) row[k] = (row[k] ?? 0) - f * (pivot[k] ?? 0)
    }
  }
  return a.map((row, i) => (row[n] ?? 0) / (row[i] ?? 1))
}

function rest({ dimensions, directions, values }: Directed, i: number, shift: readonly number[]): number {
  return shift.reduce((left, c, k) => left - c * (directions[i * dimensions + k] ?? 0), values[i] ?? 0)
}

/** The narrowest band over every set of contacts that can hold one, each tried with every split into upper and lower. */
function narrowestBySearch(directed: Directed): number {
  const { dimensions: d, directions, values } = directed
  let best = Number.POSITIVE_INFINITY
  for (const set of choices(values.length, d + 2)) {
    for (let split = 1; split < 2 ** (d + 2) - 1; split++) {
      const rows = set.map((i, at) => [
        ...Array.from({ length: d }, (_, k) => directions[i * d + k] ?? 0),
        split & (1 << at) ? 1 : 0,
        split & (1 << at) ? 0 : 1,
      ])
      const found = solve(
        rows,
        set.map((i) => values[i] ?? 0),
      )
      if (!found) continue
      const shift = found.slice(0, d)
      const all = Array.from(values, (_, i) => rest(directed, i, shift))
      best = Math.min(best, Math.max(...all) - Math.min(...all))
    }
  }
  return best
}

function lowestBySearch(directed: Directed): number {
  const { dimensions: d, directions, values } = directed
  let best = Number.POSITIVE_INFINITY
  for (const set of choices(values.length, d + 1)) {
    const rows = set.map((i) => [...Array.from({ length: d }, (_, k) => directions[i * d + k] ?? 0), 1])
    const found = solve(
      rows,
      set.map((i) => values[i] ?? 0),
    )
    if (!found) continue
    best = Math.min(best, Math.max(...Array.from(values, (_, i) => rest(directed, i, found.slice(0, d)))))
  }
  return best
}

function across(count: number, random: ReturnType<typeof seededRandom>, tilt: boolean): Directed {
  const dimensions = tilt ? 4 : 2
  const directions = new Float64Array(count * dimensions)
  const values = new Float64Array(count)
  for (let i = 0; i < count; i++) {
    const turn = 2 * Math.PI * ((i + random.even()) / count)
    const n = [Math.cos(turn), Math.sin(turn)]
    const z = random.rectangular(1)
    directions.set(tilt ? [...n, ...n.map((c) => c * z)] : n, i * dimensions)
    values[i] = random.normal(5) + 20 * (n[0] ?? 0) - 7 * (n[1] ?? 0)
  }
  return { dimensions, directions, values }
}

describe('the narrowest band', () => {
  it('across a circle is that of a search over every set of four contacts, 60 cases from seed 71', () => {
    const random = seededRandom(71)
    for (let i = 0; i < 60; i++) {
      const directed = across(8 + (i % 5), random, false)
      const band = narrowestBand(directed)
      expect(band && band.upper - band.lower).toBeCloseTo(narrowestBySearch(directed), 10)
    }
  })

  it('along a cylinder is that of a search over every set of six contacts, 6 cases from seed 72', () => {
    const random = seededRandom(72)
    for (let i = 0; i < 6; i++) {
      const directed = across(10, random, true)
      const band = narrowestBand(directed)
      expect(band && band.upper - band.lower).toBeCloseTo(narrowestBySearch(directed), 9)
    }
  })

  it('of 10,000 places is made wider by every shift from it, seed 73', () => {
    const random = seededRandom(73)
    const directed = across(10_000, random, true)
    const band = narrowestBand(directed)
    const width = (band?.upper ?? Number.NaN) - (band?.lower ?? Number.NaN)
    for (let i = 0; i < 40; i++) {
      const shift = Array.from(band?.shift ?? [], (c) => c + random.normal(10 ** -(1 + (i % 4))))
      const all = Array.from(directed.values, (_, at) => rest(directed, at, shift))
      expect(all.reduce((a, b) => Math.max(a, b)) - all.reduce((a, b) => Math.min(a, b))).toBeGreaterThan(
        width,
      )
    }
  })

  it('is the same wherever it begins, in a band and in a cover, 200 cases from seed 75', () => {
    const random = seededRandom(75)
    for (let i = 0; i < 200; i++) {
      const tilt = i % 2 === 1
      const directed = across(30, random, tilt)
      const near = Array.from({ length: tilt ? 6 : 4 }, () => ({
        index: Math.floor(random.even() * 30),
        side: random.even() < 0.5 ? ('upper' as const) : ('lower' as const),
      }))
      const band = narrowestBand(directed)
      for (const start of [near, band?.contacts ?? []]) {
        const again = narrowestBand(directed, start)
        expect(again && again.upper - again.lower).toBeCloseTo(band ? band.upper - band.lower : 0, 10)
      }
      const below = near.slice(1).map(({ index }) => ({ index, side: 'upper' as const }))
      expect(lowestCover(directed, below)?.upper).toBeCloseTo(lowestCover(directed)?.upper ?? 0, 10)
    }
  })

  it('has its contacts on its bounds, one more than two for each dimension', () => {
    const directed = across(200, seededRandom(74), true)
    const band = narrowestBand(directed)
    expect(band?.contacts).toHaveLength(6)
    for (const { index, side } of band?.contacts ?? []) {
      const bound = (side === 'upper' ? band?.upper : band?.lower) ?? Number.NaN
      expect(rest(directed, index, Array.from(band?.shift ?? []))).toBeCloseTo(bound, 10)
    }
  })

  it('ends on values that are all alike, in steps, and twice the same', () => {
    for (const value of [
      () => 3,
      (i: number) => i % 2,
      (i: number) => Math.round(Math.cos(i / 3) * 2),
      () => 0,
    ]) {
      const directions = new Float64Array(144).map((_, at) => {
        const turn = ((at >> 1) % 36) * (Math.PI / 18)
        return at % 2 === 0 ? Math.cos(turn) : Math.sin(turn)
      })
      const values = Float64Array.from({ length: 72 }, (_, i) => value(i % 36))
      const band = narrowestBand({ dimensions: 2, directions, values })
      const spread = Math.max(...values) - Math.min(...values)
      expect(band && band.upper - band.lower).toBeLessThanOrEqual(spread)
    }
  })
})

describe('the lowest cover', () => {
  it('is that of a search over every set of three contacts, 60 cases from seed 75', () => {
    const random = seededRandom(75)
    for (let i = 0; i < 60; i++) {
      const directed = across(8 + (i % 5), random, false)
      expect(lowestCover(directed)?.upper).toBeCloseTo(lowestBySearch(directed), 10)
    }
  })

  it('has no bound where the directions fit in a half-circle', () => {
    const directions = Float64Array.of(1, 0, Math.SQRT1_2, Math.SQRT1_2, 0.1, 0.9, -0.2, 0.9)
    expect(lowestCover({ dimensions: 2, directions, values: Float64Array.of(1, 2, 3, 4) })).toBeUndefined()
    expect(lowestCover({ dimensions: 2, directions, values: Float64Array.of(2, 2, 2, 2) })).toBeUndefined()
  })
})
