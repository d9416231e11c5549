import { findingsTable } from '../formats/findings-table'
import { readingsTable, type TableUnit } from '../formats/readings-table'
import type { DecimalMark } from '../formats/table-number'
import { tableStyles } from '../formats/write-table'
import type { Job } from '../job/schema'
import { findingsOf } from '../job/selectors'
import { words } from '../words/words'
import { fileName } from './file-name'

export const tableKinds = ['readings', 'findings'] as const
export type TableKind = (typeof tableKinds)[number]

/** A table of a job as a file for a spreadsheet. */
export function tableFileOf(
  job: Job,
  kind: TableKind,
  { decimal, unit }: { readonly decimal: DecimalMark; readonly unit: TableUnit },
  day: Date,
): File {
  const style = tableStyles[decimal]
  const text =
    kind === 'readings' ? readingsTable(job, unit, style) : findingsTable(job, findingsOf(job), style)
  const said = words.table.export
  const title = kind === 'readings' ? said.readingsName : said.findingsName
  const name = fileName(`${job.name.trim() || words.file.defaultName} ${title}`, day, title, 'csv')
  return new File([text], name, { type: 'text/csv' })
}
