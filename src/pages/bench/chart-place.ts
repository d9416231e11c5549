import { type AxisEnd, axisNear } from '../../charts/axis-near'
import type { MapPlace } from '../../charts/map-scale'
import { contactAngles } from '../../core/ports/contact-angles'
import type { WallGrid } from '../../core/surface/wall-grid'
import type { OnBench } from './use-job'

/** What a section and a profile can be cut at, and where they are. */
export interface ChartPlace {
  /** From the deck down, within the wall. */
  readonly levelsMm: readonly number[]
  readonly axesDegrees: readonly number[]
  readonly depthMm: number
  readonly axis: AxisEnd
}

/**
 * Where section and profile are cut: at the level and the axis nearest to the place pointed at last, else where the
 * bore is widest. Undefined while there is nothing to cut.
 */
export function chartPlace(
  { survey, finding }: Pick<OnBench, 'survey' | 'finding'>,
  grid: WallGrid | undefined,
  last: MapPlace | undefined,
): ChartPlace | undefined {
  if (!grid) return undefined
  const inOrder = (values: readonly number[]) => [...new Set(values)].sort((a, b) => a - b)
  const levelsMm = inOrder([...survey.levelsMm, ...finding.stations.map((s) => s.depthMm)]).filter((level) =>
    grid.depthsMm.includes(level),
  )
  const axesDegrees = inOrder([...survey.axesDegrees, ...finding.stations.map((s) => s.axisDegrees)])
  const { depthMm, axisDegrees = 0 } = finding.largest ?? finding.stations[0] ?? {}
  const at = last ?? { depthMm: depthMm ?? levelsMm[0] ?? 0, angleDegrees: axisDegrees }
  const axis = axisNear(axesDegrees, contactAngles(finding.gaugeKind), at.angleDegrees)
  const level = levelsMm.reduce<number | undefined>(
    (best, one) =>
      best !== undefined && Math.abs(best - at.depthMm) <= Math.abs(one - at.depthMm) ? best : one,
    undefined,
  )
  return axis && level !== undefined ? { levelsMm, axesDegrees, depthMm: level, axis } : undefined
}
