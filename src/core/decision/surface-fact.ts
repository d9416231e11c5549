import type { SurfaceFound } from '../findings'
import type { Bore } from '../measured'
import type { DecisionFacts } from './decision-facts'

/** What one surface finding means for a decision. */
export type SurfaceMeaning = DecisionFacts['surface']

/** Gravest first. */
const meanings: readonly SurfaceMeaning[] = [
  'ended',
  'marked',
  'covered',
  'look-closer',
  'cross-hatch',
  'nothing-against',
]

/**
 * What a surface finding means: bare aluminium and flaking end the bore; pits, and a scratch, scuff or ridge that
 * catches a nail, in the path of the rings, mark it; stuck metal and rust lie on the wall and hide it; pits and
 * untried marks that may be in the ring path want a closer look. A scratch or scuff wholly beside the ring travel counts for nothing here.
 * Common practice, no published source.
 */
export function surfaceMeaning(
  found: SurfaceFound,
  { ringTravelMm }: Pick<Bore, 'ringTravelMm'>,
): SurfaceMeaning {
  const { kind, stop, nailWouldTell } = found
  if (stop === 'bare-aluminium' || stop === 'flaking') return 'ended'
  if (stop === 'pits-in-ring-path') return 'marked'
  if (stop === 'pits-perhaps-in-ring-path') return 'look-closer'
  const isBeside =
    ringTravelMm !== undefined &&
    kind !== 'ridge' &&
    (found.toDepthMm < ringTravelMm.from || found.fromDepthMm > ringTravelMm.to)
  if (stop === 'catches-nail') return isBeside ? 'nothing-against' : 'marked'
  if (nailWouldTell) return isBeside ? 'nothing-against' : 'look-closer'
  if (kind === 'stuck-metal' || kind === 'rust') return 'covered'
  return kind === 'cross-hatch-seen' ? 'cross-hatch' : 'nothing-against'
}

/** Whether a scan was taken before stuck metal was cleaned off, and none after: the metal is on the wall still. */
export function isScannedUncleaned({ scans = [] }: Pick<Bore, 'scans'>): boolean {
  return (
    scans.some(({ cleaning }) => cleaning === 'before') && !scans.some(({ cleaning }) => cleaning === 'after')
  )
}

/** The gravest meaning of all that is recorded of a bore's surface: its findings, and scans that were taken before a cleaning. */
export function surfaceFact(
  surface: readonly SurfaceFound[],
  bore: Pick<Bore, 'ringTravelMm' | 'scans'>,
): SurfaceMeaning {
  const found = surface.map((one) => surfaceMeaning(one, bore))
  if (isScannedUncleaned(bore)) found.push('covered')
  return meanings.find((meaning) => found.includes(meaning)) ?? 'nothing-against'
}
