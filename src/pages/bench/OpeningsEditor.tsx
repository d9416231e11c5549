import { type ReactNode, useState } from 'react'
import type { Belt, Port } from '../../core/measured'
import type { Problem } from '../../core/problem'
import { mirrorPort, setBelts, setPorts } from '../../job/commands'
import { newId } from '../../job/new-id'
import { inShownUnit } from '../../words/length-unit'
import { words } from '../../words/words'
import { ChoiceField } from './ChoiceField'
import { writtenLength } from './marks'
import { NeededNumberField } from './NumberField'
import { OpeningName } from './OpeningName'
import { PortRow } from './PortRow'
import { attempt, perform, refusalOf } from './perform'
import { Sentence } from './Sentence'
import type { OnBench } from './use-job'
import { useRange } from './use-range'

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
  const keep = (next: readonly Port[]) => attempt(words.changes.ports, (job) => setPorts(job, boreId, next))
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
              <th scope="col">{inShownUnit(said.fromDepth)}</th>
              <th scope="col">{inShownUnit(said.toDepth)}</th>
              <th scope="col">{way === 'arc' ? inShownUnit(said.width) : said.fromAngle}</th>
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
            options={ways.map((value) => ({ value, text: inShownUnit(said.ways[value]) }))}
            onChoose={(value) => onChoose(value === 'arc' ? 'arc' : 'edges')}
          />
        ),
      }}
    />
  )
}

function BeltRows({ boreId, belts }: { readonly boreId: string; readonly belts: readonly Belt[] }) {
  const said = words.bore.belts
  const keep = (next: readonly Belt[]) => attempt(words.changes.belts, (job) => setBelts(job, boreId, next))
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
        <BeltRow key={belt.id} belt={belt} change={(patch) => change(belt.id, patch)}>
          <RemoveButton
            label={said.remove(belt.name)}
            onRemove={() => keep(belts.filter(({ id }) => id !== belt.id))}
          />
        </BeltRow>
      ))}
      <button type="button" className="quiet" onClick={add}>
        {said.add}
      </button>
    </section>
  )
}

function BeltRow(props: {
  readonly belt: Belt
  readonly change: (patch: Partial<Belt>) => readonly Problem[]
  readonly children: ReactNode
}) {
  const { belt, change, children } = props
  const heads = words.bore.ports
  const depths = useRange<never>({
    name: `depths of belt ${belt.id}`,
    low: belt.fromDepthMm,
    high: belt.toDepthMm,
    keep: (fromDepthMm, toDepthMm) => change({ fromDepthMm, toDepthMm }),
    written: writtenLength,
  })
  return (
    <div className="belt">
      <OpeningName name={belt.name} rename={(name) => refusalOf(change({ name }))} />
      <NeededNumberField label={`${belt.name}: ${heads.fromDepth}`} width={5} length {...depths.low} />
      <NeededNumberField label={`${belt.name}: ${heads.toDepth}`} width={5} length {...depths.high} />
      {children}
    </div>
  )
}

function RemoveButton({ label, onRemove }: { readonly label: string; readonly onRemove: () => void }) {
  return (
    <button type="button" className="quiet" aria-label={label} title={label} onClick={onRemove}>
      ×
    </button>
  )
}
