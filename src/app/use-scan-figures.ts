import { useEffect, useRef } from 'react'
import { useStore } from 'zustand'
import type { Bore, Scan } from '../core/measured'
import { otherOfCleaning } from '../core/scan/inspected-scan'
import type { RadialScan } from '../core/scan/radial-scan'
import type { Job } from '../job/schema'
import { nearDiameterOf, scanFormOptions, shownScan, tieStations } from '../job/shown-scan'
import { useOnBench } from '../pages/bench/use-job'
import { type ScanFigures, scanView, setScanFigures, setScanForm, setScanMarks } from '../session/scan-view'
import type { ScanFitAsked, ScanFitSaid } from '../workers/scan-fit-messages'
import { scanHere } from './scans-here'

/** Fetches the scan that is looked at and has it fitted off the main thread; the session gets what comes of it. */
export function useScanFigures(): void {
  const { job, bore, survey, finding } = useOnBench()
  const chosen = useStore(scanView, (state) => state.chosen[bore.id])
  const scan = shownScan(job, bore, survey, chosen)
  const nearDiameterMm = scan ? nearDiameterOf(job, bore, survey) : 0
  const lengthMm = finding.drawnLengthMm
  useFigures(job, bore, scan, nearDiameterMm, lengthMm)
  // What cleaning did is seen by both scans together.
  useFigures(job, bore, scan && otherOfCleaning(bore, scan), nearDiameterMm, lengthMm)
}

function useFigures(
  job: Job,
  bore: Bore,
  scan: Scan | undefined,
  nearDiameterMm: number,
  lengthMm: number,
): void {
  const { belts, ports } = bore
  const form = useSame(scan && scanFormOptions(job, scan, nearDiameterMm))
  const ties = useSame(scan ? tieStations(job, bore, scan) : [])
  const [id, hash] = [scan?.id, scan?.hash]
  useEffect(() => {
    if (id === undefined || hash === undefined || !form) return
    const grid = { middleMm: form.nearDiameterMm, lengthMm, belts }
    return figuresOf(id, hash, { grid, form, ties, ports })
  }, [id, hash, form, ties, ports, lengthMm, belts])
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
  const say = (figures: ScanFigures) => setScanFigures(id, figures)
  let stop = () => {}
  let wanted = true
  say({ kind: 'fetching' })
  scanHere(hash).then((scan) => {
    if (!wanted) return
    if (scan) stop = fitted(id, { ...asked, scan })
    else say({ kind: 'not-here' })
  }, reportError)
  return () => {
    wanted = false
    stop()
  }
}

function fitted(id: string, asked: ScanFitAsked): () => void {
  const say = (figures: ScanFigures) => setScanFigures(id, figures)
  const scan: RadialScan = asked.scan
  const worker = new Worker(new URL('../workers/scan-fit.worker.ts', import.meta.url), { type: 'module' })
  worker.addEventListener('message', ({ data }: MessageEvent<ScanFitSaid>) => {
    if (data.kind === 'fitted') return say({ ...data, scan })
    if (data.kind === 'marks') return setScanMarks(id, data.marks)
    worker.terminate()
    if (data.kind === 'form') setScanForm(id, data.form)
    else say({ kind: 'no-axis', scan })
  })
  worker.addEventListener('error', () => say({ kind: 'failed', scan }))
  say({ kind: 'fitting', scan })
  worker.postMessage(asked)
  return () => worker.terminate()
}
