/** How far a file is read; while it is read anew, what was read before stands. */
export type FileReading<Read> =
  | { readonly kind: 'reading'; readonly done: number; readonly all: number; readonly read?: Read }
  | { readonly kind: 'done'; readonly read: Read }
  | { readonly kind: 'stopped' | 'failed' }
