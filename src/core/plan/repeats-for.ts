import type { Contribution } from '../findings'
import type { Gauge } from '../measured'
import { type Preparation, preparations, shareAfter } from '../uncertainty/budget'
import { combine, expanded } from '../uncertainty/combine'
import { type SetUpConditions, setUpContributions } from '../uncertainty/set-up-contributions'
import {
  type Repeatability,
  repeatabilityOf,
  stationContributions,
} from '../uncertainty/station-contributions'
import type { PlanQuestion } from './plan-axes'

/** What is to be known how well, and with what. */
export interface RepeatsRequest {
  readonly question: PlanQuestion
  readonly conditions: SetUpConditions
  readonly diameterMm: number
  readonly repeatability: Repeatability
  /** How many axes a level is read on. */
  readonly axes: number
  /** The wanted U, two-sided 95 %, mm. */
  readonly wantedMm: number
}

/** Something to do before more readings, with the least U that it leaves and the readings that then suffice. */
export interface RepeatsRemedy {
  readonly kind: Preparation | 'finer-gauge' | 'all-together'
  readonly leastMm: number
  /** Absent: no number suffices even so. */
  readonly repeats?: number
}

export type RepeatsAnswer =
  | { readonly reached: true; readonly repeats: number; readonly expandedMm: number; readonly onceMm: number }
  | {
      readonly reached: false
      /** U of one reading a station, and what no number of readings gets below, mm. */
      readonly onceMm: number
      readonly leastMm: number
      /** Readings that would suffice where more than `mostRepeats` are needed. */
      readonly repeats?: number
      /** The best first; only such as take off a twentieth of the least U or more. */
      readonly remedies: readonly RepeatsRemedy[]
    }

/** Nobody reads a station more often, so a larger number counts as none. */
export const mostRepeats = 20
/** Stands for any number of readings: what shrinks with them is then below a thousandth of itself. */
const countless = 1e7

/** U as a function of the number of readings at each station, mm. */
type DoubtOf = (repeats: number) => number

/**
 * How many readings at each station bring U of what the question asks for down to the wanted one: of a diameter
 * (size); of the difference of two at a level (out-of-round, bolts); of two level means (along the depth); of a
 * diameter and the mean of the land (wear). From the gauge's budget under its set-up at a place without slope, by
 * `combine`, errors that the stations share dropping out by their identity; the dial or scale and the step read do
 * not shrink with readings (GUM, JCGM 100:2008, 4.2.3 and F.2.2.1). Remedies scale their contributions as in
 * `budgetOf`; a finer gauge has the typical figures of a 0.001 dial set as the gauge is now. Throws for a wanted U
 * that is not above 0.
 */
export function repeatsFor(request: RepeatsRequest): RepeatsAnswer {
  const { wantedMm } = request
  if (!(wantedMm > 0)) throw new RangeError(`repeatsFor: a wanted U of ${wantedMm} mm`)
  const doubtOf = doubt(request, () => 1)
  const onceMm = doubtOf(1)
  const repeats = fewestReaching(doubtOf, wantedMm)
  if (repeats !== undefined && repeats <= mostRepeats) {
    return { reached: true, repeats, expandedMm: doubtOf(repeats), onceMm }
  }
  const leastMm = doubtOf(countless)
  return {
    reached: false,
    onceMm,
    leastMm,
    ...(repeats === undefined ? {} : { repeats }),
    remedies: remediesOf(request, doubtOf(mostRepeats)),
  }
}

/** U never grows with the number of readings, so halving finds the fewest. */
function fewestReaching(doubtOf: DoubtOf, wantedMm: number): number | undefined {
  if (doubtOf(countless) > wantedMm) return undefined
  let enough = 1
  while (doubtOf(enough) > wantedMm) enough *= 2
  let tooFew = Math.floor(enough / 2)
  while (enough - tooFew > 1) {
    const between = Math.floor((enough + tooFew) / 2)
    if (doubtOf(between) > wantedMm) tooFew = between
    else enough = between
  }
  return enough
}

function remediesOf(request: RepeatsRequest, leastNowMm: number): RepeatsRemedy[] {
  const finer = withFinerGauge(request)
  const setBy = request.conditions.standard.kind
  const all = (part: Contribution) =>
    preparations.reduce((share, preparation) => share * shareAfter(preparation, part, setBy), 1)
  const tried: readonly (readonly [RepeatsRemedy['kind'], DoubtOf])[] = [
    ...preparations.map((kind) => [kind, doubt(request, (part) => shareAfter(kind, part, setBy))] as const),
    ...(finer ? [['finer-gauge', doubt(finer, () => 1)] as const] : []),
    ['all-together', doubt(finer ?? request, all)],
  ]
  const remedies = tried
    .map(([kind, doubtOf]): RepeatsRemedy => {
      const repeats = fewestReaching(doubtOf, request.wantedMm)
      const suffices = repeats !== undefined && repeats <= mostRepeats
      return { kind, leastMm: doubtOf(mostRepeats), ...(suffices ? { repeats } : {}) }
    })
    .filter(({ leastMm }) => leastMm <= 0.95 * leastNowMm)
    .sort((a, b) => a.leastMm - b.leastMm)
  const single = remedies.filter(({ kind }) => kind !== 'all-together')
  // Doing everything at once is worth saying only where no single thing does.
  return single.length < 2 || single.some(({ repeats }) => repeats !== undefined) ? single : remedies
}

/** A dial read to a micron in the place of a coarser gauge. */
function withFinerGauge(request: RepeatsRequest): RepeatsRequest | undefined {
  const { conditions, diameterMm } = request
  const { gauge, standard, setUp } = conditions
  const isCoarse = ['dial-0.01', 'dial-0.01-simple', 'telescoping', 'internal-micrometer-rods'].includes(
    gauge.kind,
  )
  if (!isCoarse) return undefined
  const kind = standard.kind === 'ring' ? 'dial-0.001-ring' : 'dial-0.001-micrometer'
  const finer: Gauge = { id: gauge.id, kind }
  return {
    ...request,
    diameterMm,
    conditions: { ...conditions, gauge: finer, setUp: { ...setUp, entry: 'size' } },
    repeatability: repeatabilityOf(finer, '', []),
  }
}

function doubt(request: RepeatsRequest, share: (part: Contribution) => number): DoubtOf {
  const { conditions, diameterMm, repeatability, question, axes } = request
  const shared = setUpContributions(conditions)(diameterMm)
  const { setUp, gauge, standard } = conditions
  const station = (id: string, repeats: number) =>
    [
      ...shared,
      ...stationContributions({ id, repeats, setUp, gauge, standard, repeatability, slope: 0 }),
    ].map((part) => ({ ...part, signedMm: part.signedMm * share(part) }))
  const factors = factorsOf(question, axes)
  return (repeats) =>
    expanded(
      combine(
        factors.map((factor, index) => ({ factor, contributions: station(`station ${index}`, repeats) })),
      ),
    )
}

/** What is asked for as a sum of stations' diameters, each with its factor. */
function factorsOf(question: PlanQuestion, axes: number): number[] {
  const level = (factor: number) => Array.from({ length: axes }, () => factor / axes)
  switch (question) {
    case 'size':
      return [1]
    case 'out-of-round':
    case 'bolts':
      return [1, -1]
    case 'along-depth':
      return [...level(1), ...level(-1)]
    case 'wear':
      return [1, ...level(-1)]
  }
}
