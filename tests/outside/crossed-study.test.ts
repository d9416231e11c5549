import { describe, expect, it } from 'vitest'
import { crossedStudies } from '../../src/core/gauge/crossed-study'
import { crossedTable } from '../../src/core/gauge/crossed-table'
import { crossedVariance } from '../../src/core/gauge/crossed-variance'
import type { CrossedStudy } from '../../src/core/measured'
import { studySentences } from '../../src/words/crossed-study'
import { first, measuredBore } from '../unit/core/measured-bore'
import published from './data/crossed-studies.json' with { type: 'json' }

/** The printed readings have no unit; here they are dial readings of a thousand µm each. */
const unitUm = 1000
const study: CrossedStudy = {
  readings: Object.entries(published.gaugeStudy.people).flatMap(([person, trials]) =>
    first(trials).map((_, part) => ({
      person,
      part: `${part + 1}`,
      dialUm: trials.map((trial) => (trial[part] ?? Number.NaN) * unitUm),
    })),
  ),
}

function shown(of: CrossedStudy) {
  const table = { levelsMm: [10], axesDegrees: [0], rows: [[80]] }
  const found = first(crossedStudies(measuredBore(table, { gauge: { crossedStudies: [of] } }))).shown
  if (!found.known) throw new Error(found.why)
  return found
}

/**
 * The gauge study of Measurement Systems Analysis, 4th ed. 2010, chapter III: three people, ten parts, three trials.
 * Results as public notes and test files quote them.
 */
describe('the published gauge study of three people, ten parts and three trials', () => {
  const { variance, ranges } = shown(study)

  it('has by averages and ranges EV 0.202, AV 0.230, GRR 0.306, PV 1.105 and TV 1.146', () => {
    const { gauge, people, gaugeAndPeople, parts, all } = ranges
    const printed = [
      [gauge, 0.202, 0.201857],
      [people, 0.23, 0.229667],
      [gaugeAndPeople, 0.306, 0.305766],
      [parts, 1.105, 1.104596],
      [all, 1.146, 1.146135],
    ] as const
    for (const [{ deviationUm }, short, long] of printed) {
      expect(deviationUm / unitUm).toBeCloseTo(short, 3)
      expect(deviationUm / unitUm).toBeCloseTo(long, 5)
    }
  })

  it('has shares of 17.61, 20.04, 26.68 and 96.37 % of the whole, and 5 distinct categories', () => {
    const { gauge, people, gaugeAndPeople, parts, categories } = ranges
    const percents = [gauge, people, gaugeAndPeople, parts].map(({ share }) => 100 * share)
    for (const [index, percent] of [17.61, 20.04, 26.68, 96.37].entries()) {
      expect(Math.abs((percents[index] ?? 0) - percent)).toBeLessThan(0.0101)
    }
    expect(categories).toBe(5)
  })

  it('has mean ranges of 0.184, 0.513 and 0.328 with K1 0.5908, K2 0.5231 and K3 0.3146', () => {
    expect(ranges.meanRangesUm.map((um) => um / unitUm)).toEqual(
      [0.184, 0.513, 0.328].map((range) => expect.closeTo(range, 9)),
    )
    expect(ranges.meanRangeUm / unitUm).toBeCloseTo(0.3417, 4)
    expect(ranges.peopleRangeUm / unitUm).toBeCloseTo(0.4447, 4)
    expect(ranges.partsRangeUm / unitUm).toBeCloseTo(3.511, 3)
    expect(ranges.factors).toEqual({ gauge: 0.5908, people: 0.5231, parts: 0.3146 })
  })

  it('has by analysis of variance the sums of squares 88.362, 3.167, 0.359, 2.759, and an interaction with F 0.434, p 0.974', () => {
    const { parts, people, interaction, equipment } = variance.squares
    const squares = [parts, people, interaction, equipment].map((each) => (each?.squares ?? 0) / unitUm ** 2)
    const printed = [88.361934, 3.167262, 0.358982, 2.758933]
    expect(squares).toEqual(printed.map((value) => expect.closeTo(value, 6)))
    expect([parts, people, interaction, equipment].map((each) => each?.degreesOfFreedom)).toEqual([
      9, 2, 18, 60,
    ])
    expect(variance.interaction?.f).toBeCloseTo(0.433721, 6)
    expect(variance.interaction?.chance).toBeCloseTo(0.974106, 6)
    expect(variance.pooled).toBe(true)
  })

  it('has with the interaction pooled EV 0.199933, AV 0.226838, GRR 0.302372, PV 1.042327, TV 1.085300, and 4 categories', () => {
    const { gauge, people, gaugeAndPeople, parts, all } = variance
    const found = [gauge, people, gaugeAndPeople, parts, all].map((each) => (each?.deviationUm ?? 0) / unitUm)
    expect(found).toEqual(
      [0.199933, 0.226838, 0.302372, 1.042327, 1.0853].map((value) => expect.closeTo(value, 5)),
    )
    const shares = [gauge, people, gaugeAndPeople, parts].map((each) => 100 * (each?.share ?? 0))
    expect(shares).toEqual([18.422, 20.901, 27.861, 96.041].map((value) => expect.closeTo(value, 2)))
    expect(variance.categories).toBe(4)
  })

  it('is told on the page with both counts, 4 and 5, and that the two ways need not agree', () => {
    const table = { levelsMm: [10], axesDegrees: [0], rows: [[80]] }
    const measured = measuredBore(table, { gauge: { crossedStudies: [study] } })
    const text = studySentences(first(crossedStudies(measured))).join(' ')
    expect(text).toMatch(/the gauge tells 4 sizes of such parts apart/)
    expect(text).toMatch(
      /By that way it tells 5 sizes apart\. The two ways weigh the same readings differently/,
    )
  })

  it('has with the interaction kept apart EV 0.214435, AV 0.228304, GRR 0.313217, PV 1.043395: 28.752 %', () => {
    const table = crossedTable(study)
    if ('why' in table) throw new Error(table.why)
    const { gauge, people, peopleByPart, gaugeAndPeople, parts } = crossedVariance(table, 1, 'apart')
    const found = [gauge, people, gaugeAndPeople, parts].map((each) => (each?.deviationUm ?? 0) / unitUm)
    expect(found).toEqual([0.214435, 0.228304, 0.313217, 1.043395].map((value) => expect.closeTo(value, 6)))
    expect(100 * gaugeAndPeople.share).toBeCloseTo(28.752, 3)
    expect(peopleByPart?.deviationUm).toBe(0)
  })

  it.each([
    // Tables of that book's form, from memory.
    ['gauge', 2, 0.8862],
    ['gauge', 3, 0.5908],
    ['people', 3, 0.5231],
    ['parts', 3, 0.5231],
    ['parts', 4, 0.4467],
    ['parts', 5, 0.403],
    ['parts', 8, 0.3375],
    ['parts', 10, 0.3146],
  ] as const)('has for the %s of %s the printed factor %s', (which, count, factor) => {
    const some = { gauge: 3, people: 3, parts: 10, [which]: count }
    const names = (many: number) => Array.from({ length: many }, (_, i) => `${i}`)
    const readings = names(some.people).flatMap((person) =>
      names(some.parts).map((part) => ({ person, part, dialUm: names(some.gauge).map(Number) })),
    )
    expect(shown({ readings }).ranges.factors[which]).toBe(factor)
  })
})

/** One person and parts alone: a one-way analysis of variance, the groups in the place of the parts. */
function oneWay(groups: readonly (readonly number[])[]) {
  return shown({
    readings: groups.flatMap((values, group) => [
      { person: 'one', part: `${group + 1}`, sizesMm: values.slice(0, 12) },
      ...(values.length > 12 ? [{ person: 'one', part: `${group + 1}`, sizesMm: values.slice(12) }] : []),
    ]),
  })
}

describe('the analysis of variance against the NIST Statistical Reference Datasets', () => {
  it.each([
    ['SiRstv', 1.18046237440255, 0.104076068334656, 4, 20],
    ['AtmWtAg', 15.946733567793, 1.5104831444641e-5, 1, 46],
  ] as const)(
    'agrees with the certified F and residual standard deviation of %s',
    (name, f, deviation, among, within) => {
      const { variance } = oneWay(published[name].groups)
      const { parts, equipment } = variance.squares
      // AtmWtAg: the sizes differ in their eighth digit, which leaves nine of a double in the squares.
      const tolerance = name === 'SiRstv' ? 1e-10 : 1e-7
      expect(Math.abs(parts.meanSquare / equipment.meanSquare / f - 1)).toBeLessThan(tolerance)
      expect(Math.abs(variance.gauge.deviationUm / 1000 / deviation - 1)).toBeLessThan(tolerance)
      expect([parts.degreesOfFreedom, equipment.degreesOfFreedom]).toEqual([among, within])
      expect(variance.people).toBeUndefined()
    },
  )
})

/**
 * Introduction to Statistical Quality Control, 2nd ed. 1991: 25 samples of five rings, mean range printed as 0.023
 * and a standard deviation of 0.0099 from it (both from memory); the data give 0.02276.
 */
describe('the ranges of a textbook’s piston rings', () => {
  const { ranges } = oneWay(published.pistonRings.samples)

  it('have a mean of 0.02276 mm, printed as 0.023, and with d2 of five, 2.326, a standard deviation of 0.0098 mm', () => {
    expect(ranges.meanRangeUm / 1000).toBeCloseTo(0.02276, 9)
    expect(ranges.meanRangeUm / 1000).toBeCloseTo(0.023, 3)
    expect(ranges.factors.gauge).toBeCloseTo(1 / 2.326, 4)
    expect(ranges.gauge.deviationUm / 1000).toBeCloseTo(0.02276 / 2.326, 5)
    expect(ranges.gauge.deviationUm / 1000).toBeCloseTo(0.0099, 3)
  })

  it('leave no share to people where one alone read', () => {
    expect(ranges.people.deviationUm).toBe(0)
    expect(ranges.factors.people).toBeUndefined()
  })
})
