import type { Port } from '../core/measured'
import { downOf, type MapScale, stretchesOf } from './map-scale'

/** The ports of a bore on its unrolled wall: holes, each with its name. An element of an SVG. */
export function MapPorts({ ports, scale }: { readonly ports: readonly Port[]; readonly scale: MapScale }) {
  return ports.flatMap((port) =>
    stretchesOf(scale, port.fromDegrees, port.toDegrees).map((stretch) => (
      <rect
        key={`${port.id} ${stretch.x}`}
        className="map-port"
        {...stretch}
        y={downOf(scale, port.fromDepthMm)}
        height={downOf(scale, port.toDepthMm) - downOf(scale, port.fromDepthMm)}
      >
        <title>{port.name}</title>
      </rect>
    )),
  )
}
