import type { RadialScan } from '../core/scan/radial-scan'

/** A scan has no more places than this: a million radii. */
export const mostScanPlaces = 1_000_000
/** Decimals that depths in mm and angles in degrees are told apart by. */
const decimals = 1e6
/** Fewer angles at a level make no circle. */
const leastAngles = 3
/** With fewer of its places filled than this the levels were measured at angles that differ. */
const leastFilled = 0.5

/** Radii as they were read, in the order of the file, with the line of each. */
export interface ReadRadii {
  readonly count: number
  readonly depthsMm: Float64Array
  /** Degrees as they stand in the file. */
  readonly angles: Float64Array
  /** µm; NaN where the cell is empty. */
  readonly radiiUm: Float64Array
  readonly lines: Int32Array
}

/** Grows as radii are read. */
export class RadiiReading {
  #depthsMm = new Float64Array(4096)
  #angles = new Float64Array(4096)
  #radiiUm = new Float64Array(4096)
  #lines = new Int32Array(4096)
  #count = 0

  add(depthMm: number, angle: number, radiusUm: number, line: number): void {
    if (this.#count === this.#lines.length) this.#grow()
    this.#depthsMm[this.#count] = depthMm
    this.#angles[this.#count] = angle
    this.#radiiUm[this.#count] = radiusUm
    this.#lines[this.#count] = line
    this.#count += 1
  }

  get radii(): ReadRadii {
    const end = this.#count
    return {
      count: end,
      depthsMm: this.#depthsMm.subarray(0, end),
      angles: this.#angles.subarray(0, end),
      radiiUm: this.#radiiUm.subarray(0, end),
      lines: this.#lines.subarray(0, end),
    }
  }

  #grow(): void {
    const size = this.#count * 2
    this.#depthsMm = larger(this.#depthsMm, new Float64Array(size))
    this.#angles = larger(this.#angles, new Float64Array(size))
    this.#radiiUm = larger(this.#radiiUm, new Float64Array(size))
    this.#lines = larger(this.#lines, new Int32Array(size))
  }
}

function larger<List extends Float64Array | Int32Array>(from: List, to: List): List {
  to.set(from)
  return to
}

/** One place that the file gives two radii for, by the lines of both. */
export interface TwiceRead {
  readonly line: number
  readonly otherLine: number
}

export type ScanOfRadii =
  | {
      readonly ok: true
      readonly scan: RadialScan
      readonly values: number
      /** Places that were read twice with the same figure. */
      readonly repeated: number
      /** Readings a whole turn on from where a level began: left out, with how far the two lie apart. */
      readonly closing: { readonly count: number; readonly farthestUm: number }
      readonly twice: readonly TwiceRead[]
    }
  | { readonly ok: false; readonly why: 'no-values' | 'too-few-angles' | 'too-many-places' }
  /** The levels do not share their angles: `line` has one that the level named first lacks. */
  | { readonly ok: false; readonly why: 'angles-differ'; readonly line: number; readonly depthMm: number }

/**
 * Radii in any order as a scan: a place for each depth at each angle, angles modulo 360. What a place gets a second time is
 * left out: said where the figures differ, unless it is the closing reading of a turn.
 */
export function scanOfRadii(radii: ReadRadii): ScanOfRadii {
  const depths = distinct(radii.depthsMm, rounded)
  const angles = distinct(radii.angles, onTurn)
  const columns = angles.values.length
  const places = depths.values.length * columns
  if (radii.count === 0) return { ok: false, why: 'no-values' }
  if (columns < leastAngles) return { ok: false, why: 'too-few-angles' }
  if (places > mostScanPlaces || radii.count < places * leastFilled) {
    const differing = firstDiffering(radii, depths, angles)
    return differing
      ? { ok: false, why: 'angles-differ', ...differing }
      : { ok: false, why: 'too-many-places' }
  }
  const radiiUm = new Float64Array(places).fill(Number.NaN)
  const firsts = new Int32Array(places).fill(-1)
  const twice: TwiceRead[] = []
  let [values, repeated, closings, farthestUm] = [0, 0, 0, 0]
  for (let at = 0; at < radii.count; at++) {
    const place = (depths.of[at] ?? 0) * columns + (angles.of[at] ?? 0)
    const value = radii.radiiUm[at] ?? Number.NaN
    const first = firsts[place] ?? -1
    if (first < 0) {
      firsts[place] = at
      radiiUm[place] = value
      if (!Number.isNaN(value)) values += 1
      continue
    }
    const before = radiiUm[place] ?? Number.NaN
    if (Math.abs((radii.angles[at] ?? 0) - (radii.angles[first] ?? 0)) >= 360 - 1 / decimals) {
      closings += 1
      farthestUm = Math.max(farthestUm, Math.abs(value - before) || 0)
    } else if (Object.is(value, before)) repeated += 1
    else twice.push({ line: radii.lines[at] ?? 0, otherLine: radii.lines[first] ?? 0 })
  }
  if (values === 0) return { ok: false, why: 'no-values' }
  return {
    ok: true,
    scan: { depthsMm: depths.values, anglesDegrees: angles.values, radiiUm },
    values,
    repeated,
    closing: { count: closings, farthestUm },
    twice,
  }
}

interface Distinct {
  /** Increasing. */
  readonly values: readonly number[]
  /** Which of them each entry has. */
  readonly of: Int32Array
}

function distinct(list: Float64Array, normal: (value: number) => number): Distinct {
  const numbers = new Map<number, number>()
  const of = new Int32Array(list.length)
  // Most entries repeat what another has: the rounding is done once for each.
  const known = new Map<number, number>()
  for (let at = 0; at < list.length; at++) {
    const raw = list[at] ?? 0
    let number = known.get(raw)
    if (number === undefined) {
      const value = normal(raw)
      number = numbers.get(value) ?? numbers.size
      numbers.set(value, number)
      known.set(raw, number)
    }
    of[at] = number
  }
  const values = [...numbers.keys()].sort((a, b) => a - b)
  const order = new Int32Array(numbers.size)
  for (const [index, value] of values.entries()) order[numbers.get(value) ?? 0] = index
  for (let at = 0; at < of.length; at++) of[at] = order[of[at] ?? 0] ?? 0
  return { values, of }
}

function rounded(value: number): number {
  return Math.round(value * decimals) / decimals
}

function onTurn(value: number): number {
  const angle = rounded(((value % 360) + 360) % 360)
  return angle >= 360 ? 0 : angle
}

/** The first reading at an angle that the level read first does not have. */
function firstDiffering(radii: ReadRadii, depths: Distinct, angles: Distinct) {
  const first = depths.of[0]
  const has = new Set<number | undefined>()
  for (let at = 0; at < radii.count; at++) if (depths.of[at] === first) has.add(angles.of[at])
  for (let at = 0; at < radii.count; at++) {
    if (has.has(angles.of[at])) continue
    return { line: radii.lines[at] ?? 0, depthMm: radii.depthsMm[0] ?? 0 }
  }
  return undefined
}
