import { typicalContactHalfWidthMm } from '../gauge/presets'
import type { Bore } from '../measured'
import { type Footing, portMarginMm } from '../ports/blocked'
import { type AxisRange, clearAxes } from './clear-axes'

/** What of a bore decides where it can be measured. */
export type BorePlanned = Pick<Bore, 'lengthMm' | 'ringTravelMm' | 'ports' | 'belts'>

/** Depths between which the same axes are clear. */
export interface ClearBand {
  readonly fromMm: number
  readonly toMm: number
  readonly clear: readonly AxisRange[]
  /** Names of the ports and belts that a contact at these depths may meet. */
  readonly inTheWay: readonly string[]
}

/** Thinner bands are rounding, mm. */
const trifleMm = 1e-6

/**
 * The bore cut along its depth into bands in each of which the same axes are clear, from the deck down. It
 * begins and ends where a contact stands on the wall with its whole footprint and a chamfer to spare, mm; empty
 * for a bore too short for that. Throws for a bore whose length is not known. Own derivation.
 */
export function clearBands(bore: BorePlanned, gauge: Footing | undefined, diameterMm: number): ClearBand[] {
  const { lengthMm } = bore
  if (lengthMm === undefined) throw new RangeError('clearBands: the length of the bore is not known')
  const margin = portMarginMm(gauge)
  const start = margin
  const end = lengthMm - margin
  const edges = [
    start,
    ...bore.ports.flatMap((port) => [port.fromDepthMm - margin, port.toDepthMm + margin]),
    ...bore.belts.flatMap((belt) => [belt.fromDepthMm, belt.toDepthMm]),
    end,
  ]
    .filter((edge) => edge >= start && edge <= end)
    .sort((a, b) => a - b)
  const bands: ClearBand[] = []
  for (const [index, toMm] of edges.entries()) {
    const fromMm = edges[index - 1]
    if (fromMm === undefined || toMm - fromMm < trifleMm) continue
    const middle = (fromMm + toMm) / 2
    const band = {
      fromMm,
      toMm,
      clear: clearAxes(bore, gauge, middle, diameterMm),
      inTheWay: namesAt(bore, middle, margin),
    }
    const last = bands.at(-1)
    const isSevered = bore.belts.some((belt) => belt.fromDepthMm === fromMm && belt.toDepthMm === fromMm)
    if (last && isAlike(last, band) && !isSevered) bands[bands.length - 1] = { ...last, toMm }
    else bands.push(band)
  }
  return bands
}

function namesAt(bore: BorePlanned, depthMm: number, margin: number): string[] {
  const ports = bore.ports.filter(
    (port) => depthMm > port.fromDepthMm - margin && depthMm < port.toDepthMm + margin,
  )
  const belts = bore.belts.filter((belt) => depthMm > belt.fromDepthMm && depthMm < belt.toDepthMm)
  return [...new Set([...ports, ...belts].map(({ name }) => name))]
}

function isAlike(one: ClearBand, other: ClearBand): boolean {
  const isSame = (a: readonly unknown[], b: readonly unknown[]) => JSON.stringify(a) === JSON.stringify(b)
  return isSame(one.clear, other.clear) && isSame(one.inTheWay, other.inTheWay)
}

/** Half of what a contact covers along the depth, mm: the gauge's own, else typical. */
export function contactHalfMm(gauge: Footing | undefined): number {
  return gauge?.contactHalfWidthMm ?? typicalContactHalfWidthMm
}
