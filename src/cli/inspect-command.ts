import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { inspect } from '../core/inspect'
import { layOut } from '../formats/plain-text'
import { readJob } from '../job/read-job'
import { problemPlace, problemText } from '../words/findings'
import { words } from '../words/words'
import { inspectJson, jsonText } from './inspect-json'
import { inspectText } from './inspect-text'

/** What the command writes and ends with. Standard output carries findings (or problems as JSON) only. */
export interface Outcome {
  readonly exitStatus: 0 | 1 | 2
  readonly output: string
  readonly errors: string
}

/** A problem as it is reported: a code, where it is, and what to do about it. */
interface Reported {
  readonly code: string
  readonly path: string
  readonly text: string
}

/** `inspect FILE [--json]`: reads a job file and reports what its readings prove. */
export function inspectCommand(parameters: readonly string[], folder: string): Outcome {
  const options = parameters.filter((p) => p.startsWith('-'))
  const files = parameters.filter((p) => !p.startsWith('-'))
  const unknown = options.find((option) => option !== '--json')
  const [file] = files
  if (unknown !== undefined || files.length !== 1 || file === undefined) return usage(unknown)
  const json = options.includes('--json')
  const read = contentOf(resolve(folder, file))
  if (!read.ok) return refused(file, json, [read.problem])
  const result = readJob(read.content)
  if (!result.ok) {
    const problems = result.problems.map((problem) => ({ ...problem, text: problemText(problem) }))
    const lines = result.problems.map((p) => words.file.problemAt(problemPlace(p), problemText(p)))
    return refused(file, json, problems, lines)
  }
  const findings = inspect(result.job)
  const output = json ? jsonText(inspectJson(result.job, findings)) : inspectText(result.job, findings)
  return { exitStatus: 0, output, errors: '' }
}

function usage(unknownOption: string | undefined): Outcome {
  const said = words.inspect
  const asked = unknownOption === '--help' || unknownOption === '-h'
  const why = asked ? '' : unknownOption === undefined ? said.oneFile : said.unknownOption(unknownOption)
  return { exitStatus: 2, output: '', errors: `${why === '' ? '' : `${why}\n\n`}${said.usage}\n` }
}

function refused(
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

function contentOf(path: string): { ok: true; content: Uint8Array } | { ok: false; problem: Reported } {
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
