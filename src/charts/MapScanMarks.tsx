import type { ScanMark } from '../core/scan/scan-marks'
import type { MapScale } from './map-scale'
import { surfaceLabelBoxes } from './surface-labels'
import { lineAlong, surfaceOutline } from './surface-outline'
import './scan-marks.css'

/** About as wide as a digit is, and as high as its line, pixels. */
const digit = 7.5
const line = 15
const baseline = 11.5

/**
 * What stands out in a scan, each with one thin outline, so that it is not taken for a surface finding; with its number
 * in the list. Narrow lines within a wider mark are lines, so that they do not hide it.
 */
export function MapScanMarks(props: {
  readonly scale: MapScale
  readonly marks: readonly ScanMark[]
  /** Those pointed at. */
  readonly lit: readonly ScanMark[]
}) {
  const { scale, marks, lit } = props
  const drawn = marks.map((mark, index) => {
    const outline = mark.within === undefined ? surfaceOutline(scale, mark) : lineAlong(scale, mark)
    return { mark, index, outline, text: String(index + 1) }
  })
  const named = drawn.filter(({ mark }) => mark.within === undefined)
  const boxes = surfaceLabelBoxes(
    scale,
    named.map(({ outline, text }) => ({ boxes: outline.boxes, width: text.length * digit, height: line })),
  )
  return (
    <g className="scan-mark-layer">
      {drawn.map(({ mark, index, outline }) => (
        <g key={index} className={lit.includes(mark) ? 'scan-mark is-lit' : 'scan-mark'}>
          <path d={outline.path} className="scan-mark-ground" />
          <path d={outline.path} className="scan-mark-line" />
        </g>
      ))}
      {named.map(({ index, text }, at) => {
        const box = boxes[at]
        return box ? (
          <text key={index} x={box.x} y={box.y + baseline} className="map-surface-label">
            {text}
          </text>
        ) : null
      })}
    </g>
  )
}
