import { useState } from 'react'
import type { Belt, Port } from '../../core/measured'
import { type PortArc, portArc, portEdges } from '../../core/ports/port-arc'
import { mirrorPort, setBelts, setPorts } from '../../job/commands'
import { newId } from '../../job/new-id'
import { plain } from '../../words/numbers'
import { words } from '../../words/words'
import { ChoiceField } from './ChoiceField'
import { NeededNumberField } from './NumberField'
import { perform } from './perform'
import { Sentence } from './Sentence'
import { TypedField } from './TypedField'
import type { OnBench } from './use-job'

/** Ports and belts of the bore, a row each. */
export function OpeningsEditor({ bore, finding, setUp }: OnBench) {
  const said = words.bore
  return (
    <details className="openings">
      <summary>
        {said.ports.title} {bore.ports.length > 0 ? `(${bore.ports.length})` : ''} · {said.belts.title}{' '}
        {bore.belts.length > 0 ? `(${bore.belts.length})` : ''}
      </summary>
      <PortRows
        boreId={bore.id}
        ports={bore.ports}
        diameterMm={finding.pair?.maxMm ?? finding.pair?.minMm ?? setUp.settingSizeMm}
      />
      <BeltRows boreId={bore.id} belts={bore.belts} />
    </details>
  )
}

/** How a port's place around the bore is typed: kept are always the angles of its edges. */
const ways = ['edges', 'arc'] as const
type Way = (typeof ways)[number]

function PortRows(props: {
  readonly boreId: string
  readonly ports: readonly Port[]
  /** Turns mm along the wall into angle. */
  readonly diameterMm: number
}) {
  const { boreId, ports, diameterMm } = props
  const [way, setWay] = useState<Way>('edges')
  const said = words.bore.ports
  const keep = (next: readonly Port[]) => perform(words.changes.ports, (job) => setPorts(job, boreId, next))
  const change = (id: string, patch: Partial<Port>) =>
    keep(ports.map((port) => (port.id === id ? { ...port, ...patch } : port)))
  const add = () =>
    keep([
      ...ports,
      {
        id: newId(),
        name: `${said.newName} ${ports.length + 1}`,
        fromDepthMm: 30,
        toDepthMm: 50,
        fromDegrees: 330,
        toDegrees: 30,
      },
    ])
  return (
    <section>
      <p className="aside">
        {said.lead} <WayChoice way={way} onChoose={setWay} />
      </p>
      {ports.length > 0 ? (
        <table>
          <thead>
            <tr>
              <th scope="col">{said.name}</th>
              <th scope="col">{said.fromDepth}</th>
              <th scope="col">{said.toDepth}</th>
              <th scope="col">{way === 'arc' ? said.width : said.fromAngle}</th>
              <th scope="col">{way === 'arc' ? said.middle : said.toAngle}</th>
              <td />
            </tr>
          </thead>
          <tbody>
            {ports.map((port) => (
              <PortRow
                key={port.id}
                port={port}
                arcIn={way === 'arc' ? diameterMm : undefined}
                change={(patch) => change(port.id, patch)}
              >
                <button
                  type="button"
                  className="quiet"
                  aria-label={said.mirror(port.name)}
                  title={said.mirror(port.name)}
                  onClick={() =>
                    perform(words.changes.ports, (job) =>
                      mirrorPort(job, boreId, port.id, newId, said.mirrorSuffix),
                    )
                  }
                >
                  {said.mirrorShort}
                </button>
                <RemoveButton
                  label={said.remove(port.name)}
                  onRemove={() => keep(ports.filter(({ id }) => id !== port.id))}
                />
              </PortRow>
            ))}
          </tbody>
        </table>
      ) : null}
      <button type="button" className="quiet" onClick={add}>
        {said.add}
      </button>
    </section>
  )
}

function WayChoice({ way, onChoose }: { readonly way: Way; readonly onChoose: (way: Way) => void }) {
  const said = words.bore.ports
  return (
    <Sentence
      template={said.measured}
      fields={{
        way: (
          <ChoiceField
            label={said.measuredBy}
            value={way}
            options={ways.map((value) => ({ value, text: said.ways[value] }))}
            onChoose={(value) => onChoose(value === 'arc' ? 'arc' : 'edges')}
          />
        ),
      }}
    />
  )
}

type Change<Opening> = (patch: Partial<Opening>) => string | undefined

function PortRow(props: {
  readonly port: Port
  /** Diameter in which width and middle are typed, mm; undefined where the edges are. */
  readonly arcIn: number | undefined
  readonly change: Change<Port>
  readonly children: React.ReactNode
}) {
  const { port, arcIn, change, children } = props
  const said = words.bore.ports
  const number = (field: 'fromDepthMm' | 'toDepthMm' | 'fromDegrees' | 'toDegrees', label: string) => (
    <td>
      <NeededNumberField
        label={`${port.name}: ${label}`}
        value={port[field]}
        width={5}
        keep={(value) => change({ [field]: value })}
      />
    </td>
  )
  return (
    <tr>
      <td>
        <NameField name={port.name} change={change} />
      </td>
      {number('fromDepthMm', said.fromDepth)}
      {number('toDepthMm', said.toDepth)}
      {arcIn === undefined ? (
        <>
          {number('fromDegrees', said.fromAngle)}
          {number('toDegrees', said.toAngle)}
        </>
      ) : (
        <ArcCells port={port} diameterMm={arcIn} change={change} />
      )}
      <td className="row-buttons">{children}</td>
    </tr>
  )
}

function ArcCells(props: {
  readonly port: Port
  readonly diameterMm: number
  readonly change: Change<Port>
}) {
  const { port, diameterMm, change } = props
  const said = words.bore.ports
  const arc = portArc(port, diameterMm)
  const most = Math.PI * diameterMm
  const keep = (patch: Partial<PortArc>) => {
    const next = { ...arc, ...patch }
    return next.widthMm > 0 && next.widthMm < most
      ? change(portEdges(next, diameterMm))
      : words.number.outOfRange(plain(next.widthMm, 2), '0', plain(most, 2))
  }
  return (
    <>
      <td>
        <NeededNumberField
          label={`${port.name}: ${said.width}`}
          value={Number(arc.widthMm.toFixed(2))}
          width={5}
          keep={(widthMm) => keep({ widthMm })}
        />
      </td>
      <td>
        <NeededNumberField
          label={`${port.name}: ${said.middle}`}
          value={Number(arc.centreDegrees.toFixed(2))}
          width={5}
          keep={(centreDegrees) => keep({ centreDegrees })}
        />
      </td>
    </>
  )
}

function NameField({ name, change }: { readonly name: string; readonly change: Change<{ name: string }> }) {
  return (
    <TypedField
      label={`${words.bore.ports.name}: ${name}`}
      text={name}
      placeholder=""
      numeric={false}
      width={15}
      commit={(typed) => change({ name: typed.trim() })}
    />
  )
}

function BeltRows({ boreId, belts }: { readonly boreId: string; readonly belts: readonly Belt[] }) {
  const said = words.bore.belts
  const heads = words.bore.ports
  const keep = (next: readonly Belt[]) => perform(words.changes.belts, (job) => setBelts(job, boreId, next))
  const change = (id: string, patch: Partial<Belt>) =>
    keep(belts.map((belt) => (belt.id === id ? { ...belt, ...patch } : belt)))
  const add = () =>
    keep([
      ...belts,
      { id: newId(), name: `${said.newName} ${belts.length + 1}`, fromDepthMm: 30, toDepthMm: 50 },
    ])
  return (
    <section>
      <p className="aside">{said.lead}</p>
      {belts.map((belt) => (
        <div key={belt.id} className="belt">
          <NameField name={belt.name} change={(patch) => change(belt.id, patch)} />
          <NeededNumberField
            label={`${belt.name}: ${heads.fromDepth}`}
            value={belt.fromDepthMm}
            width={5}
            keep={(fromDepthMm) => change(belt.id, { fromDepthMm })}
          />
          <NeededNumberField
            label={`${belt.name}: ${heads.toDepth}`}
            value={belt.toDepthMm}
            width={5}
            keep={(toDepthMm) => change(belt.id, { toDepthMm })}
          />
          <RemoveButton
            label={said.remove(belt.name)}
            onRemove={() => keep(belts.filter(({ id }) => id !== belt.id))}
          />
        </div>
      ))}
      <button type="button" className="quiet" onClick={add}>
        {said.add}
      </button>
    </section>
  )
}

function RemoveButton({ label, onRemove }: { readonly label: string; readonly onRemove: () => void }) {
  return (
    <button type="button" className="quiet" aria-label={label} title={label} onClick={onRemove}>
      ×
    </button>
  )
}
