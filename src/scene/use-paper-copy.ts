import { flushSync, type RootStore } from '@react-three/fiber'
import { type RefObject, useEffect, useRef } from 'react'

/** Device pixels for one CSS pixel on paper: about 290 to the inch. */
const paperRatio = 3

/** The most that the picture takes of a sheet of A4 or Letter, beside what stands below it, CSS pixels. */
const most = { width: 690, height: 400 }

interface PrintedPicture {
  readonly frame: RefObject<HTMLElement | null>
  readonly host: RefObject<HTMLElement | null>
  /** Gives the scene to the canvas, for the screen or with the looks of paper. */
  readonly draw: (onPaper: boolean) => RootStore | undefined
  /** The frame has another size: what stands on it is measured anew. */
  readonly remeasure: () => void
}

/**
 * While the page is printed, a copy of the picture stands in its place: drawn anew for the size it has on the sheet,
 * with the looks of paper, sharp, and on a canvas that keeps what is drawn on it, as the canvas of the picture does
 * not. A browser prints as soon as it has said that it will, so all of it happens at once.
 */
export function usePaperCopy(printed: PrintedPicture): void {
  const latest = useRef(printed)
  latest.current = printed
  useEffect(() => {
    const paper = window.matchMedia('print')
    let takeAway: (() => void) | undefined
    const before = () => {
      takeAway ??= copied(latest.current)
    }
    const after = () => {
      takeAway?.()
      takeAway = undefined
    }
    const change = () => (paper.matches ? before() : after())
    window.addEventListener('beforeprint', before)
    window.addEventListener('afterprint', after)
    paper.addEventListener('change', change)
    return () => {
      window.removeEventListener('beforeprint', before)
      window.removeEventListener('afterprint', after)
      paper.removeEventListener('change', change)
      after()
    }
  }, [])
}

/** Undefined where there is nothing to copy; else what puts everything back. */
function copied({ frame, host, draw, remeasure }: PrintedPicture): (() => void) | undefined {
  const element = frame.current
  if (!element || !host.current) return undefined
  const state = flushSync(() => draw(true))?.getState()
  if (!state || state.gl.getContext().isContextLost()) return undefined
  const { width, height } = state.size
  const screenRatio = state.viewport.dpr
  const share = Math.min(1, most.width / width, most.height / height)
  const resize = (to: { width: number; height: number }, dpr: number) => {
    remeasure()
    flushSync(() => state.setSize(to.width, to.height))
    state.setDpr(dpr)
  }
  const onSheet = { width: Math.round(width * share), height: Math.round(height * share) }
  element.style.width = `${onSheet.width}px`
  element.style.height = `${onSheet.height}px`
  element.classList.add('is-on-paper')
  resize(onSheet, paperRatio)
  state.advance(performance.now())
  const copy = copyOf(state.gl.domElement)
  host.current.append(copy)
  return () => {
    copy.remove()
    element.style.width = ''
    element.style.height = ''
    element.classList.remove('is-on-paper')
    flushSync(() => draw(false))
    resize({ width, height }, screenRatio)
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
