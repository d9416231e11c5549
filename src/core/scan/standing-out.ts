import { studentQuantile } from '../statistics/student'
import { robustSigma } from './robust-weights'
import { type MapWindow, type RingMap, type WindowMeans, windowMeans } from './window-means'

/** Chance that anything at all is called out in a scan that holds noise alone, at most. */
const falseAlarm = 0.02
/** So many independent values is a robust standard deviation worth, for each value that it rests on. */
const robustEfficiency = 0.37
/** Windows reach so far around the bore at most, as a share of a turn. */
const widestShare = 1 / 6
/** Windows of one size stand this share of their size apart, so that one of them lies well on any mark. */
const stepShare = 1 / 4

/** Deviations of fewer σ are not worked out: by `falseAlarm` even the threshold of a single look, 2.33, lies above. */
const leastDeviation = 2

/**
 * A smooth form may miss the wall by this share of the standard deviation of one value over any length: what no window
 * can tell from a mark. Own choice, on simulated bores.
 */
export const misfitShare = 0.2

/** For each cell, the window about it that stands out most on one side, in standard deviations of its mean. */
export interface StandingSide {
  /** 0 where no window about the cell stands out by so much as `leastDeviation`. */
  readonly deviations: Float64Array
  /** Index into `windows`. */
  readonly best: Uint16Array
}

/** How far each place of a map stands out, looked at through windows of all sizes. */
export interface StandingOut {
  readonly windows: readonly MapWindow[]
  /** Standard deviation of the sum of n values over √n, for each window. */
  readonly spreads: readonly number[]
  readonly larger: StandingSide
  readonly smaller: StandingSide
  readonly means: WindowMeans
  readonly misfit: number
  readonly threshold: number
}

/**
 * Looks at a map through windows of all sizes, each half larger than the one before, from single rows and columns
 * to the whole depth and a sixth of a turn. The mean of n values has the standard deviation σ/√n if they are
 * independent; where the means of one size scatter more, robustly, than that, their own scatter is taken instead, so
 * that neither correlated noise nor what is left of a lobed form is called a mark; and `misfit` is allowed for what
 * the smooth form misses. `sigma` in the unit of the map, above 0. The threshold is what a clean map exceeds anywhere
 * with a chance of 2 % at most: each window at each place, both signs, has its share of that chance (Bonferroni);
 * since neighbours say nearly the same it is a quarter of one in a hundred, counted on simulated bores. Student's t
 * makes up for σ being an estimate from the same values.
 */
export function standingOut(map: RingMap, sigma: number, misfit: number): StandingOut {
  const cells = map.rows * map.columns
  const windows = windowsOf(map)
  const means = windowMeans(map)
  const larger = { deviations: new Float64Array(cells), best: new Uint16Array(cells) }
  const smaller = { deviations: new Float64Array(cells), best: new Uint16Array(cells) }
  const scratch = new Float64Array(cells)
  let looks = 0
  const spreads = windows.map((window, index) => {
    const { at, values, counts } = means.standardised(window, stepOf(window.high), stepOf(window.wide))
    looks += values.length
    const spread = values.length === 0 ? sigma : Math.max(sigma, robustSigma(values, scratch))
    for (let i = 0; i < values.length; i++) {
      if (Math.abs(values[i] ?? 0) < leastDeviation * spread) continue
      const cell = at[i] ?? 0
      const deviation = (values[i] ?? 0) / doubtOf(spread, counts[i] ?? 1, misfit)
      const side = deviation > 0 ? larger : smaller
      if (Math.abs(deviation) <= (side.deviations[cell] ?? 0)) continue
      side.deviations[cell] = Math.abs(deviation)
      side.best[cell] = index
    }
    return spread
  })
  return { windows, spreads, larger, smaller, means, misfit, threshold: thresholdOf(map, looks) }
}

/** Standard deviation of sum/√n over n values: their scatter, and what the smooth form may be off beneath all of them. */
export function doubtOf(spread: number, count: number, misfit: number): number {
  return Math.sqrt(spread * spread + count * misfit * misfit)
}

function stepOf(size: number): number {
  return Math.max(1, Math.floor(size * stepShare))
}

function thresholdOf({ values }: RingMap, looks: number): number {
  let measured = 0
  for (const value of values) if (!Number.isNaN(value)) measured++
  const chance = falseAlarm / (2 * Math.max(1, looks))
  return studentQuantile(1 - chance, Math.max(4, robustEfficiency * measured))
}

/** All sizes but the single cell: one value that stands out alone is no mark. */
export function windowsOf({ rows, columns }: Pick<RingMap, 'rows' | 'columns'>): MapWindow[] {
  const highs = sizesTo(rows)
  const wides = sizesTo(Math.max(3, Math.floor(columns * widestShare)))
  return highs
    .flatMap((high) => wides.map((wide) => ({ high, wide })))
    .filter(({ high, wide }) => high * wide > 1)
}

/** 1, 3, 5, 7 …: odd, each about half more than the one before, to the most. */
function sizesTo(most: number): number[] {
  const sizes = []
  for (let size = 1; size <= most; size = Math.max(size + 2, 2 * Math.round((size * 1.5) / 2) + 1))
    sizes.push(size)
  return sizes
}
