/** The weights of a Gaussian filter around a turn, made once for the angles of a scan. */
export interface TurnKernel {
  readonly anglesDegrees: readonly number[]
  /** Wavelength at the cut-off, degrees. */
  readonly waveDegrees: number
  /** For each angle the first of its neighbours, itself among them, and where their weights begin. */
  readonly first: Int32Array
  readonly begin: Int32Array
  readonly weights: Float64Array
}

/** A level after a filter around the turn, in the order of its angles. */
export interface FilteredTurn {
  /** NaN where there is no value. */
  readonly values: Float64Array
  /** 1 where a value lies within half a cut-off wavelength of a gap, so that it leans on one side more. */
  readonly nearGap: Uint8Array
  /** What becomes of the standard deviation of independent errors, at the value where that is most: √Σw². */
  readonly scatterFactor: number
}

/** √(ln 2/π): the filter lets half of the amplitude through at the cut-off. */
const alpha = Math.sqrt(Math.LN2 / Math.PI)

/**
 * The Gaussian filter by undulations per revolution for a scan's angles: weights exp(−π·(δ/(α·λ))²), λ = 360°/cut-off,
 * α = √(ln 2/π), times the stretch that each value stands for. Of an undulation with n waves it lets exp(−ln 2·(n/cut-
 * off)²) through, half at the cut-off. Weights a whole wavelength away and further, below 1e-6, are left out, and none
 * reaches past half a turn. Source: ISO 16610-21:2011 (weights and transmission, from memory) on the closed profile
 * of ISO 12181-2:2011.
 */
export function turnKernel(anglesDegrees: readonly number[], cutOffUndulations: number): TurnKernel {
  if (!(cutOffUndulations > 0)) throw new RangeError(`turnKernel: a cut-off of ${cutOffUndulations}`)
  const count = anglesDegrees.length
  const waveDegrees = 360 / cutOffUndulations
  const reach = Math.min(waveDegrees, 180 - 1e-9)
  const widths = stretches(anglesDegrees)
  const first = new Int32Array(count)
  const begin = new Int32Array(count + 1)
  const weights: number[] = []
  for (let i = 0; i < count; i++) {
    let back = 0
    while (back + 1 < count && apart(anglesDegrees, i - back - 1, i) <= reach) back++
    first[i] = (i - back + count) % count
    for (let k = -back; k < count - back; k++) {
      const j = (i + k + count) % count
      const away = k <= 0 ? apart(anglesDegrees, j, i) : apart(anglesDegrees, i, j)
      if (k > 0 && away > reach) break
      weights.push(
        Math.exp(-Math.PI * ((k === 0 ? 0 : away) / (alpha * waveDegrees)) ** 2) * (widths[j] ?? 0),
      )
    }
    begin[i + 1] = weights.length
  }
  return { anglesDegrees, waveDegrees, first, begin, weights: Float64Array.from(weights) }
}

/**
 * A level filtered around the turn, radii in the order of the angles, NaN where there is a port. The weights of
 * the values that are there are made to add up to 1 again, so that a level of one height keeps it up to the edge of a
 * gap.
 */
export function filterTurn(kernel: TurnKernel, radii: Float64Array): FilteredTurn {
  const { first, begin, weights } = kernel
  const count = first.length
  const values = new Float64Array(count).fill(Number.NaN)
  let scatterFactor = 0
  for (let i = 0; i < count; i++) {
    const own = radii[i] ?? Number.NaN
    if (Number.isNaN(own)) continue
    let total = 0
    let sum = 0
    let squares = 0
    let j = first[i] ?? 0
    for (let at = begin[i] ?? 0, end = begin[i + 1] ?? 0; at < end; at++) {
      const radius = radii[j] ?? Number.NaN
      if (++j === count) j = 0
      if (Number.isNaN(radius)) continue
      const weight = weights[at] ?? 0
      total += weight
      // Differences from the value itself keep the digits.
      sum += weight * (radius - own)
      squares += weight * weight
    }
    values[i] = own + sum / total
    scatterFactor = Math.max(scatterFactor, Math.sqrt(squares) / total)
  }
  return { values, nearGap: nearGaps(kernel, radii), scatterFactor }
}

/** From one angle on to another one, degrees in (0, 360]. */
function apart(angles: readonly number[], from: number, to: number): number {
  const count = angles.length
  const away = (angles[(to + count) % count] ?? 0) - (angles[(from + count) % count] ?? 0)
  return away > 0 ? away : away + 360
}

/** What stretch each angle stands for: half of the way to either neighbour, and no more than its usual step. */
function stretches(angles: readonly number[]): number[] {
  const usual = usualStep(angles)
  return angles.map((_, i) => {
    const before = Math.min(apart(angles, i - 1, i), 1.5 * usual)
    const after = Math.min(apart(angles, i, i + 1), 1.5 * usual)
    return (before + after) / 2
  })
}

/** The middle one of the steps from angle to angle. */
function usualStep(angles: readonly number[]): number {
  const steps = angles.map((_, i) => apart(angles, i, i + 1)).sort((a, b) => a - b)
  return steps[steps.length >> 1] ?? 360
}

function nearGaps({ anglesDegrees, waveDegrees }: TurnKernel, radii: Float64Array): Uint8Array {
  const count = anglesDegrees.length
  const near = new Uint8Array(count)
  const usual = usualStep(anglesDegrees)
  for (const side of [1, -1]) {
    // Once round to know how far the last gap lies, and once more to mark.
    let away = Number.POSITIVE_INFINITY
    for (let step = 0; step < 2 * count; step++) {
      const i = (((side * step) % count) + count) % count
      const before = side > 0 ? apart(anglesDegrees, i - 1, i) : apart(anglesDegrees, i, i + 1)
      // An angle that is not listed is a gap like one without a value.
      away = before > 1.5 * usual ? usual : away + before
      if (Number.isNaN(radii[i])) away = 0
      else if (away <= waveDegrees / 2) near[i] = 1
    }
  }
  return near
}
