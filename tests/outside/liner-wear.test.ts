import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { lineToLimit } from '../../src/core/outlook/line-to-limit'
import { straightLine } from '../../src/core/statistics/straight-line'
import { studentQuantile } from '../../src/core/statistics/student'

interface Liner {
  readonly hours: readonly number[]
  readonly wearMm: readonly number[]
}

const { liners }: { liners: readonly Liner[] } = JSON.parse(
  readFileSync(new URL('./data/line-to-limit.json', import.meta.url), 'utf8'),
)

/** The limit that goes with the liners. */
const limit = 4

/**
 * Wear of eight cylinder liners of a large marine diesel at their running hours, limit 4.0 mm: found in a public R
 * script; first printed, as far as we remember, in IEEE Trans. Reliability 56 (2007) 158 to 166. Where a plain line
 * meets the limit was computed with numpy, none at no hours included.
 */
describe('eight real liners, through the function of the outlook', () => {
  it.each([
    [1, 44102.3, 0.091894],
    [2, 42074.6, 0.091443],
    [3, 48540.5, 0.082463],
    [4, 37909.7, 0.100967],
    [5, 47241.0, 0.080932],
    [6, 46076.6, 0.087799],
    [7, 27407.8, 0.143511],
    [8, 31618.3, 0.131008],
  ])('liner %s meets 4 mm by its line at %s h, %s mm in 1000 h', (number, hoursToLimit, perThousand) => {
    const { hours, wearMm } = linerOf(number)
    const { residualDeviation: s } = straightLine(hours, wearMm)
    const found = lineToLimit({
      hours,
      sizes: wearMm,
      covariance: hours.map((_, i) => hours.map((__, j) => (i === j ? s * s : 0))),
      limit,
      factor: studentQuantile(0.95, hours.length - 2),
    })
    expect(found.slope * 1000).toBeCloseTo(perThousand, 6)
    expect((limit - found.at(0).size) / found.slope).toBeCloseTo(hoursToLimit, 1)
    if (number === 2) {
      // Three points leave one degree of freedom: t is 6.3, the slope does not stand out, and none is expected.
      expect(found.g).toBeGreaterThan(1)
      expect(found.expected).toBeUndefined()
      return
    }
    expect(found.expected).toBeCloseTo(hoursToLimit, 1)
    expect(found.now).toBe(false)
    expect(found.earliest ?? 0).toBeLessThan(hoursToLimit)
    expect(found.earliest ?? 0).toBeGreaterThan(hours.at(-1) ?? 0)
  })

  it('by the last two readings alone meet it where the last step leads, and short steps say least of when', () => {
    // Readings to 0.05 mm: u of half a step over √3.
    const u = 0.025 / Math.sqrt(3)
    const lastTwo = liners.map(({ hours, wearMm }) => {
      const factor = studentQuantile(0.95, Number.POSITIVE_INFINITY)
      const covariance = [
        [u * u, 0],
        [0, u * u],
      ]
      return lineToLimit({ hours: hours.slice(-2), sizes: wearMm.slice(-2), covariance, limit, factor })
    })
    // By the rate of the last step, from the same data.
    const byLastStep = [43578.7, 64650.0, 46585.7, 51250.0, 59033.3, 44557.9, 35665.7, 29360.0]
    lastTwo.forEach(({ expected }, i) => {
      expect(expected).toBeCloseTo(byLastStep[i] ?? Number.NaN, 1)
    })
    // The second step of liner 8 is nine times its third: from 930 h nothing stands out but that it grows by something.
    const { hours, wearMm } = linerOf(8)
    const short = lineToLimit({
      hours: hours.slice(2, 4),
      sizes: wearMm.slice(2, 4),
      covariance: [
        [u * u, 0],
        [0, u * u],
      ],
      limit,
      factor: studentQuantile(0.95, Number.POSITIVE_INFINITY),
    })
    expect(short.g).toBeGreaterThan(0.4)
    expect(lastTwo[7]?.g).toBeLessThan(0.01)
  })

  it('show a changed rate in liner 8, whose steps differ by more than the step it was read in', () => {
    const { hours, wearMm } = linerOf(8)
    const u = 0.025 / Math.sqrt(3)
    const { misfit } = lineToLimit({
      hours,
      sizes: wearMm,
      covariance: hours.map((_, i) => hours.map((__, j) => (i === j ? u * u : 0))),
      limit,
      factor: 1.645,
    })
    // χ² at 0.95 for three degrees of freedom, from tables.
    expect(misfit).toBeGreaterThan(7.815)
  })
})

function linerOf(number: number): Liner {
  const liner = liners[number - 1]
  if (!liner) throw new Error(`no liner ${number}`)
  return liner
}
