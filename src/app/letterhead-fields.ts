import { createStore } from 'zustand/vanilla'
import { type Letterhead, mostOfLetterhead } from '../storage/letterhead'
import { letterheadWords } from '../words/letterhead-words'
import { readAppAddress } from './app-address'
import { changeLetterhead } from './letterhead'

export type LetterheadField = 'shopName' | 'address' | 'appAddress'

/** What was typed and is not taken: it stays in its field, also while the dialog is closed. */
export interface Draft {
  readonly typed: string
  /** In words, once it was left like that. */
  readonly why?: string
  readonly mended?: string
}

export const letterheadDrafts = createStore<{ readonly [Field in LetterheadField]?: Draft }>(() => ({}))

/** Takes what was typed at once where it can be kept; an address once it is left. */
export function typeLetterhead(field: LetterheadField, typed: string): void {
  if (field === 'appAddress') setDraft(field, { typed })
  else take(field, typed)
}

/** Takes what still waits in a field, or says what is wrong with it. */
export function leaveLetterhead(field: LetterheadField): void {
  const draft = letterheadDrafts.getState()[field]
  if (draft !== undefined) take(field, draft.typed)
}

export function take(field: LetterheadField, typed: string): void {
  const taken = read(field, typed)
  if ('why' in taken) setDraft(field, { typed, ...taken })
  else {
    setDraft(field, undefined)
    changeLetterhead(taken.change)
  }
}

type Taken =
  | { readonly change: (letterhead: Letterhead) => Letterhead }
  | { readonly why: string; readonly mended?: string }

function read(field: LetterheadField, typed: string): Taken {
  const said = letterheadWords.problems
  if (field === 'appAddress') return readAddress(typed)
  const { shopName, address, addressLines } = mostOfLetterhead
  const isLine = field === 'shopName'
  if ((isLine ? /\p{Cc}/u : /[^\P{Cc}\n]/u).test(typed)) return { why: said.control }
  if (isLine && typed.length > shopName) return { why: said.shopNameTooLong(shopName) }
  if (!isLine && (typed.length > address || typed.split('\n').length > addressLines)) {
    return { why: said.addressTooLong(address, addressLines) }
  }
  return { change: (letterhead) => ({ ...letterhead, [field]: typed }) }
}

function readAddress(typed: string): Taken {
  if (typed.trim() === '') {
    return { change: ({ appAddress: _, ...letterhead }) => letterhead }
  }
  const found = readAppAddress(typed)
  if (found.ok) return { change: (letterhead) => ({ ...letterhead, appAddress: found.address }) }
  const { why, mended } = found
  return {
    why: letterheadWords.problems.appAddress[why],
    ...(mended === undefined ? {} : { mended }),
  }
}

function setDraft(field: LetterheadField, draft: Draft | undefined): void {
  const { [field]: _, ...others } = letterheadDrafts.getState()
  letterheadDrafts.setState(draft === undefined ? others : { ...others, [field]: draft }, true)
}
