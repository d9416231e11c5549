import type { StationFinding } from '../core/findings'
import type { Bore, Port } from '../core/measured'
import type { RadialScan, ScanFit } from '../core/scan/radial-scan'
import type { ScanForm, ScanFormOptions } from '../core/scan/scan-form'
import type { ScanMarks } from '../core/scan/scan-marks'
import type { ScanSize } from '../core/scan/size-from-ties'
import type { ScanGridOptions } from '../core/surface/scan-grid'
import type { WallGrid } from '../core/surface/wall-grid'

/** What the page asks of the worker that fits. */
export interface ScanFitAsked {
  readonly scan: RadialScan
  readonly form: ScanFormOptions
  /** Stations of the survey that gives the scan its size; none where it has none. */
  readonly ties: readonly StationFinding[]
  /** Openings beside the places without a value. */
  readonly ports: readonly Port[]
  readonly bore: Pick<Bore, 'lengthMm'>
  /** `lengthMm`: how far the readings of the bore are drawn. */
  readonly grid: Omit<ScanGridOptions, 'isLocal' | 'tied'>
}

/**
 * What it says: the fit with the wall as it is drawn, so that it can be looked at, then the wall without its smooth
 * form and what stands out of that; or that no axis goes through the scan.
 */
export type ScanFitSaid =
  | {
      readonly kind: 'fitted'
      readonly fit: ScanFit
      readonly size: ScanSize
      readonly whole: WallGrid
    }
  | { readonly kind: 'local'; readonly local: WallGrid }
  | { readonly kind: 'marks'; readonly marks: ScanMarks }
  | { readonly kind: 'no-axis' }

/** What the page asks of the worker that works out the form, once the scan is fitted. */
export interface ScanFormAsked {
  readonly scan: RadialScan
  readonly fit: Pick<ScanFit, 'aboutAxisUm'>
  readonly form: ScanFormOptions
}

/** What form the scan proves. */
export interface ScanFormSaid {
  readonly kind: 'form'
  readonly form: ScanForm
}
