import { useId, useMemo } from 'react'
import type { ComparedDifference } from '../../job/compared'
import {
  type DifferenceCell,
  differenceCautions,
  differenceHeading,
  differenceLines,
  differenceTable,
} from '../../words/compared'
import { inShownUnit } from '../../words/length-unit'
import { inMicrons } from '../../words/numbers'
import { words } from '../../words/words'
import type { PaintOf } from './paint-of'
import type { OnCompare } from './use-compared'

/** The difference in figures: what the colours of its wall mean, each station, the largest and the mean. */
export function DifferencePart({ on, paintOf }: { readonly on: OnCompare } & { readonly paintOf: PaintOf }) {
  const { difference: found } = on
  if (!found) return null
  const said = words.compare.less
  return (
    <section className="difference" aria-label={said.title}>
      <h2>{differenceHeading(found.one, found.other)}</h2>
      <div className="difference-parts">
        <Stations found={found} />
        <div>
          <Lines found={found} />
          <Key found={found} paintOf={paintOf} />
        </div>
      </div>
    </section>
  )
}

function Stations({ found }: { readonly found: ComparedDifference }) {
  const said = words.compare.less
  const { axes, rows } = differenceTable(found.difference)
  return (
    <table className="difference-table">
      <caption>{inShownUnit(said.table)}</caption>
      <thead>
        <tr>
          {[said.level, ...axes].map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ level, cells }) => (
          <tr key={level}>
            <th scope="row">{level}</th>
            {cells.map((cell, index) => (
              <Cell key={axes[index]} cell={cell} />
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  )
}

function Cell({ cell }: { readonly cell: DifferenceCell | undefined }) {
  if (!cell) return <td>{words.block.none}</td>
  const said = words.compare.less
  return (
    <td className={cell.standsOut ? 'is-out' : 'is-within'}>
      <span>{cell.text}</span>
      <span className="only-heard"> {cell.standsOut ? said.stands : said.within}</span>
    </td>
  )
}

function Lines({ found }: { readonly found: ComparedDifference }) {
  return (
    <>
      <dl className="difference-lines">
        {differenceLines(found.difference).map(({ name, figure, detail }) => (
          <div key={name}>
            <dt>
              {name}
              <small>{detail}</small>
            </dt>
            <dd>{figure}</dd>
          </div>
        ))}
      </dl>
      {differenceCautions(found.difference).map((text) => (
        <p key={text} className="difference-caution">
          {text}
        </p>
      ))}
    </>
  )
}

const rampSteps = 24
const ramp = { width: 240, height: 12 }

function Key({ found, paintOf }: { readonly found: ComparedDifference } & { readonly paintOf: PaintOf }) {
  const said = words.compare.less
  const id = useId()
  const { grid } = found
  const { colour, span } = useMemo(() => paintOf(grid, undefined), [grid, paintOf])
  const step = ramp.width / rampSteps
  return (
    <div className="difference-key">
      <svg viewBox={`0 0 ${ramp.width} ${ramp.height}`} {...ramp} role="img" aria-labelledby={id}>
        <title id={id}>{said.key}</title>
        {Array.from({ length: rampSteps }, (_, index) => index * step).map((x) => (
          <rect
            key={x}
            x={x}
            width={step + 0.5}
            height={ramp.height}
            fill={colour(span.lowUm + ((x + step / 2) / ramp.width) * (span.highUm - span.lowUm))}
          />
        ))}
        <path d={`M${ramp.width / 2},0v${ramp.height}`} />
      </svg>
      <p className="difference-scale">
        <span>{inMicrons(span.lowUm / 1000, { sign: true })}</span>
        <span>0</span>
        <span>{inMicrons(span.highUm / 1000, { sign: true })}</span>
      </p>
      <ul>
        <li>
          <svg viewBox="0 0 22 12" aria-hidden="true">
            {[2, 8, 14, 20].flatMap((x) => [
              <circle key={x} cx={x} cy="3" r="1.1" />,
              <circle key={-x} cx={x - 3} cy="8.5" r="1.1" />,
            ])}
          </svg>
          {said.withinDoubt}
        </li>
        <li>
          <svg viewBox="0 0 22 12" aria-hidden="true">
            <path className="is-firm" d="M1 10C6 1 16 1 21 10" />
          </svg>
          {said.standsOut}
        </li>
        <li>
          <svg viewBox="0 0 22 12" aria-hidden="true">
            <path d="M-2 6 4 0M-2 12 10 0M4 12 16 0M10 12 22 0M16 12 24 4" />
          </svg>
          {said.notBoth}
        </li>
      </ul>
    </div>
  )
}
