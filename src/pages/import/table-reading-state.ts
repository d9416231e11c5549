import type { TableFile } from '../../formats/table-file'

/** How far a table is read; while it is read anew, what was read before stands. */
export type TableReadingState =
  | { readonly kind: 'reading'; readonly done: number; readonly all: number; readonly file?: TableFile }
  | { readonly kind: 'done'; readonly file: TableFile }
  | { readonly kind: 'stopped' | 'failed' }
