import type { DrawnStation } from '../core/findings'
import { depth, sizeWithDoubt } from '../words/numbers'
import { words } from '../words/words'
import { angleLabel } from './angle-label'
import { contactId, type MapContact, samePlace } from './map-contacts'
import { acrossOf, downOf, type MapPlace, type MapScale } from './map-scale'

/** The readings as small discs, both contacts, the place pointed at, and squares where the next reading is taken. */
export function MapMarks(props: {
  readonly id: string
  readonly contacts: readonly MapContact[]
  readonly scale: MapScale
  readonly pointed: MapPlace | undefined
  readonly next: MapPlace | undefined
  /** How a station's figure is written; as a size where absent. */
  readonly figureOf?: ((station: DrawnStation) => string) | undefined
}) {
  const { id, contacts, scale, pointed, next, figureOf = sizeOf } = props
  return (
    <>
      {contacts.map((contact) => (
        <g
          key={contactId(id, contact)}
          id={contactId(id, contact)}
          role="option"
          aria-selected={pointed !== undefined && samePlace(contact, pointed)}
          aria-label={contactLabel(contact, figureOf)}
        >
          {discsAcross(scale, contact.angleDegrees).map((x) => (
            <circle
              key={x}
              cx={x}
              cy={downOf(scale, contact.depthMm)}
              r={contact.station.counted ? 2.6 : 3}
              className={contact.station.counted ? 'map-station' : 'map-station map-station-open'}
            />
          ))}
        </g>
      ))}
      {next ? <MapNext scale={scale} next={next} /> : null}
      {pointed ? <MapPointer scale={scale} pointed={pointed} /> : null}
    </>
  )
}

/** Half the side of the square where the next reading is taken, pixels. */
const nextPx = 6

/** Both contacts of the station that is next, whether it was read or not. */
function MapNext({ scale, next }: { readonly scale: MapScale; readonly next: MapPlace }) {
  const y = downOf(scale, next.depthMm) - nextPx
  const across = [next.angleDegrees, (next.angleDegrees + 180) % 360]
  return (
    <g className="map-next">
      <title>{words.map.next(depth(next.depthMm), angleLabel(next.angleDegrees))}</title>
      {across
        .flatMap((angle) => discsAcross(scale, angle))
        .flatMap((x) =>
          (['map-next-edge', 'map-next-line'] as const).map((name) => (
            <rect
              key={`${name} ${x}`}
              className={name}
              x={x - nextPx}
              y={y}
              width={2 * nextPx}
              height={2 * nextPx}
            />
          )),
        )}
    </g>
  )
}

/** A contact at 180° stands at both edges. */
function discsAcross(scale: MapScale, angleDegrees: number): number[] {
  const x = acrossOf(scale, angleDegrees)
  return x === scale.left ? [x, scale.left + scale.width] : [x]
}

function MapPointer({ scale, pointed }: { readonly scale: MapScale; readonly pointed: MapPlace }) {
  const x = acrossOf(scale, pointed.angleDegrees)
  const y = downOf(scale, pointed.depthMm)
  return (
    <g className="map-pointer">
      <line x1={scale.left} x2={scale.left + scale.width} y1={y} y2={y} />
      <line x1={x} x2={x} y1={scale.top} y2={scale.top + scale.height} />
      <circle cx={x} cy={y} r="6" />
    </g>
  )
}

function sizeOf({ diameterMm, expandedMm }: DrawnStation): string {
  return sizeWithDoubt(diameterMm, expandedMm)
}

function contactLabel(
  { depthMm, angleDegrees, station }: MapContact,
  figureOf: (station: DrawnStation) => string,
): string {
  return `${depth(depthMm)}, ${angleLabel(angleDegrees)}: ${figureOf(station)}`
}
