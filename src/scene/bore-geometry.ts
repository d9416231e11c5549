import type { DrawnStation, LimitPair } from '../core/findings'
import type { SurfaceFinding } from '../core/measured'
import type { ScanMark } from '../core/scan/scan-marks'
import type { WallGrid } from '../core/surface/wall-grid'
import { surfaceNear } from '../core/surface-findings/surface-place'
import { limitStrokes } from './bore-strokes'
import type { BandLimit } from './doubt-band-geometry'
import type { PointedPlace } from './pointed-place'
import { contactsOf } from './proven-marks'
import { scanMarkStrokes } from './scan-mark-strokes'
import type { Disc } from './station-geometry'
import { strokeGeometry } from './stroke-geometry'
import { surfaceStrokes } from './surface-strokes'

/** The limits whose doubt is drawn as a band. */
export function judgedLimits(pair: LimitPair | undefined): readonly BandLimit[] {
  const min = pair?.minMm !== undefined && pair.kind !== 'wear' ? [0 as const] : []
  const max = pair?.maxMm !== undefined ? [1 as const] : []
  return [...min, ...max]
}

/** The rings of the limits, at both mouths and at the levels of these stations. */
export function ringsOf(grid: WallGrid, pair: LimitPair | undefined, stations: readonly DrawnStation[]) {
  const levelsMm = [...new Set(stations.map((station) => station.depthMm))]
  return strokeGeometry(limitStrokes({ middleMm: grid.middleMm, lengthMm: grid.lengthMm, pair, levelsMm }))
}

/** Marks of a scan and surface findings as lines, those pointed at stronger. */
export function scarsOf(
  grid: WallGrid,
  surface: readonly SurfaceFinding[],
  scanMarks: readonly ScanMark[] = [],
  pointed: PointedPlace | undefined,
) {
  const lit = pointed ? surfaceNear(surface, pointed, grid.lengthMm) : []
  const litMarks = pointed ? surfaceNear(scanMarks, pointed, grid.lengthMm) : []
  return strokeGeometry([
    ...scanMarkStrokes(grid, scanMarks, litMarks),
    ...surfaceStrokes(grid, surface, lit),
  ])
}

/** A disc at both contacts of each station. */
export function discsOf(grid: WallGrid, stations: readonly DrawnStation[]): readonly Disc[] {
  return stations.flatMap((station) =>
    contactsOf(station).map((contact) => ({
      ...contact,
      deviationUm: (station.diameterMm - grid.middleMm) * 1000,
      shape: station.counted ? 'disc' : 'hollow',
    })),
  )
}
