import * as z from 'zod/mini'
import { standingPlace, type VerdictPlace, verdictPlaces, worstPlace } from '../core/conformity/standing'
import type { Bore } from '../core/measured'
import { growthOf } from '../core/outlook/growth'
import { boreThumbnail, thumbnailPattern } from './bore-thumbnail'
import { readingsIn } from './readings-in'
import type { Job } from './schema'
import { findingOf, findingsOf } from './selectors'

/** Counts up when a summary says more or other than before: those of another version are made anew. */
export const summaryVersion = 2

/** What a list of jobs shows and is searched by. */
export interface JobSummary {
  readonly name: string
  readonly machine?: string
  /** Day of the latest survey of the engine's own bores that has a date. */
  readonly surveyedOn?: string
  /** The soonest day on which one of the engine's bores is to be measured again, where that is known. */
  readonly checkOn?: string
  /** The same in hours run. */
  readonly checkHours?: number
  /** Stations read, in all surveys. */
  readonly readings: number
  /** Bores of the engine, and how many of them are judged. */
  readonly bores: number
  readonly judged: number
  /** Where the worst bore lies; absent where none is outside and not every one is inside. */
  readonly place?: VerdictPlace
  /** Bores of the engine whose surface may end them whatever their size. */
  readonly marked: number
  /** Name, machine, people and note, prepared for searching. */
  readonly sought: string
}

/** A small map of a bore, drawn in the list without its readings. */
export interface BoreMap {
  readonly name: string
  readonly marks: string
}

/** So many bores of a job have a map in the list. */
export const mostMaps = 6

export const summaryFields = {
  name: z.string(),
  machine: z.exactOptional(z.string()),
  surveyedOn: z.exactOptional(z.iso.date()),
  checkOn: z.exactOptional(z.iso.date()),
  checkHours: z.exactOptional(z.number()),
  readings: z.number().check(z.gte(0)),
  bores: z.number().check(z.gte(0)),
  judged: z.number().check(z.gte(0)),
  marked: z.number().check(z.gte(0)),
  place: z.exactOptional(z.enum(verdictPlaces)),
  sought: z.string(),
}

export const mapsSchema = z
  .array(z.object({ name: z.string(), marks: z.string().check(z.regex(thumbnailPattern)) }))
  .check(z.maxLength(mostMaps))

/** What a list says of a job; its findings are computed unless they were already. */
export function summaryOf(job: Job): JobSummary {
  const own = job.bores.filter(({ role }) => role === 'of-this-engine')
  const places = own.map(({ id }) => placeOf(job, id))
  const surveyedOn = latestDay(own.flatMap(({ surveys }) => surveys.map(({ date }) => date)))
  const place = worstPlace(places)
  return {
    name: job.name,
    ...(job.machine === undefined ? {} : { machine: job.machine }),
    ...(surveyedOn === undefined ? {} : { surveyedOn }),
    ...checkOf(job, own),
    readings: readingsIn(job),
    bores: own.length,
    judged: places.filter((one) => one !== undefined).length,
    marked: own.filter(({ id }) => findingOf(job, id)?.surface.some(({ stop }) => stop !== undefined)).length,
    ...(place === undefined ? {} : { place }),
    sought: soughtText(job),
  }
}

/** The soonest of what each bore says; a bore without a day leaves it to the others. */
function checkOf(job: Job, own: readonly Bore[]): Pick<JobSummary, 'checkOn' | 'checkHours'> {
  const checks = own.flatMap(({ id }) => {
    const finding = findingOf(job, id)
    return (finding && growthOf(job, findingsOf(job), finding).nextCheck) ?? []
  })
  const days = checks.flatMap(({ date }) => date ?? []).sort()
  const hours = checks.flatMap((check) => check.hours ?? [])
  return {
    ...(days[0] === undefined ? {} : { checkOn: days[0] }),
    ...(hours.length === 0 ? {} : { checkHours: Math.min(...hours) }),
  }
}

/** The maps of the engine's first bores. */
export function boreMapsOf(job: Job): readonly BoreMap[] {
  return job.bores
    .filter(({ role }) => role === 'of-this-engine')
    .slice(0, mostMaps)
    .map(({ id, name }) => ({ name, marks: boreThumbnail(job, id) }))
}

function placeOf(job: Job, boreId: string): VerdictPlace | undefined {
  const finding = findingOf(job, boreId)
  return finding && standingPlace(finding)
}

function latestDay(days: readonly (string | undefined)[]): string | undefined {
  return days.reduce(
    (latest, day) => (latest === undefined || (day ?? '') > latest ? day : latest),
    undefined,
  )
}

function soughtText({ name, machine, note, bores }: Job): string {
  const people = bores.flatMap(({ surveys }) => surveys.map(({ measuredBy }) => measuredBy))
  const texts = [name, machine, ...new Set(people), note].filter((text) => text !== undefined)
  return folded(texts.join('\n'))
}

/** As texts are compared in a search: without capitals and accents. */
export function folded(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
}
