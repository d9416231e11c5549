import { useSyncExternalStore } from 'react'
import { flushSync } from 'react-dom'

/** All parts side by side; one part at a time; or two, on a screen for fingers that has room for them. */
export type Layout = 'desk' | 'one' | 'two'

/** One pad of keys and a picture need this much beside each other; lower, a pad and a bar do not fit. */
const one = window.matchMedia('(max-width: 767.98px), (max-height: 499.98px)')
const fingers = window.matchMedia('(pointer: coarse) and (max-width: 1419.98px)')

const paper = window.matchMedia('print')

let onScreen: Layout = 'desk'

/** How the page is laid out in this window. A sheet of paper is narrow too: for its time it stays as it was. */
export function useLayout(): Layout {
  return useSyncExternalStore(follow, now)
}

/** Whether the page is printed: from any screen it is the page of a desk. */
export function useOnPaper(): boolean {
  return useSyncExternalStore(followPaper, isOnPaper)
}

let isPrinted = false

function isOnPaper(): boolean {
  return isPrinted || paper.matches
}

function followPaper(onChange: () => void): () => void {
  // A browser prints as soon as it has said that it will: what is to be printed has to be there by then.
  const before = () => {
    isPrinted = true
    flushSync(onChange)
  }
  const after = () => {
    isPrinted = false
    onChange()
  }
  window.addEventListener('beforeprint', before)
  window.addEventListener('afterprint', after)
  paper.addEventListener('change', onChange)
  return () => {
    window.removeEventListener('beforeprint', before)
    window.removeEventListener('afterprint', after)
    paper.removeEventListener('change', onChange)
  }
}

function now(): Layout {
  if (!isOnPaper()) onScreen = one.matches ? 'one' : fingers.matches ? 'two' : 'desk'
  return onScreen
}

function follow(onChange: () => void): () => void {
  for (const query of [one, fingers, paper]) query.addEventListener('change', onChange)
  return () => {
    for (const query of [one, fingers, paper]) query.removeEventListener('change', onChange)
  }
}
