import { type ComponentType, useEffect, useState } from 'react'
import { words } from '../words/words'

let loaded: ComponentType | undefined

/**
 * The shelf, brought along when somebody asks for it: nobody waits for it before the first number. Without
 * Suspense, which would hold it back for a third of a second once it had shown that it waits.
 */
export function ShelfLater() {
  const [Page, setPage] = useState(() => loaded)
  const [failure, setFailure] = useState<unknown>()
  useEffect(() => {
    if (loaded) return
    import('./ShelfPage').then(({ ShelfPage }) => {
      loaded = ShelfPage
      setPage(() => ShelfPage)
    }, setFailure)
  }, [])
  // To be told of by the guard around the page.
  if (failure !== undefined) throw failure
  return Page ? <Page /> : <main className="opening">{words.app.loading}</main>
}
