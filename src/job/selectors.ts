import { roughSizeMm } from '../core/diameter/entry'
import type { BoreFinding, Findings, LimitPair } from '../core/findings'
import { inspect } from '../core/inspect'
import type { Bore, Gauge, Reading, Survey } from '../core/measured'
import { blockedBy } from '../core/ports/blocked'
import { diametersShown, exaggerationEnd, exaggerationOf, middleOf } from '../core/surface/exaggeration'
import { gridOf } from '../core/surface/grid-of'
import { type Wall, wallOf } from '../core/surface/wall'
import type { WallGrid } from '../core/surface/wall-grid'
import type { Job } from './schema'
import { isUnreachable } from './unreachable'

const findingsKnown = oncePerJob(inspect)

/** What the readings of a job prove; computed once for each document, and not anew where only its scans changed. */
export function findingsOf(job: Job): Findings {
  return findingsKnown(withSameReadings(job))
}

/** The finding of a bore by one of its surveys, the latest where none is named; undefined where there is none. */
export function findingOf(job: Job, boreId: string, surveyId?: string): BoreFinding | undefined {
  const { bores, earlier } = findingsOf(job)
  const latest = bores.find((finding) => finding.boreId === boreId)
  if (surveyId === undefined || latest?.surveyId === surveyId) return latest
  return earlier.find((finding) => finding.boreId === boreId && finding.surveyId === surveyId)
}

/** The limits a bore is judged by and drawn between, where the spec gives any. */
export function pairOf(job: Job, boreId: string): LimitPair | undefined {
  return findingOf(job, boreId)?.pair
}

/** The diameter that is drawn as it is, mm; one for all bores that lack a full pair of limits. */
export function middleOfBore(job: Job, boreId: string): number | undefined {
  return middleOf(pairOf(job, boreId), findingsOf(job).bores)
}

/** The wall through the readings of a survey; undefined while it has none that count. */
export const wallOfBore: OfSurvey<Wall | undefined> = oncePerSurvey((job, bore, survey) => {
  const finding = findingOf(job, bore.id, survey.id)
  return finding && wallOf(bore, finding, gaugeOf(job, survey)?.contactHalfWidthMm)
})

/** The same wall as the picture gets it. */
export const gridOfBore: OfSurvey<WallGrid | undefined> = oncePerSurvey((job, bore, survey) =>
  gridded(job, bore, survey, {}),
)

/** The same wall as the flat map gets it: a row and a column for every few pixels, and for every reading. */
export const mapGridOfBore: OfSurvey<WallGrid | undefined> = oncePerSurvey((job, bore, survey) =>
  gridded(job, bore, survey, { rows: 48, columns: 120 }),
)

function gridded(
  job: Job,
  bore: Bore,
  survey: Survey,
  size: { rows?: number; columns?: number },
): WallGrid | undefined {
  const finding = findingOf(job, bore.id, survey.id)
  const wall = wallOfBore(job, bore.id, survey.id)
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
  const { bores, earlier } = findingsOf(job)
  const factors = [...bores, ...earlier].flatMap((finding) => {
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
  /** Recorded as out of reach of the gauge. */
  readonly isUnreachable: boolean
}

/** The stations of a survey, a row for each level from the deck down, in the order of entry. */
export const stationsPlanned: OfSurvey<readonly (readonly PlannedStation[])[]> = oncePerSurvey(
  (job, bore, survey) => {
    const gauge = gaugeOf(job, survey)
    const sizeMm = contactSizeMm(job, bore, survey)
    const readings = new Map(survey.readings.map((reading) => [stationKey(reading), reading]))
    const increasing = (values: readonly number[]) => [...values].sort((a, b) => a - b)
    return increasing(survey.levelsMm).map((depthMm) =>
      increasing(survey.axesDegrees).map((axisDegrees) => {
        const place = { depthMm, axisDegrees }
        const reading = readings.get(stationKey(place))
        return {
          ...place,
          ...(reading ? { reading } : {}),
          blockedBy: blockedBy(bore, gauge, place, sizeMm),
          isUnreachable: isUnreachable(survey, place),
        }
      }),
    )
  },
  [],
)

/** The survey of a bore that is named, else its latest: the one that its verdict speaks of. */
export function surveyOf(bore: Bore, surveyId?: string): Survey | undefined {
  return bore.surveys.find(({ id }) => id === surveyId) ?? bore.surveys.at(-1)
}

function stationKey({ depthMm, axisDegrees }: Pick<Reading, 'depthMm' | 'axisDegrees'>): string {
  return `${depthMm} ${axisDegrees}`
}

function gaugeOf(job: Job, survey: Survey): Gauge | undefined {
  const setUp = job.setUps.find(({ id }) => id === survey.setUpId)
  return job.gauges.find(({ id }) => id === setUp?.gaugeId)
}

/** Good enough to turn the width of a contact into an angle: a limit, else the setting. */
function contactSizeMm(job: Job, bore: Bore, survey: Survey): number {
  const pair = pairOf(job, bore.id)
  const setUp = job.setUps.find(({ id }) => id === survey.setUpId)
  const size = pair?.maxMm ?? pair?.minMm ?? (setUp && roughSizeMm(setUp))
  if (size === undefined) throw new Error(`No set-up with the id "${survey.setUpId}"`)
  return size
}

/** The value of a job, worked out once. Documents are never changed in place, so what was computed for one holds for as long as it lives. */
export function oncePerJob<Value>(compute: (job: Job) => Value): (job: Job) => Value {
  const known = new WeakMap<Job, { readonly value: Value }>()
  return (job) => {
    const before = known.get(job)
    if (before) return before.value
    const value = compute(job)
    known.set(job, { value })
    return value
  }
}

let lastRead: Job | undefined
const sameReadings = new WeakMap<Job, Job>()

/** The job before this one, where the two differ in their scans alone: what is drawn of readings then stays as it is. */
function withSameReadings(job: Job): Job {
  const same = sameReadings.get(job) ?? (lastRead && isSameButForScans(job, lastRead) ? lastRead : job)
  sameReadings.set(job, same)
  lastRead = same
  return same
}

function isSameButForScans(job: Job, other: Job): boolean {
  const isSameBore = (bore: Bore, index: number) => {
    const before = other.bores[index]
    return before !== undefined && isSameBut('scans', bore, before)
  }
  return (
    isSameBut('bores', job, other) && job.bores.length === other.bores.length && job.bores.every(isSameBore)
  )
}

/** Whether two hold the same values, one aside. */
function isSameBut<Whole extends object>(aside: keyof Whole, one: Whole, other: Whole): boolean {
  const keys = new Set([...Object.keys(one), ...Object.keys(other)] as (keyof Whole)[])
  return [...keys].every((key) => key === aside || one[key] === other[key])
}

/** Something about a survey of a bore, the latest where none is named. */
type OfSurvey<Value> = (job: Job, boreId: string, surveyId?: string) => Value

/** The value for a survey; `otherwise` for a bore that the job does not have (any more). */
function oncePerSurvey<Value>(
  compute: (job: Job, bore: Bore, survey: Survey) => Value,
  otherwise: Value,
): OfSurvey<Value>
function oncePerSurvey<Value>(
  compute: (job: Job, bore: Bore, survey: Survey) => Value | undefined,
): OfSurvey<Value | undefined>
function oncePerSurvey<Value>(
  compute: (job: Job, bore: Bore, survey: Survey) => Value,
  otherwise?: Value,
): OfSurvey<Value | undefined> {
  const valuesOf = oncePerJob(() => new WeakMap<Survey, { readonly value: Value }>())
  return (job, boreId, surveyId) => {
    const bore = job.bores.find(({ id }) => id === boreId)
    const survey = bore && surveyOf(bore, surveyId)
    if (!survey) return otherwise
    const values = valuesOf(withSameReadings(job))
    const before = values.get(survey)
    if (before) return before.value
    const value = compute(job, bore, survey)
    values.set(survey, { value })
    return value
  }
}
