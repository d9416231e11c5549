import { statSync } from 'node:fs'
import { basename, join, resolve } from 'node:path'
import { readJob } from '../job/read-job'
import { words } from '../words/words'
import { contentOf, type Outcome, problemsIn, refused } from './job-file'

/** A job to be printed, and the file that its report goes to. */
export interface ToPrint {
  readonly name: string
  readonly text: string
  readonly to: string
}

/** What is to be printed, and on which paper. */
export interface Printing {
  readonly jobs: readonly ToPrint[]
  readonly paper: 'a4' | 'letter'
  /** Said of each report once it is written. */
  readonly written: (file: string) => string
  readonly notPrinted: (file: string) => string
}

/**
 * `report FILE… -o PDF [--letter]`: reads all job files before any is printed. Several go to a folder, each under the
 * name of its file; there is nothing to print where one of them cannot be read.
 */
export function reportCommand(parameters: readonly string[], folder: string): Printing | Outcome {
  const asked = askedOf(parameters)
  if (typeof asked === 'string') return usage(asked)
  const { files, out, letter } = asked
  const target = resolve(folder, out)
  const isFolder = statSync(target, { throwIfNoEntry: false })?.isDirectory() === true
  if (files.length > 1 && !isFolder) return usage(words.printing.folderForSeveral)
  const jobs: ToPrint[] = []
  for (const file of files) {
    const read = contentOf(resolve(folder, file))
    if (!read.ok) return refused(file, false, [read.problem])
    const result = readJob(read.content)
    if (!result.ok) {
      const { problems, lines } = problemsIn(result.problems)
      return refused(file, false, problems, lines)
    }
    const name = basename(file)
    const to = isFolder ? join(target, `${name.replace(/\.json$/i, '')}.pdf`) : target
    if (jobs.some((job) => job.to === to)) return usage(words.printing.sameName(name))
    jobs.push({ name, text: new TextDecoder().decode(read.content), to })
  }
  const { written, notPrinted } = words.printing
  return { jobs, paper: letter ? 'letter' : 'a4', written, notPrinted }
}

interface Asked {
  readonly files: readonly string[]
  readonly out: string
  readonly letter: boolean
}

function askedOf(parameters: readonly string[]): Asked | string {
  const said = words.printing
  const at = parameters.indexOf('-o')
  const out = parameters[at + 1]
  const others = at < 0 ? parameters : parameters.toSpliced(at, 2)
  const options = others.filter((parameter) => parameter.startsWith('-'))
  const unknown = options.find((option) => option !== '--letter')
  if (unknown === '--help' || unknown === '-h') return ''
  if (unknown !== undefined) return words.inspect.unknownOption(unknown)
  const files = others.filter((parameter) => !parameter.startsWith('-'))
  if (files.length === 0) return words.inspect.oneFile
  if (at < 0 || out === undefined || out.startsWith('-')) return said.nameTarget
  return { files, out, letter: options.length > 0 }
}

function usage(why: string): Outcome {
  return { exitStatus: 2, output: '', errors: `${why === '' ? '' : `${why}\n\n`}${words.printing.usage}\n` }
}
