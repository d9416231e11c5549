import { useCallback, useEffect, useMemo, useState } from 'react'
import { flushSync } from 'react-dom'
import { useStore } from 'zustand'
import { drawnDiameter } from '../core/surface/exaggeration'
import type { NoOtherWalls, OtherWalls } from '../core/surface/other-walls'
import type { Wall } from '../core/surface/wall'
import type { WallGrid } from '../core/surface/wall-grid'
import type { WallWay } from '../scene/wall-way'
import { session, showDoubt } from '../session/session'

/** How long each wall is looked at, ms. */
const shownFor = 1400

/** The same walls for the same readings. */
const seed = 1

/** Nearer to the axis than this share of the middle diameter nothing is drawn. */
const leastShare = 0.1

/** What is shown while the doubt is. */
export interface OtherWall {
  /** Drawn in place of the wall; absent where there is none, for the reason given. */
  readonly grid?: WallGrid
  /** From the wall before it, where they follow by themselves. */
  readonly way?: WallWay
  readonly why?: NoOtherWalls['why'] | 'wall-meets-axis'
  readonly spreadMm?: number
  /** Draws the next one. */
  readonly next: () => void
  /** They do not follow by themselves: less motion is asked for. */
  readonly isStepped: boolean
}

/**
 * Other walls that fit the readings, one after another, while the session has the doubt shown; undefined else. Each
 * is worked out when its turn comes, in some milliseconds. Escape ends it, and so does printing.
 */
export function useOtherWall(
  wall: Wall | undefined,
  grid: WallGrid | undefined,
  exaggeration: number | undefined,
): OtherWall | undefined {
  const isShown = useStore(session, (state) => state.doubtShown)
  const others = useOthers(isShown, wall, grid)
  const [drawn, setDrawn] = useState<Drawn>()
  const next = useCallback(() => {
    if (!others?.walls.known) return
    const grid = unproven(others.grid, others.walls.next())
    setDrawn((before) => ({ of: others, grid, from: before?.of === others ? before.grid : others.grid }))
  }, [others])
  const isStepped = useLessMotion()
  useEffect(() => {
    next()
    if (isStepped || !others?.walls.known) return
    return everySoOften(next)
  }, [next, isStepped, others])
  useEnds(isShown)
  const way = useMemo(() => (drawn && !isStepped ? wayTo(drawn) : undefined), [drawn, isStepped])
  if (!isShown || !others) return undefined
  if (!others.walls.known) return { why: others.walls.why, next, isStepped }
  const shown = drawn?.of === others ? drawn : undefined
  if (shown && exaggeration !== undefined && meetsAxis(shown.grid, exaggeration))
    return { why: 'wall-meets-axis', next, isStepped }
  return {
    ...(shown ? { grid: shown.grid, ...(way ? { way } : {}) } : {}),
    spreadMm: others.walls.spreadMm,
    next,
    isStepped,
  }
}

interface Drawn {
  readonly of: Others
  readonly grid: WallGrid
  readonly from: WallGrid
}

/** Calls again and again, each time this long after a frame: a slow machine is left its pauses. */
function everySoOften(next: () => void): () => void {
  let frame = 0
  let timer: ReturnType<typeof setTimeout> | undefined
  const wait = () => {
    timer = setTimeout(() => {
      next()
      frame = requestAnimationFrame(wait)
    }, shownFor)
  }
  wait()
  return () => {
    cancelAnimationFrame(frame)
    clearTimeout(timer)
  }
}

function wayTo({ from, grid }: Drawn): WallWay {
  return { from, to: grid, share: 1, eased: true, atRandom: true }
}

interface Others {
  readonly grid: WallGrid
  readonly walls: OtherWalls | NoOtherWalls
}

/** Loaded when somebody asks for them. */
function useOthers(isShown: boolean, wall: Wall | undefined, grid: WallGrid | undefined): Others | undefined {
  const [others, setOthers] = useState<Others>()
  useEffect(() => {
    let wanted = isShown
    setOthers(undefined)
    if (!wanted || !wall || !grid) return
    import('../core/surface/other-walls').then(({ otherWalls }) => {
      if (wanted) setOthers({ grid, walls: otherWalls(wall, grid, seed) })
    }, reportError)
    return () => {
      wanted = false
    }
  }, [isShown, wall, grid])
  return others
}

/** A wall that nobody read: nothing of it is proven and no limit is judged by it. */
function unproven(grid: WallGrid, deviationsUm: Float32Array): WallGrid {
  const nowhere = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]
  return {
    ...grid,
    deviationsUm,
    proven: new Uint8Array(grid.proven.length),
    doubtUm: grid.doubtUm.map((_, edge) => nowhere[edge % 4] ?? Number.POSITIVE_INFINITY),
  }
}

function meetsAxis({ middleMm, deviationsUm }: WallGrid, exaggeration: number): boolean {
  const least = deviationsUm.reduce((a, b) => Math.min(a, b), 0)
  return drawnDiameter(middleMm, exaggeration, middleMm + least / 1000) < leastShare * middleMm
}

function useLessMotion(): boolean {
  const asked = useMemo(() => window.matchMedia('(prefers-reduced-motion: reduce)'), [])
  const [isLess, setLess] = useState(asked.matches)
  useEffect(() => {
    const change = () => setLess(asked.matches)
    asked.addEventListener('change', change)
    return () => asked.removeEventListener('change', change)
  }, [asked])
  return isLess
}

/** Escape, and printing before the picture is copied for paper. */
function useEnds(isShown: boolean): void {
  useEffect(() => {
    if (!isShown) return
    const byKey = (event: KeyboardEvent) => {
      if (event.key === 'Escape' && !event.defaultPrevented && !document.querySelector('dialog[open]')) {
        showDoubt(false)
      }
    }
    const print = () => flushSync(() => showDoubt(false))
    window.addEventListener('keydown', byKey)
    window.addEventListener('beforeprint', print, { capture: true })
    return () => {
      window.removeEventListener('keydown', byKey)
      window.removeEventListener('beforeprint', print, { capture: true })
    }
  }, [isShown])
}
