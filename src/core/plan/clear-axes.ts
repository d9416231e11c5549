import type { Bore, Gauge } from '../measured'
import { arcDegrees, blockedBy, type Footing, portMarginMm } from '../ports/blocked'
import { contactAngles } from '../ports/contact-angles'
import { isWithinPort, portWidthDegrees } from '../ports/port-at'

/**
 * Directions in which every contact and foot of a gauge stands on metal, degrees: `fromDegrees` in [0, period),
 * `toDegrees` above it by up to one period, so that a range may pass the period. The ends themselves are
 * blocked, but for a range of a whole period.
 */
export interface AxisRange {
  readonly fromDegrees: number
  readonly toDegrees: number
}

/** Shorter pieces between two edges are rounding, degrees. */
const trifleDegrees = 1e-7

/** The turn after which a gauge touches the wall at the same places again: 180° for two contacts, 120° for three. */
export function axisPeriodDegrees(kind: Gauge['kind'] | undefined): number {
  return 360 / contactAngles(kind).length
}

/**
 * The clear axes of a depth, in order; empty where none is clear. Between neighbouring edges of ports, brought
 * to the axis through each contact and foot, nothing changes, so one look between each two decides. Exact but
 * for rounding. `diameterMm` need be no better than 1 %. Own derivation.
 */
export function clearAxes(
  bore: Pick<Bore, 'ports' | 'belts'>,
  gauge: Footing | undefined,
  depthMm: number,
  diameterMm: number,
): AxisRange[] {
  const period = axisPeriodDegrees(gauge?.kind)
  const isClear = (axisDegrees: number) =>
    blockedBy(bore, gauge, { depthMm, axisDegrees }, diameterMm).length === 0
  const edges = edgesOf(bore, gauge, depthMm, diameterMm, period)
  const first = edges[0]
  if (first === undefined) return isClear(0) ? [{ fromDegrees: 0, toDegrees: period }] : []
  const ranges: { fromDegrees: number; toDegrees: number }[] = []
  for (const [index, edge] of edges.entries()) {
    const next = edges[index + 1] ?? first + period
    if (next - edge < trifleDegrees || !isClear((edge + next) / 2)) continue
    const last = ranges.at(-1)
    if (last?.toDegrees === edge && isClear(edge)) last.toDegrees = next
    else ranges.push({ fromDegrees: edge, toDegrees: next })
  }
  return joinedRound(ranges, period, isClear)
}

function edgesOf(
  bore: Pick<Bore, 'ports'>,
  gauge: Footing | undefined,
  depthMm: number,
  diameterMm: number,
  period: number,
): number[] {
  const marginMm = portMarginMm(gauge)
  const margin = arcDegrees(marginMm, diameterMm)
  const apart = gauge?.feetOffsetMm === undefined ? [] : [arcDegrees(gauge.feetOffsetMm, diameterMm)]
  const offsets = [0, ...apart, ...apart.map((degrees) => -degrees)]
  const edges = bore.ports
    .filter((port) => isWithinPort(port, depthMm, port.fromDegrees, marginMm))
    .flatMap((port) => [port.fromDegrees - margin, port.fromDegrees + portWidthDegrees(port) + margin])
    .flatMap((edge) => offsets.map((offset) => withinPeriod(edge - offset, period)))
  return [...new Set(edges)].sort((a, b) => a - b)
}

/** The last range goes on into the first where nothing stands at the edge between them. */
function joinedRound(
  ranges: readonly AxisRange[],
  period: number,
  isClear: (axisDegrees: number) => boolean,
): AxisRange[] {
  const first = ranges[0]
  const last = ranges.at(-1)
  if (!first || !last || last.toDegrees - period !== first.fromDegrees || !isClear(first.fromDegrees)) {
    return [...ranges]
  }
  if (ranges.length === 1) return [{ fromDegrees: 0, toDegrees: period }]
  const joined = { fromDegrees: last.fromDegrees, toDegrees: first.toDegrees + period }
  return [...ranges.slice(1, -1), joined]
}

/** An angle brought into [0, period). */
export function withinPeriod(degrees: number, period: number): number {
  const within = ((degrees % period) + period) % period
  return within === period ? 0 : within
}

/** Whether an axis lies within one of the ranges, their ends left out. */
export function isInRanges(ranges: readonly AxisRange[], axisDegrees: number, period: number): boolean {
  return ranges.some(({ fromDegrees, toDegrees }) => {
    if (toDegrees - fromDegrees >= period) return true
    const past = withinPeriod(axisDegrees - fromDegrees, period)
    return past > trifleDegrees && past < toDegrees - fromDegrees - trifleDegrees
  })
}
