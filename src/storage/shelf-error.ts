export const shelfErrorCodes = [
  /** The browser has no room left, or has used up what it grants to this page. */
  'quota',
  /** Another tab with an older Borewall holds the shelf open. */
  'blocked',
  /** The browser keeps nothing for this page (private window, storage switched off, damaged profile). */
  'unavailable',
  /** What was read back differs from what was written. */
  'mismatch',
  /** A newer Borewall wrote what is stored; it is left as it is. */
  'newer',
  /** A newer Borewall has arranged the stores anew; this page cannot open them. */
  'newer-shelf',
  /** The job this page had kept is no longer there: the browser's data was cleared, or it was deleted elsewhere. */
  'gone',
  /** Another tab wrote the job meanwhile. Its state stays, and what was to be saved was set aside. */
  'overtaken',
] as const
export type ShelfErrorCode = (typeof shelfErrorCodes)[number]

/** A failure of the shelf. The job in memory is not touched by it. */
export class ShelfError extends Error {
  constructor(
    readonly code: ShelfErrorCode,
    options?: ErrorOptions,
  ) {
    super(`The shelf of jobs failed: ${code}`, options)
    this.name = 'ShelfError'
  }
}

/** Any failure of the browser's database as a typed one, with its cause. */
export function shelfErrorOf(error: unknown): ShelfError {
  if (error instanceof ShelfError) return error
  const name = error instanceof Error || error instanceof DOMException ? error.name : ''
  if (name === 'QuotaExceededError') return new ShelfError('quota', { cause: error })
  if (name === 'VersionError') return new ShelfError('newer-shelf', { cause: error })
  return new ShelfError('unavailable', { cause: error })
}
