import { named } from '../conditions-of'
import { sameLevelMm } from '../difference/same-station'
import type { BoreFinding, Contribution, StationFinding } from '../findings'
import { levelsOf } from '../form/level'
import type { Bore, Measured, Spec, Survey } from '../measured'
import type { JudgedValue } from '../piston/judged-extreme'
import { judgedWindow } from '../piston/judged-window'
import { combine, expanded } from '../uncertainty/combine'

/** The end gap of a ring at one depth, mm. */
export interface GapAtDepth {
  readonly depthMm: number
  readonly gapMm: number
  readonly expandedMm: number
  /** On wall that the rings never touch: in no verdict. */
  readonly land: boolean
}

export type GapVerdict = 'inside' | 'too-small' | 'too-large' | 'too-close'

/** How the gaps on the running surface stand to the manual's. */
export interface GapStanding {
  readonly verdict: GapVerdict
  readonly lean: Exclude<GapVerdict, 'too-close'>
  readonly leanProbability: number
}

/** Taper of the level means, mm, positive when wider at the deck: told by the gaps, and by the gauge beside it. */
export interface GapTaper {
  readonly topMm: number
  readonly bottomMm: number
  readonly taperMm: number
  /** U (95 %): no taper smaller than this stands out from the feeler. */
  readonly expandedMm: number
  readonly standsOut: boolean
  /** Where the gauge read both levels: its own taper, and whether the two differ beyond their doubt together. */
  readonly byGauge?: {
    readonly taperMm: number
    readonly expandedMm: number
    readonly differs: boolean
  }
}

/** What the end gaps of a ring show of a bore. */
export type RingGaps =
  | { readonly known: false; readonly why: 'no-gaps' }
  | {
      readonly known: true
      /** From the deck down. */
      readonly gaps: readonly GapAtDepth[]
      readonly feelerDoubtUm: number
      /** The feeler's doubt is the typical one. */
      readonly feelerAssumed: boolean
      /** On the running surface. */
      readonly least?: GapAtDepth
      readonly most?: GapAtDepth
      readonly minMm?: number
      /** The most in service where that is given, else the most when new. */
      readonly maxMm?: number
      readonly maxIs: 'service' | 'new'
      readonly standing?: GapStanding
      readonly taper?: GapTaper
    }

/** Standard uncertainty of a gap by feeler, µm: good to 20 to 30 µm (typical, from memory of the trade). */
export const typicalFeelerDoubtUm = 12

/**
 * Ring gaps of a survey against the manual's, and the taper that they tell. The least is judged against the smallest
 * gap and the most against the largest (in service, where that is given), each as a bore is judged against a limit;
 * gaps in a land are shown and not judged. A ring pushed square into the bore closes or opens by π times what the
 * mean of the level changes, ΔG = π·ΔD (geometry of a circumference), so that G_top − G_bottom over π is the taper
 * of the level means, from the outermost depths outside lands: independent of the gauge, and as good as the feeler,
 * of which each gap has an error of its own. Own derivation.
 */
export function ringGapsOf(measured: Measured, finding: BoreFinding): RingGaps {
  const bore = named(measured.bores, finding.boreId, 'bore')
  const survey = named(bore.surveys, finding.surveyId, 'survey')
  const feelerDoubtUm = survey.feelerDoubtUm ?? typicalFeelerDoubtUm
  const gaps = gapsOf(bore, survey, feelerDoubtUm)
  if (gaps.length === 0) return { known: false, why: 'no-gaps' }
  const running = gaps.filter(({ land }) => !land)
  const [first, ...rest] = running
  const { ringGapMinMm: minMm, ringGapMaxMm, ringGapLimitMm } = measured.spec
  const maxMm = ringGapLimitMm ?? ringGapMaxMm
  const taper = taperOf(running, finding, feelerDoubtUm)
  return {
    known: true,
    gaps,
    feelerDoubtUm,
    feelerAssumed: survey.feelerDoubtUm === undefined,
    ...(first
      ? {
          least: rest.reduce((a, b) => (b.gapMm < a.gapMm ? b : a), first),
          most: rest.reduce((a, b) => (b.gapMm > a.gapMm ? b : a), first),
          ...standing(running, measured.spec, feelerDoubtUm),
        }
      : {}),
    ...(minMm === undefined ? {} : { minMm }),
    ...(maxMm === undefined ? {} : { maxMm }),
    maxIs: ringGapLimitMm === undefined ? 'new' : 'service',
    ...(taper ? { taper } : {}),
  }
}

function gapsOf(
  { ringTravelMm: travel }: Bore,
  { ringGaps = [] }: Survey,
  feelerDoubtUm: number,
): GapAtDepth[] {
  const expandedMm = expanded({ standardUncertainty: feelerDoubtUm / 1000, degreesOfFreedom: infinite })
  return [...ringGaps]
    .sort((a, b) => a.depthMm - b.depthMm)
    .map(({ depthMm, gapMm }) => ({
      depthMm,
      gapMm,
      expandedMm,
      land: travel !== undefined && (depthMm < travel.from || depthMm > travel.to),
    }))
}

function standing(
  running: readonly GapAtDepth[],
  { ringGapMinMm, ringGapMaxMm, ringGapLimitMm }: Spec,
  feelerDoubtUm: number,
): { readonly standing?: GapStanding } {
  const maxMm = ringGapLimitMm ?? ringGapMaxMm
  if (ringGapMinMm === undefined && maxMm === undefined) return {}
  const u = feelerDoubtUm / 1000
  const values = running.map(
    ({ gapMm }): JudgedValue => ({
      valueMm: gapMm,
      standardUncertaintyMm: u,
      degreesOfFreedom: infinite,
      commonMm: 0,
      individualMm: u,
      individualDegreesOfFreedom: infinite,
    }),
  )
  const ends = { least: 'smallest', most: 'largest' } as const
  const { verdict, lean, leanProbability } = judgedWindow(values, ends, { minMm: ringGapMinMm, maxMm })
  return {
    standing: {
      verdict: verdict === 'too-close' ? verdict : gapSides[verdict],
      lean: gapSides[lean],
      leanProbability,
    },
  }
}

const gapSides = { inside: 'inside', below: 'too-small', above: 'too-large' } as const

function taperOf(
  running: readonly GapAtDepth[],
  finding: BoreFinding,
  feelerDoubtUm: number,
): GapTaper | undefined {
  const [top] = running
  const [bottom] = running.slice(-1)
  if (!top || !bottom || top === bottom) return undefined
  const taperMm = (top.gapMm - bottom.gapMm) / Math.PI
  const standardUncertainty = (Math.SQRT2 * feelerDoubtUm) / 1000 / Math.PI
  const expandedMm = expanded({ standardUncertainty, degreesOfFreedom: infinite })
  const byGauge = gaugeTaper(finding, top.depthMm, bottom.depthMm)
  return {
    topMm: top.depthMm,
    bottomMm: bottom.depthMm,
    taperMm,
    expandedMm,
    standsOut: Math.abs(taperMm) > expandedMm,
    ...(byGauge
      ? {
          byGauge: {
            ...byGauge,
            differs: Math.abs(taperMm - byGauge.taperMm) > Math.hypot(expandedMm, byGauge.expandedMm),
          },
        }
      : {}),
  }
}

function gaugeTaper(
  { stations }: BoreFinding,
  topMm: number,
  bottomMm: number,
): { readonly taperMm: number; readonly expandedMm: number } | undefined {
  const levels = levelsOf(stations)
  const at = (depthMm: number) => {
    const near = levels.filter((level) => Math.abs(level.depthMm - depthMm) <= sameLevelMm)
    const [nearest] = near.sort((a, b) => Math.abs(a.depthMm - depthMm) - Math.abs(b.depthMm - depthMm))
    return nearest?.stations ?? []
  }
  const [top, bottom] = [at(topMm), at(bottomMm)]
  if (top.length === 0 || bottom.length === 0) return undefined
  const term = (group: readonly StationFinding[], sign: 1 | -1) =>
    group.map((s): { factor: number; contributions: readonly Contribution[] } => ({
      factor: sign / group.length,
      contributions: s.contributions,
    }))
  const mean = (group: readonly StationFinding[]) =>
    group.reduce((sum, s) => sum + s.diameterMm / group.length, 0)
  return {
    taperMm: mean(top) - mean(bottom),
    expandedMm: expanded(combine([...term(top, 1), ...term(bottom, -1)])),
  }
}

const infinite = Number.POSITIVE_INFINITY
