import type { Bore } from '../../core/measured'
import type { Job } from '../../job/schema'
import { type PlannedStation, stationsPlanned } from '../../job/selectors'
import type { EntryOrder, InHand } from '../../session/session'
import { nextStation, repeatsTaken } from './entry-order'

/** Where a number was entered, and what still counts as open. */
export interface EntryAcross {
  readonly job: Job
  readonly order: EntryOrder
  readonly wanted: number
  readonly skipped: readonly InHand[]
}

/**
 * The station of another bore that the next number belongs to, all bores by their latest surveys: bore by
 * bore, the first open one of the bores that follow; level by level, the next bore at this level, then the
 * first bore at the next level. Undefined when nothing is open, or when the next is in the same bore.
 */
export function nextElsewhere(from: InHand, across: EntryAcross): InHand | undefined {
  const bores = boresInOrder(across.job)
  return across.order === 'level-by-level'
    ? nextByLevel(bores, from, across)
    : nextByBore(bores, from, across)
}

/** The bores of the engine, then those for comparison. */
function boresInOrder({ bores }: Job): readonly Bore[] {
  const of = (role: Bore['role']) => bores.filter((bore) => bore.role === role)
  return [...of('of-this-engine'), ...of('for-comparison')]
}

function nextByBore(bores: readonly Bore[], from: InHand, across: EntryAcross): InHand | undefined {
  const openIn = (bore: Bore) => firstOpen(bore, stationsPlanned(across.job, bore.id), across)
  const at = bores.findIndex(({ id }) => id === from.boreId)
  const here = bores[at]
  if (!here || openIn(here)) return undefined
  for (const bore of [...bores.slice(at + 1), ...bores.slice(0, at)]) {
    const open = openIn(bore)
    if (open) return open
  }
  return undefined
}

function nextByLevel(bores: readonly Bore[], from: InHand, across: EntryAcross): InHand | undefined {
  const rowsOf = new Map(bores.map((bore) => [bore.id, stationsPlanned(across.job, bore.id)]))
  const depths = [...new Set([...rowsOf.values()].flatMap((rows) => rows.flatMap(depthOf)))]
  depths.sort((a, b) => a - b)
  const stops = depths.flatMap((depthMm) =>
    bores.flatMap((bore) => {
      const row = rowsOf.get(bore.id)?.find((stations) => stations[0]?.depthMm === depthMm)
      return row ? [{ bore, row, depthMm }] : []
    }),
  )
  const at = stops.findIndex(({ bore, depthMm }) => bore.id === from.boreId && depthMm === from.depthMm)
  for (const { bore, row } of [...stops.slice(Math.max(at, 0)), ...stops.slice(0, Math.max(at, 0))]) {
    const open = firstOpen(bore, [row], across)
    if (open) return open
  }
  return undefined
}

function depthOf(row: readonly PlannedStation[]): readonly number[] {
  return row[0] ? [row[0].depthMm] : []
}

function firstOpen(
  bore: Bore,
  rows: readonly (readonly PlannedStation[])[],
  { wanted, skipped }: EntryAcross,
): InHand | undefined {
  const here = skipped.filter(({ boreId }) => boreId === bore.id)
  const open = nextStation(rows, wanted, undefined, here)
  return open && { boreId: bore.id, depthMm: open.depthMm, axisDegrees: open.axisDegrees }
}

/** As many repeats as were taken at any station of any bore. */
export function repeatsTakenInJob(job: Job): number {
  return Math.max(...job.bores.map((bore) => repeatsTaken(stationsPlanned(job, bore.id))))
}
