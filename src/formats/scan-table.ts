import type { RadialScan } from '../core/scan/radial-scan'
import { angleText, mmOfScanUnit, type ScanHead, type ScanUnit, scanHead, withoutEmptyEnd } from './scan-head'
import { type ScanLine, scanLines } from './scan-lines'
import { mostScanPlaces, RadiiReading, type ScanOfRadii, scanOfRadii } from './scan-places'
import { type TableEncoding, tableText } from './table-bytes'
import { type DecimalMark, decimalMarkOf, readTableNumber, type TableNumberRefusal } from './table-number'
import { type Separator, separatorOf } from './table-text'

/** What a person says of a file of radii where its heads do not. */
export interface ScanChoices {
  readonly separator?: Separator | undefined
  readonly decimal?: DecimalMark | undefined
  readonly depthUnit?: ScanUnit | undefined
  readonly valueUnit?: ScanUnit | undefined
  /** Larger figures lie nearer to the axis. */
  readonly inward?: boolean | undefined
  /** Angles run counter-clockwise, seen from the deck. */
  readonly counterClockwise?: boolean | undefined
}

export type ScanQuestion = 'value-unit' | 'depth-unit' | 'decimal'

export type ScanProblemCode =
  | TableNumberRefusal
  | 'no-depth'
  | 'no-angle'
  | 'radius-too-large'
  | 'cells-missing'
  | 'cells-left-over'
  | 'read-twice'
  | 'quote-left-open'

/** What is wrong in one place of the file. */
export interface ScanProblem {
  /** From 1. */
  readonly line: number
  /** From 1; absent where it is about the whole line. */
  readonly column?: number
  readonly code: ScanProblemCode
  /** The cell as it stands; for lines of a wrong length how many cells there are. */
  readonly text: string
  /** The line that gives the same place another figure; for lines of a wrong length how many cells are wanted. */
  readonly other?: number
}

export type ScanTable =
  | ({ readonly ok: true } & ReadScanTable)
  | {
      readonly ok: false
      readonly why:
        | 'no-text'
        | 'empty'
        | 'too-large'
        | 'commas-only'
        | 'no-heads'
        | 'diameters'
        | Extract<ScanOfRadii, { ok: false }>['why']
      readonly line?: number
      readonly depthMm?: number
      /** What is wrong in single places, where that left nothing. */
      readonly problems?: readonly ScanProblem[]
    }

export interface ReadScanTable {
  readonly encoding: TableEncoding
  readonly separator: Separator
  readonly decimal: DecimalMark | undefined
  readonly layout: ScanHead['layout']
  readonly depthUnit: ScanUnit | undefined
  readonly valueUnit: ScanUnit | undefined
  /** What must be said before the figures are worth anything. */
  readonly open: readonly ScanQuestion[]
  /** With the units said, or else as if they were mm and µm. */
  readonly scan: RadialScan
  /** Places with a radius. */
  readonly values: number
  readonly repeated: number
  readonly closing: { readonly count: number; readonly farthestUm: number }
  /** The first of them, and how many there are in all. */
  readonly problems: readonly ScanProblem[]
  readonly problemCount: number
}

/** The most characters of a file: a million lines of 64. */
export const mostScanCharacters = 64_000_000
/** So many problems are listed. */
const mostProblems = 200
/** So many characters say what parts cells and decimals. */
const sampleCharacters = 65_536
/** A radius is no larger than this either way, µm. */
const mostRadiusUm = 2_000_000
/** How often it is said how far the reading is, lines or rows. */
const stepPlaces = 20_000

/**
 * Reads a file of radii, as a generator that yields how many characters are done and of how many. What cannot be read in
 * one place is a problem with its line, and every other place is read all the same.
 */
export function* readScanTable(
  bytes: Uint8Array,
  choices: ScanChoices = {},
): Generator<{ readonly done: number; readonly all: number }, ScanTable> {
  if (bytes.length > 2 * mostScanCharacters) return { ok: false, why: 'too-large' }
  const decoded = tableText(bytes)
  if (!decoded.ok) return decoded
  const text = decoded.text.replace(/^\uFEFF/, '')
  if (text.trim() === '') return { ok: false, why: 'empty' }
  if (text.length > mostScanCharacters) return { ok: false, why: 'too-large' }
  const sample = text.slice(0, sampleCharacters)
  const separator = choices.separator ?? separatorOf(sample.slice(0, sample.lastIndexOf('\n') + 1) || sample)
  if (separator === 'unclear') return { ok: false, why: 'commas-only' }
  if (separator === undefined) return { ok: false, why: 'no-heads' }
  const first = firstLines(sample, separator)
  const head = scanHead(first.map(({ cells }) => cells))
  if (!head) return { ok: false, why: 'no-heads' }
  if (head.isDiameter) return { ok: false, why: 'diameters' }
  const told = toldBy(text, separator, head, first, choices)
  const reading = new ScanReading(head, told, first[head.row]?.cells ?? [])
  const headLine = first[head.row]?.line ?? 0
  let [places, step] = [0, stepPlaces]
  for (const line of scanLines(text, separator)) {
    if (line.line <= headLine) continue
    places += reading.take(line)
    if (places > mostScanPlaces + mostScanPlaces / 10) return { ok: false, why: 'too-large' }
    if (places < step) continue
    step = places + stepPlaces
    yield { done: line.done, all: text.length }
  }
  return reading.finished({ encoding: decoded.encoding, separator })
}

/** All steps at once, for those who have nothing else to do meanwhile. */
export function readWholeScanTable(bytes: Uint8Array, choices: ScanChoices = {}): ScanTable {
  const reading = readScanTable(bytes, choices)
  for (let step = reading.next(); ; step = reading.next()) if (step.done) return step.value
}

interface FirstLine {
  readonly line: number
  readonly cells: readonly string[]
}

function firstLines(sample: string, separator: Separator): readonly FirstLine[] {
  const lines: FirstLine[] = []
  for (const { line, cells } of scanLines(sample, separator)) {
    lines.push({ line, cells: cells ?? [] })
    if (lines.length === 200) break
  }
  return lines
}

/** What heads and choices say together. */
interface Told {
  readonly decimal: DecimalMark | undefined
  readonly depthUnit: ScanUnit | undefined
  readonly valueUnit: ScanUnit | undefined
  readonly sign: 1 | -1
  readonly turn: 1 | -1
}

function toldBy(
  text: string,
  separator: Separator,
  head: ScanHead,
  first: readonly FirstLine[],
  choices: ScanChoices,
): Told {
  return {
    decimal: choices.decimal ?? decimalIn(text, separator, first, head.row),
    depthUnit: choices.depthUnit ?? head.depthUnit,
    valueUnit: choices.valueUnit ?? head.valueUnit,
    sign: choices.inward ? -1 : 1,
    turn: choices.counterClockwise ? -1 : 1,
  }
}

/** The mark that the first figures have; where they have none, the only one that stands anywhere in the file. */
function decimalIn(
  text: string,
  separator: Separator,
  first: readonly FirstLine[],
  headRow: number,
): DecimalMark | undefined {
  if (separator === ',') return 'point'
  const cells = first.slice(headRow + 1).flatMap((line) => line.cells)
  const mark = decimalMarkOf(cells)
  if (mark !== 'point' || cells.some((cell) => /\d\.\d/.test(cell))) return mark
  return /\d,\d/.test(text) && !/\d\.\d/.test(text) ? 'comma' : 'point'
}

/** A cell as a number. Most are plain: they are read the short way. */
class CellNumbers {
  readonly #decimal: DecimalMark | undefined
  readonly #plain: RegExp

  constructor(decimal: DecimalMark | undefined) {
    this.#decimal = decimal
    this.#plain = decimal === 'comma' ? /^ *-?\d{1,9}(,\d{1,12})? *$/ : /^ *-?\d{1,9}(\.\d{1,12})? *$/
  }

  read(text: string): number | TableNumberRefusal {
    if (this.#decimal !== undefined && this.#plain.test(text))
      return Number(this.#decimal === 'comma' ? text.replace(',', '.') : text)
    const read = readTableNumber(text, this.#decimal)
    return read.ok ? read.value : read.why
  }
}

class ScanReading {
  readonly #head: ScanHead
  readonly #told: Told
  readonly #numbers: CellNumbers
  readonly #radii = new RadiiReading()
  readonly #problems: ScanProblem[] = []
  readonly #width: number
  /** Angles of a table's columns; undefined where the head has none that can be read. */
  readonly #across: readonly (number | undefined)[]
  #problemCount = 0
  #lastDepth: { readonly text: string; readonly depthMm: number } | undefined

  constructor(head: ScanHead, told: Told, cells: readonly string[]) {
    this.#head = head
    this.#told = told
    this.#numbers = new CellNumbers(told.decimal)
    const heads = withoutEmptyEnd(cells)
    this.#width = heads.length
    this.#across = head.layout === 'list' ? [] : heads.slice(1).map((cell) => this.#angleOf(cell))
  }

  /** Takes a line; gives how many places it has. */
  take({ line, cells }: ScanLine): number {
    if (!cells) return this.#problem({ line, code: 'quote-left-open', text: '' })
    if (withoutEmptyEnd(cells).length > this.#width) {
      const text = String(withoutEmptyEnd(cells).length)
      return this.#problem({ line, code: 'cells-left-over', text, other: this.#width })
    }
    // An empty cell at the end may have been left out, several may not: then nobody knows which are missing.
    if (cells.length < this.#width - (this.#head.layout === 'list' ? 1 : 0)) {
      return this.#problem({ line, code: 'cells-missing', text: String(cells.length), other: this.#width })
    }
    return this.#head.layout === 'list' ? this.#takePlace(line, cells) : this.#takeLevel(line, cells)
  }

  finished(of: { readonly encoding: TableEncoding; readonly separator: Separator }): ScanTable {
    const { depthUnit, valueUnit, decimal } = this.#told
    const made = scanOfRadii(this.#radii.radii)
    if (!made.ok) return { ...made, ...(this.#problems.length > 0 ? { problems: this.#problems } : {}) }
    for (const { line, otherLine } of made.twice) {
      this.#problem({ line, code: 'read-twice', text: '', other: otherLine })
    }
    const open: ScanQuestion[] = [
      ...(depthUnit ? [] : ['depth-unit' as const]),
      ...(valueUnit ? [] : ['value-unit' as const]),
      ...(decimal ? [] : ['decimal' as const]),
    ]
    const { scan, values, repeated, closing } = made
    return {
      ok: true,
      ...of,
      decimal,
      layout: this.#head.layout,
      depthUnit,
      valueUnit,
      open,
      scan,
      values,
      repeated,
      closing,
      problems: this.#problems.sort((a, b) => a.line - b.line || (a.column ?? 0) - (b.column ?? 0)),
      problemCount: this.#problemCount,
    }
  }

  #takePlace(line: number, cells: readonly string[]): number {
    const { depth, angle, value } = this.#head.columns
    const depthMm = this.#depthOf(line, depth, cells[depth] ?? '')
    const angleDegrees = this.#numberIn(line, angle, cells[angle] ?? '', 'no-angle')
    const radiusUm = this.#radiusOf(line, value, cells[value] ?? '')
    if (depthMm === undefined || angleDegrees === undefined || radiusUm === undefined) return 1
    this.#radii.add(depthMm, this.#told.turn * angleDegrees, radiusUm, line)
    return 1
  }

  #takeLevel(line: number, cells: readonly string[]): number {
    const depthMm = this.#depthOf(line, 0, cells[0] ?? '')
    if (depthMm === undefined) return this.#across.length
    for (const [index, angle] of this.#across.entries()) {
      if (angle === undefined) continue
      const radiusUm = this.#radiusOf(line, index + 1, cells[index + 1] ?? '')
      if (radiusUm !== undefined) this.#radii.add(depthMm, this.#told.turn * angle, radiusUm, line)
    }
    return this.#across.length
  }

  #angleOf(cell: string): number | undefined {
    const read = this.#numbers.read(angleText(cell))
    return typeof read === 'number' ? read : undefined
  }

  /** A list has the same depth in many lines one after the other. */
  #depthOf(line: number, column: number, text: string): number | undefined {
    if (text === this.#lastDepth?.text) return this.#lastDepth.depthMm
    const value = this.#numberIn(line, column, text, 'no-depth')
    if (value === undefined) return undefined
    const depthMm = value * mmOfScanUnit[this.#told.depthUnit ?? 'mm']
    this.#lastDepth = { text, depthMm }
    return depthMm
  }

  /** NaN for an empty cell: there is a port. */
  #radiusOf(line: number, column: number, text: string): number | undefined {
    if (text === '' || /^\s*(nan)?\s*$/i.test(text)) return Number.NaN
    const value = this.#numberIn(line, column, text, 'no-angle')
    if (value === undefined) return undefined
    const radiusUm = toNanometre(this.#told.sign * value * mmOfScanUnit[this.#told.valueUnit ?? 'um'] * 1000)
    if (Math.abs(radiusUm) <= mostRadiusUm) return radiusUm
    this.#problem({ line, column: column + 1, code: 'radius-too-large', text })
    return undefined
  }

  #numberIn(
    line: number,
    column: number,
    text: string,
    ifEmpty: 'no-depth' | 'no-angle',
  ): number | undefined {
    const read = this.#numbers.read(text)
    if (typeof read === 'number') return read
    const code = text.trim() === '' ? ifEmpty : read
    this.#problem({ line, column: column + 1, code, text: text.trim().slice(0, 40) })
    return undefined
  }

  #problem(problem: ScanProblem): number {
    this.#problemCount += 1
    if (this.#problems.length < mostProblems) this.#problems.push(problem)
    return 0
  }
}

/** Finer than any probe, and so that a figure is the same in whichever unit it was written down. */
function toNanometre(um: number): number {
  return Math.round(um * 1000) / 1000 + 0
}
