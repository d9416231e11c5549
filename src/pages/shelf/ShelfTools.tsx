import { type ReactNode, useId } from 'react'
import {
  lookFor,
  type ShelfQuery,
  shelfOrders,
  shelfPlaces,
  soughtChecks,
  soughtStandings,
  wholeShelf,
} from '../../session/shelf-view'
import { words } from '../../words/words'
import { useLayout } from '../bench/phone/use-layout'
import { filtersSet, withoutMachine } from './shelf-query'

/** The field for searching, the filters and the order; on a phone the filters fold away. */
export function ShelfTools(props: { readonly query: ShelfQuery; readonly machines: readonly string[] }) {
  const { query, machines } = props
  const said = words.shelf
  const set = filtersSet(query)
  const isNarrow = useLayout() === 'one'
  const filters = <Filters query={query} machines={machines} />
  return (
    <search className="shelf-tools">
      <Labelled text={said.search} className="shelf-search">
        {(id) => (
          <input
            id={id}
            type="search"
            value={query.sought}
            placeholder={said.searchHint}
            autoComplete="off"
            spellCheck={false}
            onChange={(event) => lookFor({ sought: event.target.value })}
          />
        )}
      </Labelled>
      {isNarrow ? (
        <details className="shelf-filters">
          <summary>{set === 0 ? said.filters : said.filtersSet(set)}</summary>
          {filters}
        </details>
      ) : (
        filters
      )}
    </search>
  )
}

function Filters({ query, machines }: { readonly query: ShelfQuery; readonly machines: readonly string[] }) {
  const said = words.shelf
  const { labels } = said
  return (
    <div className="shelf-fields">
      <Labelled text={labels.machine}>
        {(id) => (
          <select
            id={id}
            value={query.machine}
            onChange={(event) => lookFor({ machine: event.target.value })}
          >
            <option value="">{said.anyMachine}</option>
            {machines.map((machine) => (
              <option key={machine} value={machine}>
                {machine === withoutMachine ? said.noMachine : machine}
              </option>
            ))}
          </select>
        )}
      </Labelled>
      <Labelled text={labels.from}>
        {(id) => (
          <input
            id={id}
            type="date"
            value={query.from}
            max={query.to}
            onChange={(event) => lookFor({ from: event.target.value })}
          />
        )}
      </Labelled>
      <Labelled text={labels.to}>
        {(id) => (
          <input
            id={id}
            type="date"
            value={query.to}
            min={query.from}
            onChange={(event) => lookFor({ to: event.target.value })}
          />
        )}
      </Labelled>
      <Choice
        label={labels.standing}
        value={query.standing}
        options={[
          { value: '', text: said.anyStanding },
          ...soughtStandings.map((value) => ({ value, text: words.block.standings[value] })),
        ]}
        onChoose={(standing) => lookFor({ standing })}
      />
      <Choice
        label={labels.check}
        value={query.check}
        options={[
          { value: '', text: said.anyCheck },
          ...soughtChecks.map((value) => ({ value, text: said.checks[value] })),
        ]}
        onChoose={(check) => lookFor({ check })}
      />
      <Choice
        label={labels.where}
        value={query.place}
        options={shelfPlaces.map((value) => ({ value, text: said.where[value] }))}
        onChoose={(place) => lookFor({ place })}
      />
      <Choice
        label={labels.order}
        value={query.order}
        options={shelfOrders.map((value) => ({ value, text: said.orders[value] }))}
        onChoose={(order) => lookFor({ order })}
      />
      {filtersSet(query) > 0 || query.sought !== '' ? (
        <button
          type="button"
          className="quiet"
          onClick={() => lookFor({ ...wholeShelf, order: query.order })}
        >
          {said.clear}
        </button>
      ) : null}
    </div>
  )
}

function Choice<Value extends string>(props: {
  readonly label: string
  readonly value: Value
  readonly options: readonly { readonly value: Value; readonly text: string }[]
  readonly onChoose: (value: Value) => void
}) {
  const { label, value, options, onChoose } = props
  return (
    <Labelled text={label}>
      {(id) => (
        <select
          id={id}
          value={value}
          onChange={(event) => {
            const chosen = options.find((option) => option.value === event.target.value)
            if (chosen) onChoose(chosen.value)
          }}
        >
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.text}
            </option>
          ))}
        </select>
      )}
    </Labelled>
  )
}

/** A control with its name above it. */
function Labelled(props: {
  readonly text: string
  readonly className?: string
  readonly children: (id: string) => ReactNode
}) {
  const id = useId()
  return (
    <div className={props.className}>
      <label htmlFor={id}>{props.text}</label>
      {props.children(id)}
    </div>
  )
}
