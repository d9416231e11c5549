import type { SurfaceFinding, SurfaceKind, SurfacePlace } from '../core/measured'
import type { ScanMark } from '../core/scan/scan-marks'

/** A groove no wider than this is a scratch, mm. */
const scratchMm = 1.5

/** A mark of a scan as a surface finding that names the scan; what it is remains to be looked at. */
export function findingOfMark(
  mark: ScanMark,
  place: SurfacePlace,
  { id, scanId, note }: { readonly id: string; readonly scanId: string; readonly note: string },
): SurfaceFinding {
  return {
    id,
    kind: kindOfMark(mark),
    shape: mark.shape === 'streak' ? 'streak' : 'patch',
    ...place,
    note,
    scanId,
  }
}

function kindOfMark({ sign, shape, acrossMm }: ScanMark): SurfaceKind {
  return sign === 'larger' && shape === 'streak' && acrossMm <= scratchMm ? 'scratch' : 'scuff'
}

/** Whether a finding of this scan lies at this place already. */
export function isRecorded(
  findings: readonly SurfaceFinding[],
  scanId: string,
  place: SurfacePlace,
): boolean {
  return findings.some(
    (finding) =>
      finding.scanId === scanId &&
      finding.fromDepthMm === place.fromDepthMm &&
      finding.toDepthMm === place.toDepthMm &&
      finding.fromDegrees === place.fromDegrees &&
      finding.toDegrees === place.toDegrees,
  )
}
