import { useState } from 'react'
import { type TableUnit, tableUnits } from '../formats/readings-table'
import { type DecimalMark, decimalMarks } from '../formats/table-number'
import type { Job } from '../job/schema'
import { PickField } from '../pages/import/PickField'
import { words } from '../words/words'
import { download } from './download'
import { type TableKind, tableFileOf, tableKinds } from './send-tables'

/** Readings and findings as tables for a spreadsheet, in the decimal sign and the unit that are chosen. */
export function SendTables({
  job,
  onSaved,
}: {
  readonly job: Job
  readonly onSaved: (name: string) => void
}) {
  const [decimal, setDecimal] = useState<DecimalMark>('point')
  const [unit, setUnit] = useState<TableUnit>('metric')
  const said = words.table.export
  const save = (kind: TableKind) => {
    const file = tableFileOf(job, kind, { decimal, unit }, new Date())
    download(file)
    onSaved(file.name)
  }
  return (
    <section className="send-tables">
      <h3>{said.title}</h3>
      <p className="soft">{said.lead}</p>
      <div className="pick-fields">
        <PickField
          label={said.decimal}
          value={decimal}
          options={decimalMarks.map((mark) => [mark, said.decimals[mark]])}
          onPick={(value) => setDecimal(decimalMarks.find((mark) => mark === value) ?? decimal)}
        />
        <PickField
          label={said.unit}
          value={unit}
          options={tableUnits.map((one) => [one, said.units[one]])}
          onPick={(value) => setUnit(tableUnits.find((one) => one === value) ?? unit)}
        />
      </div>
      <div className="send-ways">
        {tableKinds.map((kind) => (
          <button key={kind} type="button" className="button" onClick={() => save(kind)}>
            {said[kind]}
          </button>
        ))}
      </div>
    </section>
  )
}
