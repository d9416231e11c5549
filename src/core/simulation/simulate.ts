import { conditionsOf } from '../conditions-of'
import { judgedLimits } from '../conformity/conformity'
import { limitPair } from '../conformity/limit-pair'
import { diameterAt20 } from '../diameter/diameter-at-20'
import { entryOf } from '../diameter/entry'
import { readingReference } from '../diameter/reading-reference'
import type { BoreFinding, Contribution, Place, StationFinding } from '../findings'
import { inspect } from '../inspect'
import type { Measured } from '../measured'
import { type SeededDraws, seededDraws } from '../statistics/seeded-draws'
import { distributionOf } from '../uncertainty/distribution-of'
import type { SetUpConditions } from '../uncertainty/set-up-contributions'
import { type FigureName, type FigureOfStations, figuresOfStations, type Interval } from './simulated-figures'

/** A station's interval by simulation beside the linear one, mm. */
export interface SimulatedStation extends Place {
  readonly boreId: string
  readonly boreName: string
  readonly linear: { readonly lowMm: number; readonly highMm: number }
  readonly simulated: { readonly lowMm: number; readonly highMm: number }
  /** How far apart the ends of the two intervals may lie: a twentieth of U, five times what the trials leave open. */
  readonly toleranceMm: number
  /** Probability of lying inside the limits judged, both ways; absent without limits. */
  readonly inside?: { readonly linear: number; readonly simulated: number }
}

/** A figure made of several stations, with its interval as stated and as simulated, mm. */
export interface SimulatedFigure {
  readonly boreId: string
  readonly boreName: string
  readonly name: FigureName
  readonly stated: Interval
  readonly simulated: Interval
  /** How far the simulated interval is from what it should be: see `holds` of the figure. */
  readonly apartMm: number
  readonly toleranceMm: number
}

export interface Simulation {
  readonly trials: number
  readonly stations: readonly SimulatedStation[]
  readonly figures: readonly SimulatedFigure[]
}

/** Trials between two reports of how far it is. */
const stride = 500

interface Simulated {
  readonly station: StationFinding
  readonly boreName: string
  readonly conditions: SetUpConditions
  readonly limits: { readonly min?: number; readonly max?: number } | undefined
  readonly drawn: Float64Array
}

/**
 * Propagates the distributions of all inputs through the model of the diameter at 20 °C, by Monte Carlo: for
 * every counted station of the latest surveys the 95 % interval (probabilistically symmetric) and the chance
 * of lying inside the limits, beside what `inspect` says by linear propagation. Yields how many trials are
 * done; the return value is the result. The figures made of several stations (level means, ovality, taper, fitted ovals,
 * differences) are taken from the same draws. The same seed gives the same result. Errors that stations share are
 * drawn once for all of them; sources that rest on one estimate share the draw of its deviation.
 * Source: JCGM 101:2008, 5.9 and 7; the comparison as in 8.1, its tolerance our own. The ends are good to about 1 % of U at 20,000 trials.
 */
export function* simulate(measured: Measured, trials: number, seed: number): Generator<number, Simulation> {
  if (!(Number.isInteger(trials) && trials >= 100)) throw new RangeError(`simulate: ${trials} trials`)
  const { bores } = inspect(measured)
  const simulated = stationsOf(measured, bores, trials)
  const stations = simulated.map(({ station }) => station)
  const figures = bores
    .flatMap((finding) => figuresOfStations(finding, stations))
    .map((figure) => ({ figure, drawn: new Float64Array(trials) }))
  const draws = seededDraws(seed)
  for (let trial = 0; trial < trials; trial++) {
    drawTrial(simulated, draws, trial)
    const diameter = (index: number) => simulated[index]?.drawn[trial] ?? Number.NaN
    for (const { figure, drawn } of figures) drawn[trial] = figure.figureMm(diameter)
    if ((trial + 1) % stride === 0) yield trial + 1
  }
  return { trials, stations: simulated.map(resultOf), figures: figures.map(figureResultOf) }
}

function stationsOf(measured: Measured, bores: readonly BoreFinding[], trials: number): Simulated[] {
  return bores.flatMap((finding) => {
    const bore = measured.bores.find(({ id }) => id === finding.boreId)
    const survey = bore?.surveys.find(({ id }) => id === finding.surveyId)
    if (!bore || !survey) throw new Error(`simulate: no survey ${finding.surveyId}`)
    const pair = limitPair(measured.spec, bore)
    const shared = {
      boreName: finding.boreName,
      conditions: conditionsOf(measured, bore, survey),
      // A bore for comparison is not judged.
      limits: pair && finding.role === 'of-this-engine' ? judgedLimits(pair) : undefined,
    }
    return finding.stations
      .filter(({ counted }) => counted)
      .map((station) => ({ ...shared, station, drawn: new Float64Array(trials) }))
  })
}

function drawTrial(stations: readonly Simulated[], draws: SeededDraws, trial: number): void {
  const byId = new Map<string, number>()
  const ratios = new Map<string, number>()
  const inU = (part: Contribution): number => {
    const before = byId.get(part.id)
    if (before !== undefined) return before
    const value =
      distributionOf(part) === 'rectangular'
        ? draws.rectangular()
        : draws.normal() / ratioOf(part, draws, ratios)
    byId.set(part.id, value)
    return value
  }
  for (const one of stations) one.drawn[trial] = diameterOf(one, inU)
}

function ratioOf(part: Contribution, draws: SeededDraws, ratios: Map<string, number>): number {
  const key = part.estimate ?? part.id
  const before = ratios.get(key)
  if (before !== undefined) return before
  const ratio = draws.deviationRatio(part.degreesOfFreedom)
  ratios.set(key, ratio)
  return ratio
}

/** The model of the diameter with every input moved by its error. */
function diameterOf({ station, conditions: c }: Simulated, inU: (part: Contribution) => number): number {
  const { temperatures: t, wall, standardExpansion: reference } = c
  let wallPerK = wall.perK
  let standardPerK = reference.perK
  let referenceK = 0
  let boreK = 0
  let lengthMm = 0
  for (const part of station.contributions) {
    const error = inU(part)
    switch (part.kind) {
      case 'wall-expansion':
        wallPerK += error * wall.doubtPerK
        break
      case 'standard-expansion':
        standardPerK += error * reference.doubtPerK
        break
      case 'reference-temperature':
        referenceK += error * t.referenceDoubtK
        if (t.knowledge !== 'two-thermometers') boreK += error * t.referenceDoubtK
        break
      case 'bore-thermometer':
        boreK += error * t.differenceDoubtK
        break
      case 'temperature-difference':
        if (t.knowledge === 'bore-only') referenceK -= error * t.differenceDoubtK
        else boreK += error * t.differenceDoubtK
        break
      default:
        lengthMm += error * part.signedMm
    }
  }
  const meanMm = station.diameterMm - station.correctionMm
  const isDirect = entryOf(c.setUp, c.gauge) === 'direct'
  const settingMm = isDirect ? meanMm : (readingReference(c.setUp, reference.perK)?.sizeMm ?? meanMm)
  return diameterAt20({
    settingMm,
    standardErrorMm: (c.standard.errorUm ?? 0) / 1000,
    standardPerK,
    wallPerK,
    referenceC: t.referenceC + referenceK,
    boreC: t.boreC + boreK,
    deviationMm: meanMm - settingMm + lengthMm,
  })
}

function resultOf({ station, boreName, limits, drawn }: Simulated): SimulatedStation {
  const sorted = drawn.slice().sort()
  const { boreId, depthMm, axisDegrees, diameterMm, expandedMm, conformity } = station
  const min = limits?.min ?? Number.NEGATIVE_INFINITY
  const max = limits?.max ?? Number.POSITIVE_INFINITY
  const inside = sorted.reduce((count, d) => count + (d >= min && d <= max ? 1 : 0), 0) / sorted.length
  return {
    boreId,
    boreName,
    depthMm,
    axisDegrees,
    linear: { lowMm: diameterMm - expandedMm, highMm: diameterMm + expandedMm },
    simulated: { lowMm: quantileOf(sorted, 0.025), highMm: quantileOf(sorted, 0.975) },
    toleranceMm: expandedMm / 20,
    ...(conformity && limits ? { inside: { linear: conformity.probabilityInside, simulated: inside } } : {}),
  }
}

function figureResultOf({
  figure,
  drawn,
}: {
  figure: FigureOfStations
  drawn: Float64Array
}): SimulatedFigure {
  const { figureMm: _, holds, ...of } = figure
  const sorted = drawn.sort()
  const simulated = { lowMm: quantileOf(sorted, 0.025), highMm: quantileOf(sorted, 0.975) }
  const below = of.stated.lowMm - simulated.lowMm
  const above = simulated.highMm - of.stated.highMm
  const apartMm = holds === 'alike' ? Math.max(Math.abs(below), Math.abs(above)) : Math.max(0, below, above)
  return { ...of, simulated, apartMm }
}

/** JCGM 101:2008, 7.7.1: the value whose rank is the share of all, between two values by their distance. */
function quantileOf(sorted: Float64Array, share: number): number {
  const rank = share * sorted.length - 0.5
  const below = Math.max(0, Math.floor(rank))
  const above = Math.min(sorted.length - 1, below + 1)
  const from = sorted[below] ?? Number.NaN
  return from + (rank - below) * ((sorted[above] ?? from) - from)
}

/** The ends of two intervals that lie furthest apart, as a share of what may lie between them. */
export function worstOf(simulation: Simulation): { station: SimulatedStation; apartMm: number } | undefined {
  const found = simulation.stations.map((station) => ({
    station,
    apartMm: Math.max(
      Math.abs(station.simulated.lowMm - station.linear.lowMm),
      Math.abs(station.simulated.highMm - station.linear.highMm),
    ),
  }))
  return found.reduce<(typeof found)[number] | undefined>(
    (worst, one) =>
      worst && worst.apartMm / worst.station.toleranceMm >= one.apartMm / one.station.toleranceMm
        ? worst
        : one,
    undefined,
  )
}
