import type { Findings } from '../findings'
import type { Measured } from '../measured'
import { bottleneckAssignment } from './bottleneck-assignment'
import { runningStations } from './clearance'
import { clearanceWindow, type Fit, fitsOf } from './fits'

/** A piston in a bore, with how far its clearance is from the middle of the window at its worst, mm. */
export interface Pair {
  readonly boreId: string
  readonly pistonId: string
  readonly departureMm: number
  readonly fit: Fit
}

/** Which piston goes in which bore. */
export type Pairing =
  | { readonly known: false; readonly why: 'no-pistons' | 'no-window' | 'no-readings' }
  | {
      readonly known: true
      /** What the departures are counted from, mm. */
      readonly middleMm: number
      readonly pairs: readonly Pair[]
      /** The pair that is furthest from the middle; absent where no piston fits any bore. */
      readonly worst?: Pair
      /** Bores that none of the pistons on offer fits. */
      readonly fitNone: readonly string[]
      /** Bores that some piston would fit, but each of those is needed elsewhere. */
      readonly left: readonly string[]
      /** Bores without a reading to tell. */
      readonly notMeasured: readonly string[]
      /** Pistons at hand, and fitted ones, that no bore gets. */
      readonly sparePistonIds: readonly string[]
    }

/**
 * Which piston goes in which bore of this engine: as many bores as can be served, the worst departure of a clearance
 * from the middle of the window of new parts (of the service window, where no other is given) the smallest that it
 * can be, and of those the smallest sum (`bottleneckAssignment`). A departure is that of the least or of the most
 * clearance, whichever is further out. Only a piston that is proven too tight or too loose is ruled out; one too
 * close to call may be taken, and its fit says so. A piston that can be had can be had for every bore.
 */
export function pairingOf(measured: Measured, { bores }: Findings): Pairing {
  const engine = bores.filter(({ role }) => role === 'of-this-engine')
  if ((measured.pistons ?? []).length === 0) return { known: false, why: 'no-pistons' }
  const middleMm = middleOf(measured)
  if (middleMm === undefined) return { known: false, why: 'no-window' }
  const fits = engine.map((finding) => fitsOf(measured, finding))
  const isMeasured = (row: number) => {
    const finding = engine[row]
    return finding !== undefined && runningStations(finding).length > 0
  }
  if (!engine.some((_, row) => isMeasured(row))) return { known: false, why: 'no-readings' }
  const columns = columnsOf(measured, engine.length)
  const pairs = fits.map((ofBore) => pairsOf(ofBore, middleMm))
  const costs = pairs.map((ofBore) =>
    columns.map((pistonId) => ofBore.find((pair) => pair.pistonId === pistonId)?.departureMm),
  )
  const chosen = bottleneckAssignment(costs).flatMap((column, row): Pair[] => {
    const pistonId = column === undefined ? undefined : columns[column]
    const pair = pairs[row]?.find((one) => one.pistonId === pistonId)
    return pair ? [pair] : []
  })
  const served = new Set(chosen.map(({ boreId }) => boreId))
  const taken = new Set(chosen.map(({ pistonId }) => pistonId))
  const named = (which: (row: number) => boolean) =>
    engine.filter((_, row) => which(row)).map(({ boreId }) => boreId)
  const worst = chosen.reduce<Pair | undefined>(
    (a, b) => (a && a.departureMm >= b.departureMm ? a : b),
    undefined,
  )
  return {
    known: true,
    middleMm,
    pairs: chosen,
    ...(worst ? { worst } : {}),
    fitNone: named((row) => isMeasured(row) && (pairs[row] ?? []).length === 0),
    left: named((row) => (pairs[row] ?? []).length > 0 && !served.has(engine[row]?.boreId ?? '')),
    notMeasured: named((row) => !isMeasured(row)),
    sparePistonIds: (measured.pistons ?? [])
      .filter(({ id, state }) => state !== 'obtainable' && !taken.has(id))
      .map(({ id }) => id),
  }
}

function middleOf({ spec }: Measured): number | undefined {
  const window = clearanceWindow(spec)
  const maxMm = window?.newMaxMm ?? window?.maxMm
  return window?.minMm === undefined || maxMm === undefined ? undefined : (window.minMm + maxMm) / 2
}

/** One column for each piston there is, and for one that can be had as many as there are bores. */
function columnsOf({ pistons = [] }: Measured, bores: number): string[] {
  return pistons.flatMap(({ id, state }) =>
    Array.from({ length: state === 'obtainable' ? bores : 1 }, () => id),
  )
}

function pairsOf(fits: readonly Fit[], middleMm: number): Pair[] {
  return fits.flatMap((fit) => {
    const { boreId, pistonId, least, most, verdict } = fit
    if (!least || !most || (verdict !== 'inside' && verdict !== 'too-close')) return []
    const departureMm = Math.max(Math.abs(least.valueMm - middleMm), Math.abs(most.valueMm - middleMm))
    return [{ boreId, pistonId, departureMm, fit }]
  })
}
