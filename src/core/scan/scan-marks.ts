import type { SurfacePlace } from '../measured'
import type { WorkingMap } from './working-map'

/** Whether the wall reads smaller there than its smooth form (it stands proud) or larger (it lies back). */
export type MarkSign = 'smaller' | 'larger'

/** A streak runs along the stroke, a band around the bore; a patch is neither. */
export type MarkShape = 'streak' | 'band' | 'patch'

/**
 * Something on the wall that stands out of its smooth form beyond what noise explains. Its place reaches to half of
 * its height, to the nearest half step of the scan.
 */
export interface ScanMark extends SurfacePlace {
  readonly sign: MarkSign
  readonly shape: MarkShape
  readonly acrossDegrees: number
  readonly acrossMm: number
  readonly alongMm: number
  /** Where it stands out most: the middle of a small area, and the mean height of that area, signed, µm on the radius. */
  readonly peak: { readonly depthMm: number; readonly angleDegrees: number }
  readonly heightUm: number
  readonly peakPlace: SurfacePlace
  /** Of that height, µm: the standard uncertainty, and ± at 95 %. */
  readonly doubtUm: number
  readonly expandedUm: number
  /** How far the mean of the window that shows it best stands from 0, in standard deviations of such a mean. */
  readonly evidence: number
  /** A narrow line within or along a wider mark of the other sign: the place of that mark in the list. */
  readonly within?: number
  /** The narrow piece of wall between two openings that it lies on. */
  readonly bridge?: Bridge
  /** It lies wholly along the edge of an opening, where a chamfer does too. */
  readonly besideOpening: boolean
}

/** Wall between two openings at one depth, degrees clockwise, with the names of the ports if they were given. */
export interface Bridge {
  readonly fromDegrees: number
  readonly toDegrees: number
  readonly ports?: readonly [string, string]
}

/** How marks lie together: something to check, never a finding of the cause. */
export type MarkPattern =
  | { readonly kind: 'one-side'; readonly atDegrees: number; readonly marks: readonly number[] }
  | {
      readonly kind: 'both-sides'
      readonly atDegrees: readonly [number, number]
      readonly marks: readonly number[]
    }
  | {
      readonly kind: 'four-corners'
      /** The four directions, clockwise. */
      readonly atDegrees: readonly [number, number, number, number]
      /** Where the pin lies if it lies midway between the corners: two directions, 180° apart or nearly so. */
      readonly pinDegrees: readonly [number, number]
      readonly marks: readonly number[]
    }
  | { readonly kind: 'all-round'; readonly marks: readonly number[] }
  | {
      readonly kind: 'bridge'
      readonly sign: MarkSign
      readonly bridge: Bridge
      readonly marks: readonly number[]
    }
  | { readonly kind: 'band'; readonly marks: readonly number[] }

/** What stands out of the smooth form of a scan. */
export interface ScanMarks {
  /** The plainest first. */
  readonly marks: readonly ScanMark[]
  readonly patterns: readonly MarkPattern[]
  /** Values that stand out with no others beside them: dirt on the wall or on the probe, as a rule. */
  readonly loneValues: number
  /** Robust standard deviation of a value about the smooth form, or of the mean of neighbours where they were averaged, µm. */
  readonly sigmaUm: number
  /** So many standard deviations the mean of a window stands out before it counts. */
  readonly threshold: number
  /** Height that a mark of three angles by three depths needs to be found, µm. */
  readonly leastHeightUm: number
  /** What was looked at: deviations from the smooth form, less higher lobes, openings as gaps, µm. */
  readonly map: WorkingMap
}
