import { chiSquaredQuantile } from '../statistics/chi-squared'
import { choleskyFactor, solvedBy } from '../statistics/cholesky'
import { smoothHarmonics } from './form-model'
import { bisquareWeight } from './robust-weights'
import { middle, type WorkingMap } from './working-map'

/** Lobes up to so many around are a form and no marks. */
const mostLobes = 8
/** What bolts print into the wall fades within this share of the depth. */
const fadingShare = 1 / 6
/** 1, along the depth, and fading from the deck; each as cosine and sine. */
const unknowns = 6
const rounds = 2
/** So many rows tell the three apart. */
const leastRows = 4
/** Lobes count from this chance on that noise alone would seem to have as much. */
const chance = 1e-5

/**
 * A map less its lobes of five to eight, where it has them: cos kθ and sin kθ, each constant, rising along the depth
 * and fading from the deck, by least squares with bisquare weights, one number of lobes after the other, twice over. A
 * number of lobes is taken away where its six terms explain more than noise does but once in 100,000 times (χ² with six
 * degrees), so that a streak, which has a little of every number, keeps its height. Own derivation.
 */
export function withoutHigherLobes(map: WorkingMap, sigma: number): WorkingMap {
  const { columns } = map
  const values = map.values.slice()
  const depths = Array.from({ length: map.rows }, (_, row) => middle(map.rowEdgesMm, row))
  const top = depths[0] ?? 0
  const span = (depths[depths.length - 1] ?? 0) - top
  if (!(span > 0) || map.rows < leastRows) return map
  const along = depths.map((depth) => {
    const share = (depth - top) / span
    return [1, 2 * share - 1, Math.exp(-share / fadingShare)] as const
  })
  const least = chiSquaredQuantile(1 - chance, unknowns)
  for (let round = 0; round < rounds; round++) {
    for (let lobes = smoothHarmonics + 1; lobes <= Math.min(mostLobes, columns / 4); lobes++) {
      const angles = Float64Array.from(
        { length: columns },
        (_, column) => (lobes * middle(map.columnEdges, column) * Math.PI) / 180,
      )
      const around = { columns, cosines: angles.map(Math.cos), sines: angles.map(Math.sin) }
      takeAway(values, along, around, sigma, least)
    }
  }
  return { ...map, values }
}

type Along = readonly (readonly [number, number, number])[]

interface Around {
  readonly columns: number
  readonly cosines: Float64Array
  readonly sines: Float64Array
}

function takeAway(values: Float64Array, along: Along, around: Around, sigma: number, least: number): void {
  const { matrix, right } = normalEquations(values, along, around, sigma)
  const terms = solvedBy(choleskyFactor(matrix, unknowns), right)
  const explained = terms.reduce((sum, term, i) => sum + term * (right[i] ?? 0), 0) / sigma ** 2
  if (explained < least) return
  for (const [row, [a, b, c]] of along.entries()) {
    const cosine = (terms[0] ?? 0) * a + (terms[1] ?? 0) * b + (terms[2] ?? 0) * c
    const sine = (terms[3] ?? 0) * a + (terms[4] ?? 0) * b + (terms[5] ?? 0) * c
    const { columns, cosines, sines } = around
    for (let column = 0, cell = row * columns; column < columns; column++, cell++) {
      values[cell] =
        (values[cell] ?? Number.NaN) - cosine * (cosines[column] ?? 0) - sine * (sines[column] ?? 0)
    }
  }
}

/** Sums over a row of w·cos², w·cos·sin, w·sin², w·v·cos and w·v·sin, put together with what the row has along. */
function normalEquations(
  values: Float64Array,
  along: Along,
  { columns, cosines, sines }: Around,
  sigma: number,
) {
  const matrix = new Float64Array(unknowns * unknowns)
  const right = new Float64Array(unknowns)
  for (const [row, factors] of along.entries()) {
    let [cc, cs, ss, vc, vs] = [0, 0, 0, 0, 0]
    for (let column = 0, cell = row * columns; column < columns; column++, cell++) {
      const value = values[cell] ?? Number.NaN
      if (Number.isNaN(value)) continue
      const cos = cosines[column] ?? 0
      const sin = sines[column] ?? 0
      const weight = bisquareWeight(value / sigma)
      cc += weight * cos * cos
      cs += weight * cos * sin
      ss += weight * sin * sin
      vc += weight * value * cos
      vs += weight * value * sin
    }
    for (const [i, one] of factors.entries()) {
      right[i] = (right[i] ?? 0) + one * vc
      right[i + 3] = (right[i + 3] ?? 0) + one * vs
      for (const [j, other] of factors.entries()) {
        const product = one * other
        add(matrix, i, j, product * cc)
        add(matrix, i, j + 3, product * cs)
        add(matrix, i + 3, j, product * cs)
        add(matrix, i + 3, j + 3, product * ss)
      }
    }
  }
  return { matrix, right }
}

function add(matrix: Float64Array, row: number, column: number, value: number): void {
  matrix[row * unknowns + column] = (matrix[row * unknowns + column] ?? 0) + value
}
