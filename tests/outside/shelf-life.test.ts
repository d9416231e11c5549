import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { lineToLimit } from '../../src/core/outlook/line-to-limit'
import { straightLine } from '../../src/core/statistics/straight-line'
import { studentQuantile } from '../../src/core/statistics/student'

interface Data {
  readonly potency: readonly { readonly batch: string; readonly month: number; readonly potency: number }[]
  readonly chamber: { readonly x: readonly number[]; readonly y: readonly number[] }
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
})
