/** Costs of giving a row a column; undefined where it may not have it. */
export type CostTable = readonly (readonly (number | undefined)[])[]

/**
 * Which column each row gets, undefined for a row that gets none: as many rows as can be served, no column twice,
 * the largest cost the smallest that it can be, and of those the smallest sum. Exact. Own derivation: rows can be
 * served within a cost exactly when a matching by augmenting paths serves as many of them along the cells that cost
 * no more (Berge), so the cost is found by bisection among the costs there are; the sum is then the smallest by
 * augmenting along shortest paths. Costs must be finite.
 */
export function bottleneckAssignment(costs: CostTable): (number | undefined)[] {
  const steps = [...new Set(costs.flat().filter((cost) => cost !== undefined))].sort((a, b) => a - b)
  const [last] = steps.slice(-1)
  if (last === undefined) return costs.map(() => undefined)
  const most = served(costs, last)
  let low = 0
  let high = steps.length - 1
  while (low < high) {
    const middle = Math.floor((low + high) / 2)
    if (served(costs, steps[middle] ?? last) === most) high = middle
    else low = middle + 1
  }
  return smallestSum(within(costs, steps[low] ?? last))
}

function within(costs: CostTable, most: number): CostTable {
  return costs.map((row) => row.map((cost) => (cost !== undefined && cost <= most ? cost : undefined)))
}

/** How many rows can be served at no more than this cost each. */
function served(costs: CostTable, most: number): number {
  const ofColumn = new Map<number, number>()
  const serve = (row: number, seen: Set<number>): boolean =>
    (costs[row] ?? []).some((cost, column) => {
      if (cost === undefined || cost > most || seen.has(column)) return false
      seen.add(column)
      const holder = ofColumn.get(column)
      if (holder !== undefined && !serve(holder, seen)) return false
      ofColumn.set(column, row)
      return true
    })
  return costs.filter((_, row) => serve(row, new Set())).length
}

/** A way from a row without a column to a column without a row, each step taking a column from its row. */
interface Way {
  readonly cost: number
  readonly row: number
  readonly before: number | undefined
}

function smallestSum(costs: CostTable): (number | undefined)[] {
  const ofRow: (number | undefined)[] = costs.map(() => undefined)
  for (;;) {
    const ways = shortestWays(costs, ofRow)
    const taken = new Set(ofRow)
    const free = [...ways].filter(([column]) => !taken.has(column))
    const [nearest] = free.sort(([, a], [, b]) => a.cost - b.cost)
    if (!nearest) return ofRow
    for (let column: number | undefined = nearest[0]; column !== undefined; ) {
      const way = ways.get(column)
      if (!way) throw new Error('bottleneckAssignment: a way without its start')
      ofRow[way.row] = column
      column = way.before
    }
  }
}

/** The cheapest way to each column, by repeated relaxation: taking a column from a row gives its cost back. */
function shortestWays(costs: CostTable, ofRow: readonly (number | undefined)[]): Map<number, Way> {
  const ways = new Map<number, Way>()
  const rowOf = new Map(
    ofRow.flatMap((column, row) => (column === undefined ? [] : [[column, row] as const])),
  )
  const step = (row: number, start: number, before: number | undefined): boolean => {
    let improved = false
    for (const [column, cost] of (costs[row] ?? []).entries()) {
      if (cost === undefined || column === ofRow[row]) continue
      const known = ways.get(column)
      if (known && known.cost <= start + cost + trifle) continue
      ways.set(column, { cost: start + cost, row, before })
      improved = true
    }
    return improved
  }
  for (const row of costs.keys()) if (ofRow[row] === undefined) step(row, 0, undefined)
  for (let again = true; again; ) {
    again = false
    for (const [column, { cost }] of [...ways]) {
      const holder = rowOf.get(column)
      if (holder === undefined) continue
      if (step(holder, cost - (costs[holder]?.[column] ?? 0), column)) again = true
    }
  }
  return ways
}

/** Less than this is rounding, and must not count as an improvement for ever. */
const trifle = 1e-12
