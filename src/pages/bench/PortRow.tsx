import type { ReactNode } from 'react'
import type { Port } from '../../core/measured'
import { type PortArc, portArc, portEdges } from '../../core/ports/port-arc'
import type { Problem } from '../../core/problem'
import { lengthUnit } from '../../words/length-unit'
import { length, plain } from '../../words/numbers'
import { words } from '../../words/words'
import { writtenLength } from './marks'
import { NeededNumberField } from './NumberField'
import { OpeningName } from './OpeningName'
import { refusalOf } from './perform'
import { type RangeEnd, useRange } from './use-range'

type ChangePort = (patch: Partial<Port>) => readonly Problem[]

const written = (value: number) => plain(value, 2)

/** A port: its name, its depths, and its place around the bore. */
export function PortRow(props: {
  readonly port: Port
  /** Diameter in which width and middle are typed, mm; undefined where the edges are. */
  readonly arcIn: number | undefined
  readonly change: ChangePort
  readonly children: ReactNode
}) {
  const { port, arcIn, change, children } = props
  const said = words.bore.ports
  const depths = useRange<never>({
    name: `depths of port ${port.id}`,
    low: port.fromDepthMm,
    high: port.toDepthMm,
    keep: (fromDepthMm, toDepthMm) => change({ fromDepthMm, toDepthMm }),
    written: writtenLength,
  })
  const angles = useRange<never>({
    name: `edges of port ${port.id}`,
    low: port.fromDegrees,
    high: port.toDegrees,
    keep: (fromDegrees, toDegrees) => change({ fromDegrees, toDegrees }),
    written,
    isRound: true,
  })
  const number = (end: RangeEnd<never>, label: string, isDepth = false) => (
    <td>
      <NeededNumberField label={`${port.name}: ${label}`} width={5} length={isDepth} {...end} />
    </td>
  )
  return (
    <tr>
      <td>
        <OpeningName name={port.name} rename={(name) => refusalOf(change({ name }))} />
      </td>
      {number(depths.low, said.fromDepth, true)}
      {number(depths.high, said.toDepth, true)}
      {arcIn === undefined ? (
        <>
          {number(angles.low, said.fromAngle)}
          {number(angles.high, said.toAngle)}
        </>
      ) : (
        <ArcCells port={port} diameterMm={arcIn} change={change} />
      )}
      <td className="row-buttons">{children}</td>
    </tr>
  )
}

function ArcCells(props: { readonly port: Port; readonly diameterMm: number; readonly change: ChangePort }) {
  const { port, diameterMm, change } = props
  const said = words.bore.ports
  const arc = portArc(port, diameterMm)
  const most = Math.PI * diameterMm
  const keep = (patch: Partial<PortArc>) => {
    const next = { ...arc, ...patch }
    return next.widthMm > 0 && next.widthMm < most
      ? refusalOf(change(portEdges(next, diameterMm)))
      : words.number.outOfRange(length(next.widthMm, 2), '0', length(most, 2))
  }
  return (
    <>
      <td>
        <NeededNumberField
          label={`${port.name}: ${said.width}`}
          length
          value={lengthUnit() === 'inch' ? arc.widthMm : Number(arc.widthMm.toFixed(2))}
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
