import type { Blunder } from '../findings'
import { type ReadStation, type ReadSurvey, separation } from './read-survey'

interface LevelPair {
  readonly depthMm: number
  readonly differenceMm: number
  readonly u: number
}

/**
 * Levels at which two axes were written down in each other's place: the sign of their difference reverses
 * against both neighbouring levels, and changing them over fits.
 *
 * For a pair of axes the difference at a level is compared with the mean of its neighbours'. Wrong and right
 * differ by twice the difference; asked when that is more than five times its u, when the mean of
 * the neighbours has the other sign beyond three times its u and neither contradicts it beyond two, and when what was read is off by more than five, and changed over
 * lies nearer. Levels in a land are left out: they keep the round form they were made with. At most one
 * question a level, about the pair that stands out most. Own derivation.
 */
export function axesSwapped({ stations }: ReadSurvey): Blunder[] {
  const axes = [...new Set(stations.map((station) => station.axisDegrees))].sort((a, b) => a - b)
  const running = stations.filter((station) => !station.land)
  const found = new Map<number, { readonly axes: readonly [number, number]; readonly off: number }>()
  for (const [i, one] of axes.entries()) {
    for (const other of axes.slice(i + 1)) {
      for (const { depthMm, off } of reversals(differences(running, one, other))) {
        if (off > (found.get(depthMm)?.off ?? 0)) found.set(depthMm, { axes: [one, other], off })
      }
    }
  }
  return [...found].map(([depthMm, { axes: axesDegrees }]) => ({
    code: 'axes-swapped',
    depthMm,
    axesDegrees,
    mend: { kind: 'swap-axes', depthMm, axesDegrees },
  }))
}

function differences(stations: readonly ReadStation[], one: number, other: number): LevelPair[] {
  return stations
    .filter((station) => station.axisDegrees === one)
    .flatMap((first) => {
      const second = stations.find((s) => s.depthMm === first.depthMm && s.axisDegrees === other)
      if (!second) return []
      const u = Math.hypot(first.individualMm, second.individualMm)
      return [{ depthMm: first.depthMm, differenceMm: first.diameterMm - second.diameterMm, u }]
    })
    .sort((a, b) => a.depthMm - b.depthMm)
}

function reversals(pairs: readonly LevelPair[]): { readonly depthMm: number; readonly off: number }[] {
  return pairs.flatMap((pair, i) => {
    const above = pairs[i - 1]
    const below = pairs[i + 1]
    if (!above || !below) return []
    const expected = (above.differenceMm + below.differenceMm) / 2
    const sense = Math.sign(expected)
    const othersAgree =
      [above, below].every((near) => sense * near.differenceMm > -2 * near.u) &&
      Math.abs(expected) > 3 * (Math.hypot(above.u, below.u) / 2)
    const u = Math.hypot(pair.u, above.u / 2, below.u / 2)
    const off = Math.abs(pair.differenceMm - expected)
    const offIfSwapped = Math.abs(-pair.differenceMm - expected)
    const isReversed = sense * pair.differenceMm < 0
    const isSeparate = 2 * Math.abs(pair.differenceMm) > separation * pair.u
    return othersAgree && isReversed && isSeparate && off > separation * u && offIfSwapped < off
      ? [{ depthMm: pair.depthMm, off: off / u }]
      : []
  })
}

/** Whether axes changed over would stand out at some level: three levels or more that hold a clear oval. */
export function canSeeAxesSwapped({ stations }: ReadSurvey): boolean {
  const axes = [...new Set(stations.map((station) => station.axisDegrees))]
  const running = stations.filter((station) => !station.land)
  return axes.some((one, i) =>
    axes
      .slice(i + 1)
      .some(
        (other) =>
          differences(running, one, other).filter((p) => Math.abs(p.differenceMm) > 3 * p.u).length > 2,
      ),
  )
}
