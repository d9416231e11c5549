import type { Contribution, DepthForm, DepthFormName, StationFinding } from '../findings'
import { studentQuantile } from '../statistics/student'
import { combine, type Term } from '../uncertainty/combine'
import type { Level } from './level'

/** A difference of level means with what it takes to stand out, mm. */
interface Contrast {
  readonly valueMm: number
  readonly expandedMm: number
}

/**
 * The form of the bore along its depth, from level means: tapered, barrel, waisted, bell-mouthed, stepped at
 * a land, or straight as far as these readings show. Undefined with fewer than two levels outside lands.
 *
 * A contrast is named only when it exceeds its own U (95 %); where several are looked at, each at
 * 1 − 0.05/how many. Ends: mean of the top level less that of the bottom. Middle: each inner level less the
 * straight line between the ends, the one that stands out furthest; above the line is barrel, below waisted.
 * Bell-mouthed: an end larger than its neighbour beyond U, while what is left without that end is straight.
 * Step: the land less the nearest level outside it. Means are of the axes that both levels have; errors that
 * levels share drop out. Own derivation.
 */
export function formAlongDepth(levels: readonly Level[]): DepthForm | undefined {
  const running = levels.filter((level) => !level.land)
  const top = running[0]
  const bottom = running[running.length - 1]
  if (!top || !bottom || top === bottom) return undefined
  const ends = contrast([
    [top, 1],
    [bottom, -1],
  ])
  const middle = standsOutMost(running)
  const step = stepAtLand(levels)
  const names: DepthFormName[] = []
  const bell = middle && bellMouth(running)
  if (bell) names.push('bell-mouthed')
  else if (middle && exceeds(middle)) names.push(middle.valueMm > 0 ? 'barrel' : 'waisted')
  if (!bell && ends && exceeds(ends)) names.push('tapered')
  if (step && exceeds(step)) names.push('stepped')
  return {
    names: names.length > 0 ? names : ['straight'],
    ...(ends ? { ends } : {}),
    ...(middle ? { middle } : {}),
    ...(bell ? { bell } : {}),
    ...(step ? { step } : {}),
  }
}

function exceeds({ valueMm, expandedMm }: Contrast): boolean {
  return Math.abs(valueMm) > expandedMm
}

function standsOutMost(running: readonly Level[]) {
  const top = running[0]
  const bottom = running[running.length - 1]
  const inner = running.slice(1, -1)
  if (!top || !bottom || inner.length === 0) return undefined
  const found = inner.flatMap((level) => {
    const share = (level.depthMm - top.depthMm) / (bottom.depthMm - top.depthMm)
    const one = contrast(
      [
        [level, 1],
        [top, share - 1],
        [bottom, -share],
      ],
      inner.length,
    )
    return one ? [{ ...one, depthMm: level.depthMm }] : []
  })
  return found.reduce<(typeof found)[number] | undefined>(
    (most, one) => (most && ratio(most) >= ratio(one) ? most : one),
    undefined,
  )
}

function ratio({ valueMm, expandedMm }: Contrast): number {
  return Math.abs(valueMm) / expandedMm
}

/** An end that widens by itself: four levels or more, so that three are left to be straight. */
function bellMouth(running: readonly Level[]) {
  if (running.length < 4) return undefined
  for (const end of ['top', 'bottom'] as const) {
    const inOrder = end === 'top' ? running : [...running].reverse()
    const [mouth, next, ...rest] = inOrder
    const last = rest[rest.length - 1]
    if (!mouth || !next || !last) continue
    const wider = contrast(
      [
        [mouth, 1],
        [next, -1],
      ],
      2,
    )
    if (!wider || wider.valueMm <= wider.expandedMm) continue
    const others = contrast([
      [next, 1],
      [last, -1],
    ])
    const bend = standsOutMost(inOrder.slice(1))
    const isStraight = others && !exceeds(others) && !(bend && exceeds(bend))
    if (isStraight) return { ...wider, end }
  }
  return undefined
}

function stepAtLand(levels: readonly Level[]) {
  const pairs = levels.flatMap((level, index) => {
    const next = levels[index + 1]
    if (!next || level.land === next.land) return []
    const [land, worn] = level.land ? [level, next] : [next, level]
    return [{ land, worn }]
  })
  const found = pairs.flatMap(({ land, worn }) => {
    const one = contrast(
      [
        [worn, 1],
        [land, -1],
      ],
      pairs.length,
    )
    return one ? [{ ...one, landDepthMm: land.depthMm, depthMm: worn.depthMm }] : []
  })
  return found.reduce<(typeof found)[number] | undefined>(
    (most, one) => (most && ratio(most) >= ratio(one) ? most : one),
    undefined,
  )
}

/** Σ factor·mean over levels, on the axes that all of them have; undefined where they share none. */
function contrast(parts: readonly (readonly [Level, number])[], lookedAt = 1): Contrast | undefined {
  const [first] = parts
  if (!first) return undefined
  const axes = first[0].stations
    .map((s) => s.axisDegrees)
    .filter((axis) => parts.every(([level]) => level.stations.some((s) => s.axisDegrees === axis)))
  if (axes.length === 0) return undefined
  const terms = parts.flatMap(([level, factor]) =>
    level.stations
      .filter((s) => axes.includes(s.axisDegrees))
      .map((station) => ({ station, factor: factor / axes.length })),
  )
  const { standardUncertainty: u, degreesOfFreedom } = combine(terms.map(termOf))
  return {
    valueMm: terms.reduce((sum, { station, factor }) => sum + factor * station.diameterMm, 0),
    expandedMm: studentQuantile(1 - 0.025 / lookedAt, degreesOfFreedom) * u,
  }
}

function termOf(of: { station: StationFinding; factor: number }): Term {
  const contributions: readonly Contribution[] = of.station.contributions
  return { factor: of.factor, contributions }
}
