/** What the heads of a table of radii say: which column holds what, and in which unit. */

export const scanUnits = ['mm', 'um', 'inch', 'ten-thousandth'] as const
export type ScanUnit = (typeof scanUnits)[number]

/** What one of each is worth, mm. The international inch is exact. */
export const mmOfScanUnit: Readonly<Record<ScanUnit, number>> = {
  mm: 1,
  um: 0.001,
  inch: 25.4,
  'ten-thousandth': 0.00254,
}

/** One row for each radius, or depth down and angle across. */
export type ScanLayout = 'list' | 'table'

export interface ScanHead {
  readonly layout: ScanLayout
  /** The row of heads, from 0. */
  readonly row: number
  /** Columns of a list. */
  readonly columns: { readonly depth: number; readonly angle: number; readonly value: number }
  readonly depthUnit?: ScanUnit
  readonly valueUnit?: ScanUnit
  /** The word that says diameters: then these are no radii. */
  readonly isDiameter: boolean
  /** The word that says radii: then these are no readings across the bore. */
  readonly isRadius: boolean
}

type Subject = 'depth' | 'angle' | 'value'

const subjects: readonly (readonly [Subject, RegExp])[] = [
  ['depth', /^(depths?|level|z)$/],
  ['angle', /^(angles?|theta|azimuth)$/],
  ['value', /^(radi(us|al|i)|r|deviations?|form|values?|probe|diam(eters?)?|dia)$/],
]

const units: readonly (readonly [ScanUnit, RegExp])[] = [
  ['um', /^([µμ]m|um|microns?|micromet(er|re)s?)$/],
  ['mm', /^(mm|millimet(er|re)s?)$/],
  ['ten-thousandth', /^(0\.0001|tenths?|thousandths)$/],
  ['inch', /^(in|inch|inches)$/],
]

/** The most rows above the heads: a title, a date, a name. */
const mostRowsAbove = 20
/** A row with so many angles after its first cell is the head of a table. */
const leastAngles = 3

/** The heads among the first rows of a file; undefined where no row names what the columns hold. */
export function scanHead(rows: readonly (readonly string[])[]): ScanHead | undefined {
  for (const [row, cells] of rows.slice(0, mostRowsAbove).entries()) {
    const found = listHead(cells, row) ?? tableHead(rows, row)
    if (found) return found
  }
  return undefined
}

/** An angle as it may stand in a head: with or without its sign. */
export function angleText(cell: string): string {
  return cell.replace(/\s*(°|deg(rees?)?)\s*$/i, '').trim()
}

function listHead(cells: readonly string[], row: number): ScanHead | undefined {
  const said = cells.map(saidIn)
  const columnOf = (subject: Subject) => said.findIndex((one) => one.has(subject))
  const columns = { depth: columnOf('depth'), angle: columnOf('angle'), value: columnOf('value') }
  if (new Set(Object.values(columns)).size < 3 || Object.values(columns).includes(-1)) return undefined
  return {
    layout: 'list',
    row,
    columns,
    ...unitsOf(said[columns.depth]?.get('depth'), said[columns.value]?.get('value')),
    ...speaksOf(cells[columns.value] ?? ''),
  }
}

function tableHead(rows: readonly (readonly string[])[], row: number): ScanHead | undefined {
  const [corner = '', ...across] = withoutEmptyEnd(rows[row] ?? [])
  if (across.length < leastAngles || !across.every(isAngle)) return undefined
  // A corner that is a number makes this the first row of figures.
  if (/^\s*[-+]?\d/.test(corner)) return undefined
  const said = saidIn([...rows.slice(0, row).flat(), corner].join(' '))
  if (!saidIn(corner).has('depth') && corner.trim() !== '') return undefined
  return {
    layout: 'table',
    row,
    columns: { depth: 0, angle: -1, value: -1 },
    ...unitsOf(said.get('depth'), said.get('value')),
    ...speaksOf([...rows.slice(0, row).flat(), corner].join(' ')),
  }
}

function unitsOf(depthUnit: ScanUnit | undefined, valueUnit: ScanUnit | undefined) {
  return { ...(depthUnit ? { depthUnit } : {}), ...(valueUnit ? { valueUnit } : {}) }
}

/** What a text speaks of, each with the unit that follows it, if any. */
function saidIn(text: string): ReadonlyMap<Subject, ScanUnit | undefined> {
  const said = new Map<Subject, ScanUnit | undefined>()
  let last: Subject | undefined
  for (const word of wordsOf(text)) {
    const subject = subjects.find(([, pattern]) => pattern.test(word))?.[0]
    if (subject) {
      last = subject
      if (!said.has(subject)) said.set(subject, undefined)
      continue
    }
    const unit = units.find(([, pattern]) => pattern.test(word))?.[0]
    // The unit that stands first holds, save that of 'in, 0.0001' the second does.
    if (unit && last && (said.get(last) === undefined || unit === 'ten-thousandth')) said.set(last, unit)
  }
  return said
}

function wordsOf(text: string): readonly string[] {
  return text
    .toLowerCase()
    .replace(/0,0001/g, '0.0001')
    .split(/[^a-z0-9.µμ°]+/)
    .filter((word) => word !== '')
}

function speaksOf(text: string): Pick<ScanHead, 'isDiameter' | 'isRadius'> {
  const words = wordsOf(text)
  return {
    isDiameter: words.some((word) => /^dia(m(eters?)?)?$/.test(word)),
    isRadius: words.some((word) => /^(radi(us|al|i)|r|probe)$/.test(word)),
  }
}

function isAngle(cell: string): boolean {
  return /^[-+]?\d+([.,]\d+)?$/.test(angleText(cell))
}

/** Without the empty cells that a closing separator leaves. */
export function withoutEmptyEnd(cells: readonly string[]): readonly string[] {
  let end = cells.length
  while (end > 0 && (cells[end - 1] ?? '').trim() === '') end -= 1
  return end === cells.length ? cells : cells.slice(0, end)
}
