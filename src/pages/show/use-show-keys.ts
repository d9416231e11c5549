import { useEffect, useRef } from 'react'

/** What the keys of the page do. */
export interface ShowKeys {
  readonly next: () => void
  readonly back: () => void
  readonly first: () => void
  readonly last: () => void
  readonly escape: () => void
}

type Step = keyof ShowKeys

const steps: Readonly<Record<string, Step>> = {
  ArrowRight: 'next',
  ArrowDown: 'next',
  PageDown: 'next',
  ArrowLeft: 'back',
  ArrowUp: 'back',
  PageUp: 'back',
  Home: 'first',
  End: 'last',
  Escape: 'escape',
}

/** Goes through the talk by keys, also those that a presenter's remote types; a part that has keys of its own keeps them. */
export function useShowKeys(keys: ShowKeys): void {
  const latest = useRef(keys)
  latest.current = keys
  useEffect(() => {
    const pressed = (event: KeyboardEvent) => {
      const step = stepOf(event)
      if (!step || event.defaultPrevented || document.querySelector('dialog[open]')) return
      event.preventDefault()
      latest.current[step]()
    }
    window.addEventListener('keydown', pressed)
    return () => window.removeEventListener('keydown', pressed)
  }, [])
}

function stepOf({ key, shiftKey, ctrlKey, metaKey, altKey, target }: KeyboardEvent): Step | undefined {
  if (ctrlKey || metaKey || altKey) return undefined
  if (key !== ' ') return steps[key]
  // A button is pressed by it.
  const isPressed = target instanceof Element && target.closest('button, summary, a, select') !== null
  return isPressed ? undefined : shiftKey ? 'back' : 'next'
}
