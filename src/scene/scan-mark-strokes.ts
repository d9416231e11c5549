import type { ScanMark } from '../core/scan/scan-marks'
import type { WallGrid } from '../core/surface/wall-grid'
import type { Stroke } from './stroke-geometry'
import { linePaths, outlinePaths } from './surface-strokes'

/** Widths, CSS pixels: far less than the double outline of a surface finding. */
const width = { plain: 1.2, lit: 3, ground: 2.8, litGround: 6 }
const nearOpacity = 0.28

/** What stands out in a scan, each with one thin outline on the drawn wall, a narrow line within a wider
 * mark as a line; those pointed at stronger. */
export function scanMarkStrokes(
  grid: WallGrid,
  marks: readonly ScanMark[],
  lit: readonly ScanMark[],
): readonly Stroke[] {
  const lines = marks.map((mark) => ({
    isLit: lit.includes(mark),
    paths: mark.within === undefined ? outlinePaths(grid, mark) : linePaths(grid, mark),
  }))
  const layer = (role: 'scan-mark' | 'scan-mark-ground'): readonly Stroke[] =>
    lines.flatMap(({ isLit, paths }) =>
      paths.map((places) => ({
        places,
        widthPx:
          role === 'scan-mark' ? (isLit ? width.lit : width.plain) : isLit ? width.litGround : width.ground,
        role,
        farOpacity: role === 'scan-mark' ? 1 : 0.7,
        nearOpacity: isLit ? 0.7 : nearOpacity,
      })),
    )
  return [...layer('scan-mark-ground'), ...layer('scan-mark')]
}
