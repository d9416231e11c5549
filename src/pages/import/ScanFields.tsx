import { type ScanUnit, scanUnits } from '../../formats/scan-head'
import type { ReadScanTable, ScanChoices } from '../../formats/scan-table'
import { decimalMarks } from '../../formats/table-number'
import { separators } from '../../formats/table-text'
import { scanTableWords } from '../../words/scan-table-words'
import { words } from '../../words/words'
import { PickField } from './PickField'

/** Nothing chosen yet. */
const none = 'none'

/** How a file of radii is read: units, signs and which way angles run. */
export function ScanFields(props: {
  /** Absent: nothing could be read. */
  readonly table: ReadScanTable | undefined
  readonly choices: ScanChoices
  readonly onChoose: (choices: ScanChoices) => void
}) {
  const { table, choices, onChoose } = props
  const said = scanTableWords
  const separator = table?.separator ?? choices.separator
  return (
    <div className="pick-fields">
      <PickField
        label={said.labels.separator}
        value={separator ?? none}
        isOpen={separator === undefined}
        options={[
          ...(separator === undefined ? [[none, said.choose] as const] : []),
          ...separators.map((one) => [one, words.table.separators[one]] as const),
        ]}
        onPick={(value) => onChoose({ ...choices, separator: separators.find((one) => one === value) })}
      />
      {table ? <OfFigures {...props} table={table} /> : null}
    </div>
  )
}

function OfFigures(props: {
  readonly table: ReadScanTable
  readonly choices: ScanChoices
  readonly onChoose: (choices: ScanChoices) => void
}) {
  const { table, choices, onChoose } = props
  const said = scanTableWords
  return (
    <>
      <PickField
        label={said.labels.decimal}
        value={table.decimal ?? none}
        isOpen={table.decimal === undefined}
        options={[
          ...(table.decimal === undefined ? [[none, said.choose] as const] : []),
          ...decimalMarks.map((mark) => [mark, words.table.decimals[mark]] as const),
        ]}
        onPick={(value) => onChoose({ ...choices, decimal: decimalMarks.find((mark) => mark === value) })}
      />
      <UnitField
        label={said.labels.depthUnit}
        unit={table.depthUnit}
        units={['mm', 'inch']}
        onPick={(depthUnit) => onChoose({ ...choices, depthUnit })}
      />
      <UnitField
        label={said.labels.valueUnit}
        unit={table.valueUnit}
        units={scanUnits}
        onPick={(valueUnit) => onChoose({ ...choices, valueUnit })}
      />
      <PickField
        label={said.labels.sign}
        value={choices.inward ? 'inward' : 'outward'}
        options={[
          ['outward', said.signs.outward],
          ['inward', said.signs.inward],
        ]}
        onPick={(value) => onChoose({ ...choices, inward: value === 'inward' })}
      />
      <PickField
        label={said.labels.turn}
        value={choices.counterClockwise ? 'counter-clockwise' : 'clockwise'}
        options={[
          ['clockwise', said.turns.clockwise],
          ['counter-clockwise', said.turns['counter-clockwise']],
        ]}
        onPick={(value) => onChoose({ ...choices, counterClockwise: value === 'counter-clockwise' })}
      />
    </>
  )
}

function UnitField(props: {
  readonly label: string
  readonly unit: ScanUnit | undefined
  readonly units: readonly ScanUnit[]
  readonly onPick: (unit: ScanUnit | undefined) => void
}) {
  const { label, unit, units, onPick } = props
  const said = scanTableWords
  const offered = unit !== undefined && !units.includes(unit) ? [...units, unit] : units
  return (
    <PickField
      label={label}
      value={unit ?? none}
      isOpen={unit === undefined}
      options={[
        ...(unit === undefined ? [[none, said.choose] as const] : []),
        ...offered.map((one) => [one, said.units[one]] as const),
      ]}
      onPick={(value) => onPick(scanUnits.find((one) => one === value))}
    />
  )
}
