import { useEffect, useState } from 'react'

/** The views that are loaded apart: with their scales and shapes they would make the first page heavier. */
export type FlatViews = typeof import('../../charts/flat-views')

/** The first number and the picture come first. */
const loadAfterMs = 2500

let loaded: FlatViews | undefined

async function load(): Promise<FlatViews> {
  loaded = await import('../../charts/flat-views')
  return loaded
}

/** Section and profile, once they are there: at once where they are wanted, else when there is time. */
export function useFlatViews(isWanted: boolean): FlatViews | undefined {
  const [views, setViews] = useState(loaded)
  useEffect(() => {
    if (views) return
    let isGone = false
    const take = () => {
      load().then(
        (found) => {
          if (!isGone) setViews(found)
        },
        // Without a network it does not come: the map holds, and the next try may find it.
        () => {
          if (!isGone) later = setTimeout(take, loadAfterMs)
        },
      )
    }
    let later = isWanted ? undefined : setTimeout(take, loadAfterMs)
    if (isWanted) take()
    return () => {
      isGone = true
      clearTimeout(later)
    }
  }, [views, isWanted])
  return views ?? loaded
}
