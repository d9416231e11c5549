import { type BandedSystem, factorBanded, solveBanded } from './banded-solve'
import type { DepthBasis } from './depth-basis'
import { type LevelSums, levelSums, roomForSums } from './level-sums'
import type { TurnTable } from './turn-table'

/** The harmonics of the smooth form: mean, oval, three and four lobes, and the first where it is not the axis. */
export const smoothHarmonics = 4

/** Functions around: 1, cos θ, sin θ, … */
const round = 2 * smoothHarmonics + 1

/**
 * How much a bend of each harmonic along the depth is held back, as a share of what the readings say, from the mean to
 * four lobes: a mean may step from land to running surface; the lobes change slowly, so that they do not bend into what
 * stands alone between two ports. Own choice, on simulated bores.
 */
const stiffness = [0.001, 1, 1, 1, 1] as const

/**
 * A model of the wall that is linear in its coefficients: each harmonic around is a smooth function of the depth, or
 * the first is a straight line along it, which is an axis.
 */
export interface FormModel {
  readonly depthsMm: readonly number[]
  readonly basis: DepthBasis
  readonly table: TurnTable
  /** Unknowns of the straight line: 4 with its lean, 2 without; 0 where the first harmonic is a form like the others. */
  readonly line: 0 | 2 | 4
}

/** Coefficients of a model at every level: [level · 9 + function], with what the straight line was made of. */
export interface FormCoefficients {
  readonly byLevel: Float64Array
  /** x and y at depth 0 and their slopes, in the unit of the values and per mm. */
  readonly line: Float64Array
}

/**
 * Weighted least squares of a model, places without a weight left out: the normal equations level by level, banded
 * along the depth, the straight line as four columns at the end. What no reading speaks of is bridged by a penalty on
 * second differences along the depth (P-splines: Eilers and Marx, Statistical Science 11 (1996)), of so little weight
 * that it moves nothing where readings stand.
 */
export function solveForm(model: FormModel, values: Float64Array, weights: Float64Array): FormCoefficients {
  const { system, right } = normalEquations(model, values, weights)
  factorBanded(system)
  solveBanded(system, right)
  return coefficientsOf(model, right)
}

/**
 * What an error of 1 at each place adds to each of the straight line's coefficients where all places weigh alike: the
 * rows of (XᵀX)⁻¹Xᵀ that belong to it, one array of places for each coefficient. `present` holds 1 where there is a
 * value and 0 elsewhere, where what is given means nothing.
 */
export function lineInfluences(model: FormModel, present: Float64Array): Float64Array[] {
  const { system } = normalEquations(model, new Float64Array(present.length), present)
  factorBanded(system)
  return Array.from({ length: model.line }, (_, one) => {
    const unit = new Float64Array(system.size)
    unit[system.size - model.line + one] = 1
    solveBanded(system, unit)
    const influence = new Float64Array(present.length)
    writeForm(model, coefficientsOf(model, unit), influence)
    return influence
  })
}

/** Which functions around have splines of their own: all, or all but the first harmonic. */
function roundColumns(line: number): number[] {
  const all = Array.from({ length: round }, (_, k) => k)
  return line > 0 ? all.filter((k) => k !== 1 && k !== 2) : all
}

function normalEquations(model: FormModel, values: Float64Array, weights: Float64Array) {
  const { basis, line, depthsMm, table } = model
  const columns = roundColumns(line)
  const splines = basis.size * columns.length
  const size = splines + line
  const system: BandedSystem = {
    size,
    lower: new Float64Array(size * size),
    first: Int32Array.from({ length: size }, (_, row) =>
      row < splines
        ? Math.max(0, Math.floor(row / columns.length) - Math.max(2, basis.reach - 1)) * columns.length
        : 0,
    ),
  }
  const right = new Float64Array(size)
  const sums = roomForSums(smoothHarmonics, table.angles)
  const part = unknownsOf(columns, basis.reach, line, size)
  for (const [level, depth] of depthsMm.entries()) {
    levelSums(values, weights, level * table.angles, table, smoothHarmonics, sums)
    moveTo(part, basis, level, depth)
    addLevel(system, right, part, sums)
  }
  holdBack(system, basis, columns, splines)
  return { system, right }
}

/** The unknowns that a level touches, in rising order, with the function around and the factor of each. */
interface LevelPart {
  readonly columns: readonly number[]
  readonly unknowns: Int32Array
  readonly functions: Int32Array
  readonly factors: Float64Array
  readonly line: number
}

function unknownsOf(columns: readonly number[], reach: number, line: number, size: number): LevelPart {
  const splines = Array.from({ length: reach }, () => columns).flat()
  const lines = Array.from({ length: line }, (_, k) => 1 + (k % 2))
  const unknowns = new Int32Array(splines.length + line)
  for (let k = 0; k < line; k++) unknowns[splines.length + k] = size - line + k
  return {
    columns,
    unknowns,
    functions: Int32Array.from([...splines, ...lines]),
    factors: new Float64Array(unknowns.length),
    line,
  }
}

function moveTo(
  { columns, unknowns, factors, line }: LevelPart,
  basis: DepthBasis,
  level: number,
  depth: number,
): void {
  let at = 0
  for (let k = 0; k < basis.reach; k++) {
    const first = ((basis.first[level] ?? 0) + k) * columns.length
    const factor = basis.values[level * basis.reach + k] ?? 0
    for (let c = 0; c < columns.length; c++, at++) {
      unknowns[at] = first + c
      factors[at] = factor
    }
  }
  for (let k = 0; k < line; k++) factors[at + k] = k < 2 ? 1 : depth
}

/** Adds what a level says: each pair of its splines times its normal matrix around. */
function addLevel(system: BandedSystem, right: Float64Array, part: LevelPart, sums: LevelSums): void {
  const { unknowns, functions, factors } = part
  for (let i = 0; i < unknowns.length; i++) {
    const row = unknowns[i] ?? 0
    const factor = factors[i] ?? 0
    const around = functions[i] ?? 0
    right[row] = (right[row] ?? 0) + factor * (sums.right[around] ?? 0)
    for (let j = 0; j <= i; j++) {
      const at = row * system.size + (unknowns[j] ?? 0)
      const entry = sums.matrix[around * round + (functions[j] ?? 0)] ?? 0
      system.lower[at] = (system.lower[at] ?? 0) + factor * (factors[j] ?? 0) * entry
    }
  }
}

/** Adds the penalty on second differences of the splines' coefficients, in proportion to the diagonal. */
function holdBack(
  system: BandedSystem,
  basis: DepthBasis,
  columns: readonly number[],
  splines: number,
): void {
  let diagonal = 0
  for (let row = 0; row < splines; row++) diagonal += system.lower[row * (system.size + 1)] ?? 0
  const share = diagonal / splines
  const differences = [1, -2, 1]
  for (let spline = 0; spline + 2 < basis.size; spline++) {
    for (const [c, around] of columns.entries()) {
      const held = share * (stiffness[(around + 1) >> 1] ?? 0)
      for (let i = 0; i < 3; i++) {
        for (let j = 0; j <= i; j++) {
          const at = ((spline + i) * columns.length + c) * system.size + (spline + j) * columns.length + c
          system.lower[at] = (system.lower[at] ?? 0) + held * (differences[i] ?? 0) * (differences[j] ?? 0)
        }
      }
    }
  }
  // Where nothing that counts was read, 0 is as good as any.
  for (let row = 0; row < system.size; row++) {
    const at = row * (system.size + 1)
    system.lower[at] = (system.lower[at] ?? 0) + 1e-9 * share
  }
}

function coefficientsOf(
  { basis, line: unknowns, depthsMm }: FormModel,
  solved: Float64Array,
): FormCoefficients {
  const columns = roundColumns(unknowns)
  const line = new Float64Array(4)
  line.set(solved.subarray(solved.length - unknowns))
  const byLevel = new Float64Array(depthsMm.length * round)
  for (const [level, depth] of depthsMm.entries()) {
    for (let k = 0; k < basis.reach; k++) {
      const factor = basis.values[level * basis.reach + k] ?? 0
      const spline = (basis.first[level] ?? 0) + k
      for (const [c, around] of columns.entries()) {
        const at = level * round + around
        byLevel[at] = (byLevel[at] ?? 0) + factor * (solved[spline * columns.length + c] ?? 0)
      }
    }
    if (unknowns === 0) continue
    byLevel[level * round + 1] = (line[0] ?? 0) + depth * (line[2] ?? 0)
    byLevel[level * round + 2] = (line[1] ?? 0) + depth * (line[3] ?? 0)
  }
  return { byLevel, line }
}

/** The form at every place of the scan, µm, from its coefficients at the levels; written to `into`. */
export function writeForm({ table }: FormModel, { byLevel }: FormCoefficients, into: Float64Array): void {
  const { angles, cosines, sines } = table
  const levels = byLevel.length / round
  for (let level = 0; level < levels; level++) {
    into.fill(byLevel[level * round] ?? 0, level * angles, (level + 1) * angles)
    for (let m = 1; m <= smoothHarmonics; m++) {
      const c = byLevel[level * round + 2 * m - 1] ?? 0
      const s = byLevel[level * round + 2 * m] ?? 0
      for (let i = 0, to = level * angles, at = m * angles; i < angles; i++, to++, at++) {
        into[to] = (into[to] ?? 0) + c * (cosines[at] ?? 0) + s * (sines[at] ?? 0)
      }
    }
  }
}
