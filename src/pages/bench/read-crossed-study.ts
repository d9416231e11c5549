import type { CrossedReading } from '../../core/measured'
import { readTable } from '../../formats/table-text'
import { readNumber } from '../../words/read-number'
import { studyWords } from '../../words/study-words'
import { words } from '../../words/words'

/** Readings of one part by one person, as shown by the gauge. */
export interface StudyLine {
  readonly person: string
  readonly part: string
  readonly values: readonly number[]
}

export type ReadStudy =
  | { readonly ok: true; readonly lines: readonly StudyLine[] }
  | { readonly ok: false; readonly said: string }

interface Row {
  readonly line: number
  readonly person: string
  readonly part: string
  readonly readings: readonly string[]
}

/**
 * Reads a table of a crossed study: on each line a person, a part and readings; or, where person and part come
 * again and again and the third cell counts 1, 2, 3, one reading each. A line of headings is passed over.
 */
export function readCrossedStudy(text: string): ReadStudy {
  const { refused } = studyWords
  const table = readTable(text)
  if (!table.ok) {
    const said = refused[table.why]
    return { ok: false, said: table.why === 'quote-left-open' ? refused.line(table.row + 1, said) : said }
  }
  const rows: Row[] = []
  for (const [index, cells] of table.rows.entries()) {
    const trimmed = (table.separator ? cells : (cells[0] ?? '').trim().split(/\s+/)).map((cell) =>
      cell.trim(),
    )
    if (trimmed.every((cell) => cell === '')) continue
    const [person = '', part = '', ...readings] = trimmed
    const given = readings.filter((cell) => cell !== '')
    if (rows.length === 0 && isHeading(part, given)) continue
    const line = index + 1
    if (person === '' || part === '') return refuse(line, refused.unnamed)
    if (given.length === 0) return refuse(line, refused.short)
    rows.push({ line, person, part, readings: given })
  }
  return readingsOf(countsReadings(rows) ? inTheirOrder(rows) : rows)
}

/** Words throughout, with a number at the end at most; a mistyped reading begins with a digit. */
function isHeading(part: string, given: readonly string[]): boolean {
  const isWord = (cell: string) => /^\p{L}[\p{L}\s.:()#-]*\d*$/u.test(cell)
  return given.length > 0 && !/\d/.test(part) && given.every(isWord)
}

function refuse(line: number, why: string): ReadStudy {
  return { ok: false, said: studyWords.refused.line(line, why) }
}

function readingsOf(rows: readonly Row[]): ReadStudy {
  const { refused } = studyWords
  if (rows.length === 0) return { ok: false, said: refused.empty }
  const lines: StudyLine[] = []
  for (const { line, person, part, readings } of rows) {
    const values: number[] = []
    for (const piece of readings) {
      const read = readNumber(piece)
      if (!read.ok) return refuse(line, refused.piece(piece, words.number.refused[read.why]))
      values.push(read.value)
    }
    const at = lines.findIndex((known) => known.person === person && known.part === part)
    const known = lines[at]
    if (known) lines[at] = { ...known, values: [...known.values, ...values] }
    else lines.push({ person, part, values })
  }
  return { ok: true, lines }
}

/** Whether the third cell says which reading it is: 1, 2, 3 and so on for a person and part, each once. */
function countsReadings(rows: readonly Row[]): boolean {
  if (rows.length < 2 || rows.some(({ readings }) => readings.length !== 2)) return false
  const counted = new Map<string, Set<number>>()
  for (const { person, part, readings } of rows) {
    const read = readNumber(readings[0] ?? '')
    const key = JSON.stringify([person, part])
    const before = counted.get(key) ?? new Set()
    if (!read.ok || !Number.isInteger(read.value) || read.value < 1 || before.has(read.value)) return false
    counted.set(key, before.add(read.value))
  }
  const most = Math.max(...[...counted.values()].map((numbers) => numbers.size))
  return most > 1 && [...counted.values()].every((numbers) => Math.max(...numbers) <= most)
}

function inTheirOrder(rows: readonly Row[]): Row[] {
  return rows
    .toSorted((a, b) => Number(a.readings[0]) - Number(b.readings[0]))
    .map((row) => ({ ...row, readings: row.readings.slice(1) }))
}

/** The readings of a study as lines of text that are read the same. */
export function studyTextOf(readings: readonly CrossedReading[], written: (kept: number) => string): string {
  const { between } = studyWords
  return readings
    .map(({ person, part, sizesMm, dialUm }) =>
      [person, part, ...(sizesMm ?? dialUm ?? []).map(written)].join(between),
    )
    .join('\n')
}
