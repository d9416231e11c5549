/** What the page asks of a worker that reads files. */
export interface FileAsked<Choices> {
  readonly bytes: Uint8Array
  readonly choices: Choices
}

/** What such a worker says: how much is done, then what the file holds. */
export type FileSaid<Read> =
  | { readonly kind: 'progress'; readonly done: number; readonly all: number }
  | { readonly kind: 'done'; readonly read: Read }
