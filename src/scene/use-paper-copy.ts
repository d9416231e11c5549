import { flushSync, type RootStore } from '@react-three/fiber'
import { type RefObject, useEffect, useRef } from 'react'

/** Device pixels for one CSS pixel on paper: about 290 to the inch. */
const paperRatio = 3

/**
 * While the page is printed, a copy of the picture stands in its place: sharp enough for paper, and on a canvas
 * that keeps what is drawn on it, as the canvas of the picture does not. A browser prints as soon as it has said
 * that it will, so all of it happens at once.
 */
export function usePaperCopy(host: RefObject<HTMLElement | null>, draw: () => RootStore | undefined): void {
  const latest = useRef(draw)
  latest.current = draw
  useEffect(() => {
    let takeAway: (() => void) | undefined
    const before = () => {
      takeAway ??= host.current ? copied(host.current, () => latest.current()) : undefined
    }
    const after = () => {
      takeAway?.()
      takeAway = undefined
    }
    window.addEventListener('beforeprint', before)
    window.addEventListener('afterprint', after)
    return () => {
      window.removeEventListener('beforeprint', before)
      window.removeEventListener('afterprint', after)
      after()
    }
  }, [host])
}

/** Undefined where there is nothing to copy; else what puts everything back. */
function copied(host: HTMLElement, draw: () => RootStore | undefined): (() => void) | undefined {
  const state = flushSync(draw)?.getState()
  if (!state || state.gl.getContext().isContextLost()) return undefined
  const screenRatio = state.viewport.dpr
  state.setDpr(paperRatio)
  state.advance(performance.now())
  const copy = copyOf(state.gl.domElement)
  host.append(copy)
  return () => {
    copy.remove()
    state.setDpr(screenRatio)
  }
}

function copyOf(canvas: HTMLCanvasElement): HTMLCanvasElement {
  const copy = document.createElement('canvas')
  copy.className = 'paper-copy'
  copy.width = canvas.width
  copy.height = canvas.height
  copy.getContext('2d')?.drawImage(canvas, 0, 0)
  return copy
}
