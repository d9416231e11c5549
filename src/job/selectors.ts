import type { BoreFinding, Findings, LimitPair } from '../core/findings'
import { inspect } from '../core/inspect'
import type { Bore, Gauge, Reading, Survey } from '../core/measured'
import { blockedBy } from '../core/ports/blocked'
import { diametersShown, exaggerationEnd, exaggerationOf, middleOf } from '../core/surface/exaggeration'
import { gridOf } from '../core/surface/grid-of'
import { type Wall, wallOf } from '../core/surface/wall'
import type { WallGrid } from '../core/surface/wall-grid'
import type { Job } from './schema'

/** What the readings of a job prove; computed once for each document. */
export const findingsOf: (job: Job) => Findings = oncePerJob(inspect)

/** The finding of a bore; undefined for a bore that the job does not have. */
export function findingOf(job: Job, boreId: string): BoreFinding | undefined {
  return findingsOf(job).bores.find((finding) => finding.boreId === boreId)
}

/** The limits a bore is judged by and drawn between, where the spec gives any. */
export function pairOf(job: Job, boreId: string): LimitPair | undefined {
  return findingOf(job, boreId)?.pair
}

/** The diameter that is drawn as it is, mm; one for all bores that lack a full pair of limits. */
export function middleOfBore(job: Job, boreId: string): number | undefined {
  return middleOf(pairOf(job, boreId), findingsOf(job).bores)
}

/** The wall through the readings of a bore's latest survey; undefined while it has none that count. */
export const wallOfBore: (job: Job, boreId: string) => Wall | undefined = oncePerBore((job, bore) => {
  const finding = findingOf(job, bore.id)
  const survey = latestSurvey(bore)
  if (!finding || !survey) return undefined
  return wallOf(bore, finding, gaugeOf(job, survey)?.contactHalfWidthMm)
})

/** The same wall as the picture gets it. */
export const gridOfBore: (job: Job, boreId: string) => WallGrid | undefined = oncePerBore((job, bore) =>
  gridded(job, bore, {}),
)

/** The same wall as the flat map gets it: a row and a column for every few pixels, and for every reading. */
export const mapGridOfBore: (job: Job, boreId: string) => WallGrid | undefined = oncePerBore((job, bore) =>
  gridded(job, bore, { rows: 48, columns: 120 }),
)

function gridded(job: Job, bore: Bore, size: { rows?: number; columns?: number }): WallGrid | undefined {
  const finding = findingOf(job, bore.id)
  const wall = wallOfBore(job, bore.id)
  const middleMm = middleOfBore(job, bore.id)
  if (!finding || !wall || middleMm === undefined) return undefined
  return gridOf(wall, finding, { middleMm, ...size })
}

/** The one exaggeration at which all bores of the job are drawn; undefined while there is nothing to draw. */
export const exaggerationOfJob: (job: Job) => number | undefined = oncePerJob((job) =>
  smallestOverBores(job, exaggerationOf),
)

/** Where the slider of the exaggeration ends for this job. */
export const exaggerationEndOfJob: (job: Job) => number | undefined = oncePerJob((job) =>
  smallestOverBores(job, exaggerationEnd),
)

function smallestOverBores(
  job: Job,
  factor: (middleMm: number, diametersMm: readonly number[]) => number,
): number | undefined {
  const factors = findingsOf(job).bores.flatMap((finding) => {
    const middleMm = middleOfBore(job, finding.boreId)
    const diametersMm = diametersShown([finding])
    return middleMm === undefined || diametersMm.length === 0 ? [] : [factor(middleMm, diametersMm)]
  })
  return factors.length === 0 ? undefined : Math.min(...factors)
}

export interface PlannedStation {
  readonly depthMm: number
  readonly axisDegrees: number
  readonly reading?: Reading
  /** Names of the ports or belts in the way of a contact. */
  readonly blockedBy: readonly string[]
}

/** The stations of a bore's latest survey, a row for each level from the deck down, in the order of entry. */
export const stationsPlanned: (job: Job, boreId: string) => readonly (readonly PlannedStation[])[] =
  oncePerBore((job, bore) => {
    const survey = latestSurvey(bore)
    if (!survey) return []
    const gauge = gaugeOf(job, survey)
    const sizeMm = roughSizeMm(job, bore, survey)
    const readings = new Map(survey.readings.map((reading) => [stationKey(reading), reading]))
    const increasing = (values: readonly number[]) => [...values].sort((a, b) => a - b)
    return increasing(survey.levelsMm).map((depthMm) =>
      increasing(survey.axesDegrees).map((axisDegrees) => {
        const place = { depthMm, axisDegrees }
        const reading = readings.get(stationKey(place))
        return { ...place, ...(reading ? { reading } : {}), blockedBy: blockedBy(bore, gauge, place, sizeMm) }
      }),
    )
  }, [])

/** The survey that findings, picture and sheet show. */
export function latestSurvey(bore: Bore): Survey | undefined {
  return bore.surveys.at(-1)
}

function stationKey({ depthMm, axisDegrees }: Pick<Reading, 'depthMm' | 'axisDegrees'>): string {
  return `${depthMm} ${axisDegrees}`
}

function gaugeOf(job: Job, survey: Survey): Gauge | undefined {
  const setUp = job.setUps.find(({ id }) => id === survey.setUpId)
  return job.gauges.find(({ id }) => id === setUp?.gaugeId)
}

/** Good enough to turn the width of a contact into an angle: a limit, else the setting. */
function roughSizeMm(job: Job, bore: Bore, survey: Survey): number {
  const pair = pairOf(job, bore.id)
  const size = pair?.maxMm ?? pair?.minMm ?? job.setUps.find(({ id }) => id === survey.setUpId)?.settingSizeMm
  if (size === undefined) throw new Error(`No set-up with the id "${survey.setUpId}"`)
  return size
}

/** Documents are never changed in place, so what was computed for one holds for as long as it lives. */
function oncePerJob<Value>(compute: (job: Job) => Value): (job: Job) => Value {
  const known = new WeakMap<Job, { readonly value: Value }>()
  return (job) => {
    const before = known.get(job)
    if (before) return before.value
    const value = compute(job)
    known.set(job, { value })
    return value
  }
}

/** The value for a bore; `otherwise` for one that the job does not have (any more). */
function oncePerBore<Value>(
  compute: (job: Job, bore: Bore) => Value,
  otherwise: Value,
): (job: Job, boreId: string) => Value
function oncePerBore<Value>(
  compute: (job: Job, bore: Bore) => Value | undefined,
): (job: Job, boreId: string) => Value | undefined
function oncePerBore<Value>(
  compute: (job: Job, bore: Bore) => Value,
  otherwise?: Value,
): (job: Job, boreId: string) => Value | undefined {
  const valuesOf = oncePerJob(() => new Map<string, Value>())
  return (job, boreId) => {
    const values = valuesOf(job)
    const before = values.get(boreId)
    if (before !== undefined) return before
    const bore = job.bores.find(({ id }) => id === boreId)
    if (!bore) return otherwise
    const value = compute(job, bore)
    if (value !== undefined) values.set(boreId, value)
    return value
  }
}
