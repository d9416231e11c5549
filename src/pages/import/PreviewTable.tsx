import { type ColumnMeaning, columnMeanings, isValue, type KeptValue } from '../../formats/column-meaning'
import type { PreviewRow, ReadTableFile } from '../../formats/table-file'
import { axisOfAngle, type ReadCell } from '../../formats/table-readings'
import { degrees, depth, inHundredthsOfMicrons, length, plain } from '../../words/numbers'
import { columnName } from '../../words/table'
import { words } from '../../words/words'
import type { AnyRefusedCell } from './TakenReport'

interface PreviewTableProps {
  readonly file: ReadTableFile
  readonly refused: readonly AnyRefusedCell[]
  readonly onColumns: (columns: readonly ColumnMeaning[]) => void
}

/** The first rows, above each column what it holds, and in each cell what it becomes. */
export function PreviewTable({ file, refused, onColumns }: PreviewTableProps) {
  const { mapping, heads, preview, rowCount } = file
  const { columns } = mapping
  const said = words.table
  const last = preview.at(-1)?.row ?? 0
  const isRefused = new Set(
    refused
      .filter(({ row, why }) => row <= last && !(file.open.length > 0 && isOpenYet(why)))
      .map(({ row, column }) => `${row} ${column}`),
  )
  return (
    <section className="import-preview" aria-label={said.preview(String(preview.length), String(rowCount))}>
      <table>
        <caption>{said.preview(String(preview.length), String(rowCount))}</caption>
        <thead>
          <tr>
            <th scope="col">{said.row}</th>
            {columns.map((meaning, column) => (
              <th key={column} scope="col">
                <span className="import-head">{columnName(column, heads)}</span>
                <MeaningField
                  label={said.labels.column(columnName(column, heads))}
                  meaning={meaning}
                  onMeaning={(next) => onColumns(withMeaning(columns, column, next))}
                />
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {preview.map((row) => (
            <Row key={row.row} row={row} columns={columns} isRefused={isRefused} />
          ))}
        </tbody>
      </table>
    </section>
  )
}

/** Not refused: it waits for what must still be said of all of its kind. */
function isOpenYet(why: string): boolean {
  return ['unit-open', 'mark-open', 'day-order-open', 'row-refused', 'no-axis'].includes(why)
}

/**
 * Columns of readings that held the same as the one that is changed are changed with it, and so are those of which
 * nobody has said yet what they hold.
 */
function withMeaning(
  columns: readonly ColumnMeaning[],
  column: number,
  next: ColumnMeaning,
): readonly ColumnMeaning[] {
  const before = columns[column]
  const follows = (meaning: ColumnMeaning) =>
    isValue(next) && isValue(meaning) && (meaning === before || meaning === 'value-open')
  return columns.map((meaning, index) => (index === column || follows(meaning) ? next : meaning))
}

function MeaningField(props: {
  readonly label: string
  readonly meaning: ColumnMeaning
  readonly onMeaning: (meaning: ColumnMeaning) => void
}) {
  const { label, meaning, onMeaning } = props
  const isOpen = meaning === 'value-open' || meaning === 'depth-open'
  return (
    <select
      aria-label={label}
      value={meaning}
      className={isOpen ? 'is-open' : undefined}
      onChange={({ target }) => {
        const next = columnMeanings.find((one) => one === target.value)
        if (next !== undefined) onMeaning(next)
      }}
    >
      {columnMeanings.map((one) => (
        <option key={one} value={one}>
          {words.table.meanings[one]}
        </option>
      ))}
    </select>
  )
}

function Row(props: {
  readonly row: PreviewRow
  readonly columns: readonly ColumnMeaning[]
  readonly isRefused: ReadonlySet<string>
}) {
  const { row, columns, isRefused } = props
  return (
    <tr className={row.cells ? undefined : 'is-head'}>
      <th scope="row">{row.row + 1}</th>
      {columns.map((meaning, column) => {
        const cell = row.cells?.[column]
        const refused = isRefused.has(`${row.row} ${column}`)
        return (
          <td key={column} className={refused ? 'is-refused' : undefined}>
            {row.texts[column] ?? ''}
            {row.cells ? (
              <span className="import-becomes">
                {refused ? words.table.becomes.refused : cell ? becomesText(cell, meaning) : ''}
              </span>
            ) : null}
          </td>
        )
      })}
    </tr>
  )
}

function becomesText(cell: ReadCell, meaning: ColumnMeaning): string {
  const said = words.table.becomes
  switch (cell.kind) {
    case 'nothing':
      return meaning === 'ignored' ? said.notTaken : ''
    case 'refused':
      return isOpenYet(cell.why) ? said.open : said.refused
    case 'text':
      return cell.text
    case 'kept':
      return keptText(cell.kept)
    case 'number':
      if (meaning === 'axis') return said.axis(degrees(axisOfAngle(cell.value)), degrees(cell.value))
      if (meaning === 'repeat') return said.repeat(plain(cell.value, 0))
      return meaning === 'hours' ? said.hours(plain(cell.value, 3)) : depth(cell.value)
  }
}

function keptText({ as, value }: KeptValue): string {
  if (as === 'size') return length(value, 5)
  const text = `${value > 0 ? '+' : ''}${inHundredthsOfMicrons(value / 1000)}`
  return as === 'dial' ? words.table.becomes.dial(text) : words.table.becomes.over(text)
}
