import { useId, useState } from 'react'
import type { Bore, Survey } from '../../core/measured'
import type { ReadTableFile } from '../../formats/table-file'
import { rangeOf } from '../../job/field-ranges'
import type { Job } from '../../job/schema'
import { dayText } from '../../words/day-text'
import { length } from '../../words/numbers'
import { readNumber } from '../../words/read-number'
import { words } from '../../words/words'
import { PickField } from './PickField'

/** The job on the bench with the bore and the survey that are in hand. */
export interface InHand {
  readonly job: Job
  readonly bore: Bore
  readonly survey: Survey
}

export type Destination = 'in-hand' | 'new-survey' | 'new-bore' | 'by-name' | 'new-job'

export interface DestinationChoices {
  /** Undefined: the first that is offered. */
  readonly destination: Destination | undefined
  readonly addRepeats: boolean
  readonly settingSizeMm?: number | undefined
}

/** Where the readings can go, the most likely first: by their names where the table has some. */
export function offeredFor({ mapping }: ReadTableFile, inHand: InHand | undefined): readonly Destination[] {
  if (!inHand) return ['new-job']
  const names = mapping.columns.some((meaning) => ['bore', 'survey', 'date', 'hours'].includes(meaning))
  return names ? ['by-name', 'new-job'] : ['in-hand', 'new-survey', 'new-bore', 'new-job']
}

/** Where the readings go, what becomes of stations that are read already, and the setting size where it is needed. */
export function DestinationFields(props: {
  readonly name: string
  readonly inHand: InHand | undefined
  readonly offered: readonly Destination[]
  readonly destination: Destination
  readonly wanted: DestinationChoices
  readonly needsSetting: boolean
  readonly onWanted: (wanted: DestinationChoices) => void
}) {
  const { inHand, offered, destination, wanted, needsSetting, onWanted } = props
  const said = words.table
  return (
    <div className="pick-fields">
      <PickField
        label={said.labels.destination}
        value={destination}
        options={offered.map((one) => [one, destinationText(one, inHand)])}
        onPick={(value) => onWanted({ ...wanted, destination: offered.find((one) => one === value) })}
      />
      {destination === 'new-job' || destination === 'new-bore' || destination === 'new-survey' ? null : (
        <PickField
          label={said.labels.present}
          value={wanted.addRepeats ? 'add' : 'leave'}
          options={[
            ['leave', said.present.leave],
            ['add', said.present.add],
          ]}
          onPick={(value) => onWanted({ ...wanted, addRepeats: value === 'add' })}
        />
      )}
      {needsSetting ? (
        <SettingField onSize={(settingSizeMm) => onWanted({ ...wanted, settingSizeMm })} />
      ) : null}
    </div>
  )
}

function destinationText(destination: Destination, inHand: InHand | undefined): string {
  const { destinations, survey: said } = words.table
  if (destination === 'new-job' || !inHand) return destinations.newJob
  if (destination === 'by-name') return destinations.byName
  if (destination === 'new-bore') return destinations.newBore
  const { bore, survey } = inHand
  const name = bore.role === 'for-comparison' ? bore.name : words.bar.boreNamed(bore.name)
  if (destination === 'new-survey') return destinations.newSurvey(name)
  const number = String(bore.surveys.indexOf(survey) + 1)
  const unnamed = survey.date === undefined ? said.numbered(number) : said.dated(dayText(survey.date))
  return destinations.inHand(name, survey.name === undefined ? unnamed : said.named(survey.name))
}

function SettingField({ onSize }: { readonly onSize: (mm: number | undefined) => void }) {
  const id = useId()
  const [typed, setTyped] = useState('')
  const why = refusalOf(typed)
  return (
    <div className="pick-field">
      <label htmlFor={id}>{words.table.labels.setting}</label>
      <input
        id={id}
        type="text"
        inputMode="decimal"
        autoComplete="off"
        value={typed}
        aria-describedby={`${id}-why`}
        aria-invalid={typed !== '' && why !== undefined}
        onChange={({ target }) => {
          setTyped(target.value)
          const read = readNumber(target.value)
          onSize(read.ok && refusalOf(target.value) === undefined ? read.value : undefined)
        }}
      />
      <p id={`${id}-why`} className="soft">
        {typed === '' || why === undefined ? words.table.settingLead : why}
      </p>
    </div>
  )
}

function refusalOf(typed: string): string | undefined {
  const read = readNumber(typed)
  if (!read.ok) return words.number.refused[read.why]
  const range = rangeOf('settingSizeMm')
  if (!range || (read.value >= range.least && read.value <= range.most)) return undefined
  const { least, most } = range
  return words.number.outOfRange(length(read.value, 3), length(least, 0), length(most, 0))
}
