import { named } from '../conditions-of'
import type { Contribution, StationFinding } from '../findings'
import type { Fit } from '../piston/fits'
import { pistonSizeOf } from '../piston/piston-size'
import type { SeededDraws } from '../statistics/seeded-draws'
import type { Evidence } from './evidence'

/** One set of true values that the readings allow, mm. It is filled anew by each draw. */
export interface TrueValues {
  /** Counted stations, with what their sizes would truly be. */
  readonly stations: readonly StationFinding[]
  /** The size of each piston at 20 °C. */
  readonly pistonMm: (fit: Fit) => number | undefined
  /** Draws the next set. */
  readonly next: () => void
}

interface Drawn {
  readonly valueMm: number
  readonly parts: readonly { readonly source: number; readonly signedMm: number }[]
}

/**
 * True sizes drawn from N(y, V), V the full covariance: each source of error is one normal number for all that share
 * it (contributions of one identity). Not Student's t, and no U: the spread is that of u. Source: JCGM 101:2008, 6.4.8
 * in its form for known uncertainties.
 */
export function trueValues({ measured, finding, pistons }: Evidence, draws: SeededDraws): TrueValues {
  const sources = new Map<string, number>()
  const sourceOf = ({ id }: Contribution) => {
    const known = sources.get(id) ?? sources.size
    sources.set(id, known)
    return known
  }
  const drawnOf = (valueMm: number, contributions: readonly Contribution[]): Drawn => ({
    valueMm,
    parts: contributions.map((part) => ({ source: sourceOf(part), signedMm: part.signedMm })),
  })
  const counted = finding.stations.filter((s) => s.counted)
  const sizes = counted.map((s) => drawnOf(s.diameterMm, s.contributions))
  const stations: { -readonly [Key in keyof StationFinding]: StationFinding[Key] }[] = counted.map((s) => ({
    ...s,
  }))
  const pistonSizes = new Map(
    pistons.all.flatMap(({ pistonId }) => {
      const size = pistonSizeOf(measured, named(measured.pistons ?? [], pistonId, 'piston'))
      return size ? [[pistonId, drawnOf(size.sizeMm, size.contributions)] as const] : []
    }),
  )
  const errors = new Float64Array(sources.size)
  const trueSizeOf = ({ valueMm, parts }: Drawn) =>
    parts.reduce((sum, { source, signedMm }) => sum + (errors[source] ?? 0) * signedMm, valueMm)
  return {
    stations,
    pistonMm: ({ pistonId }) => {
      const size = pistonSizes.get(pistonId)
      return size && trueSizeOf(size)
    },
    next: () => {
      for (let source = 0; source < errors.length; source++) errors[source] = draws.normal()
      for (const [index, size] of sizes.entries()) {
        const station = stations[index]
        if (station) station.diameterMm = trueSizeOf(size)
      }
    },
  }
}
