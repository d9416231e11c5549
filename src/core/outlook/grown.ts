import type { Place, StationFinding } from '../findings'
import { place } from '../form/range-finding'
import { combine, expanded, type Term } from '../uncertainty/combine'

/** A station and the size that it has grown from, mm. */
export interface Grown {
  readonly now: StationFinding
  readonly fromMm: number
  /** What that size is made of, as a sum of diameters. */
  readonly from: readonly Term[]
  /** Further doubt of that size, standard uncertainty: how it was made, where it is another bore's. */
  readonly asMadeMm: number
}

/** Where a bore has grown most, of several stations. */
export interface MostGrown {
  /** The most that any station has grown, as read: chosen among all, and no bound. */
  readonly largest: Place & {
    readonly wearMm: number
    readonly expandedMm: number
    /** Against a band: from its largest to its smallest size. */
    readonly lowMm: number
    readonly highMm: number
  }
  /** Where it has shrunk beyond its U. */
  readonly shrunk: readonly Place[]
  /** Of what the limit allows from there, at the station that has used most; with its ends. */
  readonly allowedShare?: Place & { readonly low: number; readonly high: number }
}

/**
 * Of several stations the one that has grown most, where any has shrunk beyond its U, and with a limit the share of
 * what it allows, (D − D0)/(limit − D0), at the station that has used most. The interval of a share is linear in D
 * and D0, with sensitivities 1/(limit − D0) and −(1 − share)/(limit − D0) (GUM, JCGM 100:2008, 5.1.2 and 5.2.2).
 * Undefined of no station.
 */
export function mostGrown(all: readonly Grown[], limitMm: number | undefined): MostGrown | undefined {
  const each = all.map((grown) => ({
    at: place(grown.now),
    wearMm: grown.now.diameterMm - grown.fromMm,
    expandedMm: spread(grown, 1, 1),
  }))
  const [first] = each
  if (!first) return undefined
  const { at, wearMm, expandedMm } = each.reduce((a, b) => (b.wearMm > a.wearMm ? b : a), first)
  const share = limitMm === undefined ? undefined : mostUsed(all, limitMm)
  return {
    largest: { ...at, wearMm, expandedMm, lowMm: wearMm - expandedMm, highMm: wearMm + expandedMm },
    shrunk: each.filter((one) => one.wearMm < -one.expandedMm).map((one) => one.at),
    ...(share ? { allowedShare: share } : {}),
  }
}

function mostUsed(all: readonly Grown[], limitMm: number): MostGrown['allowedShare'] {
  let most: { readonly grown: Grown; readonly share: number } | undefined
  for (const grown of all) {
    const allowedMm = limitMm - grown.fromMm
    if (allowedMm <= 0) continue
    const share = (grown.now.diameterMm - grown.fromMm) / allowedMm
    if (!most || share > most.share) most = { grown, share }
  }
  if (!most) return undefined
  const { grown, share } = most
  const allowedMm = limitMm - grown.fromMm
  const half = spread(grown, 1 / allowedMm, (1 - share) / allowedMm)
  return { ...place(grown.now), low: share - half, high: share + half }
}

/** U of ofNow·D − ofThen·D0, with how it was made beside it in squares and known. */
function spread({ now, from, asMadeMm }: Grown, ofNow: number, ofThen: number): number {
  const read = combine([
    { factor: ofNow, contributions: now.contributions },
    ...from.map(({ factor, contributions }) => ({ factor: -ofThen * factor, contributions })),
  ])
  const asMade = ofThen * asMadeMm
  if (asMade === 0) return expanded(read)
  const standardUncertainty = Math.hypot(read.standardUncertainty, asMade)
  const ratio = standardUncertainty / read.standardUncertainty
  return expanded({
    standardUncertainty,
    degreesOfFreedom: Math.max(1, Math.floor(read.degreesOfFreedom * ratio ** 4)),
  })
}
