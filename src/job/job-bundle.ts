import * as z from 'zod/mini'
import type { Problem } from '../core/problem'
import { fileText } from './file-text'
import { jsonProblems } from './json-text'
import { quotedValue } from './quotable'
import { readJob } from './read-job'
import type { Job } from './schema'

/** All jobs of a browser in one file, and the limits that were kept for other jobs (from version 2 on). */
export const bundleFormat = 'borewall-jobs'
export const bundleFormatVersion = 2

/** Larger files are not read: below what a browser can hold as one text. */
export const largestBundleBytes = 400_000_000

const bundleSchema = z.strictObject({
  format: z.literal(bundleFormat),
  formatVersion: z.literal([1, bundleFormatVersion]),
  jobs: z.array(z.unknown()),
  specs: z.exactOptional(z.array(z.unknown())),
})

/** The parts of the text of such a file, from the texts of its jobs and of its records of kept limits. */
export function bundleParts(
  jobTexts: readonly string[],
  specTexts: readonly string[] = [],
): readonly string[] {
  const listed = (texts: readonly string[]) => texts.map((text, index) => (index === 0 ? text : `,\n${text}`))
  const head = `{\n"format": "${bundleFormat}",\n"formatVersion": ${bundleFormatVersion},\n"jobs": [\n`
  return [head, ...listed(jobTexts), '],\n"specs": [\n', ...listed(specTexts), ']\n}\n']
}

/** Whether a file says of itself that it holds all jobs; its marker is looked for at its beginning. */
export function isBundle(file: Uint8Array): boolean {
  const start = new TextDecoder().decode(file.subarray(0, 400))
  return new RegExp(`^\\uFEFF?\\s*\\{[^{[]*"format"\\s*:\\s*"${bundleFormat}"`).test(start)
}

/** One job of the file: read, or refused with all that is wrong in it and where. */
export type BundledJob =
  | { readonly ok: true; readonly job: Job }
  | { readonly ok: false; readonly name: string; readonly problems: readonly Problem[] }

export type BundleRead =
  | {
      readonly ok: true
      readonly jobs: readonly BundledJob[]
      /** Records of kept limits, read by nobody yet. */
      readonly specs: readonly unknown[]
    }
  | { readonly ok: false; readonly problems: readonly Problem[] }

/** The jobs in a file, each by itself: one that is damaged does not keep the others from being read. */
export function readBundle(file: string | Uint8Array): BundleRead {
  const decoded = fileText(file, largestBundleBytes)
  if (!decoded.ok) return refused({ ...decoded.flaw, path: '' })
  const value = parsed(decoded.text)
  if (!value.ok) return { ok: false, problems: jsonProblems(decoded.text) }
  const bundle = bundleSchema.safeParse(value.value)
  if (!bundle.success) return refused(wrongBundle(value.value))
  return { ok: true, jobs: bundle.data.jobs.map(bundledJob), specs: bundle.data.specs ?? [] }
}

function refused(problem: Problem): BundleRead {
  return { ok: false, problems: [problem] }
}

function parsed(text: string): { readonly ok: true; readonly value: unknown } | { readonly ok: false } {
  try {
    return { ok: true, value: JSON.parse(text) }
  } catch (error) {
    if (error instanceof SyntaxError) return { ok: false }
    throw error
  }
}

function wrongBundle(value: unknown): Problem {
  const version = fieldOf(value, 'formatVersion')
  if (typeof version === 'number' && version > bundleFormatVersion) {
    return { code: 'newer-version', found: version, supported: bundleFormatVersion, path: 'formatVersion' }
  }
  if (version !== 1 && version !== bundleFormatVersion) {
    const found = quotedValue(version)
    return { code: 'unknown-version', found, supported: bundleFormatVersion, path: 'formatVersion' }
  }
  const jobs = fieldOf(value, 'jobs')
  if (jobs === undefined) return { code: 'missing', field: 'jobs', path: 'jobs' }
  if (!Array.isArray(jobs))
    return { code: 'wrong-kind', expected: 'list', found: quotedValue(jobs), path: 'jobs' }
  const specs = fieldOf(value, 'specs')
  if (specs !== undefined && !Array.isArray(specs))
    return { code: 'wrong-kind', expected: 'list', found: quotedValue(specs), path: 'specs' }
  const known = ['format', 'formatVersion', 'jobs', 'specs']
  const key = Object.keys(Object(value)).find((each) => !known.includes(each))
  return key === undefined ? { code: 'not-a-job', path: '' } : { code: 'unknown-key', key, path: '' }
}

function bundledJob(value: unknown, index: number): BundledJob {
  const read = readJob(JSON.stringify(value))
  if (read.ok) return read
  const name = fieldOf(value, 'name')
  const problems = read.problems.map(({ line: _, column: __, ...problem }) => ({
    ...problem,
    path: `jobs[${index}]${problem.path === '' ? '' : `.${problem.path}`}`,
  }))
  return { ok: false, name: typeof name === 'string' ? name.slice(0, 200) : '', problems }
}

function fieldOf(value: unknown, field: string): unknown {
  return typeof value === 'object' && value !== null ? Reflect.get(value, field) : undefined
}
