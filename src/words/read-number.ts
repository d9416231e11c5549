import type { words } from './words'

export type NumberRefusal = keyof typeof words.number.refused

export type ReadNumber =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly why: NumberRefusal }

/** More characters than this hold no reading. */
const mostCharacters = 24
/** Beyond this nothing here is measured. */
const mostValue = 1e9

/**
 * Reads a number as people type it: a comma or a point before the decimals, a sign in front (also a true
 * minus or a dash), spaces around. Refuses, with the reason, whatever could be read two ways: a comma and a
 * point together are a thousands mark and a decimal mark to one reader and the other way round to the next.
 */
export function readNumber(text: string): ReadNumber {
  const trimmed = text.trim()
  const why = refusal(trimmed)
  if (why) return { ok: false, why }
  const value = Number(
    trimmed
      .replace(/^([+-])\s+/, '$1')
      .replace(/^[\u2212\u2013]\s*/, '-')
      .replace(',', '.'),
  )
  if (!Number.isFinite(value))
    throw new Error(`readNumber: let through what is no number: ${JSON.stringify(text)}`)
  if (Math.abs(value) > mostValue) return { ok: false, why: 'too-large' }
  return { ok: true, value: value === 0 ? 0 : value }
}

export type ReadNumbers =
  | { readonly ok: true; readonly values: readonly number[] }
  | { readonly ok: false; readonly why: NumberRefusal; readonly piece: string }

/** Several numbers apart by spaces, line ends or semicolons; the first that is none is refused. */
export function readNumbers(text: string): ReadNumbers {
  const values: number[] = []
  for (const piece of text.trim().split(/[\s;]+/)) {
    const read = readNumber(piece)
    if (!read.ok) return { ...read, piece }
    values.push(read.value)
  }
  return { ok: true, values }
}

function refusal(trimmed: string): NumberRefusal | undefined {
  if (trimmed === '') return 'empty'
  if (/\p{L}/u.test(trimmed)) return 'letters'
  if (/[^\d.,\s+\-\u2212\u2013]/u.test(trimmed)) return 'other-sign'
  const unsigned = trimmed.replace(/^[+\-\u2212\u2013]\s*/, '')
  if (/[+\-\u2212\u2013]/.test(unsigned)) return 'sign-place'
  if (unsigned.includes(',') && unsigned.includes('.')) return 'both-marks'
  if (/[.,].*[.,]/s.test(unsigned)) return 'several-marks'
  if (/\s/.test(unsigned)) return 'inner-space'
  if (!/\d/.test(unsigned)) return unsigned === '' ? 'sign-place' : 'other-sign'
  if (trimmed.length > mostCharacters) return 'too-long'
  return undefined
}
