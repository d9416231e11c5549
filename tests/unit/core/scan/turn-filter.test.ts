import { describe, expect, it } from 'vitest'
import { filterTurn, turnKernel } from '../../../../src/core/scan/turn-filter'
import { seededRandom } from '../../../proof/seeded-random'

const turn = (count: number) => Array.from({ length: count }, (_, i) => (360 * i) / count)
const wave = (angles: readonly number[], waves: number) =>
  Float64Array.from(angles, (angle) => Math.cos((waves * angle * Math.PI) / 180))

describe('the filter around the turn', () => {
  // ISO 16610-21: half of the amplitude at the cut-off, exp(−ln 2·(n/cut-off)²) elsewhere (from memory).
  it.each([
    [15, 360],
    [50, 720],
  ])(
    'lets half of %i undulations through at that cut-off, and of others what the standard says',
    (cutOff, count) => {
      const angles = turn(count)
      const kernel = turnKernel(angles, cutOff)
      for (const waves of [1, 2, 5, cutOff, 2 * cutOff]) {
        const { values } = filterTurn(kernel, wave(angles, waves))
        const expected = Math.exp(-Math.LN2 * (waves / cutOff) ** 2)
        for (const [i, value] of values.entries()) {
          expect(value).toBeCloseTo(expected * (wave(angles, waves)[i] ?? 0), 4)
        }
      }
    },
  )

  it('keeps a level of one height, over gaps and uneven angles too', () => {
    const random = seededRandom(91)
    const angles = turn(180).map((angle) => angle + random.rectangular(0.9) + 1)
    const radii = Float64Array.from(angles, (_, i) => (i > 40 && i < 70 ? Number.NaN : 12_345.678))
    const { values } = filterTurn(turnKernel(angles, 15), radii)
    for (const [i, value] of values.entries()) {
      if (Number.isNaN(radii[i])) expect(value).toBeNaN()
      else expect(value).toBeCloseTo(12_345.678, 9)
    }
  })

  it('marks what lies within half a cut-off wavelength of a gap, across 0° too, and of an angle not listed', () => {
    const angles = turn(360)
    const radii = new Float64Array(360)
    for (const missing of [100, 101, 102, 359]) radii[missing] = Number.NaN
    const { nearGap } = filterTurn(turnKernel(angles, 15), radii)
    const marked = [...nearGap.entries()].filter(([, near]) => near === 1).map(([i]) => i)
    const within = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, i) => from + i)
    expect(marked).toEqual([...within(0, 11), ...within(88, 99), ...within(103, 114), ...within(347, 358)])
    const listed = angles.filter((angle) => angle < 100 || angle > 140)
    const some = filterTurn(turnKernel(listed, 15), new Float64Array(listed.length))
    expect(listed.filter((_, i) => some.nearGap[i] === 1)).toEqual([...within(88, 99), ...within(141, 152)])
  })

  it('marks nothing on a level without a gap', () => {
    expect(filterTurn(turnKernel(turn(72), 15), new Float64Array(72)).nearGap).toEqual(new Uint8Array(72))
  })

  it('says by how much it takes scatter down, against 2000 simulated levels from seed 92', () => {
    const random = seededRandom(92)
    const angles = turn(120)
    const kernel = turnKernel(angles, 15)
    let squares = 0
    let factor = 0
    for (let i = 0; i < 2000; i++) {
      const filtered = filterTurn(
        kernel,
        new Float64Array(120).map(() => random.normal(1)),
      )
      squares += (filtered.values[7] ?? 0) ** 2 / 2000
      factor = filtered.scatterFactor
    }
    expect(Math.sqrt(squares) / factor).toBeGreaterThan(0.95)
    expect(Math.sqrt(squares) / factor).toBeLessThan(1.05)
  })

  it('reaches no further than half a turn with a cut-off of one', () => {
    const angles = turn(8)
    const { values } = filterTurn(turnKernel(angles, 1), Float64Array.of(8, 0, 0, 0, 0, 0, 0, 0))
    expect(values.every((value) => value >= 0)).toBe(true)
    expect(values[3]).toBeCloseTo(values[5] ?? Number.NaN, 12)
  })

  it('refuses a cut-off that is none', () => {
    expect(() => turnKernel(turn(72), 0)).toThrow(RangeError)
  })
})
