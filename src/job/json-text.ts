import type { Flaw, JsonExpectation, Problem } from '../core/problem'
import { linesAndColumns } from './line-and-column'
import { pathText } from './path-text'
import { quotable } from './quotable'

/** The deepest nesting that is read; a job needs 8. */
export const mostDepth = 32

/** Bounds on what a hostile file can make the parser do, each far above any job. */
const mostEntries = 20000
const mostKeys = 200
const mostValues = 500_000

/** A tree of the places to find in a text: `at` is filled in with the offset where the place is. */
export interface Watch {
  at?: number
  readonly children: Map<PropertyKey, Watch>
}

class JsonStop extends Error {
  constructor(
    readonly flaw: Flaw,
    readonly at: number,
  ) {
    super(flaw.code)
  }
}

interface Found {
  readonly flaw: Flaw
  readonly path: string
  readonly at: number
}

interface Scan {
  readonly text: string
  at: number
  values: number
  readonly keys: (string | number)[]
  readonly found: Found[]
}

/**
 * Checks that a text is JSON (RFC 8259) before anything is made of it: says where it stops being so, refuses
 * deep nesting, and finds keys that occur twice in one object, which parsing would drop without a word.
 */
export function jsonProblems(text: string, watch?: Watch): Problem[] {
  const scan: Scan = { text, at: 0, values: 0, keys: [], found: [] }
  try {
    skipSpace(scan)
    value(scan, watch)
    skipSpace(scan)
    if (scan.at < text.length) throw stop(scan, 'end-of-text')
  } catch (error) {
    if (!(error instanceof JsonStop)) throw error
    note(scan, error.flaw, error.at)
  }
  const places = linesAndColumns(
    text,
    scan.found.map(({ at }) => at),
  )
  return scan.found.map(({ flaw, path }, index) => ({ ...flaw, path, ...places[index] }))
}

function note(scan: Scan, flaw: Flaw, at: number): void {
  scan.found.push({ flaw, path: pathText(scan.keys), at })
}

function stop(scan: Scan, expected: JsonExpectation, at = scan.at): JsonStop {
  const [line = ''] = scan.text.slice(at, at + 40).split(/[\r\n]/)
  return new JsonStop({ code: 'not-json', expected, found: quotable(line, 20) }, at)
}

function tooMany(scan: Scan, most: number): JsonStop {
  return new JsonStop({ code: 'list-too-long', length: 0, most }, scan.at)
}

function skipSpace(scan: Scan): void {
  while (' \t\n\r'.includes(scan.text.charAt(scan.at)) && scan.at < scan.text.length) scan.at += 1
}

function value(scan: Scan, watch: Watch | undefined): void {
  scan.values += 1
  if (scan.values > mostValues) throw tooMany(scan, mostValues)
  const start = scan.text.charAt(scan.at)
  if (start === '{') object(scan, watch)
  else if (start === '[') list(scan, watch)
  else if (start === '"') string(scan)
  else if (start === '-' || isDigit(start)) number(scan)
  else word(scan)
}

function word(scan: Scan): void {
  const known = ['true', 'false', 'null'].find((each) => scan.text.startsWith(each, scan.at))
  if (known) {
    scan.at += known.length
    return
  }
  const infinite = /^(NaN|Infinity|undefined)/.test(scan.text.slice(scan.at, scan.at + 9))
  throw stop(scan, infinite ? 'finite-number' : 'value')
}

function enter(scan: Scan): void {
  if (scan.keys.length >= mostDepth) throw new JsonStop({ code: 'too-deep', most: mostDepth }, scan.at)
  scan.at += 1
  skipSpace(scan)
}

/** Goes past a comma or the closing bracket; false when the list or object has ended. */
function goesOn(scan: Scan, close: '}' | ']'): boolean {
  skipSpace(scan)
  const found = scan.text.charAt(scan.at)
  if (found === close) {
    scan.at += 1
    return false
  }
  if (found !== ',') throw stop(scan, close === '}' ? 'comma-or-end-of-object' : 'comma-or-end-of-list')
  const comma = scan.at
  scan.at += 1
  skipSpace(scan)
  if (scan.text.charAt(scan.at) === close) throw stop(scan, 'no-trailing-comma', comma)
  return true
}

function object(scan: Scan, watch: Watch | undefined): void {
  enter(scan)
  if (scan.text.charAt(scan.at) === '}') {
    scan.at += 1
    return
  }
  const seen = new Set<string>()
  do {
    const at = scan.at
    if (scan.text.charAt(at) !== '"') throw stop(scan, isDecimalComma(scan) ? 'no-leading-zero' : 'key')
    const key = string(scan)
    if (seen.has(key)) note(scan, { code: 'duplicate-key', key: quotable(key) }, at)
    if (scan.found.length > mostKeys) throw tooMany(scan, mostKeys)
    seen.add(key)
    if (seen.size > mostKeys) throw new JsonStop({ code: 'unknown-key', key: quotable(key) }, at)
    skipSpace(scan)
    if (scan.text.charAt(scan.at) !== ':') throw stop(scan, 'colon')
    scan.at += 1
    skipSpace(scan)
    child(scan, key, at, watch)
  } while (goesOn(scan, '}'))
}

function list(scan: Scan, watch: Watch | undefined): void {
  enter(scan)
  if (scan.text.charAt(scan.at) === ']') {
    scan.at += 1
    return
  }
  let index = 0
  do {
    child(scan, index, scan.at, watch)
    index += 1
    if (index > mostEntries) throw tooMany(scan, mostEntries)
  } while (goesOn(scan, ']'))
}

function child(scan: Scan, key: string | number, at: number, watch: Watch | undefined): void {
  const watched = watch?.children.get(key)
  if (watched) watched.at = at
  scan.keys.push(key)
  value(scan, watched)
  scan.keys.pop()
}

function string(scan: Scan): string {
  const { text } = scan
  const start = scan.at
  let escaped = false
  for (let at = start + 1; at < text.length; at += 1) {
    const character = text.charAt(at)
    if (character === '"') {
      scan.at = at + 1
      return escaped ? String(JSON.parse(text.slice(start, scan.at))) : text.slice(start + 1, at)
    }
    if (character < ' ') throw stop(scan, 'end-of-string', at)
    if (character !== '\\') continue
    escaped = true
    if (!/^\\(["\\/bfnrt]|u[0-9a-fA-F]{4})/.test(text.slice(at, at + 6))) throw stop(scan, 'escape', at)
    at += 1
  }
  throw stop(scan, 'end-of-string', text.length)
}

function number(scan: Scan): void {
  const [digits = ''] =
    scan.text.slice(scan.at, scan.at + 400).match(/^-?(0|[1-9]\d*)(\.\d+)?([eE][+-]?\d+)?/) ?? []
  const after = scan.text.charAt(scan.at + digits.length)
  if (digits === '' && scan.text.startsWith('-Infinity', scan.at)) throw stop(scan, 'finite-number')
  if (digits === '' || isDigit(after) || /[.eE+a-zA-Z_-]/.test(after)) {
    throw stop(scan, /^-?0\d/.test(scan.text.slice(scan.at, scan.at + 3)) ? 'no-leading-zero' : 'number')
  }
  scan.at += digits.length
}

function isDecimalComma({ text, at }: Scan): boolean {
  return /\d,$/.test(text.slice(Math.max(0, at - 2), at)) && isDigit(text.charAt(at))
}

function isDigit(character: string): boolean {
  return character >= '0' && character <= '9'
}
