import { named } from '../conditions-of'
import { newBand } from '../conformity/limit-pair'
import type { BoreFinding, Findings, Place, StationFinding } from '../findings'
import { largest, smallest } from '../form/level'
import { place } from '../form/range-finding'
import type { Bore, Measured, Wall } from '../measured'
import { judgedExtreme } from './judged-extreme'

/** Why a wall may not be bored, as far as is recorded. */
export type BoringBar = 'plated' | 'own-process' | 'manual-forbids' | 'wall-not-recorded'

/** Why there is no oversize to bore to. */
export type OversizeReason =
  | BoringBar
  | 'no-readings'
  | 'no-standard-size'
  | 'none-given'
  | 'none-large-enough'

/** A bore as it would be bored, lengths mm on the diameter. */
export interface OversizeOfBore {
  readonly boreId: string
  readonly largest: Place & { readonly diameterMm: number; readonly expandedMm: number }
  /** What it must be bored to at least until it is clean. */
  readonly neededMm: number
  /** The first of the manual's oversizes that cleans it up; absent where none is large enough. */
  readonly ownOversizeMm?: number
  /** Whether the oversize that it goes to is proven to clean it up. */
  readonly verdict?: 'inside' | 'too-close'
  /** Of which the last is honed; from the largest to the smallest new size, and from the smallest to the largest. */
  readonly takenOff?: { readonly leastMm: number; readonly mostMm: number }
}

/** Which oversize the bores of this engine would be bored to. */
export type OversizeChoice =
  | {
      readonly known: false
      readonly why: OversizeReason
      /** The bore that it is about, where it is one. */
      readonly boreId?: string
      readonly cleanUpMm?: number
      /** With none large enough: as far as is known, in the order in which they would be bored. */
      readonly bores?: readonly OversizeOfBore[]
    }
  | {
      readonly known: true
      readonly alike: boolean
      /** For all alike. */
      readonly oversizeMm?: number
      readonly cleanUpMm: number
      /** The clean-up is a hint of the trade, from memory: the manual's was not entered. */
      readonly cleanUpIsHint: boolean
      /** The worst first: it finds the size. */
      readonly bores: readonly OversizeOfBore[]
      readonly notMeasured: readonly string[]
      /** Pistons on offer for the oversizes chosen. */
      readonly pistonIds: readonly string[]
    }

/** What boring takes off at least until a worn wall is clean, mm on the diameter: a hint of the trade, from memory. */
export const hintedCleanUpMm = 0.12

/**
 * The next oversize that cleans up the bores of this engine: the first of the manual's for which the smallest new
 * size of the oversize is at least the largest diameter measured (lands counted, they are bored too) and the
 * clean-up, and larger than the oversize that the bore has. It is proven to clean up where that holds at every
 * station with 95 %. All bores go to the oversize of the worst unless the spec says that each has its own. None
 * where a wall may not be bored: a plated wall has no oversize of its own, aluminium-silicon has a process of its
 * own, and the manual's word goes before both. Own derivation.
 */
export function oversizeChoice(measured: Measured, { bores: findings }: Findings): OversizeChoice {
  const { spec } = measured
  const engine = findings.filter(({ role }) => role === 'of-this-engine')
  const boreOf = ({ boreId }: BoreFinding) => named(measured.bores, boreId, 'bore')
  for (const finding of engine) {
    const why = boringBar(boreOf(finding).wall)
    if (why) return { known: false, why, boreId: finding.boreId }
  }
  const sizes = [...(spec.oversizesMm ?? [])].sort((a, b) => a - b)
  const { minMm: standardMm, maxMm: standardMaxMm = standardMm } = newBand(spec)
  if (standardMm === undefined || standardMaxMm === undefined)
    return { known: false, why: 'no-standard-size' }
  if (sizes.length === 0) return { known: false, why: 'none-given' }
  const cleanUpMm = spec.cleanUpMm ?? hintedCleanUpMm
  const steps: Steps = { sizes, standardMm, standardMaxMm, cleanUpMm }
  const needs = engine.flatMap((finding) => needOf(boreOf(finding), finding, steps) ?? [])
  if (needs.length === 0) return { known: false, why: 'no-readings' }
  const order = needs.sort((a, b) => b.found.neededMm - a.found.neededMm)
  const tooWorn = order.find(({ found }) => found.ownOversizeMm === undefined)
  if (tooWorn) {
    const bores = order.map(({ found }) => found)
    return { known: false, why: 'none-large-enough', boreId: tooWorn.found.boreId, cleanUpMm, bores }
  }
  const alike = spec.oversizesAlike !== false
  const most = Math.max(...order.map(({ found }) => found.ownOversizeMm ?? 0))
  const bores = order.map(({ found, stations }) =>
    boredTo(found, stations, alike ? most : (found.ownOversizeMm ?? most), steps),
  )
  const chosen = new Set(alike ? [most] : bores.map(({ ownOversizeMm }) => ownOversizeMm))
  return {
    known: true,
    alike,
    ...(alike ? { oversizeMm: most } : {}),
    cleanUpMm,
    cleanUpIsHint: spec.cleanUpMm === undefined,
    bores,
    notMeasured: engine
      .map(({ boreId }) => boreId)
      .filter((id) => !bores.some(({ boreId }) => boreId === id)),
    pistonIds: (measured.pistons ?? [])
      .filter(({ oversizeMm = 0 }) => chosen.has(oversizeMm))
      .map(({ id }) => id),
  }
}

/** Why a wall may not be bored; undefined where it may. The manual's word goes before what is usual for its kind. */
export function boringBar(wall: Wall | undefined): BoringBar | undefined {
  if (wall === undefined) return 'wall-not-recorded'
  if (wall.mayBeBored !== undefined) return wall.mayBeBored ? undefined : 'manual-forbids'
  if (wall.kind === 'plated-aluminium') return 'plated'
  return wall.kind === 'aluminium-silicon' ? 'own-process' : undefined
}

interface Steps {
  readonly sizes: readonly number[]
  readonly standardMm: number
  readonly standardMaxMm: number
  readonly cleanUpMm: number
}

interface Need {
  readonly found: OversizeOfBore
  readonly stations: readonly StationFinding[]
}

function needOf({ oversizeMm = 0 }: Bore, { boreId, stations }: BoreFinding, steps: Steps): Need | undefined {
  const counted = stations.filter((s) => s.counted)
  if (counted.length === 0) return undefined
  const widest = largest(counted)
  const { diameterMm, expandedMm } = widest
  const neededMm = diameterMm + steps.cleanUpMm
  const ownOversizeMm = steps.sizes.find(
    (size) => size > oversizeMm && neededMm <= steps.standardMm + size + trifle,
  )
  const found = {
    boreId,
    largest: { ...place(widest), diameterMm, expandedMm },
    neededMm,
    ...(ownOversizeMm === undefined ? {} : { ownOversizeMm }),
  }
  return { found, stations: counted }
}

function boredTo(
  found: OversizeOfBore,
  stations: readonly StationFinding[],
  oversizeMm: number,
  { standardMm, standardMaxMm, cleanUpMm }: Steps,
): OversizeOfBore {
  const { provenWithin } = judgedExtreme(
    stations.map((s) => ({ ...s, valueMm: s.diameterMm })),
    { of: 'largest', mayNot: 'exceed', limitMm: standardMm + oversizeMm - cleanUpMm },
  )
  return {
    ...found,
    verdict: provenWithin ? 'inside' : 'too-close',
    takenOff: {
      leastMm: standardMm + oversizeMm - found.largest.diameterMm,
      mostMm: standardMaxMm + oversizeMm - smallest(stations).diameterMm,
    },
  }
}

/** Rounding of sums of sizes, mm. */
const trifle = 1e-9
