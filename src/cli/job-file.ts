import { readFileSync } from 'node:fs'
import type { Problem } from '../core/problem'
import { layOut } from '../formats/plain-text'
import { problemPlace, problemText } from '../words/findings'
import { words } from '../words/words'
import { jsonText } from './inspect-json'
import type { Reported } from './inspect-table'

/** What a command writes and ends with. Standard output carries findings (or problems as JSON) only. */
export interface Outcome {
  readonly exitStatus: 0 | 1 | 2
  readonly output: string
  readonly errors: string
}

/** What is wrong with a job file, for JSON and as lines to read. */
export function problemsIn(found: readonly Problem[]): { problems: Reported[]; lines: string[] } {
  return {
    problems: found.map((problem) => ({ ...problem, text: problemText(problem) })),
    lines: found.map((problem) => words.file.problemAt(problemPlace(problem), problemText(problem))),
  }
}

/** How a command ends that cannot read a file. */
export function refused(
  file: string,
  json: boolean,
  problems: readonly Reported[],
  lines?: readonly string[],
): Outcome {
  return {
    exitStatus: 1,
    output: json ? jsonText({ problems }) : '',
    errors: layOut([
      { kind: 'paragraph', text: words.inspect.cannotRead(file) },
      { kind: 'list', items: lines ?? problems.map(({ text }) => text) },
    ]),
  }
}

/** The bytes of a file, or why there are none. */
export function contentOf(
  path: string,
): { ok: true; content: Uint8Array } | { ok: false; problem: Reported } {
  try {
    return { ok: true, content: readFileSync(path) }
  } catch (error) {
    if (!(error instanceof Error) || !('code' in error)) throw error
    const code = fileErrorCodes.get(error.code) ?? 'file-unreadable'
    return { ok: false, problem: { code, path: '', text: words.inspect.fileErrors[code] } }
  }
}

type FileErrorCode = keyof typeof words.inspect.fileErrors

const fileErrorCodes: ReadonlyMap<unknown, FileErrorCode> = new Map([
  ['ENOENT', 'file-not-found'],
  ['ENOTDIR', 'file-not-found'],
  ['EISDIR', 'file-is-folder'],
  ['EACCES', 'file-not-allowed'],
  ['EPERM', 'file-not-allowed'],
])
