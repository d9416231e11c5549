import { describe, expect, it } from 'vitest'
import type { ScanMark } from '../../../src/core/scan/scan-marks'
import { inspectedScans } from '../../../src/job/inspected-scans'
import { scenario } from './scenario'

/** As they were invented: where each smear is deepest, how deep, and where its scores run. */
const smears = [
  { at: 50, heightUm: -18, scores: [46, 52, 56] },
  { at: 310, heightUm: -16, scores: [306, 312, 315] },
  { at: 145, heightUm: -10, scores: [141, 147, 151] },
  { at: 215, heightUm: -11, scores: [211, 217, 221] },
]

function marksOf(file: string) {
  const [scan] = inspectedScans(scenario(file))
  if (!scan?.marks) throw new Error(`${file} has no marks`)
  return scan.marks.found
}

const apart = (a: number, b: number) => Math.abs(((a - b + 540) % 360) - 180)
const middle = (mark: ScanMark) => mark.fromDegrees + mark.acrossDegrees / 2

describe.each(['E-scuff-scan-72.json', 'E-scuff-scan-360.json'])(
  'the marks of the invented scan in %s',
  (file) => {
    const { marks, patterns } = marksOf(file)

    it('are the four smears where they were put, as high as they were, and as long', () => {
      const smaller = marks.filter(({ sign, bridge }) => sign === 'smaller' && bridge === undefined)
      expect(smaller).toHaveLength(4)
      for (const { at, heightUm } of smears) {
        const mark = smaller.find((one) => apart(middle(one), at) < 4)
        expect(mark?.shape).toBe('streak')
        expect(Math.abs((mark?.heightUm ?? 0) - heightUm)).toBeLessThan(4)
        expect(mark?.fromDepthMm).toBeGreaterThanOrEqual(11)
        expect(mark?.fromDepthMm).toBeLessThanOrEqual(24)
        expect(mark?.toDepthMm).toBeGreaterThanOrEqual(50)
        expect(mark?.toDepthMm).toBeLessThanOrEqual(66)
        expect(mark?.acrossMm).toBeGreaterThan(4)
        expect(mark?.acrossMm).toBeLessThan(9)
      }
    })

    it('are the bridge, 9 µm proud between the two exhaust ports', () => {
      const [bridge, ...others] = marks.filter((mark) => mark.bridge !== undefined)
      expect(others).toEqual([])
      expect(bridge?.sign).toBe('smaller')
      expect(Math.abs((bridge?.heightUm ?? 0) + 9)).toBeLessThanOrEqual(bridge?.expandedUm ?? 0)
      expect(apart(bridge ? middle(bridge) : 180, 0)).toBeLessThan(1)
    })

    it('lie as four corners and as a bridge, and as nothing else', () => {
      expect(patterns.map(({ kind }) => kind)).toEqual(['four-corners', 'bridge'])
      const [corners, bridge] = patterns
      expect(
        corners?.kind === 'four-corners' &&
          corners.pinDegrees.every((pin) => apart(pin, 90) < 12 || apart(pin, 270) < 12),
      ).toBe(true)
      expect(bridge).toMatchObject({
        bridge: { fromDegrees: 355, toDegrees: 5, ports: ['exhaust left', 'exhaust right'] },
      })
    })
  },
)

describe('the scores of the invented scan at 360 angles', () => {
  it('are found, three along each smear, each a degree or two wide and running further than the smear', () => {
    const { marks } = marksOf('E-scuff-scan-360.json')
    expect(marks).toHaveLength(17)
    for (const { at, scores } of smears) {
      const smear = marks.findIndex(
        ({ sign, bridge, ...mark }) =>
          sign === 'smaller' && !bridge && apart(mark.fromDegrees + mark.acrossDegrees / 2, at) < 4,
      )
      const lines = marks.filter(({ within }) => within === smear)
      expect(lines).toHaveLength(3)
      for (const score of scores) {
        const line = lines.find((one) => apart(middle(one), score) <= 1)
        expect(line).toMatchObject({ sign: 'larger', shape: 'streak' })
        expect(line?.acrossMm).toBeLessThan(1.2)
        expect(line?.heightUm).toBeGreaterThan(2)
        expect(line?.heightUm).toBeLessThan(13)
        expect(line?.toDepthMm).toBeGreaterThanOrEqual(65)
      }
    }
  })
})
