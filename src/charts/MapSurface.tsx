import type { SurfaceFinding, SurfacePlace } from '../core/measured'
import { surfacePlaceText, surfaceTitle } from '../words/surface'
import type { MapScale } from './map-scale'
import { surfaceLabelBoxes } from './surface-labels'
import { surfaceOutline } from './surface-outline'

/** About as wide as a letter of a label is, and as high as its line, pixels. */
const letter = 6.6
const line = 15
/** Of the text of a label, below the top of its line. */
const baseline = 11.5

/** Surface findings as double outlines with their labels. */
export function MapSurface(props: {
  readonly scale: MapScale
  readonly surface: readonly SurfaceFinding[]
  /** Ids of those pointed at. */
  readonly lit: readonly string[]
}) {
  const { scale, surface, lit } = props
  const marks = surface.map((finding, index) => {
    const text = surfaceTitle(index + 1, finding)
    const outline = surfaceOutline(scale, finding)
    return { finding, text, outline, boxes: outline.boxes, width: text.length * letter, height: line }
  })
  const labels = surfaceLabelBoxes(scale, marks)
  return (
    <>
      {marks.map(({ finding, text, outline }) => (
        <g key={finding.id} className={lit.includes(finding.id) ? 'map-surface is-lit' : 'map-surface'}>
          <title>{`${text}, ${surfacePlaceText(finding)}`}</title>
          <DoubleOutline path={outline.path} />
        </g>
      ))}
      {marks.map(({ finding, text }, index) => {
        const box = labels[index]
        return box ? (
          <text key={finding.id} x={box.x} y={box.y + baseline} className="map-surface-label">
            {text}
          </text>
        ) : null
      })}
    </>
  )
}

/** A line in ink with a paler one along its middle: two lines that run side by side. */
function DoubleOutline({ path }: { readonly path: string }) {
  return (
    <>
      <path d={path} className="map-surface-lit" />
      <path d={path} className="map-surface-ink" />
      <path d={path} className="map-surface-paper" />
    </>
  )
}

/** The place that is being drawn, and where it lies in figures, at the top of the map. */
export function DrawnPlace({ scale, place }: { readonly scale: MapScale; readonly place: SurfacePlace }) {
  const text = surfacePlaceText(place)
  const width = text.length * 7.4 + 12
  const x = scale.left + (scale.width - width) / 2
  // Not under the mark: at the other end of the map.
  const isHigh = (place.fromDepthMm + place.toDepthMm) / 2 < scale.lengthMm / 2
  const y = isHigh ? scale.top + scale.height - 26 : scale.top + 4
  return (
    <g className="map-surface is-drawn">
      <DoubleOutline path={surfaceOutline(scale, place).path} />
      <rect x={x} y={y} width={width} height="22" className="map-drawn-ground" />
      <text x={scale.left + scale.width / 2} y={y + 15.5} textAnchor="middle" className="map-drawn-text">
        {text}
      </text>
    </g>
  )
}
