import type { BoreFinding, Difference, LevelFinding, Place, StationFinding } from '../findings'
import { ovalCoefficients } from '../form/fitted-oval'
import type { OvalityRule, TaperRule } from '../measured'

/** What a figure is about. */
export type FigureName =
  | { readonly kind: 'level-mean' | 'fitted-oval'; readonly depthMm: number }
  | { readonly kind: 'ovality'; readonly rule: OvalityRule }
  | { readonly kind: 'taper'; readonly rule: TaperRule }
  | { readonly kind: 'mean-difference' | 'largest-difference'; readonly againstBoreId: string }

/** An interval, mm. */
export interface Interval {
  readonly lowMm: number
  readonly highMm: number
}

/** A figure made of several stations, with its interval as stated, mm. */
export interface FigureOfStations {
  readonly boreId: string
  readonly boreName: string
  readonly name: FigureName
  readonly stated: Interval
  /**
   * How the simulated interval is to lie. `alike`: its ends where the stated ones are. `within`: the stated one
   * allows for the choice of a largest and a smallest, the simulated one is of the pair that was chosen; and ovals
   * drawn about the one found come out a little long, as the length of any vector does.
   */
  readonly holds: 'alike' | 'within'
  /** How far apart ends that should be alike may lie: a share of half of the stated interval. */
  readonly toleranceMm: number
  /** The figure from the diameters of a trial, by the index of the station in `stations`. */
  readonly figureMm: (diameterMm: (station: number) => number) => number
}

/** A twentieth of U, as for a station; the length of a vector has a tenth. */
const tolerance = 1 / 20
const ovalTolerance = 1 / 10

/**
 * The figures of a bore that are made of several stations and carry a ± or a range: level means, the fitted oval
 * of each level whose direction is named, ovality and taper by the rule of the spec, and the differences from
 * comparison bores. Stations are told apart by bore, survey and place. Own derivation.
 */
export function figuresOfStations(
  finding: BoreFinding,
  stations: readonly StationFinding[],
): FigureOfStations[] {
  const of = { boreId: finding.boreId, boreName: finding.boreName }
  const own = indexOf(stations, finding.boreId, finding.surveyId)
  return [
    ...finding.levels.flatMap((level) => ofLevel(level, own, stations)),
    ...ranges(finding, own),
    ...finding.differences.flatMap((difference) =>
      ofDifference(difference, own, indexOf(stations, difference.againstBoreId, difference.againstSurveyId)),
    ),
  ].map((figure) => ({ ...of, ...figure }))
}

type Figure = Omit<FigureOfStations, 'boreId' | 'boreName'>
type IndexOf = (place: Place) => number | undefined

function indexOf(stations: readonly StationFinding[], boreId: string, surveyId: string): IndexOf {
  return ({ depthMm, axisDegrees }) => {
    const index = stations.findIndex(
      (s) =>
        s.boreId === boreId &&
        s.surveyId === surveyId &&
        s.depthMm === depthMm &&
        s.axisDegrees === axisDegrees,
    )
    return index < 0 ? undefined : index
  }
}

function ofLevel(level: LevelFinding, own: IndexOf, stations: readonly StationFinding[]): Figure[] {
  const { depthMm, axesDegrees, meanMm, meanExpandedMm, fittedOval } = level
  const at = axesDegrees.map((axisDegrees) => own({ depthMm, axisDegrees }) ?? missing(depthMm))
  const mean: Figure = {
    name: { kind: 'level-mean', depthMm },
    stated: around(meanMm, meanExpandedMm),
    holds: 'alike',
    toleranceMm: meanExpandedMm * tolerance,
    figureMm: (diameter) => at.reduce((sum, index) => sum + diameter(index), 0) / at.length,
  }
  if (fittedOval?.longAxisDegrees === undefined) return [mean]
  const { ovalMm, expandedMm } = fittedOval
  const coefficients = ovalCoefficients(at.map((index) => stations[index] ?? missing(depthMm)))
  const oval: Figure = {
    name: { kind: 'fitted-oval', depthMm },
    stated: around(ovalMm, expandedMm),
    holds: 'within',
    toleranceMm: expandedMm * ovalTolerance,
    figureMm: (diameter) => {
      let a = 0
      let b = 0
      for (const [k, index] of at.entries()) {
        const off = diameter(index) - meanMm
        a += (coefficients[k]?.a ?? 0) * off
        b += (coefficients[k]?.b ?? 0) * off
      }
      return 2 * Math.hypot(a, b)
    },
  }
  return [mean, oval]
}

function missing(depthMm: number): never {
  throw new Error(`figuresOfStations: a level at ${depthMm} mm has a station that was not drawn`)
}

function around(valueMm: number, expandedMm: number): Interval {
  return { lowMm: valueMm - expandedMm, highMm: valueMm + expandedMm }
}

/** Ovality and taper by the spec's own rule, as the difference of the pair that was chosen. */
function ranges(finding: BoreFinding, own: IndexOf): Figure[] {
  const [ovality] = finding.ovality
  const [taper] = finding.taper
  return [
    ...(ovality?.known ? ofPair({ kind: 'ovality', rule: ovality.rule }, ovality, own) : []),
    // Of level means: those are simulated themselves.
    ...(taper?.known && taper.interval === 'range'
      ? ofPair({ kind: 'taper', rule: taper.rule }, taper, own)
      : []),
  ]
}

interface Pair extends Interval {
  readonly valueMm: number
  readonly larger: Place
  readonly smaller: Place
}

function ofPair(name: FigureName, { valueMm, lowMm, highMm, larger, smaller }: Pair, own: IndexOf): Figure[] {
  const [more, less] = [own(larger), own(smaller)]
  if (more === undefined || less === undefined) return []
  const sign = valueMm < 0 ? -1 : 1
  return [
    {
      name,
      stated: { lowMm, highMm },
      holds: 'within',
      toleranceMm: ((highMm - lowMm) / 2) * tolerance,
      figureMm: (diameter) => {
        const drawn = sign * (diameter(more) - diameter(less))
        // A range that is cut at 0 says nothing about a pair that changes places.
        const cutBelow = lowMm === 0 ? Math.max(0, drawn) : drawn
        return highMm === 0 ? Math.min(0, cutBelow) : cutBelow
      },
    },
  ]
}

function ofDifference(difference: Difference, own: IndexOf, theirs: IndexOf): Figure[] {
  const { againstBoreId, stations, largest, mean } = difference
  const pairs = stations.flatMap((at) => {
    const [mine, other] = [own(at), theirs(at)]
    return mine === undefined || other === undefined ? [] : [{ at, mine, other }]
  })
  // A level of the other bore may lie a millimetre off: such a pair is not found by its place, and then none is.
  if (pairs.length < stations.length) return []
  const worst = pairs.find(({ at }) => at === largest)
  const alike = (name: FigureName, stated: Interval, figureMm: Figure['figureMm']): Figure => ({
    name,
    stated,
    holds: 'alike',
    toleranceMm: ((stated.highMm - stated.lowMm) / 2) * tolerance,
    figureMm,
  })
  return [
    alike(
      { kind: 'mean-difference', againstBoreId },
      around(mean.differenceMm, mean.expandedMm),
      (diameter) =>
        pairs.reduce((sum, { mine, other }) => sum + diameter(mine) - diameter(other), 0) / pairs.length,
    ),
    ...(worst
      ? [
          alike(
            { kind: 'largest-difference', againstBoreId },
            around(largest.differenceMm, largest.expandedMm),
            (diameter) => diameter(worst.mine) - diameter(worst.other),
          ),
        ]
      : []),
  ]
}
