import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bottleneckAssignment, type CostTable } from '../../../../src/core/piston/bottleneck-assignment'

const seed = 20261125

interface Worth {
  readonly served: number
  readonly worst: number
  readonly sum: number
}

/** Every way of giving rows columns, tried one after the other. */
function bestByTrying(costs: CostTable): Worth {
  const from = (row: number, taken: ReadonlySet<number>, so: Worth): Worth => {
    const [cells] = costs.slice(row, row + 1)
    if (!cells) return so
    const without = from(row + 1, taken, so)
    return cells.reduce<Worth>((best, cost, column) => {
      if (cost === undefined || taken.has(column)) return best
      const next = { served: so.served + 1, worst: Math.max(so.worst, cost), sum: so.sum + cost }
      return better(best, from(row + 1, new Set([...taken, column]), next))
    }, without)
  }
  return from(0, new Set(), { served: 0, worst: 0, sum: 0 })
}

function better(a: Worth, b: Worth): Worth {
  if (a.served !== b.served) return a.served > b.served ? a : b
  if (a.worst !== b.worst) return a.worst < b.worst ? a : b
  return a.sum <= b.sum ? a : b
}

function worthOf(costs: CostTable, chosen: readonly (number | undefined)[]): Worth {
  const paid = chosen.flatMap((column, row) => {
    const cost = column === undefined ? undefined : costs[row]?.[column]
    return cost === undefined ? [] : [cost]
  })
  return { served: paid.length, worst: Math.max(0, ...paid), sum: paid.reduce((a, b) => a + b, 0) }
}

const table = fc
  .tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 6 }))
  .chain(([rows, columns]) =>
    fc.array(
      fc.array(fc.option(fc.integer({ min: 0, max: 9 }), { nil: undefined, freq: 3 }), {
        minLength: columns,
        maxLength: columns,
      }),
      { minLength: rows, maxLength: rows },
    ),
  )

describe(`an assignment with the smallest worst cost (seed ${seed})`, () => {
  it('serves as many rows, at as small a worst and a sum, as trying every way finds', () => {
    fc.assert(
      fc.property(table, (costs) => {
        const chosen = bottleneckAssignment(costs)
        const columns = chosen.filter((column) => column !== undefined)
        expect(new Set(columns).size).toBe(columns.length)
        expect(worthOf(costs, chosen)).toEqual(bestByTrying(costs))
      }),
      { seed, numRuns: 600 },
    )
  })

  it('takes a larger sum for a smaller worst', () => {
    expect(
      bottleneckAssignment([
        [1, 6],
        [6, 8],
      ]),
    ).toEqual([1, 0])
  })

  it('leaves a row that may have nothing, and a table without cells', () => {
    expect(bottleneckAssignment([[undefined], [3]])).toEqual([undefined, 0])
    expect(bottleneckAssignment([[], []])).toEqual([undefined, undefined])
    expect(bottleneckAssignment([])).toEqual([])
  })
})
