import type { Photograph } from '../core/measured'
import { mostOf } from '../job/most-of'
import { ShelfError } from '../storage/shelf-error'
import { words } from '../words/words'
import { shelf } from './shelf-here'

export type PhotoKept =
  | { readonly ok: true; readonly photo: Photograph }
  /** In words. */
  | { readonly ok: false; readonly why: string }

/** Shrinks a picture file and keeps it; says in words why it could not be read or kept. */
export async function keepPhoto(file: File): Promise<PhotoKept> {
  const said = words.photographs
  const { shrinkPhoto } = await import('../storage/shrink-photo')
  const shrunk = await shrinkPhoto(file)
  const name = nameOf(file)
  if (!shrunk) return { ok: false, why: said.unreadable(name) }
  try {
    const { widthPx, heightPx } = shrunk
    const hash = await (await shelf()).photos.put(shrunk)
    return { ok: true, photo: { hash, name, widthPx, heightPx } }
  } catch (error) {
    if (!(error instanceof ShelfError)) throw error
    return { ok: false, why: said.notKept(name, words.saving.errors[error.code]) }
  }
}

/** The name of a file as a job may hold it. */
function nameOf(file: File): string {
  const name = Array.from(file.name.replace(/\p{Cc}/gu, ''))
    .slice(0, mostOf.nameLength)
    .join('')
  return name.trim() === '' ? words.photographs.unnamed : name
}
