/**
 * Lays out headed sections, paragraphs, lists and tables as plain text of at most 78 columns, for a
 * terminal, a mail or a printer. Pure; takes texts that are worded already.
 */

export const columns = 78
/** Least space between two columns of a table. */
const gap = 2

export type Block =
  | { readonly kind: 'title' | 'heading' | 'subheading' | 'paragraph'; readonly text: string }
  | { readonly kind: 'list'; readonly items: readonly string[] }
  | {
      readonly kind: 'table'
      readonly head: readonly string[]
      readonly rows: readonly (readonly string[])[]
    }
  | { readonly kind: 'entries'; readonly entries: readonly Entry[] }

/** A line with something at its left and its right end, and lines under it. */
export interface Entry {
  readonly left: string
  readonly right: string
  readonly under: readonly string[]
  /** Columns that its first line is set in. */
  readonly indent?: number
}

/** The blocks one under the other with a blank line between, closed with a line end. Empty blocks vanish. */
export function layOut(blocks: readonly Block[]): string {
  const laid = blocks.map(linesOf).filter((lines) => lines.length > 0)
  return laid.map((lines) => `${lines.join('\n')}\n`).join('\n')
}

function linesOf(block: Block): string[] {
  switch (block.kind) {
    case 'title':
      return underlined(block.text, '=')
    case 'heading':
      return underlined(block.text, '-')
    case 'subheading':
    case 'paragraph':
      return wrap(block.text, columns)
    case 'list':
      return block.items.flatMap((item) => hanging(item, '- '))
    case 'table':
      return table(block.head, block.rows)
    case 'entries':
      return block.entries.flatMap(entryLines)
  }
}

function underlined(text: string, stroke: string): string[] {
  const lines = wrap(text, columns)
  const widest = Math.max(0, ...lines.map(width))
  return widest === 0 ? [] : [...lines, stroke.repeat(widest)]
}

function hanging(text: string, bullet: string): string[] {
  const indent = ' '.repeat(bullet.length)
  return wrap(text, columns - bullet.length).map((line, i) => `${i === 0 ? bullet : indent}${line}`)
}

function entryLines({ left: text, right, under, indent = 0 }: Entry): string[] {
  const left = `${' '.repeat(indent)}${printable(text)}`
  const between = columns - width(left) - width(right)
  const first =
    between >= gap
      ? [`${left}${' '.repeat(between)}${printable(right)}`]
      : [...hanging(text, ' '.repeat(indent)), padded(printable(right), columns)]
  return [...first.map((line) => line.trimEnd()), ...under.flatMap((text) => hanging(text, '    '))]
}

/**
 * Breaks a text at its spaces into lines of at most `most` columns. A word that is longer stands whole on a
 * line of its own: a path or a name is of no use in pieces. Line ends in the text are kept.
 */
export function wrap(text: string, most: number): string[] {
  const lines = printable(text)
    .split('\n')
    .flatMap((paragraph) => wrapOne(paragraph, most))
  return lines.every((line) => line === '') ? [] : lines
}

function wrapOne(paragraph: string, most: number): string[] {
  const lines: string[] = []
  let line = ''
  for (const word of paragraph.split(/ +/)) {
    const longer = line === '' ? word : `${line} ${word}`
    if (line !== '' && width(longer) > most) {
      lines.push(line)
      line = word
    } else {
      line = longer
    }
  }
  return [...lines, line]
}

/**
 * A table with every column right-aligned; cells may hold several lines. Where it is too wide it goes on
 * below, with its first column again.
 */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string[] {
  if (head.length === 0) return []
  const cells = [head, ...rows].map((row) => head.map((_, i) => printable(row[i] ?? '').split('\n')))
  const widths = head.map((_, i) => Math.max(...cells.map((row) => Math.max(...(row[i] ?? []).map(width)))))
  return columnGroups(widths).flatMap((group, i) => [
    ...(i === 0 ? [] : ['']),
    ...cells.flatMap((row) => rowLines(row, widths, group)),
  ])
}

/** Numbers of the columns that fit beside each other, the first always among them. */
function columnGroups(widths: readonly number[]): number[][] {
  const groups: number[][] = []
  let group: number[] = [0]
  let used = widths[0] ?? 0
  for (let i = 1; i < widths.length; i++) {
    const needed = gap + (widths[i] ?? 0)
    if (group.length > 1 && used + needed > columns) {
      groups.push(group)
      group = [0]
      used = widths[0] ?? 0
    }
    group.push(i)
    used += needed
  }
  return [...groups, group]
}

function rowLines(row: readonly string[][], widths: readonly number[], group: readonly number[]): string[] {
  const height = Math.max(...group.map((i) => row[i]?.length ?? 0))
  return Array.from({ length: height }, (_, line) =>
    group
      .map((i) => padded(row[i]?.[line] ?? '', widths[i] ?? 0))
      .join(' '.repeat(gap))
      .trimEnd(),
  )
}

function padded(text: string, to: number): string {
  return `${' '.repeat(Math.max(0, to - width(text)))}${text}`
}

/** Columns that a text takes up: its characters without combining marks; wide scripts are not counted twice. */
function width(text: string): number {
  return [...text.replace(/\p{M}/gu, '')].length
}

/** Control characters would steer the terminal; names in a job may come from anywhere. A tab is a space. */
function printable(text: string): string {
  return text.replaceAll('\t', ' ').replace(/[^\P{Cc}\n]|[\u202a-\u202e\u2066-\u2069]/gu, '\ufffd')
}
