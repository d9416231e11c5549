import { describe, expect, it } from 'vitest'
import type { ScanMark } from '../../../src/core/scan/scan-marks'
import { scanMarkStrokes } from '../../../src/scene/scan-mark-strokes'
import { surfaceStrokes } from '../../../src/scene/surface-strokes'
import { evenGrid } from './drawn-cylinder'

const grid = evenGrid((row, column) => row * 2 + column)
const place = { fromDepthMm: 10, toDepthMm: 30, fromDegrees: 350, toDegrees: 10 }
const mark: ScanMark = {
  ...place,
  sign: 'smaller',
  shape: 'streak',
  acrossDegrees: 20,
  acrossMm: 10,
  alongMm: 20,
  peak: { depthMm: 20, angleDegrees: 0 },
  peakPlace: place,
  heightUm: -10,
  doubtUm: 0.5,
  expandedUm: 2,
  evidence: 20,
  besideOpening: false,
}

describe('the outline of a mark of a scan on the drawn wall', () => {
  it('is one thin line, far thinner than the double outline of a surface finding', () => {
    const strokes = scanMarkStrokes(grid, [mark], [])
    expect(strokes.map(({ role }) => role)).toEqual(['scan-mark-ground', 'scan-mark'])
    const [finding] = surfaceStrokes(grid, [{ ...place, id: 'a', kind: 'rust', shape: 'patch' }], [])
    expect(strokes[1]?.widthPx).toBeLessThan((finding?.widthPx ?? 0) / 3)
    expect(strokes[1]?.places[0]).toEqual(strokes[1]?.places.at(-1))
  })

  it('is none past the end of the wall', () => {
    const past = { ...mark, fromDepthMm: grid.lengthMm + 5, toDepthMm: grid.lengthMm + 60 }
    expect(scanMarkStrokes(grid, [past, { ...past, within: 0 }], [])).toEqual([])
  })

  it('is stronger while it is pointed at', () => {
    const [, plain] = scanMarkStrokes(grid, [mark], [])
    const [, lit] = scanMarkStrokes(grid, [mark], [mark])
    expect(lit?.widthPx).toBeGreaterThan(plain?.widthPx ?? 0)
  })

  it('is a line down the middle of a narrow line within a wider mark, so that the mark is seen beneath', () => {
    const [stroke] = scanMarkStrokes(grid, [{ ...mark, within: 0 }], [])
    const angles = new Set(stroke?.places.map(({ angle }) => Math.round((angle * 180) / Math.PI) % 360))
    expect([...angles]).toEqual([0])
    expect(stroke?.places[0]?.depthMm).toBe(10)
    expect(stroke?.places.at(-1)?.depthMm).toBe(30)
  })
})
