import { createStore } from 'zustand/vanilla'
import type { RadialScan, ScanFit } from '../core/scan/radial-scan'
import type { ScanForm } from '../core/scan/scan-form'
import type { ScanMarks } from '../core/scan/scan-marks'
import type { ScanSize } from '../core/scan/size-from-ties'
import type { WallGrid } from '../core/surface/wall-grid'

/** What is known of the radii of a scan in this tab. */
export type ScanFigures =
  | { readonly kind: 'fetching' }
  /** Not in this browser, or damaged here. */
  | { readonly kind: 'not-here' }
  | { readonly kind: 'fitting'; readonly scan: RadialScan }
  /** No circle goes through any of its levels. */
  | { readonly kind: 'no-axis'; readonly scan: RadialScan }
  | { readonly kind: 'failed'; readonly scan: RadialScan }
  | ({ readonly kind: 'fitted' } & FittedScan)

export interface FittedScan {
  readonly scan: RadialScan
  readonly fit: ScanFit
  /** The wall about the fitted axis. */
  readonly whole: WallGrid
  /** What stations tie the whole wall to. */
  readonly size: ScanSize
  /** The wall without its smooth form, and what stands out of it; worked out after the whole one. */
  readonly local?: WallGrid
  readonly marks?: ScanMarks
  /** What form it proves; worked out after the wall too. */
  readonly form?: ScanForm
}

/** How scans are looked at in this tab: never saved with the job, never undone. */
export interface ScanView {
  /** By bore: the scan that is looked at, or the readings. Absent: a scan only where there are no readings. */
  readonly chosen: Readonly<Record<string, string | 'readings'>>
  /** The smooth form is taken off. */
  readonly isLocal: boolean
  /** By the id of the scan. */
  readonly figures: Readonly<Record<string, ScanFigures>>
}

const start: ScanView = { chosen: {}, isLocal: false, figures: {} }

export const scanView = createStore<ScanView>(() => start)

/** Looks at a scan of a bore, or at the readings. */
export function lookAtScan(boreId: string, chosen: string | 'readings') {
  scanView.setState(({ chosen: others }) => ({ chosen: { ...others, [boreId]: chosen } }))
}

export function takeOffForm(isLocal: boolean) {
  scanView.setState({ isLocal })
}

export function setScanFigures(scanId: string, figures: ScanFigures) {
  scanView.setState(({ figures: others }) => ({ figures: { ...others, [scanId]: figures } }))
}

/** More of a scan that is fitted: what comes after its wall. */
export function addToScan(scanId: string, more: Partial<Pick<FittedScan, 'local' | 'marks' | 'form'>>) {
  const { [scanId]: before } = scanView.getState().figures
  if (before?.kind === 'fitted') setScanFigures(scanId, { ...before, ...more })
}

/** Starts over for another job. */
export function startScanView() {
  scanView.setState(start, true)
}
