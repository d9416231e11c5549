import { proof } from '../conformity/conformity'
import type { Place, ShapeFinding } from '../findings'
import type { OvalityRule, TaperRule } from '../measured'
import { studentQuantile } from '../statistics/student'
import { isCommon } from '../uncertainty/combine'
import type { DecisionFacts, FactName } from './decision-facts'
import type { Evidence } from './evidence'
import { isAt, isReadOnce } from './grounds-fact'
import { type ReadingsTrouble, readingsTroubles } from './readings-fact'

/** What makes a reading better than the one there is. */
export type Better =
  | ReadingsTrouble
  | 'clean'
  | 'try-nail'
  | 'enter-ring-travel'
  | 'set-by-ring'
  | 'record-what-is-missing'
  | 'repeat-three-times'
  | 'repeat-five-times'
  | 'finer-gauge'
  | 'two-contacts'
  | 'more-axes'
  | 'enter-travel'
  | 'measure-piston'

/** What to measure again. */
export interface MeasureAgain {
  /** None: all stations. */
  readonly places: readonly Place[]
  readonly better: readonly Better[]
  /** The U of a size that would settle it if the reading stays the same, mm; absent where none would. */
  readonly expandedMm?: number
  /** The same of the difference that an out-of-round or a taper is. */
  readonly shapeExpandedMm?: number
}

/** The stations that keep a decision open, and how to read them better than before. */
export function measureAgainOf(
  evidence: Evidence,
  all: DecisionFacts,
  behind: readonly FactName[],
): MeasureAgain {
  // What is open beside the rule's own facts is settled another time.
  const facts = { ...all, ...(behind.includes('clearance') ? {} : { clearance: 'not-judged' as const }) }
  const { finding, setUp } = evidence
  const troubles = readingsTroubles(finding, setUp)
  if (facts.surface === 'covered') return { places: [], better: ['clean'] }
  if (facts.readings !== 'sound') return { places: troublePlaces(evidence, troubles), better: troubles }
  const bySurface = ofSurface(evidence, facts)
  if (bySurface) return bySurface
  const places = openPlaces(evidence, facts)
  const settled = finding.verdict.known ? finding.verdict.settledByExpandedMm : undefined
  const ofShape = shapeSettledBy(evidence, facts)
  return {
    places,
    better: [
      ...betterOf(evidence, facts, places),
      ...(ofShape !== undefined && ofShape < leastOfShape(evidence, places)
        ? (['finer-gauge'] as const)
        : []),
    ],
    ...(facts.size === 'too-close' && settled !== undefined ? { expandedMm: settled } : {}),
    ...(ofShape === undefined ? {} : { shapeExpandedMm: ofShape }),
  }
}

/**
 * The U of the difference of two stations at which an out-of-round or a taper that stays as it is would be proven on
 * the side it leans to, the smaller where both are open: as for `judgeRange`, with normal doubt. Own derivation.
 */
function shapeSettledBy({ finding }: Evidence, facts: DecisionFacts): number | undefined {
  const needed = (['ovality', 'taper'] as const).flatMap((name) => {
    const shape = finding[name][0]
    if (facts[name] !== 'too-close' || !shape?.known || shape.limitMm === undefined) return []
    const value = name === 'taper' ? Math.abs(shape.valueMm) : shape.valueMm
    const margin = Math.abs(value - shape.limitMm)
    const infinite = Number.POSITIVE_INFINITY
    const twoSided = studentQuantile(0.975, infinite)
    // Above, the choice among several stations is paid for: as wide as half of the range's interval.
    const half = (shape.highMm - shape.lowMm) / 2
    const own = ownMm(finding, shape)
    const above = own === undefined ? undefined : (margin * twoSided * Math.SQRT2 * own) / half
    const inside = (margin * twoSided) / studentQuantile(proof, infinite)
    return (shape.lean === 'above' ? above : inside) ?? []
  })
  return needed.length === 0 ? undefined : Math.min(...needed)
}

/** The U that the difference of two such stations keeps however often they are read, mm. */
function leastOfShape({ finding }: Evidence, places: readonly Place[]): number {
  const kept = finding.stations
    .filter((s) => places.some((place) => isAt(s, place)))
    .map(({ contributions }) =>
      Math.hypot(
        ...contributions.filter((c) => !isCommon(c) && c.kind !== 'repeatability').map((c) => c.signedMm),
      ),
    )
  return studentQuantile(0.975, Number.POSITIVE_INFINITY) * Math.SQRT2 * Math.min(...kept)
}

function ownMm(
  { stations }: Evidence['finding'],
  { larger }: { readonly larger: Place },
): number | undefined {
  return stations.find((s) => isAt(s, larger))?.individualMm
}

function troublePlaces({ finding }: Evidence, troubles: readonly ReadingsTrouble[]): Place[] {
  if (troubles.some((trouble) => trouble !== 'slip-asked' && trouble !== 'repeats-spread')) return []
  const places = finding.blunders.flatMap((blunder) => {
    if ('place' in blunder) return [blunder.place]
    if (blunder.code !== 'axes-swapped') return []
    return blunder.axesDegrees.map((axisDegrees) => ({ depthMm: blunder.depthMm, axisDegrees }))
  })
  const isWhole = finding.blunders.some((blunder) => !('place' in blunder) && blunder.code !== 'axes-swapped')
  return isWhole ? [] : places
}

function ofSurface({ finding }: Evidence, { surface, size }: DecisionFacts): MeasureAgain | undefined {
  if (surface === 'look-closer') {
    const isUntried = finding.surface.some(({ nailWouldTell }) => nailWouldTell)
    const isPits = finding.surface.some(({ stop }) => stop === 'pits-perhaps-in-ring-path')
    return {
      places: [],
      better: [
        'clean',
        ...(isUntried ? (['try-nail'] as const) : []),
        ...(isPits ? (['enter-ring-travel'] as const) : []),
      ],
    }
  }
  return size === 'under-new' || size === 'below' ? { places: [], better: ['clean'] } : undefined
}

type Shape = ShapeFinding<OvalityRule> | ShapeFinding<TaperRule>

function openPlaces({ finding, growth, pistons }: Evidence, facts: DecisionFacts): Place[] {
  const { verdict } = finding
  const isOpen = (word: string) => word === 'too-close' || (word === 'above' && facts.grounds !== 'repeated')
  const ofShape = (shape: Shape | undefined) => (shape?.known ? [shape.larger, shape.smaller] : [])
  const all: Place[] = [
    ...(isOpen(facts.size) && verdict.known
      ? [verdict.deciding, ...(facts.size === 'above' ? verdict.provenAbove : [])]
      : []),
    ...(isOpen(facts.ovality) ? ofShape(finding.ovality[0]) : []),
    ...(isOpen(facts.taper) ? ofShape(finding.taper[0]) : []),
    ...(facts.clearance === 'too-close'
      ? [pistons.atHand?.least?.place, pistons.atHand?.most?.place].filter((place) => place !== undefined)
      : []),
    ...(facts.outlook === 'now' && growth.outlook?.known ? [growth.outlook.place] : []),
  ]
  return all.filter((place, index) => all.findIndex((other) => isAt(other, place)) === index)
}

/** A ring in place of a micrometer helps a size; what all stations share drops out of a shape. */
function betterOf(evidence: Evidence, facts: DecisionFacts, places: readonly Place[]): Better[] {
  const { finding, measured, setUp } = evidence
  const standard = measured.standards.find(({ id }) => id === setUp.standardId)
  const isOfSize = [facts.size, facts.clearance].includes('too-close') || facts.outlook === 'now'
  return [
    ...((isOfSize || facts.grounds === 'assumed') && finding.provisional.length > 0
      ? (['record-what-is-missing'] as const)
      : []),
    ...(isOfSize && standard?.kind === 'micrometer' ? (['set-by-ring'] as const) : []),
    ...(places.some((place) => repeatsAt(evidence, place) < 3 || isReadOnce(finding.stations, place))
      ? (['repeat-three-times'] as const)
      : places.length > 0
        ? (['repeat-five-times'] as const)
        : []),
    ...(facts.size === 'mean-only' || seesNoOval(evidence, facts) ? (['two-contacts'] as const) : []),
    ...(hasFewAxes(evidence) && facts.ovality !== 'no-limit' && facts.ovality !== 'inside'
      ? (['more-axes'] as const)
      : []),
    ...(finding.taper[0]?.limitOpen === 'no-travel' ? (['enter-travel'] as const) : []),
    ...(facts.clearance === 'too-close' ? (['measure-piston'] as const) : []),
  ]
}

function repeatsAt({ finding }: Evidence, place: Place): number {
  return finding.stations.find((s) => isAt(s, place))?.repeats ?? 0
}

function seesNoOval({ finding }: Evidence, { ovality }: DecisionFacts): boolean {
  return ovality === 'open' && finding.gaugeKind === 'three-contact-micrometer'
}

function hasFewAxes({ finding }: Evidence): boolean {
  return new Set(finding.stations.map(({ axisDegrees }) => axisDegrees)).size < 3
}
