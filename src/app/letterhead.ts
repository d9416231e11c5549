/** The shop's own head of a report: read when it is needed, kept at each change, in this browser alone. */
import { useEffect, useMemo } from 'react'
import { useStore } from 'zustand'
import { createStore } from 'zustand/vanilla'
import { emptyLetterhead, type Letterhead } from '../storage/letterhead'
import { ShelfError, type ShelfErrorCode } from '../storage/shelf-error'
import { letterheadWords } from '../words/letterhead-words'
import { shelf } from './shelf-here'

export type LetterheadState =
  | { readonly kind: 'unread' | 'newer' }
  | { readonly kind: 'failed'; readonly code: ShelfErrorCode }
  | LetterheadRead

export interface LetterheadRead {
  readonly kind: 'read'
  readonly letterhead: Letterhead
  /** What was kept before could not be read, and was set aside. */
  readonly wasSetAside?: true
  /** What became of the last change; absent where there was none. */
  readonly kept?: 'keeping' | 'kept' | ShelfErrorCode
}

export const letterheadStore = createStore<LetterheadState>(() => ({ kind: 'unread' }))

/** Reads what is kept, which another tab may have changed; what could not be kept here yet stays as it is. */
export async function readLetterhead(): Promise<void> {
  const before = letterheadStore.getState()
  if (before.kind === 'read' && before.kept !== undefined && before.kept !== 'kept') return
  const found = await foundLetterhead()
  // What was typed meanwhile is newer than what was found.
  if (letterheadStore.getState() === before) letterheadStore.setState(found, true)
}

async function foundLetterhead(): Promise<LetterheadState> {
  try {
    const found = await (await shelf()).letterhead.read(letterheadWords.dialog.setAsideName)
    if (found.kind === 'newer') return found
    if (found.kind === 'kept') return { kind: 'read', letterhead: found.letterhead }
    return { kind: 'read', letterhead: emptyLetterhead, wasSetAside: true }
  } catch (error) {
    if (!(error instanceof ShelfError)) throw error
    return { kind: 'failed', code: error.code }
  }
}

/** Changes the letterhead and keeps it; what cannot be kept stays on the page, which says so. */
export function changeLetterhead(change: (letterhead: Letterhead) => Letterhead): void {
  const state = letterheadStore.getState()
  if (state.kind !== 'read') return
  letterheadStore.setState({ ...state, letterhead: change(state.letterhead), kept: 'keeping' })
  void keepLetterhead()
}

let lastWrite: Promise<void> = Promise.resolve()

/** Keeps the letterhead as it stands then, one write after the other. */
export function keepLetterhead(): Promise<void> {
  lastWrite = lastWrite.then(keep)
  return lastWrite
}

async function keep(): Promise<void> {
  const state = letterheadStore.getState()
  if (state.kind !== 'read' || state.kept === 'kept') return
  const kept = await outcome(state.letterhead)
  const now = letterheadStore.getState()
  if (now.kind === 'read' && now.letterhead === state.letterhead) letterheadStore.setState({ ...now, kept })
}

async function outcome(letterhead: Letterhead): Promise<'kept' | ShelfErrorCode> {
  try {
    await (await shelf()).letterhead.write(letterhead)
    return 'kept'
  } catch (error) {
    if (!(error instanceof ShelfError)) throw error
    return error.code
  }
}

/** The letterhead as a report shows it. */
export interface LetterheadShown {
  readonly shopName: string
  readonly addressLines: readonly string[]
  readonly pictureUrl?: string
  readonly appAddress?: string
}

/** The letterhead for a report; undefined until it was looked for. Where it cannot be read, an empty one. */
export function useLetterhead(): LetterheadShown | undefined {
  const state = useStore(letterheadStore)
  useEffect(() => void readLetterhead(), [])
  return useMemo(() => {
    if (state.kind === 'unread') return undefined
    return shownLetterhead(state.kind === 'read' ? state.letterhead : emptyLetterhead)
  }, [state])
}

export function shownLetterhead({ shopName, address, appAddress, picture }: Letterhead): LetterheadShown {
  return {
    shopName: shopName.trim(),
    addressLines: address
      .split('\n')
      .map((line) => line.trim())
      .filter((line) => line !== ''),
    ...(picture === undefined ? {} : { pictureUrl: pictureUrl(picture) }),
    ...(appAddress === undefined ? {} : { appAddress }),
  }
}

export function pictureUrl({ type, base64 }: NonNullable<Letterhead['picture']>): string {
  return `data:${type};base64,${base64}`
}
