import { describe, expect, it } from 'vitest'
import { factorBanded, solveBanded } from '../../../../src/core/scan/banded-solve'
import { depthBasis } from '../../../../src/core/scan/depth-basis'
import { smoothHarmonics, solveForm, writeForm } from '../../../../src/core/scan/form-model'
import { levelSums, roomForSums } from '../../../../src/core/scan/level-sums'
import { turnTable } from '../../../../src/core/scan/turn-table'
import { choleskyFactor, solvedBy } from '../../../../src/core/statistics/cholesky'
import { seededRandom } from '../../../proof/seeded-random'

const radians = Math.PI / 180

describe('smooth functions along the depth', () => {
  it.each([[[5]], [[5, 9]], [[5, 9, 30]], [[4, 8, 14, 20, 26, 32, 38, 44, 50, 56, 62, 68, 76, 84]]])(
    'add up to 1 at each of the levels %j and are no more than there are levels',
    (depths) => {
      const { size, reach, first, values } = depthBasis(depths)
      expect(size).toBeLessThanOrEqual(depths.length)
      for (const level of depths.keys()) {
        const own = values.subarray(level * reach, (level + 1) * reach)
        expect(own.reduce((sum, value) => sum + value, 0)).toBeCloseTo(1, 12)
        expect(own.every((value) => value >= 0)).toBe(true)
        expect((first[level] ?? 0) + reach).toBeLessThanOrEqual(size)
      }
    },
  )

  it('stay few on a long and dense scan', () => {
    expect(depthBasis(Array.from({ length: 2000 }, (_, i) => i)).size).toBe(27)
  })
})

describe('the sums of a level', () => {
  it('are those of a plain loop over its places, seed 131', () => {
    const random = seededRandom(131)
    const angles = Array.from({ length: 50 }, () => 360 * random.even()).sort((a, b) => a - b)
    const values = Float64Array.from(angles, () => random.normal(5))
    const weights = Float64Array.from(angles, () => (random.even() < 0.2 ? 0 : random.even()))
    const sums = roomForSums(4, 50)
    levelSums(values, weights, 0, turnTable(angles, 8), 4, sums)
    const functions = (angle: number) => [
      1,
      ...[1, 2, 3, 4].flatMap((m) => [Math.cos(m * angle * radians), Math.sin(m * angle * radians)]),
    ]
    for (let a = 0; a < 9; a++) {
      for (let b = 0; b < 9; b++) {
        const plain = angles.reduce((sum, angle, i) => {
          const at = functions(angle)
          return sum + (weights[i] ?? 0) * (at[a] ?? 0) * (at[b] ?? 0)
        }, 0)
        expect(sums.matrix[9 * a + b]).toBeCloseTo(plain, 10)
      }
      const right = angles.reduce(
        (sum, angle, i) => sum + (weights[i] ?? 0) * (values[i] ?? 0) * (functions(angle)[a] ?? 0),
        0,
      )
      expect(sums.right[a]).toBeCloseTo(right, 10)
    }
  })
})

describe('a banded system', () => {
  it('is solved as a whole one is, with a band and two full rows at its end, seed 132', () => {
    const random = seededRandom(132)
    const size = 24
    const first = Int32Array.from({ length: size }, (_, row) => (row < 22 ? Math.max(0, row - 3) : 0))
    const whole = new Float64Array(size * size)
    for (let row = 0; row < size; row++) {
      whole[row * (size + 1)] = 20
      for (let column = first[row] ?? 0; column < row; column++) {
        const value = random.rectangular(1)
        whole[row * size + column] = value
        whole[column * size + row] = value
      }
    }
    const right = Float64Array.from({ length: size }, () => random.normal(3))
    const expected = solvedBy(choleskyFactor(whole, size), right)
    const system = { size, lower: whole.slice(), first }
    factorBanded(system)
    solveBanded(system, right)
    for (const [i, value] of right.entries()) expect(value).toBeCloseTo(expected[i] ?? Number.NaN, 12)
    const broken = { size: 1, lower: Float64Array.of(-1), first: Int32Array.of(0) }
    expect(() => factorBanded(broken)).toThrow(RangeError)
  })
})

describe('a form model', () => {
  const depthsMm = Array.from({ length: 12 }, (_, i) => 5 * i)
  const angles = Array.from({ length: 60 }, (_, i) => 6 * i)
  const base = { depthsMm, basis: depthBasis(depthsMm), table: turnTable(angles, 2 * smoothHarmonics) }

  it('gives a wall back that it can make, on every place and across a hole', () => {
    const wall = (z: number, t: number) =>
      3 + 0.2 * z + (4 - 0.1 * z) * Math.cos(t) + 2 * Math.sin(2 * t) + 0.01 * z * Math.cos(4 * t)
    const values = Float64Array.from(depthsMm.flatMap((z) => angles.map((angle) => wall(z, angle * radians))))
    const weights = values.map((_, at) => (at % 60 > 20 && at % 60 < 29 && at > 240 && at < 480 ? 0 : 1))
    for (const line of [0, 4] as const) {
      const model = { ...base, line }
      const form = new Float64Array(values.length)
      const coefficients = solveForm(model, values, weights)
      writeForm(model, coefficients, form)
      for (const [i, value] of form.entries()) expect(value).toBeCloseTo(values[i] ?? Number.NaN, 5)
      if (line === 4) expect(coefficients.line[2]).toBeCloseTo(-0.1, 6)
    }
  })
})
