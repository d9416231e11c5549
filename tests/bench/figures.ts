/** One line of the bench's table. */
export interface Figure {
  readonly name: string
  readonly value: string
  readonly target?: string
}

/** The median with the smallest and the largest: `12.3 [11.0 to 15.2] ms, n = 8`. */
export function spread(values: readonly number[], unit: string): string {
  const sorted = [...values].sort((a, b) => a - b)
  const middle = sorted[Math.floor(sorted.length / 2)]
  const first = sorted[0]
  const last = sorted[sorted.length - 1]
  if (middle === undefined || first === undefined || last === undefined) return 'not measured'
  const digits = middle < 10 ? 2 : 0
  const text = (value: number) => value.toFixed(digits)
  return `${text(middle)} [${text(first)} to ${text(last)}] ${unit}, n = ${sorted.length}`
}

/** The figures in aligned columns. */
export function table(figures: readonly Figure[]): string {
  const rows = [
    { name: 'figure', value: 'median [least to most]', target: 'target' },
    ...figures.map((figure) => ({ target: '', ...figure })),
  ]
  const nameWidth = Math.max(...rows.map(({ name }) => name.length))
  const valueWidth = Math.max(...rows.map(({ value }) => value.length))
  return rows
    .map(({ name, value, target }) =>
      `${name.padEnd(nameWidth)}  ${value.padEnd(valueWidth)}  ${target}`.trimEnd(),
    )
    .join('\n')
}
