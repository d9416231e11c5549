import { describe, expect, it } from 'vitest'
import { straightLine } from '../../src/core/statistics/straight-line'

/**
 * GUM (JCGM 100:2008) annex H.3: corrections b of a thermometer, °C, at the temperatures t, °C, fitted by a
 * straight line b = y1 + y2·(t − 20 °C). The drift over the order of a gauge check runs through this function.
 */
const t = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511]
const b = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16]
const line = straightLine(
  t.map((celsius) => celsius - 20),
  b,
)

describe('the thermometer of GUM (JCGM 100:2008) H.3', () => {
  it('has the intercept −0.1712(29) and the slope 0.002 18(67) of equation H.3.4', () => {
    expect(line.intercept).toBeCloseTo(-0.1712, 4)
    expect(line.interceptDeviation).toBeCloseTo(0.0029, 4)
    expect(line.slope).toBeCloseTo(0.00218, 5)
    expect(line.slopeDeviation).toBeCloseTo(0.00067, 5)
  })

  it('leaves a standard deviation of 0.0035 °C over nine degrees of freedom', () => {
    expect(line.residualDeviation).toBeCloseTo(0.0035, 4)
    expect(line.degreesOfFreedom).toBe(9)
  })

  it('agrees with the same line by numpy 2.4.6 in nine digits', () => {
    // Computed from the inputs above, not printed in the GUM.
    const computed = [
      [line.intercept, -0.1712037901313498],
      [line.interceptDeviation, 0.00287759783516],
      [line.slope, 0.0021826977398872],
      [line.slopeDeviation, 0.0006679387732278],
      [line.residualDeviation, 0.0034975639635053],
    ] as const
    for (const [found, value] of computed) expect(Math.abs(found / value - 1)).toBeLessThan(1e-9)
  })
})
