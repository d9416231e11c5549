import type { FileKind, Flaw } from '../core/problem'
import { jobInPage } from './job-in-page'

/** Larger files are not read: a job of 64 bores with 1000 readings each takes a tenth of it. */
export const largestFileBytes = 20_000_000

/** What a page that is handed over may hold beside its job. */
const mostAroundJob = 2_000_000

export type FileText =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly flaw: Flaw; readonly line?: number }

/** The text of a file that should hold JSON in UTF-8, by itself or in a page that was handed over; or what it is instead. */
export function fileText(file: string | Uint8Array, mostBytes: number = largestFileBytes): FileText {
  const bytes = file.length
  if (bytes > (isPage(file) ? mostBytes + mostAroundJob : mostBytes)) {
    return { ok: false, flaw: { code: 'file-too-large', bytes, mostBytes } }
  }
  const decoded = typeof file === 'string' ? { ok: true as const, text: file } : decode(file)
  if (!decoded.ok) return decoded
  const text = decoded.text.replace(/^\uFEFF/, '')
  if (text.trim() === '') return { ok: false, flaw: { code: 'file-empty' } }
  const handedOver = jobInPage(text)
  if (handedOver !== undefined) return { ok: true, text: handedOver }
  const kind = kindOfText(text)
  if (kind) return { ok: false, flaw: { code: 'other-kind-of-file', kind } }
  return { ok: true, text }
}

/** By its first letter: no job begins so. */
function isPage(file: string | Uint8Array): boolean {
  return file[0] === '<' || file[0] === 0x3c
}

function decode(bytes: Uint8Array): FileText {
  const kind = kindOfBytes(bytes)
  if (kind) return { ok: false, flaw: { code: 'other-kind-of-file', kind } }
  if (isUtf16(bytes)) return { ok: false, flaw: { code: 'saved-as-utf-16' } }
  const text = decodeUtf8(bytes)
  if (text !== undefined) return { ok: true, text }
  return { ok: false, flaw: { code: 'not-utf-8' }, line: firstBadLine(bytes) }
}

function decodeUtf8(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch (error) {
    // The only thing that a fatal decoder throws for bytes that are not UTF-8 (WHATWG Encoding).
    if (error instanceof TypeError) return undefined
    throw error
  }
}

/** The first line that is not UTF-8, from 1: no byte of a longer character looks like a line feed. */
function firstBadLine(bytes: Uint8Array): number {
  let line = 1
  let start = 0
  for (;;) {
    const feed = bytes.indexOf(0x0a, start)
    const end = feed < 0 ? bytes.length : feed
    if (feed < 0 || decodeUtf8(bytes.subarray(start, end)) === undefined) return line
    start = end + 1
    line += 1
  }
}

/** By its byte order mark, or by the zero byte that plain letters have in it. */
function isUtf16(bytes: Uint8Array): boolean {
  const [first, second] = bytes
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)) return true
  return bytes.length > 1 && (first === 0) !== (second === 0)
}

const signatures: readonly (readonly [FileKind, readonly number[]])[] = [
  ['image', [0x89, 0x50, 0x4e, 0x47]],
  ['image', [0xff, 0xd8, 0xff]],
  ['image', [0x47, 0x49, 0x46, 0x38]],
  ['image', [0x52, 0x49, 0x46, 0x46]],
  ['image', [0x42, 0x4d]],
  ['pdf', [0x25, 0x50, 0x44, 0x46]],
  ['archive', [0x50, 0x4b, 0x03, 0x04]],
  ['archive', [0x1f, 0x8b]],
]

function kindOfBytes(bytes: Uint8Array): FileKind | undefined {
  return signatures.find(([, signature]) => signature.every((byte, index) => bytes[index] === byte))?.[0]
}

function kindOfText(text: string): FileKind | undefined {
  const start = text.trimStart()
  if (start.startsWith('<')) return 'web-page'
  const [line = ''] = start.slice(0, 1000).split(/[\r\n]/)
  return /^[^[{]/.test(line) && /[,;\t].*[,;\t]/.test(line) ? 'table' : undefined
}
