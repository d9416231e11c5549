import { useCallback, useMemo } from 'react'
import type { LimitPair } from '../core/findings'
import type { WallGrid } from '../core/surface/wall-grid'
import { Report, type ReportMade, useReport } from '../pages/report/Report'
import { wallPaint } from '../scene/wall-palette'
import { useReportPhotos } from './use-report-photos'
import { useReportPictures } from './use-report-pictures'

/** The page of the report, with its pictures and photographs. */
export function ReportPage() {
  const report = useReport()
  const pictures = useReportPictures(report)
  const photos = useReportPhotos(report)
  // On paper, whatever the page looks like.
  const paintOf = useCallback(
    (grid: WallGrid, pair: LimitPair | undefined) => wallPaint(grid, pair, 'light'),
    [],
  )
  const made = useMemo<ReportMade>(() => {
    const kinds = [...pictures.values()].map(({ kind }) => kind)
    return {
      paintOf,
      pictures,
      photos,
      isDrawing: kinds.includes('waiting') || [...photos.values()].some(({ kind }) => kind === 'waiting'),
      isFlat: kinds.length > 0 && kinds.every((kind) => kind === 'none'),
    }
  }, [paintOf, pictures, photos])
  return <Report report={report} made={made} />
}
