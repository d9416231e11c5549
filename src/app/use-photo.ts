import { useEffect, useState } from 'react'
import { ShelfError } from '../storage/shelf-error'
import { words } from '../words/words'
import { shelf } from './shelf-here'

export type ShownPhoto =
  | { readonly kind: 'reading' }
  | { readonly kind: 'shown'; readonly url: string }
  /** In words. */
  | { readonly kind: 'absent'; readonly why: string }

/** A photograph as an address for an image, as long as it is shown. */
export function usePhoto(hash: string): ShownPhoto {
  const [shown, setShown] = useState<ShownPhoto>({ kind: 'reading' })
  useEffect(() => {
    let url: string | undefined
    let isGone = false
    void readPhoto(hash).then((read) => {
      if (isGone) return
      if (typeof read === 'string') return setShown({ kind: 'absent', why: read })
      url = URL.createObjectURL(read)
      setShown({ kind: 'shown', url })
    })
    return () => {
      isGone = true
      if (url !== undefined) URL.revokeObjectURL(url)
    }
  }, [hash])
  return shown
}

/** The picture, or why it is not there. */
export async function readPhoto(hash: string): Promise<Blob | string> {
  try {
    const photo = await (await shelf()).photos.read(hash)
    return photo ? new Blob([photo.bytes], { type: photo.type }) : words.photographs.notHere
  } catch (error) {
    if (!(error instanceof ShelfError)) throw error
    return words.saving.errors[error.code]
  }
}
