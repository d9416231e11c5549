import type { RadialScan, ScanFit } from '../scan/radial-scan'
import { periodicPchip, placeOn, valueIn } from './pchip'

/** Levels × angles of a scan as it is drawn: angles in rad, radii and residuals in µm, NaN where there is no value. */
export interface ScanNodes {
  readonly depthsMm: readonly number[]
  readonly angles: readonly number[]
  readonly radiiUm: Float64Array
  readonly residualUm: Float64Array
}

const radians = Math.PI / 180

/**
 * The places of a scan, or, where there are more than the most, of each group of neighbours the one that stands out of
 * the smooth form most, drawn at the middle of the group. Own rule.
 */
export function scanNodes(
  { depthsMm, anglesDegrees }: RadialScan,
  { aboutAxisUm, smooth }: ScanFit,
  most: { readonly levels: number; readonly angles: number },
): ScanNodes {
  const rows = groupsOf(depthsMm, most.levels)
  const columns = groupsOf(anglesDegrees, most.angles)
  const radiiUm = new Float64Array(rows.length * columns.length).fill(Number.NaN)
  const residualUm = radiiUm.slice()
  rows.forEach((row, r) => {
    columns.forEach((column, c) => {
      const node = r * columns.length + c
      for (let level = row.from; level < row.to; level++) {
        for (let angle = column.from; angle < column.to; angle++) {
          const place = level * anglesDegrees.length + angle
          const residual = smooth.residualUm[place] ?? Number.NaN
          if (Number.isNaN(residual) || Math.abs(residual) < Math.abs(residualUm[node] || 0)) continue
          residualUm[node] = residual
          radiiUm[node] = aboutAxisUm[place] ?? Number.NaN
        }
      }
    })
  })
  return {
    depthsMm: rows.map(({ middle }) => middle),
    angles: columns.map(({ middle }) => middle * radians),
    radiiUm,
    residualUm,
  }
}

/** Neighbours in as many groups as there may be, none more than one larger than another. */
function groupsOf(lines: readonly number[], most: number) {
  const count = Math.min(lines.length, most)
  return Array.from({ length: count }, (_, group) => {
    const from = Math.floor((group * lines.length) / count)
    const to = Math.floor(((group + 1) * lines.length) / count)
    return { from, to, middle: ((lines[from] ?? 0) + (lines[to - 1] ?? 0)) / 2 }
  })
}

/**
 * Values at the nodes with those filled in that are missing (NaN): from a monotone cubic around through the others of the
 * level, a level without any from the nearest that has some. So every value stays within those of its level. Throws
 * without any value. Own derivation.
 */
export function filledNodes(
  { depthsMm, angles }: Pick<ScanNodes, 'depthsMm' | 'angles'>,
  values: Float64Array,
): Float64Array {
  const columns = angles.length
  const filled = values.slice()
  const empty: number[] = []
  depthsMm.forEach((_, row) => {
    const level = filled.subarray(row * columns, (row + 1) * columns)
    const known = [...level.keys()].filter((column) => !Number.isNaN(level[column]))
    if (known.length === 0) empty.push(row)
    else if (known.length < columns) fillLevel(level, known, angles)
  })
  for (const row of empty) {
    const nearest = [...depthsMm.keys()]
      .filter((other) => !empty.includes(other))
      .sort((a, b) => Math.abs(a - row) - Math.abs(b - row))[0]
    if (nearest === undefined) throw new RangeError('filledNodes: expected a value, got none')
    filled.copyWithin(row * columns, nearest * columns, (nearest + 1) * columns)
  }
  return filled
}

function fillLevel(level: Float64Array, known: readonly number[], angles: readonly number[]): void {
  const curve = periodicPchip(
    known.map((column) => angles[column] ?? 0),
    known.map((column) => level[column] ?? 0),
    2 * Math.PI,
  )
  for (const [column, angle] of angles.entries()) {
    if (!Number.isNaN(level[column])) continue
    const first = curve.knots[0] ?? 0
    const { interval, share } = placeOn(curve, angle < first ? angle + 2 * Math.PI : angle)
    level[column] = valueIn(curve, interval, share)
  }
}
