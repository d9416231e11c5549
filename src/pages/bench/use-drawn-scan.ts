import { useMemo } from 'react'
import { useStore } from 'zustand'
import type { BoreFinding } from '../../core/findings'
import type { Scan } from '../../core/measured'
import { diametersShown, exaggerationEnd, exaggerationOf } from '../../core/surface/exaggeration'
import { extremesOf } from '../../core/surface/extremes'
import type { WallGrid } from '../../core/surface/wall-grid'
import { shownScan } from '../../job/shown-scan'
import { type FittedScan, type ScanFigures, scanView } from '../../session/scan-view'
import type { OnBench } from './use-job'

/** The scan that the bore is drawn from, as far as it is known by now. */
export interface DrawnScan {
  readonly scan: Scan
  readonly figures: ScanFigures | undefined
  readonly isLocal: boolean
  readonly wall?: ScanWall
}

/** A scan as it is drawn. */
export interface ScanWall extends FittedScan {
  readonly grid: WallGrid
  /** Its smooth form is taken off. */
  readonly isLocal: boolean
  /** Deviations are of twice the radius and compare with limits; else they are of the radius, and there are none. */
  readonly isSized: boolean
  /** What is drawn beside it: stations and limits only where it has a size. */
  readonly finding: BoreFinding
  /** How many times deviations are drawn by default and at most, as it is said beside the picture. */
  readonly exaggeration: number
  readonly exaggerationEnd: number
}

/** It is fetched or fitted: until then the wall of the readings may stay. */
export function isUnderWay({ figures }: DrawnScan): boolean {
  return figures === undefined || figures.kind === 'fetching' || figures.kind === 'fitting'
}

/** Deviations of a radius are drawn on the radius: twice as far as those of a diameter. */
export function drawnFactor({ isSized }: Pick<ScanWall, 'isSized'>): 1 | 2 {
  return isSized ? 1 : 2
}

/** Undefined while the bore is drawn from its readings. */
export function useDrawnScan({ job, bore, survey, finding }: OnBench): DrawnScan | undefined {
  const chosen = useStore(scanView, (state) => state.chosen[bore.id])
  const isLocal = useStore(scanView, (state) => state.isLocal)
  const scan = shownScan(job, bore, survey, chosen)
  const figures = useStore(scanView, (state) => (scan ? state.figures[scan.id] : undefined))
  return useMemo(() => {
    if (!scan) return undefined
    const wall = figures?.kind === 'fitted' ? knownWall(figures, finding, isLocal) : undefined
    return { scan, figures, isLocal, ...(wall ? { wall } : {}) }
  }, [scan, figures, finding, isLocal])
}

const walls = new WeakMap<
  FittedScan,
  { finding: BoreFinding; isLocal: boolean; wall: ScanWall | undefined }
>()

/** Every part of the page that draws the scan gets the same. */
function knownWall(fitted: FittedScan, finding: BoreFinding, isLocal: boolean): ScanWall | undefined {
  const before = walls.get(fitted)
  if (before?.finding === finding && before.isLocal === isLocal) return before.wall
  const wall = wallOfScan(fitted, finding, isLocal)
  walls.set(fitted, { finding, isLocal, wall })
  return wall
}

/** Always the same, so that nobody draws it anew. */
const nothing: readonly never[] = []

/** Undefined while the wall without the smooth form is asked for and not there yet. */
function wallOfScan(fitted: FittedScan, finding: BoreFinding, isLocal: boolean): ScanWall | undefined {
  const grid = isLocal ? fitted.local : fitted.whole
  if (!grid) return undefined
  const isSized = !isLocal && fitted.size.known
  const { pair: _, ...unlimited } = finding
  const drawn = isSized ? finding : { ...unlimited, stations: nothing, levels: nothing }
  // One exaggeration with and without the smooth form, so that what is local keeps its height.
  const factor = drawnFactor({ isSized: fitted.size.known })
  const reach = extremesOf(fitted.whole.deviationsUm).map((um) => grid.middleMm + (factor * um) / 1000)
  const shown = [...reach, ...diametersShown(fitted.size.known ? [finding] : [])]
  return {
    ...fitted,
    grid,
    isLocal,
    isSized,
    finding: drawn,
    exaggeration: exaggerationOf(grid.middleMm, shown),
    exaggerationEnd: exaggerationEnd(grid.middleMm, shown),
  }
}
