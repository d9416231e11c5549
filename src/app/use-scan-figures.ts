import { useEffect, useRef } from 'react'
import { useStore } from 'zustand'
import type { Bore, Scan, Survey } from '../core/measured'
import { otherOfCleaning } from '../core/scan/inspected-scan'
import type { WallGrid } from '../core/surface/wall-grid'
import type { Job } from '../job/schema'
import { shownScan } from '../job/shown-scan'
import { useOnBench } from '../pages/bench/use-job'
import { addToScan, type ScanFigures, scanView, setScanFigures } from '../session/scan-view'
import type { ScanFitAsked } from '../workers/scan-fit-messages'
import { markScanFitted } from './first-marks'
import { fitAsked, fitOf } from './scan-fit'
import { scanAtHand, scanHere } from './scans-here'

/** Fetches the scan that is looked at and has it fitted off the main thread; the session gets what comes of it. */
export function useScanFigures(): void {
  const { job, bore, survey } = useOnBench()
  const chosen = useStore(scanView, (state) => state.chosen[bore.id])
  const scan = shownScan(job, bore, survey, chosen)
  useFigures(job, bore, survey, scan)
  // What cleaning did is seen by both scans together.
  useFigures(job, bore, survey, scan && otherOfCleaning(bore, scan))
}

function useFigures(job: Job, bore: Bore, survey: Survey, scan: Scan | undefined): void {
  const asked = useSame(scan && fitAsked(job, bore, survey, scan))
  const [id, hash] = [scan?.id, scan?.hash]
  useEffect(() => {
    if (id !== undefined && hash !== undefined && asked) return figuresOf(id, hash, asked)
  }, [id, hash, asked])
}

/** The value before where this one says the same. */
function useSame<Value>(value: Value): Value {
  const text = JSON.stringify(value)
  const known = useRef({ text, value })
  if (known.current.text !== text) known.current = { text, value }
  return known.current.value
}

/** Tells the session what becomes of a scan, step by step; gives what lets go of it. */
function figuresOf(id: string, hash: string, asked: Omit<ScanFitAsked, 'scan'>): () => void {
  const atHand = scanAtHand(hash)
  if (atHand) return fitted(id, { ...asked, scan: atHand })
  let stop = () => {}
  let wanted = true
  setScanFigures(id, { kind: 'fetching' })
  scanHere(hash).then((scan) => {
    if (!wanted) return
    if (scan) stop = fitted(id, { ...asked, scan })
    else setScanFigures(id, { kind: 'not-here' })
  }, reportError)
  return () => {
    wanted = false
    stop()
  }
}

function fitted(id: string, asked: ScanFitAsked): () => void {
  const { scan } = asked
  const say = (figures: ScanFigures) => setScanFigures(id, figures)
  const fit = fitOf(asked)
  if (fit.said.length === 0) say({ kind: 'fitting', scan })
  fit.hear((heard) => {
    if (heard.kind === 'fitted') {
      if (!isShown(id, heard.whole)) say({ ...heard, scan })
    } else if (heard.kind === 'failed' || heard.kind === 'no-axis') say({ kind: heard.kind, scan })
    else {
      const { kind: _, ...more } = heard
      addToScan(id, more)
    }
    if (isWhole(id)) markScanFitted()
  })
  return fit.stop
}

function isShown(id: string, wall: WallGrid): boolean {
  const { [id]: figures } = scanView.getState().figures
  return figures?.kind === 'fitted' && figures.whole === wall
}

/** All that is worked out of a scan is there. */
function isWhole(id: string): boolean {
  const { [id]: figures } = scanView.getState().figures
  return figures?.kind === 'fitted' && !!figures.local && !!figures.marks && !!figures.form
}
