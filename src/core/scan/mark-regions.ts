import { type CellBox, cellBox, isInBox } from './cell-box'
import { halfHeightBox } from './half-height-box'
import type { MarkSign } from './scan-marks'
import { doubtOf, type StandingOut, standingOut } from './standing-out'
import type { MapWindow, RingMap } from './window-means'

/** Where a mark goes on: not below so many standard deviations of a window's mean. */
const goesOn = 2.5
/** Cells are gathered to this share of a mark's height; noise may halve a neighbour, so the edges are found afterwards. */
const gatheredShare = 0.35
/** Rounds of looking, each with what was found before taken out. */
const mostRounds = 20

/** Cells of a map that stand out together. */
export interface MarkRegion {
  readonly sign: MarkSign
  /** Cells to half of the height, and the box around them. */
  readonly core: readonly number[]
  readonly box: CellBox
  /** How far the window that shows it best stands out, standard deviations. */
  readonly evidence: number
}

/** Regions of a map, and the threshold that they had to pass. */
export interface MarkRegions {
  readonly regions: readonly MarkRegion[]
  readonly threshold: number
}

/**
 * Gathers what stands out of a map into regions, the plainest first: from the window that stands out most, to all
 * cells connected to it whose windows of that size have half of its mean or more. Around the turn the last column
 * is beside the first; along the depth a gap is passed over, so that a streak which a port interrupts is one. Each
 * region is then taken out with its foot, and the rest looked at anew, so that none is counted twice. `sigma` and `misfit` as in
 * `standingOut`; `signs` are those looked for.
 */
export function markRegions(
  map: RingMap,
  sigma: number,
  misfit: number,
  signs: readonly MarkSign[],
): MarkRegions {
  const rest = { ...map, values: map.values.slice() }
  const found: MarkRegion[] = []
  let threshold = 0
  for (let round = 0; round < mostRounds; round++) {
    const standing = standingOut(rest, sigma, misfit)
    if (round === 0) threshold = standing.threshold
    const taken = regionsOfRound(map, rest, standing, threshold, signs)
    if (taken.length === 0) break
    for (const { region, all } of taken) {
      found.push(region)
      for (const cell of all) rest.values[cell] = Number.NaN
    }
  }
  return { regions: found, threshold }
}

interface Taken {
  readonly region: MarkRegion
  /** With its foot. */
  readonly all: readonly number[]
}

/** Regions whose windows do not reach into one another, so that each can be judged by itself. */
function regionsOfRound(
  map: RingMap,
  rest: RingMap,
  standing: StandingOut,
  threshold: number,
  signs: readonly MarkSign[],
): Taken[] {
  const taken: Taken[] = []
  const used = new Uint8Array(map.values.length)
  for (const { cell, sign } of candidates(standing, threshold, signs)) {
    const window = standing.windows[standing[sign].best[cell] ?? 0] ?? { high: 1, wide: 1 }
    if (touches(used, map, cell, window)) continue
    const { all, core, box } = grow(map, rest, standing, cell, sign)
    for (const own of all) used[own] = 1
    taken.push({ region: { sign, core, box, evidence: standing[sign].deviations[cell] ?? 0 }, all })
  }
  return taken
}

function candidates(standing: StandingOut, threshold: number, signs: readonly MarkSign[]) {
  return signs
    .flatMap((sign) => {
      const over: { cell: number; sign: MarkSign; deviation: number }[] = []
      standing[sign].deviations.forEach((deviation, cell) => {
        if (deviation >= threshold) over.push({ cell, sign, deviation })
      })
      return over
    })
    .sort((a, b) => b.deviation - a.deviation || a.cell - b.cell)
}

function touches(
  used: Uint8Array,
  { rows, columns }: RingMap,
  cell: number,
  { high, wide }: MapWindow,
): boolean {
  if (used[cell] === 1) return true
  const row = Math.floor(cell / columns)
  const first = (cell % columns) - (wide >> 1) + columns
  for (let r = Math.max(0, row - (high >> 1)); r < Math.min(rows, row + (high >> 1) + 1); r++) {
    for (let c = 0; c < wide; c++) if (used[r * columns + ((first + c) % columns)] === 1) return true
  }
  return false
}

/** From a cell outwards: the core to half of the height, and its foot down to what noise could be. */
function grow(
  map: RingMap,
  rest: RingMap,
  { means, windows, spreads, misfit, ...sides }: StandingOut,
  from: number,
  sign: MarkSign,
) {
  const side = sign === 'larger' ? 1 : -1
  const index = sides[sign].best[from] ?? 0
  const window = windows[index] ?? { high: 1, wide: 1 }
  const spread = spreads[index] ?? 1
  const { columns } = map
  const stands = (cell: number, leastMean: number) => {
    const here = means.meanAt(Math.floor(cell / columns), cell % columns, window)
    if (here === undefined || side * here.mean < leastMean) return false
    return (side * here.mean * Math.sqrt(here.count)) / doubtOf(spread, here.count, misfit) >= goesOn
  }
  const peak = means.meanAt(Math.floor(from / columns), from % columns, window)
  const seen = flood(map, rest, [from], (cell) => stands(cell, gatheredShare * side * (peak?.mean ?? 0)))
  const reach = cellBox(seen, columns)
  const near = (cell: number) => isInBox(reach, columns, cell, window.high >> 1, window.wide >> 1)
  const all = flood(map, rest, seen, (cell) => near(cell) && stands(cell, 0))
  const half = halfHeightBox(rest, seen, sign, spread)
  const core = seen.filter((cell) => isInBox(half, columns, cell))
  return { all, core, box: cellBox(core, columns) }
}

/** All cells with a value that are connected to some through cells that go on, those themselves included. */
function flood(
  map: RingMap,
  rest: RingMap,
  from: readonly number[],
  goesOnAt: (cell: number) => boolean,
): number[] {
  const seen = new Set(from)
  const reached = [...from]
  const look = (cell: number) => {
    if (cell < 0 || seen.has(cell)) return
    if (Number.isNaN(rest.values[cell] ?? Number.NaN) || !goesOnAt(cell)) return
    seen.add(cell)
    reached.push(cell)
  }
  for (let next = 0; next < reached.length; next++) {
    const cell = reached[next] ?? 0
    const row = cell - (cell % map.columns)
    look(row + ((cell + 1) % map.columns))
    look(row + ((cell + map.columns - 1) % map.columns))
    look(pastGaps(map, cell, -map.columns))
    look(pastGaps(map, cell, map.columns))
  }
  return reached
}

/** The next cell above or below that has a value in the map itself; −1 where there is none. */
function pastGaps({ values }: RingMap, cell: number, step: number): number {
  let next = cell + step
  while (next >= 0 && next < values.length && Number.isNaN(values[next] ?? 0)) next += step
  return next >= 0 && next < values.length ? next : -1
}
