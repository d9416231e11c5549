import type { BoreFinding, ShapeFinding, StationFinding } from '../../src/core/findings'
import { inspect } from '../../src/core/inspect'
import type { OvalityRule, TaperRule } from '../../src/core/measured'
import { combine, expanded } from '../../src/core/uncertainty/combine'
import { seededRandom } from './seeded-random'
import { type SimulatedCase, simulatedSurvey } from './simulated-survey'

/** How often each interval held the truth, and how often each rule proved a bore at the limit outside. */
export interface Coverage {
  readonly surveys: number
  /** Quantities with a plain U, from 0 to 1. */
  readonly linear: Readonly<Record<string, number>>
  /** Quantities of a largest and a smallest, with the mean half-width of their intervals, µm. */
  readonly ranges: Readonly<Record<string, number>>
  readonly halfWidthUm: Readonly<Record<string, number>>
  /** Share of surveys in which one station, and the bore, was proven above the max. */
  readonly stationAbove: number
  readonly boreAbove: number
  /** The same for any station by its own rule, which the bore's rule must not use. */
  readonly anyStationAbove: number
}

/** Measures many simulated surveys of a case and counts how often what is stated is true. */
export function coverageOf(c: SimulatedCase, surveys: number, seed: number): Coverage {
  const random = seededRandom(seed)
  const held: Record<string, number> = {}
  const ranges: Record<string, number> = {}
  const halfWidthUm: Record<string, number> = {}
  let stationAbove = 0
  let boreAbove = 0
  let anyStationAbove = 0
  for (let i = 0; i < surveys; i++) {
    const [own] = inspect(simulatedSurvey(c, random)).bores
    const [one] = own?.stations ?? []
    if (!own || !one) throw new Error('a simulated survey without a finding')
    for (const [name, inside] of linearQuantities(own, c))
      held[name] = (held[name] ?? 0) + (inside ? 1 / surveys : 0)
    for (const q of rangeQuantities(own, c)) {
      ranges[q.name] = (ranges[q.name] ?? 0) + (q.held ? 1 / surveys : 0)
      halfWidthUm[q.name] = (halfWidthUm[q.name] ?? 0) + (1000 * q.above) / surveys
    }
    if (one.conformity?.verdict === 'above') stationAbove += 1 / surveys
    if (own.verdict.known && own.verdict.verdict === 'above') boreAbove += 1 / surveys
    if (own.stations.some((s) => s.conformity?.verdict === 'above')) anyStationAbove += 1 / surveys
  }
  return { surveys, linear: held, ranges, halfWidthUm, stationAbove, boreAbove, anyStationAbove }
}

function linearQuantities(own: BoreFinding, c: SimulatedCase): [string, boolean][] {
  const truth = (s: StationFinding) => c.trueMm(s.depthMm, s.axisDegrees)
  const at = (depthMm: number | undefined, axisDegrees: number | undefined): StationFinding => {
    const found = own.stations.find((s) => s.depthMm === depthMm && s.axisDegrees === axisDegrees)
    if (!found) throw new Error(`no station at ${depthMm} mm, ${axisDegrees}°`)
    return found
  }
  const depths = c.levelsMm
  const axes = c.axesDegrees
  const one = at(depths[0], axes[0])
  const across = at(depths[0], axes[axes.length - 1])
  const below = at(depths[depths.length - 1], axes[0])
  const differs = (a: StationFinding, b: StationFinding) => {
    const combined = combine([
      { factor: 1, contributions: a.contributions },
      { factor: -1, contributions: b.contributions },
    ])
    return Math.abs(a.diameterMm - b.diameterMm - truth(a) + truth(b)) <= expanded(combined)
  }
  const [level] = own.levels
  const trueMean = axes.reduce((sum, axis) => sum + c.trueMm(level?.depthMm ?? 0, axis) / axes.length, 0)
  const [difference] = own.differences
  const [first] = difference?.stations ?? []
  const means = own.taper.find((shape) => shape.rule === 'level-means')
  if (!level || !difference || !first || !means?.known) throw new Error('a quantity is missing')
  return [
    ['a diameter', Math.abs(one.diameterMm - truth(one)) <= one.expandedMm],
    ['a signed difference of two axes', differs(one, across)],
    ['taper on a named axis', differs(one, below)],
    ['a level mean', Math.abs(level.meanMm - trueMean) <= level.meanExpandedMm],
    ['taper of level means', holds(means, trueShape(means.rule, c))],
    ['difference from another bore at a station', Math.abs(first.differenceMm) <= first.expandedMm],
    [
      'mean difference from another bore',
      Math.abs(difference.mean.differenceMm) <= difference.mean.expandedMm,
    ],
  ]
}

function rangeQuantities(own: BoreFinding, c: SimulatedCase) {
  const shapes = [...own.ovality, ...own.taper].filter((shape) => shape.known && shape.interval === 'range')
  const [level] = own.levels
  const levelTruth = spread(c.axesDegrees.map((axis) => c.trueMm(level?.depthMm ?? 0, axis)))
  const atLevel = level?.ovality
  if (!atLevel) throw new Error('no out-of-round at the first level')
  return [
    {
      name: 'out-of-round at one level',
      held: levelTruth >= atLevel.lowMm - 1e-12 && levelTruth <= atLevel.highMm + 1e-12,
      above: atLevel.highMm - atLevel.valueMm,
    },
    ...ovalsOf(own, c),
    ...shapes.flatMap((shape) =>
      shape.known
        ? [
            {
              name: shape.rule as string,
              held: sizeHolds(shape, trueShape(shape.rule, c)),
              above: shape.valueMm < 0 ? shape.valueMm - shape.lowMm : shape.highMm - shape.valueMm,
            },
          ]
        : [],
    ),
  ]
}

/** The oval of one level, and the widest of the bore: by its interval, or by its bound where no direction stands out. */
function ovalsOf(own: BoreFinding, c: SimulatedCase) {
  const [level] = own.levels
  const ovals = [
    { name: 'fitted oval at one level', oval: level?.fittedOval, depthMm: level?.depthMm },
    { name: 'widest fitted oval', oval: own.widestOval, depthMm: own.widestOval?.depthMm },
  ]
  return ovals.flatMap(({ name, oval, depthMm }) => {
    if (!oval || depthMm === undefined) return []
    const truth = spread([0, 90].map((axis) => c.trueMm(depthMm, axis)))
    const isHeld =
      oval.atMostMm === undefined
        ? Math.abs(oval.ovalMm - truth) <= oval.expandedMm + 1e-12
        : truth <= oval.atMostMm
    return [{ name, held: isHeld, above: (oval.atMostMm ?? oval.ovalMm + oval.expandedMm) - oval.ovalMm }]
  })
}

type Known = Extract<ShapeFinding<OvalityRule | TaperRule>, { known: true }>

function holds(shape: Known, truth: number): boolean {
  return truth >= shape.lowMm - 1e-12 && truth <= shape.highMm + 1e-12
}

/** Figures named after their worst pair are intervals of the size; the sign is that of the pair read. */
function sizeHolds(shape: Known, truth: number): boolean {
  if (!worstOf.has(shape.rule)) return holds(shape, truth)
  const mirrored = shape.valueMm < 0
  const low = mirrored ? -shape.highMm : shape.lowMm
  const high = mirrored ? -shape.lowMm : shape.highMm
  return Math.abs(truth) >= low - 1e-12 && Math.abs(truth) <= high + 1e-12
}

const worstOf: ReadonlySet<string> = new Set(['between-levels-of-an-axis', 'top-less-bottom-of-an-axis'])

/** A rule on the true diameters at the stations measured. */
function trueShape(rule: OvalityRule | TaperRule, c: SimulatedCase): number {
  const on = (depth: number) => c.axesDegrees.map((axis) => c.trueMm(depth, axis))
  const along = (axis: number) => c.levelsMm.map((depth) => c.trueMm(depth, axis))
  const top = on(Math.min(...c.levelsMm))
  const bottom = on(Math.max(...c.levelsMm))
  const named = c.spec.ovalityAxesDegrees ?? { x: 0, y: 90 }
  switch (rule) {
    case 'largest-less-smallest-at-a-level':
      return Math.max(...c.levelsMm.map((depth) => spread(on(depth))))
    case 'across-less-along-at-a-level':
      return Math.max(
        ...c.levelsMm.map((depth) => Math.abs(c.trueMm(depth, named.x) - c.trueMm(depth, named.y))),
      )
    case 'pooled':
      return Math.max(...along(named.x)) - Math.min(...along(named.y))
    case 'between-levels-of-an-axis':
      return Math.max(...c.axesDegrees.map((axis) => spread(along(axis))))
    case 'top-less-bottom-of-an-axis':
      return Math.max(...top.map((size, i) => Math.abs(size - (bottom[i] ?? 0))))
    case 'largest-top-less-largest-bottom':
      return Math.max(...top) - Math.max(...bottom)
    case 'largest-top-less-smallest-bottom':
      return Math.max(...top) - Math.min(...bottom)
    case 'level-means':
      return mean(top) - mean(bottom)
  }
}

function spread(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values)
}

function mean(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0) / values.length
}
