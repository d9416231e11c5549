import type { ScanTable } from '../../formats/scan-table'

/** How far a file of radii is read; while it is read anew, what was read before stands. */
export type ScanReadingState =
  | { readonly kind: 'reading'; readonly done: number; readonly all: number; readonly table?: ScanTable }
  | { readonly kind: 'done'; readonly table: ScanTable }
  | { readonly kind: 'stopped' | 'failed' }
