import { useId, useMemo } from 'react'
import type { Port } from '../core/measured'
import { columnAt, deviationAt, rowAt } from '../core/surface/drawn-position'
import type { WallGrid } from '../core/surface/wall-grid'
import { hatchedRects } from './hatched-rects'
import { MapPorts } from './MapPorts'
import { MapUnmeasured } from './MapUnmeasured'
import type { MapPaint } from './MapWall'
import { type MapScale, placeUnder } from './map-scale'
import { pathOfRects } from './map-texture'

interface ScanMapWallProps {
  readonly grid: WallGrid
  readonly paint: MapPaint
  readonly ports: readonly Port[]
  readonly scale: MapScale
}

/** The wall of a scan, too fine for lines: an image of its colours, with hatching and ports. An element of an SVG. */
export function ScanMapWall({ grid, paint, ports, scale }: ScanMapWallProps) {
  const id = useId()
  const image = useMemo(() => imageOf(grid, paint, scale), [grid, paint, scale])
  const hatched = useMemo(() => pathOfRects(hatchedRects(grid, scale)), [grid, scale])
  const { left: x, top: y, width, height } = scale
  return (
    <>
      <clipPath id={`${id}-wall`}>
        <rect x={x} y={y} width={width} height={height} />
      </clipPath>
      <g clipPath={`url(#${id}-wall)`}>
        {image === undefined ? null : (
          <image href={image} x={x} y={y} width={width} height={height} preserveAspectRatio="none" />
        )}
        <MapUnmeasured path={hatched} scale={scale} id={id} />
        <MapPorts ports={ports} scale={scale} />
      </g>
      <rect x={x} y={y} width={width} height={height} className="map-frame" />
    </>
  )
}

/** An image that the graphics would have to give back first is made on the processor. */
export const onProcessor: CanvasRenderingContext2DSettings = { willReadFrequently: true }

/** Two for each pixel of the page across, one down: scores run along the depth. */
const pixelsAcross = 2

/** The colours of a wall as an image; undefined where the browser draws none. */
function imageOf(grid: WallGrid, paint: MapPaint, scale: MapScale): string | undefined {
  const canvas = document.createElement('canvas')
  canvas.width = Math.max(1, Math.round(scale.width * pixelsAcross))
  canvas.height = Math.max(1, Math.round(scale.height))
  const pen = canvas.getContext('2d', onProcessor)
  if (!pen) return undefined
  const image = pen.createImageData(canvas.width, canvas.height)
  const colours = coloursOf(paint)
  const { lowUm, highUm } = paint.span
  const columns = Array.from({ length: canvas.width }, (_, x) => {
    const place = placeUnder(scale, scale.left + ((x + 0.5) / canvas.width) * scale.width, scale.top)
    return columnAt(grid, ((place?.angleDegrees ?? 0) * Math.PI) / 180)
  })
  for (let y = 0; y < canvas.height; y++) {
    const row = rowAt(grid, ((y + 0.5) / canvas.height) * scale.lengthMm)
    columns.forEach((column, x) => {
      const share = (deviationAt(grid, column, row) - lowUm) / (highUm - lowUm)
      const colour = colours[Math.round(Math.min(1, Math.max(0, share)) * (colours.length - 1))]
      image.data.set(colour ?? [0, 0, 0, 255], (y * canvas.width + x) * 4)
    })
  }
  pen.putImageData(image, 0, 0)
  return canvas.toDataURL()
}

const steps = 128

/** The ramp in even steps, red, green, blue and cover of each. */
function coloursOf({ colour, span }: MapPaint): readonly (readonly [number, number, number, number])[] {
  return Array.from({ length: steps }, (_, step) => {
    const css = colour(span.lowUm + (step / (steps - 1)) * (span.highUm - span.lowUm))
    const [red = 0, green = 0, blue = 0] = (css.match(/\d+(\.\d+)?/g) ?? []).map(Number)
    return [red, green, blue, 255] as const
  })
}
