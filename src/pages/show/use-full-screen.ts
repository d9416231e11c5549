import { useEffect, useState, useSyncExternalStore } from 'react'

export interface FullScreen {
  readonly isOn: boolean
  /** The browser did not allow it. */
  readonly isRefused: boolean
  readonly toggle: () => void
}

function follow(onChange: () => void): () => void {
  document.addEventListener('fullscreenchange', onChange)
  return () => document.removeEventListener('fullscreenchange', onChange)
}

const isFull = () => document.fullscreenElement !== null

/** The whole screen for this page, where the browser can; it ends with the page. Undefined where it cannot. */
export function useFullScreen(): FullScreen | undefined {
  const isOn = useSyncExternalStore(follow, isFull)
  const [isRefused, setIsRefused] = useState(false)
  useEffect(
    () => () => {
      if (isFull()) void document.exitFullscreen()
    },
    [],
  )
  if (!document.fullscreenEnabled) return undefined
  const toggle = () => {
    setIsRefused(false)
    if (isFull()) void document.exitFullscreen()
    else document.documentElement.requestFullscreen().catch(() => setIsRefused(true))
  }
  return { isOn, isRefused, toggle }
}
