import fc from 'fast-check'
import { expect, it } from 'vitest'
import { fittedOval } from '../../../../src/core/form/fitted-oval'
import { ovalCurve, ovalDiameter } from '../../../../src/core/form/oval-curve'
import { runCount } from '../../../proof/run-count'
import { made } from '../surface/invented-cylinder'

const seed = 20251125
const numRuns = runCount({ quick: 200, full: 10_000 })
const rad = Math.PI / 180

const level = (axes: readonly number[], diameter: (angleRad: number) => number) =>
  made({
    spots: axes.map((axisDegrees) => ({ depthMm: 20, axisDegrees, diameterMm: diameter(axisDegrees * rad) })),
  }).finding.stations

it('an oval of 10 µm with its long axis at 20° is found again from four axes unequally spaced', () => {
  const curve = ovalCurve(
    level([0, 30, 75, 140], (angle) => 54.02 + 0.005 * Math.cos(2 * (angle - 20 * rad))),
  )
  expect(curve?.meanMm).toBeCloseTo(54.02, 9)
  expect(curve && ovalDiameter(curve, 20 * rad)).toBeCloseTo(54.025, 9)
  expect(curve && ovalDiameter(curve, 110 * rad)).toBeCloseTo(54.015, 9)
})

it('two axes make no oval', () => {
  expect(ovalCurve(level([0, 90], () => 54))).toBeUndefined()
})

it(`the curve's largest less its smallest is the fitted oval, and its mean on equal axes that of the readings, seed ${seed}`, () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: -40, max: 40 }), { minLength: 3, maxLength: 6 }), (microns) => {
      const axes = microns.map((_, i) => (i * 180) / microns.length)
      const stations = level(
        axes,
        (angle) => 54 + (microns[Math.round(angle / rad / (180 / microns.length))] ?? 0) / 1000,
      )
      const curve = ovalCurve(stations)
      const oval = fittedOval(stations)
      if (!curve || !oval) throw new Error('expected an oval on three axes or more')
      const around = Array.from({ length: 3600 }, (_, i) => ovalDiameter(curve, (i / 10) * rad))
      expect(Math.max(...around) - Math.min(...around)).toBeCloseTo(oval.ovalMm, 6)
      const mean = microns.reduce((a, b) => a + b, 0) / microns.length / 1000
      expect(curve.meanMm).toBeCloseTo(54 + mean, 9)
    }),
    { seed, numRuns },
  )
})
