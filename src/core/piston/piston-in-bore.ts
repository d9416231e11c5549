import { conditionsOf, named } from '../conditions-of'
import { sameLevelMm } from '../difference/same-station'
import type { BoreFinding } from '../findings'
import { levelsOf } from '../form/level'
import type { Measured, Piston, Spec } from '../measured'
import { typicalFeelerDoubtUm } from '../ring/ring-gaps'
import { combine, expanded } from '../uncertainty/combine'
import { clearancesOf, runningStations } from './clearance'
import { pistonSizeOf } from './piston-size'

/** A dimension that a piston cannot be drawn without. */
export type PistonLack = 'size' | 'height' | 'crown-height' | 'travel'

/** The size of a piston at a height above the skirt's lower edge, both mm, at 20 °C. */
export interface SizeAtHeight {
  readonly heightMm: number
  readonly sizeMm: number
}

/** A piston as it is drawn in a bore, from dimensions that were given. */
export interface DrawnPiston {
  /** From the skirt's lower edge up to the crown: between sizes that were measured, straight; past them, held. */
  readonly sizes: readonly SizeAtHeight[]
  /** Where its size is measured, mm above the skirt's lower edge. */
  readonly measuredAtMm: number
  readonly topRingHeightMm?: number
  readonly crownHeightMm: number
  /** Depth of the crown's edge at the top of the stroke, and how far it travels, mm. */
  readonly crownAtTopMm: number
  readonly travelMm: number
}

/** The piston as far as its dimensions were given, or what is not given. Lengths mm. Own derivation. */
export function drawnPiston(
  measured: Measured,
  piston: Piston,
): { readonly ok: true; readonly drawn: DrawnPiston } | { readonly ok: false; readonly lacks: PistonLack[] } {
  const { spec } = measured
  const size = pistonSizeOf(measured, piston)
  const measuredAtMm = piston.heightMm ?? spec.pistonHeightMm
  const { crownHeightMm, topRingHeightMm } = piston
  const { travelMm, crownAtTopMm = 0 } = spec
  if (!size || measuredAtMm === undefined || crownHeightMm === undefined || travelMm === undefined) {
    return { ok: false, lacks: lacksOf({ size, measuredAtMm, crownHeightMm, travelMm }) }
  }
  // What warmth and the micrometer do to the one size they do to all.
  const at20 = piston.readMm === undefined ? 1 : size.sizeMm / piston.readMm
  const others = (piston.profile ?? []).map(({ heightMm, readMm }) => ({ heightMm, sizeMm: readMm * at20 }))
  const sizes = [{ heightMm: measuredAtMm, sizeMm: size.sizeMm }, ...others].sort(
    (a, b) => a.heightMm - b.heightMm,
  )
  return {
    ok: true,
    drawn: {
      sizes: held(sizes, crownHeightMm),
      measuredAtMm,
      ...(topRingHeightMm === undefined ? {} : { topRingHeightMm }),
      crownHeightMm,
      crownAtTopMm,
      travelMm,
    },
  }
}

function lacksOf(given: {
  readonly size: unknown
  readonly measuredAtMm: Spec['pistonHeightMm']
  readonly crownHeightMm: Piston['crownHeightMm']
  readonly travelMm: Spec['travelMm']
}): PistonLack[] {
  return [
    ...(given.size === undefined ? (['size'] as const) : []),
    ...(given.measuredAtMm === undefined ? (['height'] as const) : []),
    ...(given.crownHeightMm === undefined ? (['crown-height'] as const) : []),
    ...(given.travelMm === undefined ? (['travel'] as const) : []),
  ]
}

/** With the lowest size held down to the skirt's edge and the highest up to the crown. */
function held(sizes: readonly SizeAtHeight[], crownHeightMm: number): SizeAtHeight[] {
  const inside = sizes.filter(({ heightMm }) => heightMm >= 0 && heightMm <= crownHeightMm)
  const [lowest, highest] = [inside[0], inside[inside.length - 1]]
  if (!lowest || !highest) return [...sizes]
  return [
    ...(lowest.heightMm > 0 ? [{ ...lowest, heightMm: 0 }] : []),
    ...inside,
    ...(highest.heightMm < crownHeightMm ? [{ ...highest, heightMm: crownHeightMm }] : []),
  ]
}

/** Depth below the deck, mm, of a height of the piston, at a share of its stroke from the top (0) to the bottom (1). */
export function depthOfHeight(piston: DrawnPiston, heightMm: number, share: number): number {
  return piston.crownAtTopMm + share * piston.travelMm + piston.crownHeightMm - heightMm
}

/** A piston where it stands in its bore: sizes from the skirt's lower edge up to the crown, mm. */
export interface PlacedPiston {
  readonly sizes: readonly { readonly depthMm: number; readonly sizeMm: number }[]
  readonly ringDepthMm?: number
}

/** The piston at a share of its stroke from the top (0) to the bottom (1). */
export function placedPiston(piston: DrawnPiston, share: number): PlacedPiston {
  const { sizes, topRingHeightMm } = piston
  return {
    sizes: sizes.map(({ heightMm, sizeMm }) => ({ depthMm: depthOfHeight(piston, heightMm, share), sizeMm })),
    ...(topRingHeightMm === undefined ? {} : { ringDepthMm: depthOfHeight(piston, topRingHeightMm, share) }),
  }
}

/** The share of the stroke at which a height of the piston stands at a depth; undefined where it never does. */
export function shareAtDepth(piston: DrawnPiston, heightMm: number, depthMm: number): number | undefined {
  const share = (depthMm - depthOfHeight(piston, heightMm, 0)) / piston.travelMm
  return share < 0 || share > 1 ? undefined : share
}

/** Clearances of a piston at one level, mm on the diameter, from its tightest axis to its loosest. */
export interface LevelClearance {
  readonly depthMm: number
  readonly leastMm: number
  readonly mostMm: number
  /** U (95 %), the larger of the two ends. */
  readonly expandedMm: number
  readonly axes: number
}

/**
 * Clearance at rest of a piston at each level outside lands, from the stations of that level alone, at the temperature
 * that the manual's clearances hold at. None without a size of the piston. Source: as for `clearancesOf`.
 */
export function clearancesByLevel(
  measured: Measured,
  finding: BoreFinding,
  piston: Piston,
): LevelClearance[] {
  const size = pistonSizeOf(measured, piston)
  if (!size) return []
  const bore = named(measured.bores, finding.boreId, 'bore')
  const { wall } = conditionsOf(measured, bore, named(bore.surveys, finding.surveyId, 'survey'))
  const atC = measured.spec.clearanceAtC ?? 20
  const at = { boreC: atC, pistonC: atC }
  return levelsOf(runningStations(finding)).flatMap(({ depthMm, stations }) => {
    const all = clearancesOf(stations, wall, size, 'smallest-to-largest', at)
    const values = all.map(({ valueMm }) => valueMm)
    return all.length === 0
      ? []
      : [
          {
            depthMm,
            leastMm: Math.min(...values),
            mostMm: Math.max(...values),
            expandedMm: Math.max(
              ...all.map(({ standardUncertaintyMm: standardUncertainty, degreesOfFreedom }) =>
                expanded({ standardUncertainty, degreesOfFreedom }),
              ),
            ),
            axes: stations.length,
          },
        ]
  })
}

/** The end gap of a ring at a level, mm: as it was measured there, or as the bore opens it from where it was. */
export interface LevelGap {
  readonly depthMm: number
  readonly gapMm: number
  readonly expandedMm: number
  readonly from: 'measured' | 'bore'
}

/**
 * End gap of the ring at each level: measured within 1 mm of it, else from the nearest level at which a gap was
 * measured, ΔG = π·ΔD of the level means (geometry of a circumference), with the doubt of both. None where no gap was
 * measured at a level. Own derivation.
 */
export function ringGapsByLevel(measured: Measured, finding: BoreFinding): LevelGap[] {
  const bore = named(measured.bores, finding.boreId, 'bore')
  const { ringGaps = [], feelerDoubtUm = typicalFeelerDoubtUm } = named(
    bore.surveys,
    finding.surveyId,
    'survey',
  )
  const levels = levelsOf(finding.stations)
  const uGap = feelerDoubtUm / 1000
  const infinite = Number.POSITIVE_INFINITY
  const known = levels.flatMap((level) => {
    const near = ringGaps.filter(({ depthMm }) => Math.abs(depthMm - level.depthMm) <= sameLevelMm)
    const [gap] = near.sort(
      (a, b) => Math.abs(a.depthMm - level.depthMm) - Math.abs(b.depthMm - level.depthMm),
    )
    return gap ? [{ level, gapMm: gap.gapMm }] : []
  })
  return levels.flatMap((level): LevelGap[] => {
    const [nearest] = [...known].sort(
      (a, b) => Math.abs(a.level.depthMm - level.depthMm) - Math.abs(b.level.depthMm - level.depthMm),
    )
    if (!nearest) return []
    const { depthMm } = level
    const ofGap = { standardUncertainty: uGap, degreesOfFreedom: infinite }
    if (nearest.level === level) {
      return [{ depthMm, gapMm: nearest.gapMm, expandedMm: expanded(ofGap), from: 'measured' }]
    }
    const mean = (of: typeof level) =>
      of.stations.reduce((sum, s) => sum + s.diameterMm / of.stations.length, 0)
    const term = (of: typeof level, sign: 1 | -1) =>
      of.stations.map((s) => ({ factor: sign / of.stations.length, contributions: s.contributions }))
    const byBore = expanded(combine([...term(level, 1), ...term(nearest.level, -1)]))
    return [
      {
        depthMm,
        gapMm: nearest.gapMm + Math.PI * (mean(level) - mean(nearest.level)),
        expandedMm: Math.hypot(expanded(ofGap), Math.PI * byBore),
        from: 'bore',
      },
    ]
  })
}
