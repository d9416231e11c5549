import { type ComponentType, lazy, useState } from 'react'

/**
 * A part of the page that is fetched when it is first shown. Fetched ahead it is there at once: shown while it is still
 * being fetched, React keeps what stands in for it for a third of a second, however soon it arrives.
 */
export function loadedLater<Props extends object>(fetchPart: () => Promise<ComponentType<Props>>) {
  let there: ComponentType<Props> | undefined
  const fetchAhead = async () => {
    there ??= await fetchPart()
    return there
  }
  const Later = lazy(async () => ({ default: await fetchAhead() }))
  function Part(props: Props) {
    const [Shown] = useState<ComponentType<Props>>(() => there ?? Later)
    return <Shown {...props} />
  }
  return { Part, fetchAhead }
}
