import { choleskyFactor, solvedBy } from '../statistics/cholesky'
import { levelSums, roomForSums } from './level-sums'
import type { TurnTable } from './turn-table'

/** One harmonic of a level: r has the part amplitude·cos(n·(θ − peak)). */
export interface Harmonic {
  readonly waves: number
  readonly amplitudeUm: number
  /** Where it stands furthest out, degrees in [0, 360/n). */
  readonly peakDegrees: number
  /** Its parts along cos nθ and sin nθ, and their variances and covariance for errors of standard uncertainty 1. */
  readonly cosineUm: number
  readonly sineUm: number
  readonly covariance: { readonly aa: number; readonly ab: number; readonly bb: number }
}

/** The harmonics of a level, the first at [0], as far as its gaps and its number of values let them be told apart. */
export interface LevelHarmonics {
  readonly meanUm: number
  readonly harmonics: readonly Harmonic[]
}

/** No more harmonics than this are given. */
export const mostHarmonics = 10

/**
 * How many harmonics a level lets be told apart: a wave of which half fits in the widest gap can hide in it, so no
 * more than 180° over the gap, and no more than one for four values. Own rule.
 */
export function harmonicsWithin(values: number, gapDegrees: number): number {
  return Math.min(mostHarmonics, Math.floor(values / 4), Math.floor(180 / gapDegrees + 1e-9))
}

/**
 * Harmonic content of a level by least squares over the values that are there, so that gaps weigh nothing: r = R + Σ
 * (a_n·cos nθ + b_n·sin nθ), n from 1 to `highest`. `radii` in the order of the angles, NaN where there is a port;
 * the table must go up to twice `highest`. Undefined for none. Accuracy: rounding. Source: the
 * least squares of ISO 12181-1:2011 for harmonic content, in the form of the GUM's H.3 with (XᵀX)⁻¹.
 */
export function levelHarmonics(
  radii: Float64Array,
  table: TurnTable,
  highest: number,
): LevelHarmonics | undefined {
  if (highest < 1) return undefined
  const size = 2 * highest + 1
  const present = radii.map((radius) => (Number.isNaN(radius) ? 0 : 1))
  const sums = roomForSums(highest, table.angles)
  levelSums(radii, present, 0, table, highest, sums)
  const factor = choleskyFactor(sums.matrix, size)
  const solved = solvedBy(factor, sums.right)
  const harmonics = Array.from({ length: highest }, (_, k): Harmonic => {
    const at = 2 * k + 1
    const cosineUm = solved[at] ?? 0
    const sineUm = solved[at + 1] ?? 0
    const column = (which: number) => {
      const unit = new Float64Array(size)
      unit[which] = 1
      return solvedBy(factor, unit)
    }
    const alongCosine = column(at)
    const alongSine = column(at + 1)
    const waves = k + 1
    return {
      waves,
      amplitudeUm: Math.hypot(cosineUm, sineUm),
      peakDegrees: ((Math.atan2(sineUm, cosineUm) * 180) / Math.PI / waves + 360) % (360 / waves),
      cosineUm,
      sineUm,
      covariance: {
        aa: alongCosine[at] ?? 0,
        ab: alongCosine[at + 1] ?? 0,
        bb: alongSine[at + 1] ?? 0,
      },
    }
  })
  return { meanUm: solved[0] ?? 0, harmonics }
}
