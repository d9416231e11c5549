import { saysRadius } from '../../formats/column-meaning'
import { dayOrders } from '../../formats/table-day'
import type { ReadTableFile, TableChoices } from '../../formats/table-file'
import { decimalMarks } from '../../formats/table-number'
import { separators } from '../../formats/table-text'
import { words } from '../../words/words'
import { PickField } from './PickField'

/** Nothing chosen yet, or found. */
const none = 'none'

/** How the text of a table is read: what parts its cells, its decimal sign, its row of heads, the order of its dates. */
export function MappingFields(props: {
  /** Absent: the text could not be parted into cells. */
  readonly file: ReadTableFile | undefined
  readonly choices: TableChoices
  readonly onChoose: (choices: TableChoices) => void
}) {
  const { file, choices, onChoose } = props
  const said = words.table
  const { decimal, dayOrder } = choices
  const separator = file ? file.separator : choices.separator
  return (
    <>
      <div className="pick-fields">
        <PickField
          label={said.labels.separator}
          value={separator ?? none}
          isOpen={!file}
          options={[
            ...(separator === undefined ? [[none, file ? said.noSeparator : said.choose] as const] : []),
            ...separators.map((one) => [one, said.separators[one]] as const),
          ]}
          // Other cells are other columns: what was chosen of those no longer holds.
          onPick={(value) =>
            onChoose({ decimal, dayOrder, separator: separators.find((one) => one === value) })
          }
        />
        {file ? <OfCells {...props} file={file} /> : null}
      </div>
      {file?.encoding === 'windows-1252' ? <p className="soft">{said.encoding}</p> : null}
      {file?.heads.some(saysRadius) ? <p role="status">{words.table.radii}</p> : null}
      {file?.content.isFolded ? <p className="soft">{said.folded}</p> : null}
    </>
  )
}

function OfCells(props: {
  readonly file: ReadTableFile
  readonly choices: TableChoices
  readonly onChoose: (choices: TableChoices) => void
}) {
  const { file, choices, onChoose } = props
  const { mapping, preview, open } = file
  const said = words.table
  const { columns: _, ...others } = choices
  return (
    <>
      <PickField
        label={said.labels.decimal}
        value={mapping.decimal ?? none}
        isOpen={mapping.decimal === undefined}
        options={[
          ...(mapping.decimal === undefined ? [[none, said.choose] as const] : []),
          ...decimalMarks.map((mark) => [mark, said.decimals[mark]] as const),
        ]}
        onPick={(value) => onChoose({ ...choices, decimal: decimalMarks.find((mark) => mark === value) })}
      />
      <PickField
        label={said.labels.headRow}
        value={mapping.headRow === undefined ? none : String(mapping.headRow)}
        options={[
          [none, said.noHeadRow],
          ...preview.map(({ row }) => [String(row), said.headRow(String(row + 1))] as const),
        ]}
        onPick={(value) => onChoose({ ...others, headRow: value === none ? 'none' : Number(value) })}
      />
      {choices.dayOrder !== undefined || open.includes('day-order') ? (
        <PickField
          label={said.labels.dayOrder}
          value={mapping.dayOrder ?? none}
          isOpen={mapping.dayOrder === undefined}
          options={[
            ...(mapping.dayOrder === undefined ? [[none, said.choose] as const] : []),
            ...dayOrders.map((order) => [order, said.dayOrders[order]] as const),
          ]}
          onPick={(value) => onChoose({ ...choices, dayOrder: dayOrders.find((order) => order === value) })}
        />
      ) : null}
    </>
  )
}
