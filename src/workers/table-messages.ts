import type { TableChoices, TableFile } from '../formats/table-file'

/** What the page asks of the worker. */
export interface TableAsked {
  readonly bytes: Uint8Array
  readonly choices: TableChoices
}

/** What the worker says: how many rows are done, then the table. */
export type TableSaid =
  | { readonly kind: 'progress'; readonly done: number; readonly all: number }
  | { readonly kind: 'done'; readonly file: TableFile }
