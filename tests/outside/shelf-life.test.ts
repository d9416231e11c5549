import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { lineToLimit } from '../../src/core/outlook/line-to-limit'
import { straightLine } from '../../src/core/statistics/straight-line'
import { studentQuantile } from '../../src/core/statistics/student'

interface Data {
  readonly potency: readonly { readonly batch: string; readonly month: number; readonly potency: number }[]
  readonly chamber: Points
  readonly thermostat: Points
  readonly calibration: Points
}

interface Points {
  readonly x: readonly number[]
  readonly y: readonly number[]
}

const data: Data = JSON.parse(readFileSync(new URL('./data/line-to-limit.json', import.meta.url), 'utf8'))

/** V = s²·I with s from what the line leaves over, as a plain regression has it. */
function evenly(x: readonly number[], y: readonly number[]) {
  const { residualDeviation } = straightLine(x, y)
  return x.map((_, i) => x.map((__, j) => (i === j ? residualDeviation ** 2 : 0)))
}

/**
 * Data and published shelf lives: J. Valid. Technol. 17(3) (2011) 47–68, found in a public R package's tests; the
 * further digits are the closed form of ICH Q1E, recomputed with exact steps. Potency falls toward 95, so its
 * opposite rises toward −95.
 */
describe('the shelf-life bound of a line (ICH Q1E), through the function of the outlook', () => {
  it.each([
    [['b2', 'b5', 'b7'], 26, 25.9957631931],
    [['b3', 'b4', 'b5'], undefined, 28.9857547901],
    [['b2'], undefined, 23.3263756533],
    [['b4'], undefined, 40.7917619435],
    [['b5'], undefined, 23.1480421927],
    [['b7'], undefined, 25.0525111514],
  ] as const)(
    'of the batches %s is %s months as published, %s by its closed form',
    (batches, published, exact) => {
      const rows = data.potency
        .filter(({ batch }) => (batches as readonly string[]).includes(batch))
        .sort((a, b) => a.month - b.month)
      const hours = rows.map(({ month }) => month)
      const sizes = rows.map(({ potency }) => -potency)
      const factor = studentQuantile(0.95, rows.length - 2)
      const found = lineToLimit({ hours, sizes, covariance: evenly(hours, sizes), limit: -95, factor })
      expect(found.earliest).toBeCloseTo(exact, 6)
      if (published !== undefined) expect(found.earliest).toBeCloseTo(published, 1)
    },
  )

  it('is 26.2241 where the package of the data lowers the limit to 94.95, as it prints', () => {
    const rows = data.potency
      .filter(({ batch }) => ['b2', 'b5', 'b7'].includes(batch))
      .sort((a, b) => a.month - b.month)
    const hours = rows.map(({ month }) => month)
    const sizes = rows.map(({ potency }) => -potency)
    const factor = studentQuantile(0.95, rows.length - 2)
    const covariance = evenly(hours, sizes)
    const found = lineToLimit({ hours, sizes, covariance, limit: -94.95, factor })
    expect(found.earliest).toBeCloseTo(26.224098, 6)
  })

  it('lies well before the line itself, and the other root is the latest', () => {
    const rows = data.potency
      .filter(({ batch }) => ['b2', 'b5', 'b7'].includes(batch))
      .sort((a, b) => a.month - b.month)
    const hours = rows.map(({ month }) => month)
    const sizes = rows.map(({ potency }) => -potency)
    const factor = studentQuantile(0.95, rows.length - 2)
    const found = lineToLimit({ hours, sizes, covariance: evenly(hours, sizes), limit: -95, factor })
    // 100.566879 − 0.192993631·t, as published.
    expect(found.slope).toBeCloseTo(0.192993631, 8)
    expect(found.at(0).size).toBeCloseTo(-100.566879, 6)
    expect(found.expected).toBeCloseTo(28.844884, 5)
    expect(found.latest).toBeCloseTo(32.6081, 4)
  })
})

/**
 * The same for a reading that scatters too, the mean of so many: its doubt is one error of all sizes against it, which
 * leaves the line where it is and adds s²/m to the variance of its height.
 */
function againstReading(x: readonly number[], y: readonly number[], m: number) {
  const { residualDeviation } = straightLine(x, y)
  return evenly(x, y).map((row) => row.map((value) => value + residualDeviation ** 2 / m))
}

describe('inverse regression, Regression Analysis: Concepts and Applications (1994), pages 431 to 434 (found in a public R package)', () => {
  it('of the chamber at 400, two-sided 99 % for the mean: 66.5, from 65.07 to 68.03', () => {
    const { x, y } = data.chamber
    // The bound is asked for ahead of the last point: the readings up to 60 lie before it.
    const factor = studentQuantile(0.995, x.length - 2)
    const found = lineToLimit({ hours: x, sizes: y, covariance: evenly(x, y), limit: 400, factor })
    expect((400 - found.at(0).size) / found.slope).toBeCloseTo(66.520043, 5)
    const meets = (h: number) => Math.abs(400 - found.at(h).size) / found.at(h).u
    expect(meets(65.070894)).toBeCloseTo(factor, 4)
    expect(meets(68.025832)).toBeCloseTo(factor, 4)
  })

  it.each([
    // The book prints 103.995 from 103.4 to 104.6, and 100.1 from 99.63 to 100.59; the further digits by its formula.
    [104, 0.975, 103.994916, 103.404051, 104.589459],
    [100, 0.95, 100.112318, 99.629403, 100.588503],
  ])('of the thermostat at a reading of %s: %s one-sided, %s from %s to %s', (y0, chance, x0, low, high) => {
    const { x, y } = data.thermostat
    const factor = studentQuantile(chance, x.length - 2)
    const covariance = againstReading(x, y, 1)
    const found = lineToLimit({ hours: x, sizes: y, covariance, limit: y0, factor })
    expect(found.expected).toBeCloseTo(x0, 5)
    expect(found.earliest).toBeCloseTo(low, 5)
    expect(found.latest).toBeCloseTo(high, 5)
  })
})

describe('calibration of 1997, first example (found in a public R package), which takes the first order alone', () => {
  it.each([
    // Printed there: 6.1 ± 4.9, 43.9 ± 4.9, and 43.9 ± 3.2 for the mean of five.
    [15, 1, 6.0938, 4.9068],
    [90, 1, 43.9398, 4.9081],
    [90, 5, 43.9398, 3.1685],
  ])('a reading of %s, the mean of %s: %s ± %s', (y0, m, x0, half) => {
    const { x, y } = data.calibration
    const factor = studentQuantile(0.975, x.length - 2)
    const found = lineToLimit({
      hours: x,
      sizes: y,
      covariance: againstReading(x, y, m),
      limit: y0,
      factor,
    })
    expect(found.expected).toBeCloseTo(x0, 4)
    expect((factor * found.at(x0).u) / found.slope).toBeCloseTo(half, 4)
  })
})
