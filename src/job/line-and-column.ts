export interface LineAndColumn {
  readonly line: number
  readonly column: number
}

/** Line and column, both from 1, of offsets in a text, which is gone through once for all of them. */
export function linesAndColumns(text: string, offsets: readonly number[]): LineAndColumn[] {
  const increasing = [...new Set(offsets)].sort((a, b) => a - b)
  const known = new Map<number, LineAndColumn>()
  const lineEnd = /\r\n|\n|\r/g
  let line = 1
  let start = 0
  let next = lineEnd.exec(text)
  for (const offset of increasing) {
    while (next && lineEnd.lastIndex <= offset) {
      line += 1
      start = lineEnd.lastIndex
      next = lineEnd.exec(text)
    }
    known.set(offset, { line, column: offset - start + 1 })
  }
  return offsets.map((offset) => known.get(offset) ?? { line: 1, column: 1 })
}
