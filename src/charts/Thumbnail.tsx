import { useId, useMemo } from 'react'
import { hatchLines } from './map-texture'
import './unrolled-map.css'

/** What is drawn at a place of a thumbnail. */
export type ThumbnailPlace =
  | { readonly kind: 'step'; readonly step: number; readonly isMeasured: boolean }
  | { readonly kind: 'proven-above' | 'proven-below' | 'port' }

interface ThumbnailProps {
  /** Row by row; empty for a bore that nobody measured. */
  readonly places: readonly ThumbnailPlace[]
  readonly columns: number
  readonly rows: number
  /** Colours of the steps. */
  readonly colours: readonly string[]
  readonly label: string
}

/** Side of a place, pixels. */
const side = 3

/** The wall unrolled, so small that jobs are told apart by it: a drawing, from which nothing is read. */
export function Thumbnail({ places, columns, rows, colours, label }: ThumbnailProps) {
  const id = useId()
  const width = columns * side
  const height = rows * side
  const paths = useMemo(() => pathsOf(places, columns), [places, columns])
  const unmeasured = places.length === 0 ? `M0,0h${width}v${height}h${-width}Z` : paths.unmeasured
  const hatch = hatchLines({ left: 0, top: 0, width, height, lengthMm: 1 })
  return (
    <svg className="thumbnail" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={label}>
      <rect width={width} height={height} className="map-ground" />
      {paths.steps.map(([step, path]) => (
        <path key={step} d={path} fill={colours[step]} />
      ))}
      {places.length === 0 ? null : <path d={unmeasured} className="map-unmeasured" />}
      <clipPath id={id}>
        <path d={unmeasured} />
      </clipPath>
      <path d={hatch} clipPath={`url(#${id})`} className="map-hatch" />
      <path d={paths.above} className="thumbnail-above" />
      <path d={paths.below} className="thumbnail-below" />
      <path d={paths.ports} className="thumbnail-port" />
      <rect x="0.5" y="0.5" width={width - 1} height={height - 1} className="map-frame" />
    </svg>
  )
}

interface Paths {
  readonly steps: readonly (readonly [number, string])[]
  readonly unmeasured: string
  readonly above: string
  readonly below: string
  readonly ports: string
}

function pathsOf(places: readonly ThumbnailPlace[], columns: number): Paths {
  const steps = new Map<number, string>()
  let unmeasured = ''
  const signs = { 'proven-above': '', 'proven-below': '', port: '' }
  places.forEach((place, index) => {
    const cell = `M${(index % columns) * side},${Math.floor(index / columns) * side}h${side}v${side}h${-side}Z`
    if (place.kind !== 'step') {
      signs[place.kind] += cell
      return
    }
    steps.set(place.step, (steps.get(place.step) ?? '') + cell)
    if (!place.isMeasured) unmeasured += cell
  })
  return {
    steps: [...steps],
    unmeasured,
    above: signs['proven-above'],
    below: signs['proven-below'],
    ports: signs.port,
  }
}
