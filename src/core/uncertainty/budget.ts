import { named } from '../conditions-of'
import type {
  BoreFinding,
  Contribution,
  ContributionInput,
  Scope,
  SourceKind,
  StationFinding,
} from '../findings'
import type { Measured, StandardKind } from '../measured'
import { combine, expanded } from './combine'
import { type Distribution, distributionOf } from './distribution-of'

/** One error in a station's budget; a station has one of each kind at most. */
export interface BudgetPart {
  readonly kind: SourceKind
  /** Standard uncertainty, mm. */
  readonly u: number
  /** Its share of the variance, 0 to 1. */
  readonly share: number
  readonly distribution: Distribution
  readonly degreesOfFreedom: number
  /** Which readings share the error. */
  readonly scope: Scope
  /** The input, where the diameter does not take up the whole of it. */
  readonly input?: ContributionInput
  /** It stands for what was not recorded. */
  readonly assumed: boolean
}

/** What could be done other than reading more often. */
export const preparations = ['set-by-ring', 'record-what-is-missing', 'know-the-temperatures'] as const
export type Preparation = (typeof preparations)[number]

/** Something that could be done, with the U it would leave, mm. */
export interface Improvement {
  readonly kind: 'more-repeats' | Preparation
  readonly expandedMm: number
}

/** What the doubt of a station is made of, the largest part first, and what would shrink it most. */
export interface Budget {
  readonly expandedMm: number
  readonly parts: readonly BudgetPart[]
  /** Those that would take off a twentieth of U or more, the best first. */
  readonly improvements: readonly Improvement[]
}

/** Repeats that are proposed beside those there are. */
export const repeatsMore = 2

/** What is left, as a share, of a doubt once it rests on a record: assumed values are given in the same budget. */
const afterRecord: { readonly [Kind in SourceKind]?: number } = {
  'reference-temperature': Math.sqrt(3) / 5,
  'temperature-difference': 0.3 * Math.sqrt(3),
  'standard-error': 0,
  'drift-preset': 0,
}

/**
 * The budget of a station by kinds of error, and what would shrink it: two more repeats, a ring instead of a
 * micrometer, recording what is missing, knowing the temperatures twice as well. Each is reckoned by scaling the
 * contributions it acts on and combining anew (GUM, JCGM 100:2008, 5.2.2 and G.4.1), the degrees of freedom
 * unchanged. A ring is proposed only for what was set by a micrometer; its figures are the typical ones.
 */
export function budgetOf(station: StationFinding, setBy: StandardKind): Budget {
  const { contributions } = station
  const variance = contributions.reduce((sum, part) => sum + part.signedMm ** 2, 0)
  const parts = contributions
    .map((part): BudgetPart => {
      const { kind, signedMm, scope, input, degreesOfFreedom, assumed } = part
      return {
        kind,
        u: Math.abs(signedMm),
        share: variance > 0 ? signedMm ** 2 / variance : 0,
        distribution: distributionOf(part),
        degreesOfFreedom,
        scope,
        ...(input ? { input } : {}),
        assumed,
      }
    })
    .filter(({ u }) => u > 0)
    .sort((a, b) => b.u - a.u)
  const now = expandedOf(contributions)
  return { expandedMm: now, parts, improvements: improvementsOf(station, setBy, now) }
}

/** The budget of the largest counted station of a survey, with that station; undefined where nothing counts. */
export function budgetAtLargest(
  measured: Measured,
  { surveyId, stations, largest }: BoreFinding,
): { readonly station: StationFinding; readonly budget: Budget } | undefined {
  const station = stations.find(
    (s) => s.counted && s.depthMm === largest?.depthMm && s.axisDegrees === largest.axisDegrees,
  )
  if (!station) return undefined
  const survey = measured.bores.flatMap(({ surveys }) => surveys).find(({ id }) => id === surveyId)
  if (!survey) throw new Error(`budgetAtLargest: no survey ${surveyId}`)
  const setUp = named(measured.setUps, survey.setUpId, 'set-up')
  return { station, budget: budgetOf(station, named(measured.standards, setUp.standardId, 'standard').kind) }
}

function improvementsOf(
  { contributions, repeats }: StationFinding,
  setBy: StandardKind,
  now: number,
): Improvement[] {
  const more = Math.sqrt(repeats / (repeats + repeatsMore))
  const scaled = (kind: Improvement['kind'], scale: (part: Contribution) => number): Improvement => ({
    kind,
    expandedMm: expandedOf(contributions.map((part) => ({ ...part, signedMm: part.signedMm * scale(part) }))),
  })
  const ofShares = (kind: Preparation) => scaled(kind, (part) => shareAfter(kind, part, setBy))
  return [
    scaled('more-repeats', (part) => (shrinksByRepeats(part) ? more : 1)),
    ...preparations.map(ofShares),
  ]
    .filter(({ expandedMm }) => expandedMm <= 0.95 * now)
    .sort((a, b) => a.expandedMm - b.expandedMm)
}

/** What is left of a contribution, as a share, once a preparation was made: see `budgetOf`. */
export function shareAfter(preparation: Preparation, part: Contribution, setBy: StandardKind): number {
  switch (preparation) {
    case 'set-by-ring':
      return setBy === 'micrometer' ? (ringShare[part.kind] ?? 1) : 1
    case 'record-what-is-missing':
      return part.assumed ? (afterRecord[part.kind] ?? 1) : 1
    case 'know-the-temperatures':
      return isOfTemperature(part) && !part.assumed ? 0.5 : 1
  }
}

/** A repeatability that is the step read (of infinite degrees of freedom) does not shrink by reading again. */
function shrinksByRepeats({ kind, degreesOfFreedom }: Contribution): boolean {
  return kind === 'drift-measured' || (kind === 'repeatability' && Number.isFinite(degreesOfFreedom))
}

/** Typical ring against typical micrometer: setting 0.75 to 2.6 µm, standard 0.5 to 1.5 µm, its error gone. */
const ringShare: { readonly [Kind in SourceKind]?: number } = {
  setting: 0.75 / 2.6,
  standard: 0.5 / 1.5,
  'standard-error': 0,
}

function isOfTemperature({ kind }: Contribution): boolean {
  return kind === 'reference-temperature' || kind === 'temperature-difference' || kind === 'bore-thermometer'
}

function expandedOf(contributions: readonly Contribution[]): number {
  return expanded(combine([{ factor: 1, contributions }]))
}
