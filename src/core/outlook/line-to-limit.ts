import { covarianceInverse } from './covariance-inverse'

/** Sizes over hours, the covariance of the sizes, and the limit that they grow toward. */
export interface SizesOverHours {
  /** In rising order, two or more, not all alike. */
  readonly hours: readonly number[]
  readonly sizes: readonly number[]
  /** Symmetric and positive definite, a row for each size, in the square of the unit of the sizes. */
  readonly covariance: readonly (readonly number[])[]
  readonly limit: number
  /** Standard uncertainties that a one-sided bound lies off: t at 0.95, or z. */
  readonly factor: number
}

/** When a straight line through sizes meets a limit, in hours from zero. */
export interface LineToLimit {
  readonly slope: number
  readonly slopeUncertainty: number
  /** The line at some hours, with its standard uncertainty. */
  readonly at: (hours: number) => { readonly size: number; readonly u: number }
  /** factor²·u²(slope)/slope²: from 1 on the slope is not significant and there is neither an expected nor a latest time. */
  readonly g: number
  /** The limit is reached already as far as the sizes can tell; `earliest` may then lie in the past. */
  readonly now: boolean
  /** The bound of the line meets the limit; absent where it never does. */
  readonly earliest?: number
  /** The line itself does. */
  readonly expected?: number
  /** The other bound does. */
  readonly latest?: number
  /** rᵀV⁻¹r of what the line leaves over, with two degrees of freedom fewer than sizes. */
  readonly misfit: number
}

/**
 * A line by generalised least squares, (XᵀV⁻¹X)⁻¹XᵀV⁻¹y, and when it meets the limit. With a + b·x its height
 * and C the covariance of a and b, the bounds are the roots of (limit − a − b·x)² = factor²·(C_aa + 2·C_ab·x +
 * C_bb·x²) at which the line is still below the limit (earliest) and beyond it (latest). It is `now` when the last
 * size, or from three sizes on the line at its hours, is within factor·u of the limit. Misfit is told and never
 * hidden by a larger u. Throws for fewer than two sizes or for hours that are all alike.
 * Source: Fieller, J. R. Stat. Soc. B 16 (1954) 175–185, as in the shelf-life bound of ICH Q1E (2003); the
 * covariance as in GUM (JCGM 100:2008) H.3, generalised.
 */
export function lineToLimit(given: SizesOverHours): LineToLimit {
  const { hours, sizes, covariance, limit, factor } = given
  const count = hours.length
  const last = hours[count - 1]
  if (count < 2 || sizes.length !== count || last === undefined || hours[0] === last) {
    throw new RangeError(`lineToLimit: ${count} hours and ${sizes.length} sizes, not over a time`)
  }
  const inverse = covarianceInverse(covariance)
  const line = fitted(hours, sizes, inverse)
  const { slope, caa, cab, cbb, level } = line
  const rest = (x: number) => limit - level - slope * x
  const variance = (x: number) => caa + 2 * cab * x + cbb * x * x
  const lastX = last - line.about
  const lastU = Math.sqrt(covariance[count - 1]?.[count - 1] ?? Number.NaN)
  const now =
    limit - (sizes[count - 1] ?? 0) <= factor * lastU ||
    (count >= 3 && rest(lastX) <= factor * Math.sqrt(variance(lastX)))
  const g = slope === 0 ? Number.POSITIVE_INFINITY : (factor * factor * cbb) / (slope * slope)
  const roots = rootsOf(
    slope * slope - factor * factor * cbb,
    -2 * (slope * (limit - level) + factor * factor * cab),
    (limit - level) ** 2 - factor * factor * caa,
  )
  const rises = g < 1 && slope > 0
  // A line that may as well fall has been at its bound in the past too: that is no time to come.
  const earliest = roots.find((x) => rest(x) >= 0 && (rises || x > lastX))
  const latest = rises ? roots.findLast((x) => rest(x) < 0) : undefined
  const expected = rises ? (limit - level) / slope : undefined
  return {
    slope,
    slopeUncertainty: Math.sqrt(cbb),
    at: (h) => {
      const x = h - line.about
      return { size: level + slope * x, u: Math.sqrt(Math.max(0, variance(x))) }
    },
    g,
    now,
    ...(earliest === undefined ? {} : { earliest: earliest + line.about }),
    ...(expected === undefined ? {} : { expected: expected + line.about }),
    ...(latest === undefined ? {} : { latest: latest + line.about }),
    misfit: line.misfit,
  }
}

/** The line about the mean of its hours, which keeps the digits. */
function fitted(hours: readonly number[], sizes: readonly number[], inverse: readonly (readonly number[])[]) {
  const about = hours.reduce((sum, h) => sum + h, 0) / hours.length
  const x = hours.map((h) => h - about)
  const base = sizes[0] ?? 0
  const y = sizes.map((size) => size - base)
  const product = (p: readonly number[], q: readonly number[]) =>
    p.reduce(
      (sum, value, i) => sum + value * (inverse[i] ?? []).reduce((s, v, j) => s + v * (q[j] ?? 0), 0),
      0,
    )
  const ones = hours.map(() => 1)
  const [s11, s1x, sxx] = [product(ones, ones), product(ones, x), product(x, x)]
  const [s1y, sxy] = [product(ones, y), product(x, y)]
  const determinant = s11 * sxx - s1x * s1x
  const rise = (sxx * s1y - s1x * sxy) / determinant
  const slope = (s11 * sxy - s1x * s1y) / determinant
  const left = y.map((value, i) => value - rise - slope * (x[i] ?? 0))
  return {
    about,
    level: base + rise,
    slope,
    caa: sxx / determinant,
    cab: -s1x / determinant,
    cbb: s11 / determinant,
    misfit: product(left, left),
  }
}

/** Real roots of a·x² + b·x + c in rising order; of the linear equation where a is 0 beside the rest. */
function rootsOf(a: number, b: number, c: number): number[] {
  if (a === 0) return b === 0 ? [] : [-c / b]
  const square = b * b - 4 * a * c
  if (square < 0) return []
  // The root that does not cancel first: Press et al., Numerical Recipes (3rd ed. 2007), 5.6.
  const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(square)) / 2
  return (q === 0 ? [0] : [q / a, c / q]).sort((one, other) => one - other)
}
