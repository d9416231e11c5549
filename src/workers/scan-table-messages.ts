import type { ScanChoices, ScanTable } from '../formats/scan-table'

/** What the page asks of the worker. */
export interface ScanTableAsked {
  readonly bytes: Uint8Array
  readonly choices: ScanChoices
}

/** What the worker says: how many characters are done, then what the file holds. */
export type ScanTableSaid =
  | { readonly kind: 'progress'; readonly done: number; readonly all: number }
  | { readonly kind: 'done'; readonly table: ScanTable }
