/**
 * What a column of a table of readings holds, with its unit, and what the words at its head say of that. A head that
 * leaves the unit open leaves it open here too: units cannot be told from numbers.
 */

export const depthMeanings = ['depth-mm', 'depth-inch', 'depth-open'] as const
export type DepthMeaning = (typeof depthMeanings)[number]

export const valueMeanings = [
  'size-mm',
  'size-inch',
  'size-ten-thousandth',
  'deviation-um',
  'deviation-mm',
  'deviation-inch',
  'deviation-ten-thousandth',
  'dial-um',
  'dial-ten-thousandth',
  'value-open',
] as const
/**
 * A size; how much larger than the setting (smaller is negative); or what the dial showed. Ten-thousandths are those
 * of an inch. Open: a reading of which nobody has said yet which of these it is.
 */
export type ValueMeaning = (typeof valueMeanings)[number]

export const otherMeanings = ['axis', 'repeat', 'bore', 'survey', 'date', 'hours', 'ignored'] as const
export type ColumnMeaning = DepthMeaning | ValueMeaning | (typeof otherMeanings)[number]

export const columnMeanings: readonly ColumnMeaning[] = [...depthMeanings, ...valueMeanings, ...otherMeanings]

export function isDepth(meaning: ColumnMeaning): meaning is DepthMeaning {
  return (depthMeanings as readonly ColumnMeaning[]).includes(meaning)
}

export function isValue(meaning: ColumnMeaning): meaning is ValueMeaning {
  return (valueMeanings as readonly ColumnMeaning[]).includes(meaning)
}

/** The international inch, exact. */
const mmPerInch = 25.4

/** What a depth is worth in mm. An open unit has no worth. */
export function depthInMm(value: number, meaning: DepthMeaning): number | undefined {
  if (meaning === 'depth-open') return undefined
  return meaning === 'depth-mm' ? value : rounded(value * mmPerInch, 1e6)
}

/** A reading as it is kept: sizes in mm, what is counted from a setting in µm. */
export interface KeptValue {
  readonly as: 'size' | 'deviation' | 'dial'
  readonly value: number
}

/** A reading in mm or µm, rounded only where an inch made decimals that no gauge has. */
export function keptValue(value: number, meaning: ValueMeaning): KeptValue | undefined {
  switch (meaning) {
    case 'size-mm':
      return { as: 'size', value }
    case 'size-inch':
      return { as: 'size', value: rounded(value * mmPerInch, 1e6) }
    case 'size-ten-thousandth':
      return { as: 'size', value: rounded((value * mmPerInch) / 1e4, 1e6) }
    case 'deviation-um':
    case 'dial-um':
      return { as: meaning === 'dial-um' ? 'dial' : 'deviation', value }
    case 'deviation-mm':
      return { as: 'deviation', value: rounded(value * 1000, 1e3) }
    case 'deviation-inch':
      return { as: 'deviation', value: rounded(value * mmPerInch * 1000, 1e3) }
    case 'deviation-ten-thousandth':
    case 'dial-ten-thousandth':
      return {
        as: meaning === 'dial-ten-thousandth' ? 'dial' : 'deviation',
        value: rounded((value * mmPerInch) / 10, 1e3),
      }
    case 'value-open':
      return undefined
  }
}

function rounded(value: number, perUnit: number): number {
  return Math.round(value * perUnit) / perUnit + 0
}

/** What the head of a column says it holds; undefined where it says nothing known here. */
export function meaningOfHead(head: string): ColumnMeaning | undefined {
  const said = plainHead(head)
  if (said === '') return undefined
  const unit = unitIn(head)
  const has = (pattern: RegExp) => pattern.test(said)
  if (saysRadius(head) || has(/\btemp(erature)?\b/)) return 'ignored'
  if (has(/\b(depths?|levels?)\b/)) return depthIn(unit)
  if (has(/\b(ax[ei]s|angles?|direction|deg|degrees?)\b/) || (said === '°' && unit === undefined))
    return 'axis'
  if (has(/\b(repeats?|rep|trial)\b/) && unit === undefined) return 'repeat'
  const value = valueIn(said, unit)
  if (value !== undefined) return value
  if (has(/\b(bores?|cylinders?|cyl|liners?)\b/)) return 'bore'
  if (has(/\b(surveys?|visits?|occasion|state)\b/)) return 'survey'
  if (has(/\b(date|day)\b/)) return 'date'
  if (has(/\b(hours?|hrs?|h)\b/)) return 'hours'
  return undefined
}

/** Whether a column holds distances from an axis: of one wall, and no diameters. */
export function saysRadius(head: string): boolean {
  return /\b(radius|radial|radii)\b/.test(plainHead(head))
}

type LengthUnit = 'mm' | 'um' | 'inch' | 'ten-thousandth'

/** The unit that a text names; undefined where it names none. */
export function unitIn(text: string): LengthUnit | undefined {
  const said = text.toLowerCase().replaceAll('\u03bc', '\u00b5').replaceAll('_', ' ')
  if (/0[.,]0001|1e-4|ten[- ]?thousandths?/.test(said)) return 'ten-thousandth'
  if (/\u00b5m|(^|[^\p{L}])(um|microns?|micrometres?)($|[^\p{L}])/u.test(said)) return 'um'
  if (/(^|[^\p{L}])(mm|millimetres?)($|[^\p{L}])/u.test(said)) return 'mm'
  return /(^|[^\p{L}])(in|inch|inches)($|[^\p{L}])|["\u2033]/u.test(said) ? 'inch' : undefined
}

/** Words parted by single spaces. */
function plainHead(head: string): string {
  return head
    .toLowerCase()
    .replace(/[^\p{L}\p{N}°]+/gu, ' ')
    .replace(/(\p{L})(\p{N})/gu, '$1 $2')
    .trim()
}

function depthIn(unit: LengthUnit | undefined): DepthMeaning {
  if (unit === 'mm') return 'depth-mm'
  return unit === 'inch' ? 'depth-inch' : 'depth-open'
}

/** A reading, by words that say so or by a unit alone. */
function valueIn(said: string, unit: LengthUnit | undefined): ValueMeaning | undefined {
  const has = (pattern: RegExp) => pattern.test(said)
  if (has(/\b(dial|needle)\b/)) return valueMeaning('dial', unit)
  if (has(/\b(deviations?|dev|difference|diff)\b/)) return valueMeaning('deviation', unit)
  if (has(/\b(sizes?|diameters?|dia|diam)\b/)) return valueMeaning('size', unit)
  const isReading = has(/\b(read|readings?|values?|measured|measurements?|repeats?)\b/)
  if (unit === undefined && !isReading) return undefined
  // A bore is not microns wide; ten-thousandths are written of both.
  if (unit === 'um') return 'deviation-um'
  return unit === 'mm' || unit === 'inch' ? valueMeaning('size', unit) : 'value-open'
}

/** What a reading of a kind is in a unit; open where that is not written in practice, or nothing names a unit. */
export function valueMeaning(kind: KeptValue['as'], unit: LengthUnit | undefined): ValueMeaning {
  const name = `${kind}-${unit}`
  return valueMeanings.find((meaning) => meaning === name) ?? 'value-open'
}
