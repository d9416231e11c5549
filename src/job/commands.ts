/**
 * Changes to a job but for instruments and set-ups, as pure functions from one document to the next with shared
 * structure. A change that changes nothing returns the same object. An id or a place that does not exist
 * is our own mistake and throws.
 */
import { isOfSizes } from '../core/diameter/entry'
import type { Place } from '../core/findings'
import type { Belt, Bore, Port, Reading, Spec, Survey } from '../core/measured'
import { type Patch, patched, withEntry } from './patch'
import { sameValue } from './same-value'
import type { Job } from './schema'
import { unreachableWhere } from './unreachable'

export function renameJob(job: Job, name: string): Job {
  return patched(job, { name })
}

type Described = Pick<
  Job,
  'machine' | 'hoursPerWeek' | 'note' | 'invented' | 'repeatsPerStation' | 'wantedDoubtUm' | 'shownIn'
>

export function describeJob(job: Job, patch: Patch<Described>): Job {
  return patched(job, patch)
}

/** Changes limits. A bore follows its grade when that is renamed in place, and has none when it goes. */
export function setSpec(job: Job, patch: Patch<Spec>): Job {
  const spec = patched(job.spec, patch)
  if (spec === job.spec) return job
  return { ...job, spec, bores: job.bores.map((bore) => regraded(bore, job.spec, spec)) }
}

function regraded(bore: Bore, before: Spec, after: Spec): Bore {
  const grades = after.grades ?? []
  if (bore.grade === undefined || grades.some(({ name }) => name === bore.grade)) return bore
  const index = (before.grades ?? []).findIndex(({ name }) => name === bore.grade)
  const renamed = before.grades?.length === grades.length ? grades[index]?.name : undefined
  return patched(bore, { grade: renamed })
}

export function setBore(
  job: Job,
  boreId: string,
  patch: Patch<Omit<Bore, 'id' | 'ports' | 'belts' | 'surveys'>>,
): Job {
  return withBore(job, boreId, (bore) => patched(bore, patch))
}

/** Sets the ports of this bore; of all bores where all had the same ports before. */
export function setPorts(job: Job, boreId: string, ports: readonly Port[]): Job {
  return setOpenings(job, boreId, 'ports', ports)
}

/** Sets the belts of this bore; of all bores where all had the same belts before. */
export function setBelts(job: Job, boreId: string, belts: readonly Belt[]): Job {
  return setOpenings(job, boreId, 'belts', belts)
}

function setOpenings<Field extends 'ports' | 'belts'>(
  job: Job,
  boreId: string,
  field: Field,
  openings: Bore[Field],
): Job {
  const before = boreOf(job, boreId)[field]
  const alike = job.bores.every((bore) => sameValue(bore[field], before))
  const bores = job.bores.map((bore) =>
    alike || bore.id === boreId ? patched<Bore>(bore, { [field]: openings }) : bore,
  )
  return bores.every((bore, index) => bore === job.bores[index]) ? job : { ...job, bores }
}

/** Adds the mirror image of a port about the plane through 0° and 180°, its name with the suffix given. */
export function mirrorPort(job: Job, boreId: string, portId: string, ids: () => string, suffix = ''): Job {
  const { ports } = boreOf(job, boreId)
  const port = ports.find(({ id }) => id === portId)
  if (!port) throw new Error(`No port with the id "${portId}"`)
  const image: Port = {
    ...port,
    id: ids(),
    name: `${port.name}${suffix}`,
    fromDegrees: mirrored(port.toDegrees),
    toDegrees: mirrored(port.fromDegrees),
  }
  return setPorts(job, boreId, [...ports, image])
}

/** The angle on the other side of 0°, from 0 to 360. */
function mirrored(angle: number): number {
  const image = 360 - angle
  return image > 360 ? image - 360 : image
}

export function setSurvey(
  job: Job,
  boreId: string,
  surveyId: string,
  patch: Patch<
    Omit<Survey, 'id' | 'setUpId' | 'levelsMm' | 'axesDegrees' | 'readings' | 'unreachable' | 'answered'>
  >,
): Job {
  return withSurvey(job, boreId, surveyId, (survey) => patched(survey, patch))
}

/** Sets the levels, in order of depth. Throws when a level with readings would go: see `removeLevel`. */
export function setLevels(job: Job, boreId: string, surveyId: string, levelsMm: readonly number[]): Job {
  return withSurvey(job, boreId, surveyId, (survey) => {
    const lost = survey.readings.find(({ depthMm }) => !levelsMm.includes(depthMm))
    if (lost) throw new Error(`The level at ${lost.depthMm} mm holds readings`)
    return patched(survey, {
      levelsMm: inOrder(levelsMm),
      ...unreachableWhere(survey, ({ depthMm }) => levelsMm.includes(depthMm)),
    })
  })
}

/** Sets the axes, in order of angle. Throws when an axis with readings would go: see `removeAxis`. */
export function setAxes(job: Job, boreId: string, surveyId: string, axesDegrees: readonly number[]): Job {
  return withSurvey(job, boreId, surveyId, (survey) => {
    const lost = survey.readings.find(({ axisDegrees }) => !axesDegrees.includes(axisDegrees))
    if (lost) throw new Error(`The axis at ${lost.axisDegrees}° holds readings`)
    return patched(survey, {
      axesDegrees: inOrder(axesDegrees),
      ...unreachableWhere(survey, ({ axisDegrees }) => axesDegrees.includes(axisDegrees)),
    })
  })
}

function inOrder(values: readonly number[]): number[] {
  return [...new Set(values)].sort((a, b) => a - b)
}

export interface Removal {
  /** The user was asked and lets the readings go with it. */
  readonly withReadings: boolean
}

export function removeLevel(
  job: Job,
  boreId: string,
  surveyId: string,
  depthMm: number,
  { withReadings }: Removal = { withReadings: false },
): Job {
  return withSurvey(job, boreId, surveyId, (survey) => {
    const readings = survey.readings.filter((reading) => reading.depthMm !== depthMm)
    if (!withReadings && readings.length < survey.readings.length) {
      throw new Error(`The level at ${depthMm} mm holds readings`)
    }
    return patched(survey, {
      readings,
      levelsMm: survey.levelsMm.filter((level) => level !== depthMm),
      ...unreachableWhere(survey, (place) => place.depthMm !== depthMm),
    })
  })
}

export function removeAxis(
  job: Job,
  boreId: string,
  surveyId: string,
  axisDegrees: number,
  { withReadings }: Removal = { withReadings: false },
): Job {
  return withSurvey(job, boreId, surveyId, (survey) => {
    const readings = survey.readings.filter((reading) => reading.axisDegrees !== axisDegrees)
    if (!withReadings && readings.length < survey.readings.length) {
      throw new Error(`The axis at ${axisDegrees}° holds readings`)
    }
    return patched(survey, {
      readings,
      axesDegrees: survey.axesDegrees.filter((axis) => axis !== axisDegrees),
      ...unreachableWhere(survey, (place) => place.axisDegrees !== axisDegrees),
    })
  })
}

/** Corrects the depth of a level; its readings go with it. Throws when there is a level at that depth. */
export function moveLevel(job: Job, boreId: string, surveyId: string, fromMm: number, toMm: number): Job {
  return withSurvey(job, boreId, surveyId, (survey) =>
    patched(survey, {
      levelsMm: moved(survey.levelsMm, fromMm, toMm),
      readings: survey.readings.map((reading) => movedTo(reading, fromMm, toMm)),
      unreachable: survey.unreachable?.map((place) => movedTo(place, fromMm, toMm)),
    }),
  )
}

function movedTo<At extends Place>(place: At, fromMm: number, toMm: number): At {
  return place.depthMm === fromMm ? { ...place, depthMm: toMm } : place
}

/** Corrects the direction of an axis; its readings go with it. Throws when there is an axis there. */
export function moveAxis(
  job: Job,
  boreId: string,
  surveyId: string,
  fromDegrees: number,
  toDegrees: number,
): Job {
  return withSurvey(job, boreId, surveyId, (survey) =>
    patched(survey, {
      axesDegrees: moved(survey.axesDegrees, fromDegrees, toDegrees),
      readings: survey.readings.map((reading) => turnedTo(reading, fromDegrees, toDegrees)),
      unreachable: survey.unreachable?.map((place) => turnedTo(place, fromDegrees, toDegrees)),
    }),
  )
}

function turnedTo<At extends Place>(place: At, fromDegrees: number, toDegrees: number): At {
  return place.axisDegrees === fromDegrees ? { ...place, axisDegrees: toDegrees } : place
}

function moved(values: readonly number[], from: number, to: number): number[] {
  if (!values.includes(from)) throw new Error(`Nothing at ${from}; there are ${values.join(', ')}`)
  if (from !== to && values.includes(to)) throw new Error(`There is one at ${to} already`)
  return inOrder(values.map((value) => (value === from ? to : value)))
}

/**
 * Sets the repeats at a station, in mm or in µm as the set-up says; none deletes the reading. A station that is
 * read is no longer out of reach.
 */
export function setRepeats(
  job: Job,
  boreId: string,
  surveyId: string,
  place: Place,
  values: readonly number[],
): Job {
  return withSurvey(job, boreId, surveyId, (survey) => {
    const { depthMm, axisDegrees } = place
    if (!survey.levelsMm.includes(depthMm) || !survey.axesDegrees.includes(axisDegrees)) {
      throw new Error(`The survey has no station at ${depthMm} mm, ${axisDegrees}°`)
    }
    const index = survey.readings.findIndex((reading) => isAt(reading, place))
    if (values.length === 0) {
      return index < 0 ? survey : { ...survey, readings: survey.readings.toSpliced(index, 1) }
    }
    const setUp = job.setUps.find(({ id }) => id === survey.setUpId)
    if (!setUp) throw new Error(`No set-up with the id "${survey.setUpId}"`)
    const repeats = isOfSizes(setUp.entry) ? { sizesMm: values } : { dialUm: values }
    const before = survey.readings[index]
    // Readings keep the order in which they were taken: a drift shows itself in it.
    const readings = before
      ? survey.readings.with(index, patched<Reading>(before, repeats))
      : [...survey.readings, { depthMm, axisDegrees, ...repeats }]
    const stays = (other: Place) => !isAt(other, place)
    return patched(survey, { readings, ...unreachableWhere(survey, stays) })
  })
}

/** Records that both contacts did stand on metal at a station (or takes that back). */
export function confirmReading(
  job: Job,
  boreId: string,
  surveyId: string,
  place: Place,
  confirmed: boolean,
): Job {
  return withSurvey(job, boreId, surveyId, (survey) => {
    const index = survey.readings.findIndex((reading) => isAt(reading, place))
    const reading = survey.readings[index]
    if (!reading) throw new Error(`No reading at ${place.depthMm} mm, ${place.axisDegrees}°`)
    const changed = patched(reading, { confirmed: confirmed ? true : undefined })
    return changed === reading ? survey : { ...survey, readings: survey.readings.with(index, changed) }
  })
}

function isAt(one: Place, { depthMm, axisDegrees }: Place): boolean {
  return one.depthMm === depthMm && one.axisDegrees === axisDegrees
}

function boreOf(job: Job, boreId: string): Bore {
  const bore = job.bores.find(({ id }) => id === boreId)
  if (!bore) throw new Error(`No bore with the id "${boreId}"`)
  return bore
}

function withBore(job: Job, boreId: string, change: (bore: Bore) => Bore): Job {
  const bores = withEntry(job.bores, boreId, change)
  return bores === job.bores ? job : { ...job, bores }
}

function withSurvey(job: Job, boreId: string, surveyId: string, change: (survey: Survey) => Survey): Job {
  return withBore(job, boreId, (bore) => {
    const surveys = withEntry(bore.surveys, surveyId, change)
    return surveys === bore.surveys ? bore : { ...bore, surveys }
  })
}
