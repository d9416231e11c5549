/** Residuals up to this many σ keep their whole weight: 95 % efficient on normal errors. */
const huberBend = 1.345

/** Residuals beyond this many σ have no weight at all: 95 % efficient on normal errors. */
const bisquareEnd = 4.685

/** σ of a normal distribution over the median of its absolute values. */
const sigmaOverMedian = 1.4826022185056018

/**
 * Weight of a residual of t standard deviations by Huber's function: 1 up to 1.345, then 1.345/|t|. Its fit has one
 * solution wherever it starts. Source: Huber, Robust Estimation of a Location Parameter, Ann. Math. Stat. 35 (1964).
 */
export function huberWeight(t: number): number {
  const size = Math.abs(t)
  return size <= huberBend ? 1 : huberBend / size
}

/**
 * Weight by the bisquare: (1 − (t/4.685)²)², and 0 beyond, so that what stands far out has no say. Source: Beaton
 * and Tukey, The Fitting of Power Series, Technometrics 16 (1974).
 */
export function bisquareWeight(t: number): number {
  const share = t / bisquareEnd
  const rest = 1 - share * share
  return rest <= 0 ? 0 : rest * rest
}

/** ψ and its derivative for the bisquare, ψ(t) = t·weight(t): what the doubt of such a fit is made of. */
export function bisquareInfluence(t: number): { readonly psi: number; readonly slope: number } {
  const share = t / bisquareEnd
  const rest = 1 - share * share
  return rest <= 0 ? { psi: 0, slope: 0 } : { psi: t * rest * rest, slope: rest * (1 - 5 * share * share) }
}

/**
 * Standard deviation from the median of absolute residuals, 1.4826 times it; residuals that are NaN are left out.
 * Half of the residuals may be anything. `scratch` holds as many numbers as there are residuals and is written over.
 * 0 where more than half are 0. Throws for none. Source: Hampel, The Influence Curve and its Role in Robust
 * Estimation, J. Am. Stat. Assoc. 69 (1974).
 */
export function robustSigma(residuals: Float64Array, scratch: Float64Array): number {
  let count = 0
  for (let i = 0; i < residuals.length; i++) {
    const size = Math.abs(residuals[i] ?? Number.NaN)
    if (!Number.isNaN(size)) scratch[count++] = size
  }
  if (count === 0) throw new RangeError('robustSigma of no residuals')
  return sigmaOverMedian * (upperMedian(scratch.subarray(0, count)) ?? 0)
}

/** The value in the middle, the upper of two, undefined for none; no NaN. The order of the values is changed. */
export function upperMedian(values: Float64Array): number | undefined {
  const wanted = values.length >> 1
  putInPlace(values, wanted, 0, values.length - 1)
  return values[wanted]
}

/** Fewer values than this are not worth a sample. */
const sampledFrom = 600

/**
 * Puts the value that belongs at `wanted` in its place, none larger before it and none smaller after it, between two
 * places. Linear time, some 1.5 comparisons for a value: the pivot is the like value of a sample. Source: Floyd and
 * Rivest, Algorithm 489, Commun. ACM 18 (1975).
 */
function putInPlace(values: Float64Array, wanted: number, from: number, to: number): void {
  let [low, high] = [from, to]
  while (low < high) {
    if (high - low > sampledFrom) {
      const count = high - low + 1
      const place = wanted - low + 1
      const log = Math.log(count)
      const size = 0.5 * Math.exp((2 * log) / 3)
      const side = 0.5 * Math.sqrt((log * size * (count - size)) / count) * Math.sign(place - count / 2)
      const sampleLow = Math.max(low, Math.floor(wanted - (place * size) / count + side))
      const sampleHigh = Math.min(high, Math.floor(wanted + ((count - place) * size) / count + side))
      putInPlace(values, wanted, sampleLow, sampleHigh)
    }
    const pivot = values[wanted] ?? 0
    let i = low
    let j = high
    while (i <= j) {
      while ((values[i] ?? 0) < pivot) i++
      while ((values[j] ?? 0) > pivot) j--
      if (i > j) break
      const kept = values[i] ?? 0
      values[i++] = values[j] ?? 0
      values[j--] = kept
    }
    if (wanted <= j) high = j
    else if (wanted >= i) low = i
    else return
  }
}
