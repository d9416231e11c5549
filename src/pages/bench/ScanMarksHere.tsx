import { Suspense, useMemo } from 'react'
import { useStore } from 'zustand'
import { cleanedMarks } from '../../core/scan/cleaned-marks'
import { otherOfCleaning } from '../../core/scan/inspected-scan'
import { type FittedScan, scanView } from '../../session/scan-view'
import { scanName } from '../../words/scans'
import type { CleanedScans } from './ScanMarksPanel'
import { ScanMarksPanel } from './scan-parts'
import type { DrawnScan } from './use-drawn-scan'
import { useDrawnScan } from './use-drawn-scan'
import type { OnBench } from './use-job'

/** The marks of the scan that is looked at; nothing while the bore is drawn from its readings. */
export function ScanMarksHere({ bench }: { readonly bench: OnBench }) {
  const drawn = useDrawnScan(bench)
  const cleaned = useCleaned(bench, drawn)
  if (!drawn?.wall) return null
  return (
    <Suspense fallback={null}>
      <ScanMarksPanel
        key={drawn.scan.id}
        bench={bench}
        scanId={drawn.scan.id}
        found={drawn.wall.marks}
        cleaned={cleaned}
      />
    </Suspense>
  )
}

/** The scan that is looked at beside the one from the other side of a cleaning, once both have been looked through. */
function useCleaned({ bore }: OnBench, drawn: DrawnScan | undefined): CleanedScans | undefined {
  const other = drawn && otherOfCleaning(bore, drawn.scan)
  const figures = useStore(scanView, (state) => (other ? state.figures[other.id] : undefined))
  const own = drawn?.wall
  const fitted = figures?.kind === 'fitted' ? figures : undefined
  return useMemo(() => {
    if (!drawn || !other || !own || !fitted) return undefined
    const nameOf = (id: string) => {
      const index = bore.scans?.findIndex((scan) => scan.id === id) ?? -1
      const scan = bore.scans?.[index]
      return scan ? scanName(scan, index) : ''
    }
    const one = withMarks(own, nameOf(drawn.scan.id))
    const two = withMarks(fitted, nameOf(other.id))
    if (!one || !two) return undefined
    const [before, after] = drawn.scan.cleaning === 'before' ? [one, two] : [two, one]
    return { before, after, compared: cleanedMarks(before, after) }
  }, [bore, drawn, other, own, fitted])
}

function withMarks({ scan, marks }: Pick<FittedScan, 'scan' | 'marks'>, name: string) {
  return marks ? { scan, found: marks, name } : undefined
}
