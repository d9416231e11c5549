import type { Compared } from '../../job/compared'
import { compare } from '../../session/comparing'
import { comparedTitle } from '../../words/compared'
import { words } from '../../words/words'
import type { OnCompare } from './use-compared'

/** Which of those compared is taken from which. */
export function ChooseDifference({ on }: { readonly on: OnCompare }) {
  const { job, shown, less, noDifference } = on
  const said = words.compare.less
  const choose = (oneKey: string, otherKey: string | undefined) => {
    if (oneKey === '') return compare(job.id, { less: 'none' })
    const other = otherKey === oneKey ? undefined : otherKey
    const rest = shown.find(({ key }) => key !== oneKey)?.key
    const chosen = other ?? rest
    if (chosen !== undefined) compare(job.id, { less: { one: oneKey, other: chosen } })
  }
  if (shown.length < 2) return null
  return (
    <fieldset className="compare-part">
      <legend>{said.title}</legend>
      <p className="aside">{said.lead}</p>
      <Choice
        label={said.one}
        value={less?.[0].key ?? ''}
        from={shown}
        none={said.none}
        onChoose={(key) => choose(key, less?.[1].key)}
      />
      {less ? (
        <Choice
          label={said.other}
          value={less[1].key}
          from={shown.filter((one) => one !== less[0])}
          onChoose={(key) => choose(less[0].key, key)}
        />
      ) : null}
      {noDifference ? (
        <p className="aside">{noDifference === 'no-stations' ? said.noStations : said.readOtherwise}</p>
      ) : null}
    </fieldset>
  )
}

function Choice(props: {
  readonly label: string
  readonly value: string
  readonly from: readonly Compared[]
  readonly none?: string
  readonly onChoose: (key: string) => void
}) {
  const { label, value, from, none, onChoose } = props
  return (
    <label className="compare-select">
      <span>{label}</span>
      <select value={value} onChange={(event) => onChoose(event.target.value)}>
        {none === undefined ? null : <option value="">{none}</option>}
        {from.map((one) => (
          <option key={one.key} value={one.key}>
            {comparedTitle(one)}
          </option>
        ))}
      </select>
    </label>
  )
}
