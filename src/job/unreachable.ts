import type { Place } from '../core/findings'
import type { Survey } from '../core/measured'
import { type Patch, patched, withEntry } from './patch'
import type { Job } from './schema'

/**
 * Records that the gauge cannot reach a station, or takes that back. Such a station stays without a reading.
 * Throws for a station that is not planned or is read.
 */
export function setUnreachable(
  job: Job,
  boreId: string,
  surveyId: string,
  place: Place,
  isOut: boolean,
): Job {
  if (!job.bores.some(({ id }) => id === boreId)) throw new Error(`No bore with the id "${boreId}"`)
  const bores = withEntry(job.bores, boreId, (bore) => {
    const surveys = withEntry(bore.surveys, surveyId, (survey) => marked(survey, place, isOut))
    return surveys === bore.surveys ? bore : { ...bore, surveys }
  })
  return bores === job.bores ? job : { ...job, bores }
}

function marked(survey: Survey, place: Place, isOut: boolean): Survey {
  const { depthMm, axisDegrees } = place
  if (isUnreachable(survey, place) === isOut) return survey
  if (!isOut)
    return patched(
      survey,
      unreachableWhere(survey, (other) => !isAt(other, place)),
    )
  if (!survey.levelsMm.includes(depthMm) || !survey.axesDegrees.includes(axisDegrees)) {
    throw new Error(`The survey has no station at ${depthMm} mm, ${axisDegrees}°`)
  }
  if (survey.readings.some((reading) => isAt(reading, place))) {
    throw new Error(`There is a reading at ${depthMm} mm, ${axisDegrees}°`)
  }
  return { ...survey, unreachable: [...(survey.unreachable ?? []), { depthMm, axisDegrees }] }
}

/** Whether a survey records that the gauge cannot reach a station. */
export function isUnreachable({ unreachable }: Pick<Survey, 'unreachable'>, place: Place): boolean {
  return unreachable?.some((other) => isAt(other, place)) === true
}

/** What is left of the stations out of reach, as a patch of their survey: the field goes with the last. */
export function unreachableWhere(
  { unreachable }: Pick<Survey, 'unreachable'>,
  stays: (place: Place) => boolean,
): Patch<Pick<Survey, 'unreachable'>> {
  const left = unreachable?.filter(stays) ?? []
  if (left.length === unreachable?.length) return { unreachable }
  return left.length > 0 ? { unreachable: left } : { unreachable: undefined }
}

function isAt(one: Place, { depthMm, axisDegrees }: Place): boolean {
  return one.depthMm === depthMm && one.axisDegrees === axisDegrees
}
