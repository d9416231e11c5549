import { Deflate, Inflate, strFromU8, strToU8 } from 'fflate'
import type { Problem } from '../core/problem'
import { checkJob } from './check-job'
import { codeDictionary } from './code-dictionary'
import { bytesOfDigits, digitsOfBytes } from './code-digits'
import { codeDocument } from './code-document'
import { documentOfCode } from './document-of-code'
import { jsonProblems } from './json-text'
import { migrateDocument } from './migrations'
import { type Job, jobFormatVersion } from './schema'

/** The first digit of a code: how the rest is written. */
const scheme = '1'

/** Texts that unpack to more are no code of ours: one that a QR code holds has a twentieth of it. */
export const mostUnpackedBytes = 256_000

/** Readings take so many bytes at most, as many as two bytes can say. */
const mostNumberBytes = 0xffff

/** A job as the digits of a code; undefined where it is larger than any code could be. */
export function codeOfJob(job: Job): string | undefined {
  const { text, numbers } = codeDocument(job)
  const bytes = strToU8(JSON.stringify(text))
  if (bytes.length > mostUnpackedBytes || numbers.length > mostNumberBytes) return undefined
  const size = Uint8Array.of(numbers.length >> 8, numbers.length & 255)
  return scheme + digitsOfBytes(joined([size, numbers, packed(bytes)]))
}

export type JobOfCode =
  | { readonly ok: true; readonly job: Job }
  /** No digits of a code, some of them missing or changed; or written by a newer Borewall. */
  | { readonly ok: false; readonly why: 'damaged' | 'newer' | 'too-large' }
  /** Written as a code is, but what it holds is no job. */
  | { readonly ok: false; readonly why: 'no-job'; readonly problems: readonly Problem[] }

/** The job of a code, checked as one of a file is; its id follows from the code, so that it is one job each time. */
export function jobOfCode(digits: string): JobOfCode {
  if (!/^[0-9]+$/.test(digits)) return { ok: false, why: 'damaged' }
  if (!digits.startsWith(scheme)) return { ok: false, why: 'newer' }
  const bytes = bytesOfDigits(digits.slice(scheme.length))
  if (!bytes) return { ok: false, why: 'damaged' }
  const [high = 0, low = 0] = bytes
  const textAt = 2 + high * 256 + low
  const unpacked = unpackedText(bytes.subarray(textAt))
  if (!unpacked.ok) return unpacked
  const flaws = jsonProblems(unpacked.text)
  if (flaws.length > 0) return { ok: false, why: 'no-job', problems: flaws }
  return checked(JSON.parse(unpacked.text), bytes.subarray(2, textAt), idOfDigits(digits))
}

function checked(text: unknown, numbers: Uint8Array, id: string): JobOfCode {
  if (Array.isArray(text) && typeof text[0] === 'number' && text[0] > jobFormatVersion) {
    return { ok: false, why: 'newer' }
  }
  const read = documentOfCode(text, numbers, id)
  if (!read.ok) return read
  const migrated = migrateDocument(read.document)
  if (!migrated.ok) {
    return { ok: false, why: 'no-job', problems: [{ ...migrated.flaw, path: migrated.path }] }
  }
  const job = checkJob(migrated.document)
  if (job.ok) return job
  return { ok: false, why: 'no-job', problems: job.problems.map(({ problem }) => problem) }
}

/** Not for secrets: only so that two jobs do not meet under one id. */
function idOfDigits(digits: string): string {
  return `code-${(BigInt(digits) % (2n ** 127n - 1n)).toString(36)}`
}

const dictionary = strToU8(codeDictionary)

/** By the compression of RFC 1951, as hard as it can. */
function packed(bytes: Uint8Array): Uint8Array {
  const parts: Uint8Array[] = []
  const stream = new Deflate({ level: 9, mem: 12, dictionary }, (part) => parts.push(part))
  stream.push(bytes, true)
  return joined(parts)
}

type Unpacked =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly why: 'damaged' | 'too-large' }

/** So little is unpacked at once, to a thousand times as much at most, that a bomb is seen before it bursts. */
const slice = 256

function unpackedText(bytes: Uint8Array): Unpacked {
  const parts: Uint8Array[] = []
  let size = 0
  const stream = new Inflate({ dictionary }, (part) => {
    parts.push(part)
    size += part.length
  })
  try {
    for (let from = 0; from < bytes.length; from += slice) {
      stream.push(bytes.subarray(from, from + slice), from + slice >= bytes.length)
      if (size > mostUnpackedBytes) return { ok: false, why: 'too-large' }
    }
    return { ok: true, text: strFromU8(joined(parts)) }
  } catch (error) {
    if (isOfInflate(error)) return { ok: false, why: 'damaged' }
    throw error
  }
}

/** Errors of the library have a number for a code. */
function isOfInflate(error: unknown): boolean {
  return error instanceof Error && 'code' in error && typeof error.code === 'number'
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0))
  let at = 0
  for (const part of parts) {
    all.set(part, at)
    at += part.length
  }
  return all
}
