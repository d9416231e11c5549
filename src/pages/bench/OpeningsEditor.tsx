import type { Belt, Port } from '../../core/measured'
import { mirrorPort, setBelts, setPorts } from '../../job/commands'
import { newId } from '../../job/new-id'
import { words } from '../../words/words'
import { NeededNumberField } from './NumberField'
import { perform } from './perform'
import { TypedField } from './TypedField'
import type { OnBench } from './use-job'

/** Ports and belts of the bore, a row each. */
export function OpeningsEditor({ bore }: OnBench) {
  const said = words.bore
  return (
    <details className="openings">
      <summary>
        {said.ports.title} {bore.ports.length > 0 ? `(${bore.ports.length})` : ''} · {said.belts.title}{' '}
        {bore.belts.length > 0 ? `(${bore.belts.length})` : ''}
      </summary>
      <PortRows boreId={bore.id} ports={bore.ports} />
      <BeltRows boreId={bore.id} belts={bore.belts} />
    </details>
  )
}

function PortRows({ boreId, ports }: { readonly boreId: string; readonly ports: readonly Port[] }) {
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
      <p className="aside">{said.lead}</p>
      {ports.length > 0 ? (
        <table>
          <thead>
            <tr>
              <th scope="col">{said.name}</th>
              <th scope="col">{said.fromDepth}</th>
              <th scope="col">{said.toDepth}</th>
              <th scope="col">{said.fromAngle}</th>
              <th scope="col">{said.toAngle}</th>
              <td />
            </tr>
          </thead>
          <tbody>
            {ports.map((port) => (
              <PortRow key={port.id} port={port} change={(patch) => change(port.id, patch)}>
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

type Change<Opening> = (patch: Partial<Opening>) => string | undefined

function PortRow(props: {
  readonly port: Port
  readonly change: Change<Port>
  readonly children: React.ReactNode
}) {
  const { port, change, children } = props
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
      {number('fromDegrees', said.fromAngle)}
      {number('toDegrees', said.toAngle)}
      <td className="row-buttons">{children}</td>
    </tr>
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
