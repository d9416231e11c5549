/** Decimals that a drawing of some hundred pixels needs. */
const perPixel = 10

/** A point may be left out that lies so near to the line without it, tenths of a pixel. */
const trifle = 1.5

/**
 * The same path in fewer letters: points relative to the one before, to a tenth of a pixel, and without those that no
 * eye would miss. A path of anything but straight lines between points stays as it is.
 */
export function shortPath(path: string): string {
  if (!/^(?:[MLZ][\d.,\s-]*)+$/.test(path)) return path
  const parts = path.match(/[MLZ][^MLZ]*/g) ?? []
  let written = ''
  let at: Point = { x: 0, y: 0 }
  let begun = at
  let run: Point[] = []
  const close = () => {
    written += linesFrom(at, run)
    at = run.at(-1) ?? at
    run = []
  }
  for (const part of parts) {
    if (part.startsWith('L')) {
      run.push(...pointsIn(part))
      continue
    }
    close()
    if (part.startsWith('Z')) {
      written += 'z'
      at = begun
      continue
    }
    const [first, ...others] = pointsIn(part)
    if (!first) return path
    written += `M${first.x / perPixel},${first.y / perPixel}`
    at = first
    begun = first
    run = others
  }
  close()
  return written
}

/** In tenths of a pixel. */
interface Point {
  readonly x: number
  readonly y: number
}

function pointsIn(part: string): Point[] {
  const numbers = (part.match(/-?\d*\.?\d+/g) ?? []).map((number) => Math.round(Number(number) * perPixel))
  return numbers.flatMap((x, index) => {
    const y = numbers[index + 1]
    return index % 2 === 0 && y !== undefined ? [{ x, y }] : []
  })
}

function linesFrom(from: Point, points: readonly Point[]): string {
  let at = from
  let leftOut: Point[] = []
  let text = ''
  points.forEach((point, index) => {
    const next = points[index + 1]
    leftOut.push(point)
    const end = at
    if (next && leftOut.every((one) => distanceTo(end, next, one) <= trifle)) return
    text += `${signed((point.x - at.x) / perPixel)}${signed((point.y - at.y) / perPixel)}`
    at = point
    leftOut = []
  })
  return text === '' ? '' : `l${text.trimStart()}`
}

/** From a point to the line between two others, its ends included. */
function distanceTo(a: Point, b: Point, point: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y]
  const square = dx * dx + dy * dy
  const along = square === 0 ? 0 : ((point.x - a.x) * dx + (point.y - a.y) * dy) / square
  const share = Math.min(1, Math.max(0, along))
  return Math.hypot(point.x - a.x - share * dx, point.y - a.y - share * dy)
}

/** A number that can stand behind another, without the nought before its point. */
function signed(value: number): string {
  const short = String(value).replace(/^(-?)0\./, '$1.')
  return value < 0 ? short : ` ${short}`
}
