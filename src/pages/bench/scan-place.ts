import type { Port } from '../../core/measured'
import { portAt } from '../../core/ports/port-at'
import type { RadialScan } from '../../core/scan/radial-scan'
import { columnAt, deviationAt, rowAt } from '../../core/surface/drawn-position'
import type { PointedScan } from '../../words/scan-read-out'
import type { ScanWall } from './use-drawn-scan'

/** A place on the wall, as it is pointed at. */
interface Place {
  readonly depthMm: number
  readonly angleDegrees: number
}

/** What a scan holds at the place of it that is nearest to the one pointed at; nothing past its outermost levels. */
export function scanAt(wall: ScanWall, ports: readonly Port[], pointed: Place): PointedScan {
  const { scan, fit, grid } = wall
  const place = nearestPlace(scan, pointed)
  const value = fit.smooth.residualUm[place.level * scan.anglesDegrees.length + place.angle]
  const known = value !== undefined && !Number.isNaN(value) && isWithin(scan, pointed.depthMm)
  const at = known ? place : { ...pointed }
  const drawnUm = deviationAt(
    wall.whole,
    columnAt(wall.whole, (at.angleDegrees * Math.PI) / 180),
    rowAt(wall.whole, at.depthMm),
  )
  return {
    depthMm: at.depthMm,
    angleDegrees: at.angleDegrees,
    port: portAt(ports, pointed.depthMm, pointed.angleDegrees)?.name,
    radiusUm: known ? drawnUm : undefined,
    overUm: known ? value : undefined,
    sizeMm: wall.isSized ? grid.middleMm + drawnUm / 1000 : undefined,
  }
}

/** Half a step past the outermost levels there is still the level. */
function isWithin({ depthsMm }: RadialScan, depthMm: number): boolean {
  const [first = 0, second = first] = depthsMm
  const last = depthsMm.at(-1) ?? first
  const before = depthsMm.at(-2) ?? last
  return depthMm >= first - (second - first) / 2 && depthMm <= last + (last - before) / 2
}

/** The level and the angle of a scan that are nearest to a place. */
export function nearestPlace({ depthsMm, anglesDegrees }: RadialScan, { depthMm, angleDegrees }: Place) {
  const turned = ((angleDegrees % 360) + 360) % 360
  const around = (angle: number) => Math.min(Math.abs(angle - turned), 360 - Math.abs(angle - turned))
  const level = nearestOf(depthsMm, (depth) => Math.abs(depth - depthMm))
  const angle = nearestOf(anglesDegrees, around)
  return { level, angle, depthMm: depthsMm[level] ?? depthMm, angleDegrees: anglesDegrees[angle] ?? turned }
}

function nearestOf(values: readonly number[], away: (value: number) => number): number {
  let best = 0
  values.forEach((value, index) => {
    if (away(value) < away(values[best] ?? value)) best = index
  })
  return best
}

/** What is drawn of the places of a level that were read, µm. */
export function drawnAtLevel({ scan, fit, grid }: ScanWall, level: number): number[] {
  const columns = scan.anglesDegrees.length
  const row = rowAt(grid, scan.depthsMm[level] ?? 0)
  return scan.anglesDegrees.flatMap((angle, index) =>
    Number.isNaN(fit.aboutAxisUm[level * columns + index])
      ? []
      : [deviationAt(grid, columnAt(grid, (angle * Math.PI) / 180), row)],
  )
}

/** What is drawn of the places at an angle that were read, µm. */
export function drawnAtAngle({ scan, fit, grid }: ScanWall, angle: number): number[] {
  const columns = scan.anglesDegrees.length
  const column = columnAt(grid, ((scan.anglesDegrees[angle] ?? 0) * Math.PI) / 180)
  return scan.depthsMm.flatMap((depth, index) =>
    Number.isNaN(fit.aboutAxisUm[index * columns + angle])
      ? []
      : [deviationAt(grid, column, rowAt(grid, depth))],
  )
}
