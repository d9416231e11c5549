import type { MapScale } from './map-scale'
import { hatchLines } from './map-texture'

/** Wall that nobody measured: a faint trace of the drawn shape under the hatch. An element of an SVG. */
export function MapUnmeasured(props: {
  /** The part of the wall that nobody measured. */
  readonly path: string
  readonly scale: MapScale
  /** Of the map, for the name of the clip. */
  readonly id: string
}) {
  const { path, scale, id } = props
  return (
    <>
      <path d={path} className="map-unmeasured" />
      <clipPath id={`${id}-hatched`}>
        <path d={path} />
      </clipPath>
      <path d={hatchLines(scale)} clipPath={`url(#${id}-hatched)`} className="map-hatch" />
    </>
  )
}
