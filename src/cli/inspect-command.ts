import { basename, resolve } from 'node:path'
import { inspect } from '../core/inspect'
import { looksLikeScan } from '../formats/looks-like-scan'
import { readJob } from '../job/read-job'
import type { Job } from '../job/schema'
import { readNumber } from '../words/read-number'
import { scanFormWords } from '../words/scan-form-words'
import { words } from '../words/words'
import { inspectJson, jsonText } from './inspect-json'
import { inspectScanFile } from './inspect-scan'
import { filledByTable, isTableName, type Reported } from './inspect-table'
import { inspectText } from './inspect-text'
import { contentOf, type Outcome, problemsIn, refused } from './job-file'

/** `inspect FILE [--json]`, `inspect TABLE --spec JOB [--json]`, `inspect SCAN [--diameter MM] [--json]`: reads a file and reports what its readings prove. */
export function inspectCommand(parameters: readonly string[], folder: string): Outcome {
  const asked = askedOf(parameters)
  if (typeof asked === 'string') return usage(asked)
  const { file, spec, json } = asked
  const read = contentOf(resolve(folder, file))
  if (!read.ok) return refused(file, json, [read.problem])
  if (spec === undefined && isTableName(file)) return scanOrUsage(asked, read.content)
  const job = jobIn(read.content, spec ?? file, json, spec === undefined ? undefined : resolve(folder, spec))
  if ('exitStatus' in job) return job
  const filled = spec === undefined ? { ok: true as const, job } : filledByTable(job, read.content)
  if (!filled.ok) return refused(file, json, filled.problems, filled.problems.map(lineOf))
  const findings = inspect(filled.job)
  const output = json ? jsonText(inspectJson(filled.job, findings)) : inspectText(filled.job, findings)
  return { exitStatus: 0, output, errors: '' }
}

/** A table without a job is a file of radii, or lacks what its readings are judged by. */
function scanOrUsage({ file, json, diameterMm }: Asked, content: Uint8Array): Outcome {
  if (!looksLikeScan(content)) return usage(words.inspect.specForTable)
  const scan = inspectScanFile(basename(file), content, diameterMm)
  if (!scan.ok) return refused(file, json, scan.problems, scan.problems.map(lineOf))
  return { exitStatus: 0, output: json ? jsonText(scan.json) : scan.text, errors: '' }
}

interface Asked {
  readonly file: string
  /** Of the bore that a file of radii is of, roughly. */
  readonly diameterMm?: number
  readonly spec?: string
  readonly json: boolean
}

/** What was asked for, or why nobody can tell; an empty text where only the usage is wanted. */
function askedOf(parameters: readonly string[]): Asked | string {
  const said = words.inspect
  const at = parameters.indexOf('--spec')
  const spec = at < 0 ? undefined : parameters[at + 1]
  const withoutSpec = at < 0 ? parameters : parameters.toSpliced(at, 2)
  const diameterAt = withoutSpec.indexOf('--diameter')
  const diameter = diameterAt < 0 ? undefined : readNumber(withoutSpec[diameterAt + 1] ?? '')
  const others = diameterAt < 0 ? withoutSpec : withoutSpec.toSpliced(diameterAt, 2)
  const options = others.filter((p) => p.startsWith('-'))
  const files = others.filter((p) => !p.startsWith('-'))
  const unknown = options.find((option) => option !== '--json')
  if (unknown !== undefined)
    return unknown === '--help' || unknown === '-h' ? '' : said.unknownOption(unknown)
  const [file] = files
  if (files.length !== 1 || file === undefined) return said.oneFile
  const isTable = isTableName(file)
  if (isTable && at >= 0 && (spec === undefined || spec.startsWith('-'))) return said.specForTable
  if (diameter && !(isTable && at < 0)) return scanFormWords.diameterForScan
  if (diameter && !(diameter.ok && diameter.value >= 1 && diameter.value <= 2000)) {
    return scanFormWords.diameterRange
  }
  if (!isTable && at >= 0) return said.noSpecForJob
  return {
    file,
    json: options.includes('--json'),
    ...(spec === undefined ? {} : { spec }),
    ...(diameter?.ok ? { diameterMm: diameter.value } : {}),
  }
}

/** The job in a file, or how the command ends where it holds none. */
function jobIn(
  content: Uint8Array,
  name: string,
  json: boolean,
  specPath: string | undefined,
): Job | Outcome {
  const read = specPath === undefined ? { ok: true as const, content } : contentOf(specPath)
  if (!read.ok) return refused(name, json, [read.problem])
  const result = readJob(read.content)
  if (!result.ok) {
    const { problems, lines } = problemsIn(result.problems)
    return refused(name, json, problems, lines)
  }
  if (specPath === undefined || !hasReadings(result.job)) return result.job
  return refused(name, json, [
    { code: 'spec-has-readings', path: 'bores', text: words.inspect.specHasReadings },
  ])
}

function hasReadings({ bores }: Job): boolean {
  return bores.some(({ surveys }) => surveys.some(({ readings }) => readings.length > 0))
}

function lineOf({ path, text }: Reported): string {
  return path === '' ? text : words.file.problemAt(path, text)
}

/** How the command ends where it cannot tell what is wanted. */
export function usage(why: string): Outcome {
  return { exitStatus: 2, output: '', errors: `${why === '' ? '' : `${why}\n\n`}${words.inspect.usage}\n` }
}
