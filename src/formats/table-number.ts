export const decimalMarks = ['point', 'comma'] as const
/** The sign between whole and decimals of a number. */
export type DecimalMark = (typeof decimalMarks)[number]

export type TableNumberRefusal =
  | 'letters'
  | 'other-sign'
  | 'inner-space'
  | 'sign-place'
  | 'both-marks'
  | 'several-marks'
  | 'too-long'
  | 'too-large'
  /** It holds the mark that does not part decimals in this table: a thousands mark, or a slip. */
  | 'other-mark'
  /** It holds a mark, and nobody has said yet which of the two parts decimals. */
  | 'mark-open'

export type TableNumber =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly why: TableNumberRefusal }

/** More characters than this hold no reading. */
const mostCharacters = 24
/** Beyond this nothing here is measured. */
const mostValue = 1e9

/**
 * Reads the number in a cell of a table with one decimal mark throughout. A number in which the other mark stands is
 * refused: to one reader it parts thousands, to the next decimals.
 */
export function readTableNumber(text: string, mark: DecimalMark | undefined): TableNumber {
  const trimmed = text.trim()
  const why = refusal(trimmed, mark)
  if (why) return { ok: false, why }
  const value = Number(
    trimmed
      .replace(/^\+\s*/, '')
      .replace(/^[-\u2212\u2013]\s*/, '-')
      .replace(',', '.'),
  )
  if (!Number.isFinite(value)) throw new Error(`readTableNumber: let through ${JSON.stringify(text)}`)
  if (Math.abs(value) > mostValue) return { ok: false, why: 'too-large' }
  return { ok: true, value: value === 0 ? 0 : value }
}

function refusal(trimmed: string, mark: DecimalMark | undefined): TableNumberRefusal | undefined {
  if (/\p{L}/u.test(trimmed)) return 'letters'
  if (/[^\d.,\s+\-\u2212\u2013]/u.test(trimmed)) return 'other-sign'
  const unsigned = trimmed.replace(/^[+\-\u2212\u2013]\s*/, '')
  if (/[+\-\u2212\u2013]/.test(unsigned)) return 'sign-place'
  if (unsigned.includes(',') && unsigned.includes('.')) return 'both-marks'
  if (/[.,].*[.,]/s.test(unsigned)) return 'several-marks'
  if (/\s/.test(unsigned)) return 'inner-space'
  if (!/\d/.test(unsigned)) return unsigned === '' ? 'sign-place' : 'other-sign'
  if (trimmed.length > mostCharacters) return 'too-long'
  const found = markIn(unsigned)
  if (found === undefined || found === mark) return undefined
  return mark === undefined ? 'mark-open' : 'other-mark'
}

function markIn(text: string): DecimalMark | undefined {
  if (text.includes(',')) return 'comma'
  return text.includes('.') ? 'point' : undefined
}

/**
 * The mark that parts decimals in these cells: the only one that stands in them once, a point where none does (either
 * reads the same then). Undefined where some hold a comma and some a point: both readings are possible.
 */
export function decimalMarkOf(cells: Iterable<string>): DecimalMark | undefined {
  let comma = false
  let point = false
  for (const text of cells) {
    if (!/^\s*[+\-\u2212\u2013]?\s*\d*[.,]\d+\s*$/.test(text)) continue
    if (text.includes(',')) comma = true
    else point = true
    if (comma && point) return undefined
  }
  return comma ? 'comma' : 'point'
}

/**
 * A number in digits alone, with as many decimals as it has and never an exponent. Twelve decimals are more than any
 * length here has.
 */
export function writeTableNumber(value: number, mark: DecimalMark): string {
  if (!Number.isFinite(value)) throw new Error(`writeTableNumber: ${value} is no number to be written`)
  const shortest = String(value)
  const text = /e/.test(shortest) ? value.toFixed(12).replace(/\.?0+$/, '') : shortest
  const unsigned = Number(text) === 0 ? '0' : text
  return mark === 'comma' ? unsigned.replace('.', ',') : unsigned
}
