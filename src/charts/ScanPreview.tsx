import { useMemo } from 'react'
import type { RadialScan } from '../core/scan/radial-scan'
import { onProcessor } from './ScanMapWall'

/** A scan as it stands in its file, unrolled, small: angle across from 180° to 180°, depth down, one place a pixel. */
export function ScanPreview(props: {
  readonly scan: RadialScan
  readonly label: string
  readonly width: number
  readonly height: number
}) {
  const { scan, label, width, height } = props
  const image = useMemo(() => imageOf(scan, width, height), [scan, width, height])
  if (image === undefined) return null
  return <img className="scan-preview" src={image} alt={label} width={width} height={height} />
}

/** Lightness of the nearest and the furthest radius, of 255. */
const dark = 70
const light = 235
const hatchPx = 6

function imageOf(
  { depthsMm, anglesDegrees, radiiUm }: RadialScan,
  width: number,
  height: number,
): string | undefined {
  const canvas = document.createElement('canvas')
  canvas.width = width
  canvas.height = height
  const pen = canvas.getContext('2d', onProcessor)
  if (!pen) return undefined
  const image = pen.createImageData(width, height)
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (const radius of radiiUm) {
    if (radius < least) least = radius
    if (radius > most) most = radius
  }
  const columns = Array.from({ length: width }, (_, x) =>
    nearest(anglesDegrees, (((x + 0.5) / width) * 360 + 180) % 360),
  )
  for (let y = 0; y < height; y++) {
    const [first = 0] = depthsMm
    const level = nearest(depthsMm, first + ((y + 0.5) / height) * ((depthsMm.at(-1) ?? first) - first))
    columns.forEach((column, x) => {
      const radius = radiiUm[level * anglesDegrees.length + column] ?? Number.NaN
      const share = most > least ? (radius - least) / (most - least) : 0.5
      const empty = (x + y) % hatchPx === 0 ? dark : 255
      const grey = Number.isNaN(radius) ? empty : dark + share * (light - dark)
      image.data.set([grey, grey, grey, 255], (y * width + x) * 4)
    })
  }
  pen.putImageData(image, 0, 0)
  return canvas.toDataURL()
}

/** Index of the nearest of increasing values. */
function nearest(values: readonly number[], x: number): number {
  let low = 0
  let high = values.length
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if ((values[middle] ?? Number.NaN) <= x) low = middle
    else high = middle
  }
  const next = values[low + 1]
  return next !== undefined && next - x < x - (values[low] ?? x) ? low + 1 : low
}
