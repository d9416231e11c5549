import type { Problem } from '../core/problem'
import { checkJob, type PlacedProblem } from './check-job'
import { fileText } from './file-text'
import { jsonProblems, type Watch } from './json-text'
import { linesAndColumns } from './line-and-column'
import { migrateDocument } from './migrations'
import { type Job, jobFormatVersion } from './schema'

export type ReadResult =
  | { readonly ok: true; readonly job: Job }
  | { readonly ok: false; readonly problems: readonly Problem[] }

/**
 * A job from the bytes or the text of a file: the whole job, or everything that is wrong with it and where.
 * Fields that contradict each other across the job are looked for once each field is right by itself.
 */
export function readJob(file: string | Uint8Array): ReadResult {
  const decoded = fileText(file)
  if (!decoded.ok) {
    const { flaw, line } = decoded
    return { ok: false, problems: [{ ...flaw, path: '', ...(line === undefined ? {} : { line }) }] }
  }
  const { text } = decoded
  const problems = jsonProblems(text)
  if (problems.length > 0) return { ok: false, problems }
  const migrated = migrateDocument(JSON.parse(text))
  if (!migrated.ok) return { ok: false, problems: [{ ...migrated.flaw, path: migrated.path }] }
  const checked = checkJob(migrated.document)
  if (checked.ok) return checked
  // In a document of an older version the fields stand elsewhere than in the file.
  const same = migrated.from === jobFormatVersion
  return {
    ok: false,
    problems: same ? withLines(checked.problems, text) : checked.problems.map(({ problem }) => problem),
  }
}

/** The problems with the line and column of their field, or of the innermost part around a missing one. */
function withLines(placed: readonly PlacedProblem[], text: string): Problem[] {
  const root: Watch = { children: new Map() }
  const watches = placed.map(({ keys }) => watchesAlong(root, keys))
  jsonProblems(text, root)
  const offsets = watches.map((along) => along.findLast(({ at }) => at !== undefined)?.at)
  const places = linesAndColumns(
    text,
    offsets.map((at) => at ?? 0),
  )
  return placed.map(({ problem }, index) =>
    offsets[index] === undefined ? problem : { ...problem, ...places[index] },
  )
}

function watchesAlong(root: Watch, keys: readonly PropertyKey[]): Watch[] {
  let watch = root
  return keys.map((key) => {
    const child = watch.children.get(key) ?? { children: new Map() }
    watch.children.set(key, child)
    watch = child
    return child
  })
}
