import { useCallback, useMemo } from 'react'
import type { LimitPair } from '../core/findings'
import type { WallGrid } from '../core/surface/wall-grid'
import { Report, type ReportMade, useReport } from '../pages/report/Report'
import { wallPaint } from '../scene/wall-palette'
import { letterheadWords } from '../words/letterhead-words'
import { words } from '../words/words'
import { type LetterheadShown, useLetterhead } from './letterhead'
import { showLetterhead } from './questions'
import { useCodeOnReport, useReportCode } from './use-report-code'
import { useReportPhotos } from './use-report-photos'
import { useReportPictures } from './use-report-pictures'

/** The page of the report, with its pictures and photographs. */
export function ReportPage() {
  const report = useReport()
  const pictures = useReportPictures(report)
  const photos = useReportPhotos(report)
  const shop = useLetterhead()
  const letterhead = shop && hasHead(shop) ? shop : undefined
  const made = useReportCode(shop?.appAddress)
  const code = useCodeOnReport(made)
  // On paper, whatever the page looks like.
  const paintOf = useCallback(
    (grid: WallGrid, pair: LimitPair | undefined) => wallPaint(grid, pair, 'light'),
    [],
  )
  const brought = useMemo<ReportMade>(() => {
    const kinds = [...pictures.values()].map(({ kind }) => kind)
    return {
      paintOf,
      pictures,
      photos,
      isDrawing: kinds.includes('waiting') || [...photos.values()].some(({ kind }) => kind === 'waiting'),
      isFlat: kinds.length > 0 && kinds.every((kind) => kind === 'none'),
      ...(letterhead ? { letterhead } : {}),
      ...(code ? { code } : {}),
    }
  }, [paintOf, pictures, photos, letterhead, code])
  return (
    <Report report={report} made={brought}>
      <button type="button" className="button" onClick={showLetterhead}>
        {words.file.letterhead}
      </button>
      {shop && made?.kind === 'none' ? (
        <p className="aside" role="status">
          {letterheadWords.code.none[made.why]}
        </p>
      ) : null}
    </Report>
  )
}

function hasHead({ shopName, addressLines, pictureUrl }: LetterheadShown): boolean {
  return shopName !== '' || addressLines.length > 0 || pictureUrl !== undefined
}
