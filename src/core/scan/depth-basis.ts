/** Smooth functions of the depth: for each level the first of those that are not 0 there, and their values. */
export interface DepthBasis {
  /** How many functions there are. */
  readonly size: number
  /** How many of them are not 0 at a level, at most: the next `reach` from `first[level]`. */
  readonly reach: number
  readonly first: Int32Array
  /** [level · reach + k] */
  readonly values: Float64Array
}

/** Form is followed along the depth over lengths of this and more, mm. Fixed, own choice. */
export const smoothDepthMm = 10

/** So many pieces at most, whatever the length: what a look at the whole wall can hold. */
const mostPieces = 24

/**
 * B-splines over the levels of a scan, of the third degree and in pieces of equal length, each 10 mm or more and two
 * levels or more long; of a lower degree where there are fewer than four levels. They add up to 1 at every level.
 * Accuracy: rounding. Source: de Boor, A Practical Guide to Splines (1978), chapter X.
 */
export function depthBasis(depthsMm: readonly number[]): DepthBasis {
  const levels = depthsMm.length
  const top = depthsMm[0] ?? 0
  const span = (depthsMm[levels - 1] ?? 0) - top
  const degree = Math.min(3, levels - 1)
  const wanted = Math.min(mostPieces, Math.floor(span / smoothDepthMm), Math.floor(levels / 2))
  const pieces = Math.max(1, Math.min(wanted, levels - degree))
  const reach = degree + 1
  const first = new Int32Array(levels)
  const values = new Float64Array(levels * reach)
  for (const [level, depth] of depthsMm.entries()) {
    const along = span > 0 ? ((depth - top) / span) * pieces : 0
    const piece = Math.min(pieces - 1, Math.floor(along))
    first[level] = piece
    values.set(splinesAt(along - piece, degree), level * reach)
  }
  return { size: pieces + degree, reach, first, values }
}

/** Values of the splines that cover a piece, at a share of the way through it, by the recurrence of de Boor and Cox. */
function splinesAt(share: number, degree: number): Float64Array {
  const values = new Float64Array(degree + 1)
  values[0] = 1
  for (let d = 1; d <= degree; d++) {
    let carried = 0
    for (let k = 0; k < d; k++) {
      const part = (values[k] ?? 0) / d
      values[k] = carried + (k + 1 - share) * part
      carried = (share + d - 1 - k) * part
    }
    values[d] = carried
  }
  return values
}
