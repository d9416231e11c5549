import { boreDifference } from '../core/difference/bore-difference'
import { differenceGrid, differenceStations } from '../core/difference/difference-grid'
import type { BoreFinding, Difference, DrawnStation } from '../core/findings'
import type { Bore, Survey } from '../core/measured'
import { exaggerationOf } from '../core/surface/exaggeration'
import { columnAngles, joinedSpans, rowDepths } from '../core/surface/grid-lines'
import { gridOf } from '../core/surface/grid-of'
import type { Wall } from '../core/surface/wall'
import type { WallGrid } from '../core/surface/wall-grid'
import type { Job } from './schema'
import { findingOf, middleOfBore, oncePerJob, wallOfBore } from './selectors'

/** As many as stand beside each other at once. */
export const mostCompared = 8

const mapSize = { rows: 48, columns: 120 }
const pictureSize = { rows: 128, columns: 256 }

/** A survey of a bore that has a wall to be compared. */
export interface Compared {
  readonly key: string
  readonly bore: Bore
  readonly survey: Survey
  readonly finding: BoreFinding
  readonly wall: Wall
  /** Which of the bore's surveys it is, from 1, and how many there are to compare. */
  readonly number: number
  readonly ofBore: number
}

/** What names a survey of a bore within a job. */
function keyOf(boreId: string, surveyId: string): string {
  return JSON.stringify([boreId, surveyId])
}

/** All that can be compared: the bores of the engine, then those for comparison, the surveys of each in time. */
export const comparedOf: (job: Job) => readonly Compared[] = oncePerJob((job) =>
  (['of-this-engine', 'for-comparison'] as const).flatMap((role) =>
    job.bores.filter((bore) => bore.role === role).flatMap((bore) => comparedOfBore(job, bore)),
  ),
)

function comparedOfBore(job: Job, bore: Bore): readonly Compared[] {
  const found = inTime(bore.surveys).flatMap((survey) => {
    const finding = findingOf(job, bore.id, survey.id)
    const wall = wallOfBore(job, bore.id, survey.id)
    return finding && wall ? [{ key: keyOf(bore.id, survey.id), bore, survey, finding, wall }] : []
  })
  return found.map((one, index) => ({ ...one, number: index + 1, ofBore: found.length }))
}

/** By hours run where all have them, else by date where all have one, else as they are listed. */
function inTime(surveys: readonly Survey[]): readonly Survey[] {
  const byHours = surveys.every(({ hoursRun }) => hoursRun !== undefined)
  const byDate = surveys.every(({ date }) => date !== undefined)
  if (byHours) return [...surveys].sort((a, b) => (a.hoursRun ?? 0) - (b.hoursRun ?? 0))
  return byDate ? [...surveys].sort((a, b) => (a.date ?? '').localeCompare(b.date ?? '')) : surveys
}

/**
 * What is compared before anybody chose: a block in its order, each bore by its latest survey; the surveys of an
 * engine's only bore in time; both with the bores they are compared with.
 */
export const usuallyCompared: (job: Job) => readonly string[] = oncePerJob((job) => {
  const all = comparedOf(job)
  const own = all.filter(({ bore }) => bore.role === 'of-this-engine')
  const latest = all.filter(({ number, ofBore }) => number === ofBore)
  const isBlock = new Set(own.map(({ bore }) => bore.id)).size > 1
  const shown = isBlock ? latest : all.filter((one) => own.includes(one) || latest.includes(one))
  return shown.slice(0, mostCompared).map(({ key }) => key)
})

/**
 * The difference that is read before anybody chose: the bore in use less the new one, or the last survey of a bore
 * less its first. None for a block: its bores were never one.
 */
export function usualDifference(shown: readonly Compared[]): readonly [Compared, Compared] | undefined {
  const own = shown.filter(({ bore }) => bore.role === 'of-this-engine')
  const first = own[0]
  const last = own.at(-1)
  if (!first || !last || first.bore !== last.bore) return undefined
  const other =
    shown.find(({ bore }) => bore.role === 'for-comparison') ?? (first === last ? undefined : first)
  return other && [last, other]
}

/** A bore through its surveys: a wall for each, all on the same lines, so that one can be drawn into the next. */
export interface TimeLine {
  readonly bore: Bore
  readonly points: readonly TimePoint[]
  /** Where each lies along the line, from 0 to 1: by its hours where all have them, else evenly. */
  readonly places: readonly number[]
}

export interface TimePoint extends Compared {
  readonly grid: WallGrid
  readonly mapGrid: WallGrid
}

/** The bores that were measured more than once, each through its surveys. */
export const timeLinesOf: (job: Job) => readonly TimeLine[] = oncePerJob((job) =>
  job.bores.flatMap((bore) => {
    const surveys = comparedOf(job).filter((one) => one.bore.id === bore.id)
    const middleMm = middleOfBore(job, bore.id)
    if (surveys.length < 2 || middleMm === undefined) return []
    const spans = joinedSpans(surveys.map(({ wall }) => wall.span))
    const lengthMm = Math.max(...surveys.map(({ wall }) => wall.lengthMm))
    const gridOn = ({ wall, finding }: Compared, size: typeof mapSize) =>
      gridOf(wall, finding, {
        middleMm,
        lines: {
          depthsMm: rowDepths(spans, lengthMm, size.rows),
          angles: columnAngles(spans, size.columns),
        },
      })
    const points = surveys.map((one) => ({
      ...one,
      grid: gridOn(one, pictureSize),
      mapGrid: gridOn(one, mapSize),
    }))
    return [{ bore, points, places: placesOf(surveys.map(({ survey }) => survey)) }]
  }),
)

function placesOf(surveys: readonly Survey[]): readonly number[] {
  const hours = surveys.map(({ hoursRun }) => hoursRun)
  const [first, last] = [hours[0], hours.at(-1)]
  const rises = hours.every((at, i) => at !== undefined && (i === 0 || at > (hours[i - 1] ?? at)))
  return surveys.map((_, index) =>
    rises && first !== undefined && last !== undefined
      ? ((hours[index] ?? first) - first) / (last - first)
      : index / (surveys.length - 1),
  )
}

/** One less another, with the wall of it. */
export interface ComparedDifference {
  readonly one: Compared
  readonly other: Compared
  readonly difference: Difference
  readonly grid: WallGrid
  readonly mapGrid: WallGrid
  readonly stations: readonly DrawnStation[]
  /** It is drawn at its own. */
  readonly exaggeration: number
}

const differencesKnown = oncePerJob(() => new Map<string, ComparedDifference | undefined>())

/** Undefined where the two have no station in common, or one of them was read by three contacts. */
export function differenceOf(job: Job, one: Compared, other: Compared): ComparedDifference | undefined {
  const known = differencesKnown(job)
  const key = `${one.key} ${other.key}`
  if (!known.has(key)) known.set(key, workedOut(job, one, other))
  return known.get(key)
}

function workedOut(job: Job, one: Compared, other: Compared): ComparedDifference | undefined {
  const difference = boreDifference(job, one.finding, other.finding)
  const middleMm = middleOfBore(job, one.bore.id)
  if (!difference || middleMm === undefined) return undefined
  const stations = differenceStations(difference, middleMm)
  const gridOn = (size: typeof mapSize) =>
    differenceGrid(difference, one.wall, other.wall, { middleMm, ...size })
  return {
    one,
    other,
    difference,
    grid: gridOn(pictureSize),
    mapGrid: gridOn(mapSize),
    stations,
    exaggeration: exaggerationOf(
      middleMm,
      stations.map(({ diameterMm }) => diameterMm),
    ),
  }
}
