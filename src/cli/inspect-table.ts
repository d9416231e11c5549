import { readWholeTableFile, type TableFile } from '../formats/table-file'
import type { Job } from '../job/schema'
import { takeTable } from '../job/take-table'
import { cellPlace, refusalText } from '../words/table'
import { words } from '../words/words'

/** A problem as it is reported: a code, where it is, and what to do about it. */
export interface Reported {
  readonly code: string
  readonly path: string
  readonly text: string
}

/** Whether a file is a table of readings, by its name. */
export function isTableName(name: string): boolean {
  return /\.(csv|tsv|txt)$/i.test(name)
}

type Filled =
  | { readonly ok: true; readonly job: Job }
  | { readonly ok: false; readonly problems: readonly Reported[] }

/**
 * A job without readings, filled with those of a table: all of them or none. What the heads of its columns leave open
 * is a problem here, for nobody can be asked. Bores that the table does not name are left out.
 */
export function filledByTable(spec: Job, content: Uint8Array): Filled {
  const file = readWholeTableFile(content)
  if (!file.ok) return { ok: false, problems: [wholeProblem(file)] }
  if (file.open.length > 0) {
    const problems = file.open.map((code) => ({
      code,
      path: '',
      text: words.inspect.openInTable(words.table.open[code]),
    }))
    return { ok: false, problems }
  }
  const [bore] = spec.bores
  const survey = bore?.surveys.at(-1)
  if (!bore || !survey) throw new Error('A job has at least one bore with a survey')
  let count = 0
  // Ids of one run of the command only: they must be new, and the same each time.
  const ids = () => `table-${++count}`
  const taken = takeTable(spec, file.content.readings, { boreId: bore.id, surveyId: survey.id }, ids)
  const refused = [...file.content.refused, ...taken.refused].sort(
    (a, b) => a.row - b.row || a.column - b.column,
  )
  if (refused.length > 0) {
    const problems = refused.map((cell) => ({
      code: cell.why,
      path: cellPlace(cell, file.heads),
      text: refusalText(cell),
    }))
    return { ok: false, problems }
  }
  if (taken.readings === 0) {
    return { ok: false, problems: [{ code: 'no-readings', path: '', text: words.inspect.nothingInTable }] }
  }
  return { ok: true, job: measuredOnly(taken.job) }
}

/** Without the surveys that stayed empty, and without the bores of which nothing is left. */
function measuredOnly(job: Job): Job {
  const bores = job.bores.map((bore) => ({
    ...bore,
    surveys: bore.surveys.filter(({ readings }) => readings.length > 0),
  }))
  return { ...job, bores: bores.filter(({ surveys }) => surveys.length > 0) }
}

function wholeProblem(file: TableFile & { readonly ok: false }): Reported {
  const { notRead } = words.table
  const row = String((file.row ?? 0) + 1)
  const text = file.why === 'quote-left-open' ? notRead[file.why](row) : notRead[file.why]
  return { code: file.why, path: '', text }
}
