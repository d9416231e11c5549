import { fisherCdf } from '../statistics/fisher'
import { scatter } from '../statistics/scatter'
import { categoriesOf } from './categories'
import type { CrossedTable } from './crossed-table'
import {
  addSquares,
  intervalOfComponent,
  intervalOfSum,
  type MeanSquare,
  type VarianceInterval,
  type WeightedSquare,
} from './mean-squares'

/** A standard deviation with its 95 % interval, µm, and as a share of that of all readings. */
export interface Spread {
  readonly deviationUm: number
  readonly lowUm: number
  readonly highUm: number
  readonly share: number
}

/** Sums of squares of a crossed study, µm², with their degrees of freedom; by one person there are but two. */
export interface CrossedSquares {
  readonly parts: Squares
  readonly people?: Squares
  readonly interaction?: Squares
  readonly equipment: Squares
}

interface Squares extends MeanSquare {
  readonly squares: number
}

/** What a crossed study shows by its analysis of variance. */
export interface CrossedVariance {
  readonly squares: CrossedSquares
  /**
   * Whether the people differ from each other in another way on one part than on the next: F of the interaction
   * over the equipment, and the chance of as much by accident. Absent for one person.
   */
  readonly interaction?: { readonly f: number; readonly chance: number }
  /** The interaction was counted with the repeats. */
  readonly pooled: boolean
  /** Repeats of one person on one part. */
  readonly gauge: Spread
  /** The people's own levels; absent for one person. */
  readonly people?: Spread
  /** Absent where it was pooled, or for one person. */
  readonly peopleByPart?: Spread
  /** A reading by any of them of one part. */
  readonly gaugeAndPeople: Spread
  readonly parts: Spread
  readonly all: Spread
  /** Distinct categories of parts, and what the intervals leave open of them. */
  readonly categories: number
  readonly categoriesLow: number
  readonly categoriesHigh: number
  /** Mean squares whose sum is the variance of one person's mean of n repeats about the part. */
  readonly ofMean: (repeats: number) => readonly WeightedSquare[]
}

/** From this chance on the interaction is taken for accident and pooled. */
export const pooledFrom = 0.25

/**
 * Analysis of variance of a crossed study, all effects random, and its components of variance. The interaction is
 * pooled with the repeats when its F would come by accident in a quarter of cases or more (`pooledFrom`), the
 * preliminary test of Bancroft, Biometrics 20 (1964), 427, from memory; `pooling` decides otherwise. A negative
 * component counts as 0. The intervals are those of `mean-squares.ts`; each by itself holds
 * the truth in 95 % of studies, the gauge's own in fewer where an interaction that is there was pooled.
 * Source: Measurement Systems Analysis, 4th ed. 2010, chapter III, analysis of variance; Montgomery, Design and
 * Analysis of Experiments, two-factor random model, from memory.
 */
export function crossedVariance(
  table: CrossedTable,
  stepUm: number,
  pooling: 'by-test' | 'pooled' | 'apart' = 'by-test',
): CrossedVariance {
  const squares = crossedSquares(table)
  const interaction = squares.interaction && testOf(squares.interaction, squares.equipment)
  const pooled =
    pooling === 'by-test' ? !interaction || interaction.chance >= pooledFrom : pooling === 'pooled'
  const rest = pooled ? sumOf(squares.equipment, squares.interaction) : squares.equipment
  const among = pooled ? rest : (squares.interaction ?? rest)
  return {
    squares,
    ...(interaction ? { interaction } : {}),
    pooled,
    ...spreadsOf(table, squares, rest, among, stepUm),
  }
}

/** Sums of squares, two passes over deviations from means; each good to 1e-12 of itself or better. */
function crossedSquares({ people, parts, trials, valuesUm }: CrossedTable): CrossedSquares {
  const cells = valuesUm.map((row) => row.map(scatter))
  const means = cells.map((row) => row.map(({ mean }) => mean))
  const partMeans = parts.map((_, j) => scatter(means.map((row) => row[j] ?? 0)).mean)
  const personMeans = means.map((row) => scatter(row).mean)
  const { mean: middle } = scatter(personMeans)
  const [o, p, r] = [people.length, parts.length, trials]
  const equipment = of(
    cells.flat().reduce((sum, { squares }) => sum + squares, 0),
    o * p * (r - 1),
  )
  const ofParts = of(o * r * scatter(partMeans).squares, p - 1)
  if (o < 2) return { parts: ofParts, equipment }
  let crossed = 0
  means.forEach((row, i) => {
    row.forEach((mean, j) => {
      crossed += (mean - (partMeans[j] ?? 0) - ((personMeans[i] ?? 0) - middle)) ** 2
    })
  })
  return {
    parts: ofParts,
    people: of(p * r * scatter(personMeans).squares, o - 1),
    interaction: of(r * crossed, (o - 1) * (p - 1)),
    equipment,
  }
}

function of(squares: number, degreesOfFreedom: number): Squares {
  return { squares, degreesOfFreedom, meanSquare: squares / degreesOfFreedom }
}

function sumOf(one: Squares, other: Squares | undefined): Squares {
  return other ? of(one.squares + other.squares, one.degreesOfFreedom + other.degreesOfFreedom) : one
}

/** Where the repeats do not scatter at all, any interaction is none of theirs. */
function testOf(interaction: Squares, equipment: Squares): { readonly f: number; readonly chance: number } {
  if (interaction.meanSquare === 0) return { f: 0, chance: 1 }
  if (equipment.meanSquare === 0) return { f: Number.POSITIVE_INFINITY, chance: 0 }
  const f = interaction.meanSquare / equipment.meanSquare
  return { f, chance: 1 - fisherCdf(f, interaction.degreesOfFreedom, equipment.degreesOfFreedom) }
}

function spreadsOf(
  { people, parts, trials }: CrossedTable,
  squares: CrossedSquares,
  rest: Squares,
  among: Squares,
  stepUm: number,
) {
  const perPerson = parts.length * trials
  const perPart = people.length * trials
  const own = [{ of: rest, factor: 1 }]
  const byPart = among === rest ? undefined : componentOf(among, rest, trials)
  const ofPeople = squares.people && componentOf(squares.people, among, perPerson)
  const ofParts = componentOf(squares.parts, among, perPart)
  const cut = (of: Component | undefined) => of?.interval.estimate ?? 0
  const { estimate } = intervalOfSum(own)
  const gaugeTerms = addSquares(own, byPart?.terms, ofPeople?.terms)
  const both = within(estimate + cut(byPart) + cut(ofPeople), intervalOfSum(gaugeTerms))
  const every = intervalOfSum(addSquares(gaugeTerms, ofParts.terms))
  const all = within(both.estimate + cut(ofParts), every)
  const spread = (variance: VarianceInterval) => spreadOf(variance, all.estimate)
  const gaugeAndPeople = spread(both)
  const partsSpread = spread(ofParts.interval)
  return {
    gauge: spread(intervalOfSum(own)),
    ...(ofPeople ? { people: spread(ofPeople.interval) } : {}),
    ...(byPart ? { peopleByPart: spread(byPart.interval) } : {}),
    gaugeAndPeople,
    parts: partsSpread,
    all: spread(all),
    categories: categoriesOf(partsSpread.deviationUm, gaugeAndPeople.deviationUm, stepUm),
    categoriesLow: categoriesOf(partsSpread.lowUm, gaugeAndPeople.highUm, stepUm),
    categoriesHigh: categoriesOf(partsSpread.highUm, gaugeAndPeople.lowUm, stepUm),
    // A component that counts as 0 takes its mean squares out of the sum.
    ofMean: (repeats: number) =>
      addSquares(
        [{ of: rest, factor: 1 / repeats }],
        cut(byPart) > 0 ? byPart?.terms : undefined,
        cut(ofPeople) > 0 ? ofPeople?.terms : undefined,
      ),
  }
}

interface Component {
  readonly terms: readonly WeightedSquare[]
  readonly interval: VarianceInterval
}

function componentOf(one: MeanSquare, other: MeanSquare, times: number): Component {
  return {
    terms: [
      { of: one, factor: 1 / times },
      { of: other, factor: -1 / times },
    ],
    interval: intervalOfComponent(one, other, times),
  }
}

/** The estimate, in which no component is negative, within an interval that lets them be so. */
function within(estimate: number, { low, high }: VarianceInterval): VarianceInterval {
  return { estimate, low: Math.min(low, estimate), high: Math.max(high, estimate) }
}

function spreadOf({ estimate, low, high }: VarianceInterval, all: number): Spread {
  return {
    deviationUm: Math.sqrt(estimate),
    lowUm: Math.sqrt(low),
    highUm: Math.sqrt(high),
    share: all > 0 ? Math.sqrt(estimate / all) : 0,
  }
}
