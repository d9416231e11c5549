import { type Footing, portMarginMm } from '../ports/blocked'
import { type BorePlanned, type ClearBand, contactHalfMm } from './clear-bands'
import type { PlanQuestion } from './plan-axes'

/** Why a level is proposed; names are those of ports and belts. */
export type LevelReason =
  | {
      readonly code:
        | 'upper-land'
        | 'lower-land'
        | 'top-of-travel'
        | 'bottom-of-travel'
        | 'near-top'
        | 'near-bottom'
        | 'middle'
        | 'upper-quarter'
        | 'lower-quarter'
        | 'read'
        | 'read-before'
    }
  | { readonly code: 'above-ports' | 'below-ports' | 'beside-ports'; readonly names: readonly string[] }

/** A depth that a level is wanted at, mm, and the depths between which it serves as well. */
export interface LevelTarget {
  readonly reason: LevelReason
  readonly land: boolean
  readonly depthMm: number
  readonly fromMm: number
  readonly toMm: number
}

/** A land that no contact fits into. */
export interface ShortLand {
  readonly which: 'upper' | 'lower'
  readonly heightMm: number
}

/** From the ends of a bore whose ring travel is not known or whose middle is barred, mm (common practice, no published source). */
const fromEndMm = 20
/** From the edge of a port, mm (common practice, no published source). */
const fromPortMm = 5
/** Thinner bands beside ports are not worth a level, mm. */
const thinnestBandMm = 4
/** Kept from the reversal of the rings, so that the doubt of the depth leaves the contact clear of it, mm. */
const fromReversalMm = 1
/** A contact is put into a land only where it may stand this much higher or lower, mm. */
const leastRoomMm = 1

interface Span {
  readonly fromMm: number
  readonly toMm: number
}

/**
 * The depths at which levels are wanted, the most needed first: one in each land, just under the top of ring
 * travel and just above its bottom, above and below the ports, beside them where some axis is clear, the middle,
 * and by the question the quarters between. Without ring travel, or where the middle is barred, 20 mm from the ends of
 * the bore. Own derivation from what the trade does; a contact is to stand wholly within or without a land.
 */
export function levelTargets(
  bore: BorePlanned & { readonly lengthMm: number },
  gauge: Footing,
  question: PlanQuestion,
  bands: readonly ClearBand[],
): { readonly targets: readonly LevelTarget[]; readonly shortLands: readonly ShortLand[] } {
  const worn = wornSpan(bore, gauge)
  const lands = landTargets(bore, gauge, question)
  const middleMm = (worn.fromMm + worn.toMm) / 2
  const third = (worn.toMm - worn.fromMm) / 3
  const middle = running('middle', middleMm, middleMm - third / 2, middleMm + third / 2)
  const isBarred = bands.some(
    (band) => band.clear.length === 0 && band.fromMm <= middleMm && band.toMm >= middleMm,
  )
  return {
    targets: [
      ...lands.flatMap((land) => ('reason' in land ? [land] : [])),
      ...endTargets(bore, worn),
      ...portTargets(bore, gauge, worn, bands),
      ...(isBarred ? (bore.ringTravelMm ? nearEnds(bore, worn) : []) : [middle]),
      ...quarters(worn, question),
    ],
    shortLands: lands.flatMap((land) => ('reason' in land ? [] : [land])),
  }
}

/** Depths at which a contact stands wholly on wall that the rings touch; all but the ends where that is not known. */
function wornSpan(bore: BorePlanned & { readonly lengthMm: number }, gauge: Footing): Span {
  const margin = portMarginMm(gauge)
  const half = contactHalfMm(gauge) + fromReversalMm
  const travel = bore.ringTravelMm
  return {
    fromMm: Math.max(margin, travel ? travel.from + half : 0),
    toMm: Math.min(bore.lengthMm - margin, travel ? travel.to - half : bore.lengthMm),
  }
}

function landTargets(
  { ringTravelMm: travel, lengthMm }: BorePlanned & { readonly lengthMm: number },
  gauge: Footing,
  question: PlanQuestion,
): (LevelTarget | ShortLand)[] {
  if (!travel) return []
  const margin = portMarginMm(gauge)
  const half = contactHalfMm(gauge)
  const upper = landTarget('upper', margin, travel.from - half, travel.from)
  const isLowerWanted = question !== 'out-of-round' && question !== 'bolts'
  const below = lengthMm - travel.to
  const lower = landTarget('lower', travel.to + half, lengthMm - margin, below)
  return isLowerWanted ? [upper, lower] : [upper]
}

function landTarget(
  which: ShortLand['which'],
  fromMm: number,
  toMm: number,
  heightMm: number,
): LevelTarget | ShortLand {
  if (toMm - fromMm < leastRoomMm) return { which, heightMm: Math.max(0, heightMm) }
  const reason = { code: which === 'upper' ? 'upper-land' : 'lower-land' } as const
  return { reason, land: true, depthMm: (fromMm + toMm) / 2, fromMm, toMm }
}

function endTargets(bore: BorePlanned & { readonly lengthMm: number }, worn: Span): LevelTarget[] {
  if (!bore.ringTravelMm) return nearEnds(bore, worn)
  const reach = (worn.toMm - worn.fromMm) / 4
  return [
    running('top-of-travel', worn.fromMm, worn.fromMm, worn.fromMm + reach),
    running('bottom-of-travel', worn.toMm, worn.toMm - reach, worn.toMm),
  ]
}

function nearEnds({ lengthMm }: { readonly lengthMm: number }, worn: Span): LevelTarget[] {
  const away = Math.min(fromEndMm, lengthMm / 5)
  return [
    within(worn, { code: 'near-top' }, away, away / 2, 1.5 * away),
    within(worn, { code: 'near-bottom' }, lengthMm - away, lengthMm - 1.5 * away, lengthMm - away / 2),
  ].flatMap((target) => (target ? [target] : []))
}

function portTargets(
  bore: BorePlanned,
  gauge: Footing,
  worn: Span,
  bands: readonly ClearBand[],
): LevelTarget[] {
  const margin = portMarginMm(gauge)
  const away = Math.max(fromPortMm, margin + 0.5)
  const edges = obstaclesOf(bore, margin).flatMap(({ fromMm, toMm, above, below }) => [
    within(worn, { code: 'above-ports', names: above }, fromMm - away, fromMm - 2 * away, fromMm - margin),
    within(worn, { code: 'below-ports', names: below }, toMm + away, toMm + margin, toMm + 2 * away),
  ])
  const beside = bands
    .filter(({ clear, inTheWay }) => clear.length > 0 && inTheWay.length > 0)
    .filter(({ fromMm, toMm }) => toMm - fromMm >= thinnestBandMm)
    .map(({ fromMm, toMm, inTheWay }) =>
      within(worn, { code: 'beside-ports', names: inTheWay }, (fromMm + toMm) / 2, fromMm, toMm),
    )
  return [...edges, ...beside].flatMap((target) => (target ? [target] : []))
}

/** Ports and belts that follow one another too closely for a contact between them. */
interface Obstacles extends Span {
  /** Names of those that begin first, and of those that end last. */
  readonly above: readonly string[]
  readonly below: readonly string[]
}

function obstaclesOf(bore: BorePlanned, margin: number): Obstacles[] {
  const all = [...bore.ports, ...bore.belts].sort((a, b) => a.fromDepthMm - b.fromDepthMm)
  const joined: { fromMm: number; toMm: number }[] = []
  for (const { fromDepthMm: fromMm, toDepthMm: toMm } of all) {
    const last = joined.at(-1)
    if (last && fromMm - last.toMm < 2 * margin) last.toMm = Math.max(last.toMm, toMm)
    else joined.push({ fromMm, toMm })
  }
  const names = (isMeant: (one: (typeof all)[number]) => boolean) => [
    ...new Set(all.filter(isMeant).map(({ name }) => name)),
  ]
  return joined.map(({ fromMm, toMm }) => ({
    fromMm,
    toMm,
    above: names(({ fromDepthMm }) => fromDepthMm === fromMm),
    below: names(({ fromDepthMm, toDepthMm }) => fromDepthMm >= fromMm && toDepthMm === toMm),
  }))
}

function quarters(worn: Span, question: PlanQuestion): LevelTarget[] {
  const length = worn.toMm - worn.fromMm
  const at = (code: 'upper-quarter' | 'lower-quarter', share: number) => {
    const depthMm = worn.fromMm + share * length
    return running(code, depthMm, depthMm - length / 12, depthMm + length / 12)
  }
  const upper = at('upper-quarter', 1 / 4)
  if (question === 'along-depth') return [upper, at('lower-quarter', 3 / 4)]
  return question === 'bolts' || question === 'wear' ? [upper] : []
}

function running(
  code: Exclude<LevelReason, { readonly names: readonly string[] }>['code'],
  depthMm: number,
  fromMm: number,
  toMm: number,
): LevelTarget {
  return { reason: { code }, land: false, depthMm, fromMm, toMm }
}

/** A target cut to the worn wall; none where nothing of it is left. */
function within(
  worn: Span,
  reason: LevelReason,
  depthMm: number,
  fromMm: number,
  toMm: number,
): LevelTarget | undefined {
  const from = Math.max(fromMm, worn.fromMm)
  const to = Math.min(toMm, worn.toMm)
  if (from > to) return undefined
  return { reason, land: false, depthMm: Math.min(Math.max(depthMm, from), to), fromMm: from, toMm: to }
}
