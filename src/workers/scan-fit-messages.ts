import type { StationFinding } from '../core/findings'
import type { Port } from '../core/measured'
import type { RadialScan, ScanFit } from '../core/scan/radial-scan'
import type { ScanForm, ScanFormOptions } from '../core/scan/scan-form'
import type { ScanMarks } from '../core/scan/scan-marks'
import type { ScanSize } from '../core/scan/size-from-ties'
import type { ScanGridOptions } from '../core/surface/scan-grid'
import type { WallGrid } from '../core/surface/wall-grid'

/** What the page asks of the worker. */
export interface ScanFitAsked {
  readonly scan: RadialScan
  readonly form: ScanFormOptions
  /** Stations of the survey that gives the scan its size; none where it has none. */
  readonly ties: readonly StationFinding[]
  /** Openings beside the places without a value. */
  readonly ports: readonly Port[]
  readonly grid: Omit<ScanGridOptions, 'isLocal' | 'tied'>
}

/**
 * What the worker says: the fit with the wall as it is drawn, so that it can be looked at, then what stands out of its
 * smooth form, and then what form it proves; or that no axis goes through the scan.
 */
export type ScanFitSaid =
  | {
      readonly kind: 'fitted'
      readonly fit: ScanFit
      readonly size: ScanSize
      readonly whole: WallGrid
      readonly local: WallGrid
    }
  | { readonly kind: 'marks'; readonly marks: ScanMarks }
  | { readonly kind: 'form'; readonly form: ScanForm }
  | { readonly kind: 'no-axis' }
