import { smallInverse } from './small-inverse'

/** A place that a bound of a band touches. */
export interface Contact {
  readonly index: number
  readonly side: 'upper' | 'lower'
}

/** The best shift c: values less directions·c lie at `upper` and below, and at `lower` and above. */
export interface Band {
  readonly shift: Float64Array
  readonly upper: number
  readonly lower: number
  readonly contacts: readonly Contact[]
}

/** Values with a direction each: [place · dimensions + k]. */
export interface Directed {
  readonly dimensions: number
  readonly directions: Float64Array
  readonly values: Float64Array
}

/** Steps without any gain after which the rule that cannot go round in circles takes over. */
const patience = 30

/** And after which rounding is taken to blame: from there each step counts less of what lies outside. */
const lastPatience = 200

/** Past this something is wrong with us: such programmes take some tens of steps. */
const mostSteps = 5000

/** Rounding of a value less a shift of length 1 along it. */
const roundingShare = 1e-15

/** A shift of so many times the spread of the values has no bound. */
const unbounded = 1e6

/**
 * The shift c that makes the band of r − n·c narrowest, largest less smallest; undefined where the places leave a
 * direction free. The true minimum of this linear programme: where it ends no place lies outside the band, and the
 * contacts' multipliers prove that no shift makes it narrower.
 *
 * Solved on the dual (maximise Σλr − Σμr with Σλ = Σμ = 1, Σλn = Σμn, λ, μ ≥ 0) by the revised simplex method, each
 * step from a fresh inverse, Bland's rule (Math. Oper. Res. 2 (1977)) where steps gain nothing. Accuracy: rounding; what
 * lies outside the bounds found, if anything, is counted into `upper` and `lower`.
 * `near` are the contacts of a programme that is nearly the same, to begin with: they make it shorter, and no different.
 * Source of the method: Dantzig, Linear Programming and Extensions (1963), chapters 5 to 9.
 */
export function narrowestBand(directed: Directed, near: readonly Contact[] = []): Band | undefined {
  return solveProgramme(directed, true, near)
}

/**
 * The shift c that makes the largest of r − n·c smallest; `lower` is then the least that is found there. Undefined
 * where it has no bound, as for directions that fit in a half-circle. Method as for `narrowestBand`.
 */
export function lowestCover(directed: Directed, near: readonly Contact[] = []): Band | undefined {
  return solveProgramme(directed, false, near)
}

interface Column {
  /** Place, or the artificial column of a dimension. */
  readonly index: number
  readonly side: 'upper' | 'lower' | 'artificial'
  readonly entries: Float64Array
  readonly gain: number
}

function solveProgramme(directed: Directed, twoSided: boolean, near: readonly Contact[]): Band | undefined {
  const { values } = directed
  const { largest, smallest } = extremes(values)
  const spread = values[largest] === undefined ? 0 : (values[largest] ?? 0) - (values[smallest] ?? 0)
  const size = Math.max(Math.abs(values[largest] ?? 0), Math.abs(values[smallest] ?? 0))
  if (values.length < directed.dimensions + (twoSided ? 2 : 1)) return undefined
  if (spread === 0) return flat(directed, twoSided)
  let tolerance = 1e-13 * spread + 4e-16 * size
  const basis =
    nearBasis(directed, twoSided, near) ??
    startingBasis(directed, twoSided, largest, smallest, unbounded * spread)
  let idle = 0
  let best = Number.NEGATIVE_INFINITY
  for (let step = 0; step < mostSteps; step++) {
    const state = solvedBasis(basis, twoSided)
    if (!state) throw new Error('narrowestBand: a basis without an inverse')
    const entering = priced(directed, state.prices, twoSided, tolerance, idle > patience)
    if (!entering) return finished(directed, basis, state.prices, twoSided)
    exchange(basis, state, entering, idle > patience)
    // By duality the width of the basis rises from step to step.
    const width = (state.prices[0] ?? 0) + (twoSided ? (state.prices[1] ?? 0) : 0)
    idle = width > best + 1e-14 * spread ? 0 : idle + 1
    best = Math.max(best, width)
    if (idle > lastPatience) tolerance *= 1.5
  }
  throw new Error(`narrowestBand: no end after ${mostSteps} steps over ${values.length} places`)
}

function extremes(values: Float64Array): { largest: number; smallest: number } {
  let largest = 0
  let smallest = 0
  for (let i = 1; i < values.length; i++) {
    if ((values[i] ?? 0) > (values[largest] ?? 0)) largest = i
    if ((values[i] ?? 0) < (values[smallest] ?? 0)) smallest = i
  }
  return { largest, smallest }
}

/** All values alike: no shift makes a band of nothing narrower. A cover could still go down where nothing holds it. */
function flat(directed: Directed, twoSided: boolean): Band | undefined {
  const value = directed.values[0] ?? 0
  if (!twoSided) {
    // With one of them raised by next to nothing the programme says whether there is a bound.
    const values = Float64Array.from(directed.values)
    values[0] = value + Math.max(1e-9, Math.abs(value) * 1e-9)
    if (!solveProgramme({ ...directed, values }, false, [])) return undefined
  }
  return { shift: new Float64Array(directed.dimensions), upper: value, lower: value, contacts: [] }
}

function columnOf(
  { dimensions, directions, values }: Directed,
  index: number,
  side: 'upper' | 'lower',
  twoSided: boolean,
) {
  const rows = twoSided ? 2 : 1
  const sign = side === 'upper' ? 1 : -1
  const entries = new Float64Array(rows + dimensions)
  entries[side === 'upper' ? 0 : 1] = 1
  for (let k = 0; k < dimensions; k++) entries[rows + k] = sign * (directions[index * dimensions + k] ?? 0)
  return { index, side, entries, gain: sign * (values[index] ?? 0) } satisfies Column
}

/** The largest and, for a band, the smallest value, with an artificial column for what their directions leave over. */
function startingBasis(
  directed: Directed,
  twoSided: boolean,
  largest: number,
  smallest: number,
  cost: number,
): Column[] {
  const rows = twoSided ? 2 : 1
  const real = [columnOf(directed, largest, 'upper', twoSided)]
  if (twoSided) real.push(columnOf(directed, smallest, 'lower', twoSided))
  const artificial = Array.from({ length: directed.dimensions }, (_, k): Column => {
    const over = real.reduce((sum, column) => sum + (column.entries[rows + k] ?? 0), 0)
    const entries = new Float64Array(rows + directed.dimensions)
    entries[rows + k] = over > 0 ? -1 : 1
    return { index: k, side: 'artificial', entries, gain: -cost }
  })
  return [...real, ...artificial]
}

/** The columns of contacts, where they are a basis in which nothing weighs less than nothing. */
function nearBasis(directed: Directed, twoSided: boolean, near: readonly Contact[]): Column[] | undefined {
  if (near.length !== directed.dimensions + (twoSided ? 2 : 1)) return undefined
  const basis = near.map(({ index, side }) => columnOf(directed, index, side, twoSided))
  return solvedBasis(basis, twoSided)?.weights.every((weight) => weight >= 0) ? basis : undefined
}

interface Solved {
  readonly inverse: Float64Array
  /** Weight of each column of the basis. */
  readonly weights: Float64Array
  /** Upper bound, for a band less the lower one, and the shift. */
  readonly prices: Float64Array
}

function solvedBasis(basis: readonly Column[], twoSided: boolean): Solved | undefined {
  const size = basis.length
  const matrix = new Float64Array(size * size)
  for (const [c, { entries }] of basis.entries()) {
    for (let row = 0; row < size; row++) matrix[row * size + c] = entries[row] ?? 0
  }
  const inverse = smallInverse(matrix, size)
  if (!inverse) return undefined
  const weights = new Float64Array(size)
  const prices = new Float64Array(size)
  for (let c = 0; c < size; c++) {
    weights[c] = (inverse[c * size] ?? 0) + (twoSided ? (inverse[c * size + 1] ?? 0) : 0)
    const gain = basis[c]?.gain ?? 0
    for (let row = 0; row < size; row++)
      prices[row] = (prices[row] ?? 0) + gain * (inverse[c * size + row] ?? 0)
  }
  return { inverse, weights, prices }
}

/** The place that lies furthest outside the band, or with `first` the first that lies outside; undefined for none. */
function priced(
  directed: Directed,
  prices: Float64Array,
  twoSided: boolean,
  tolerance: number,
  first: boolean,
) {
  const { dimensions, directions, values } = directed
  const rows = twoSided ? 2 : 1
  const upper = prices[0] ?? 0
  const lower = twoSided ? -(prices[1] ?? 0) : Number.NEGATIVE_INFINITY
  const shift = prices.subarray(rows)
  // A shift that runs away loses as many digits as it is longer than the values.
  let most = tolerance + shift.reduce((sum, c) => sum + Math.abs(c), 0) * roundingShare
  let index = -1
  let side: 'upper' | 'lower' = 'upper'
  for (let i = 0, at = 0; i < values.length; i++) {
    let rest = values[i] ?? 0
    for (let k = 0; k < dimensions; k++) rest -= (directions[at++] ?? 0) * (shift[k] ?? 0)
    if (rest - upper > most) {
      most = rest - upper
      index = i
      side = 'upper'
    } else if (lower - rest > most) {
      most = lower - rest
      index = i
      side = 'lower'
    } else continue
    if (first) break
  }
  return index < 0 ? undefined : columnOf(directed, index, side, twoSided)
}

/** Takes the column into the basis in the place of the one that comes to nothing first. */
function exchange(basis: Column[], { inverse, weights }: Solved, entering: Column, careful: boolean): void {
  const size = basis.length
  let leaving = -1
  let least = Number.POSITIVE_INFINITY
  let pivot = 0
  for (let c = 0; c < size; c++) {
    let along = 0
    for (let row = 0; row < size; row++)
      along += (inverse[c * size + row] ?? 0) * (entering.entries[row] ?? 0)
    if (!(along > 1e-11)) continue
    const ratio = Math.max(0, weights[c] ?? 0) / along
    const tie = Math.abs(ratio - least) <= 1e-12
    const sooner = careful ? orderOf(basis[c]) < orderOf(basis[leaving]) : along > pivot
    if (tie ? !sooner : ratio > least) continue
    least = tie ? Math.min(least, ratio) : ratio
    leaving = c
    pivot = along
  }
  if (leaving < 0) throw new Error('narrowestBand: nothing leaves the basis')
  basis[leaving] = entering
}

/** Artificial columns first, so that they are the first to leave. */
function orderOf(column: Column | undefined): number {
  if (!column) return Number.POSITIVE_INFINITY
  return column.side === 'artificial' ? -1 : 2 * column.index + (column.side === 'upper' ? 0 : 1)
}

function finished(
  directed: Directed,
  basis: readonly Column[],
  prices: Float64Array,
  twoSided: boolean,
): Band | undefined {
  const contacts: Contact[] = []
  for (const { index, side } of basis) {
    if (side === 'artificial') return undefined
    contacts.push({ index, side })
  }
  const shift = prices.slice(twoSided ? 2 : 1)
  const { dimensions, directions, values } = directed
  let upper = Number.NEGATIVE_INFINITY
  let lower = Number.POSITIVE_INFINITY
  for (let i = 0; i < values.length; i++) {
    let rest = values[i] ?? 0
    for (let k = 0; k < dimensions; k++) rest -= (directions[i * dimensions + k] ?? 0) * (shift[k] ?? 0)
    if (rest > upper) upper = rest
    if (rest < lower) lower = rest
  }
  return { shift, upper, lower, contacts }
}
