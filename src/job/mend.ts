import type { Mend, Place } from '../core/findings'
import type { Reading, SetUp, Survey } from '../core/measured'
import { setBore } from './commands'
import type { Job } from './schema'

/** Readings are kept to a millionth of a millimetre: what a sum of decimals leaves beyond is no reading. */
const decimals = 6

/**
 * Puts a slip right as the question about it proposed. Changes of the set-up reach every survey that was
 * measured with it, for the slip was made there. Throws for a place or a set-up that is not there.
 */
export function mendBlunder(job: Job, boreId: string, surveyId: string, mend: Mend): Job {
  const survey = job.bores.find(({ id }) => id === boreId)?.surveys.find(({ id }) => id === surveyId)
  const setUp = job.setUps.find(({ id }) => id === survey?.setUpId)
  if (!survey || !setUp) throw new Error(`No survey "${surveyId}" of a bore "${boreId}" with its set-up`)
  switch (mend.kind) {
    case 'shift-repeats':
      return withSurvey(job, boreId, surveyId, (s) => shiftRepeats(s, setUp, mend))
    case 'swap-axes':
      return withSurvey(job, boreId, surveyId, (s) => swapAxes(s, mend.depthMm, mend.axesDegrees))
    case 'turn-levels-over':
      return withSurvey(job, boreId, surveyId, turnLevelsOver)
    case 'turn-sign-over':
      return turnSignOver(job, setUp)
    case 'shift-setting':
      return shiftSetting(job, setUp, mend.byMm)
    case 'say-oversize':
      return setBore(job, boreId, { oversizeMm: mend.oversizeMm })
  }
}

/** Records that a question about readings was answered with "it is right". */
export function answerBlunder(job: Job, boreId: string, surveyId: string, key: string): Job {
  return withSurvey(job, boreId, surveyId, (survey) => ({
    ...survey,
    answered: [...new Set([...(survey.answered ?? []), key])],
  }))
}

function withSurvey(job: Job, boreId: string, surveyId: string, change: (survey: Survey) => Survey): Job {
  const bores = job.bores.map((bore) =>
    bore.id === boreId
      ? { ...bore, surveys: bore.surveys.map((s) => (s.id === surveyId ? change(s) : s)) }
      : bore,
  )
  return { ...job, bores }
}

function withReading(survey: Survey, at: Place, change: (reading: Reading) => Reading): Survey {
  const index = survey.readings.findIndex((r) => r.depthMm === at.depthMm && r.axisDegrees === at.axisDegrees)
  const reading = survey.readings[index]
  if (!reading) throw new Error(`No reading at ${at.depthMm} mm, ${at.axisDegrees}°`)
  return { ...survey, readings: survey.readings.with(index, change(reading)) }
}

function shiftRepeats(survey: Survey, setUp: SetUp, mend: Mend & { kind: 'shift-repeats' }): Survey {
  const dialUm = (setUp.largerIs === 'anticlockwise' ? -1000 : 1000) * mend.byMm
  const shifted = (values: readonly number[], by: number) =>
    values.map((value, index) => (mend.repeats.includes(index) ? rounded(value + by) : value))
  return withReading(survey, mend.place, (reading) => ({
    ...reading,
    ...(reading.sizesMm ? { sizesMm: shifted(reading.sizesMm, mend.byMm) } : {}),
    ...(reading.dialUm ? { dialUm: shifted(reading.dialUm, dialUm) } : {}),
  }))
}

function swapAxes(survey: Survey, depthMm: number, [one, other]: readonly [number, number]): Survey {
  const turned = (axis: number) => (axis === one ? other : axis === other ? one : axis)
  return withPlaces(survey, (place) =>
    place.depthMm === depthMm ? { depthMm, axisDegrees: turned(place.axisDegrees) } : place,
  )
}

/** The first level takes the readings of the last, and so on. */
function turnLevelsOver(survey: Survey): Survey {
  const levels = [...survey.levelsMm].sort((a, b) => a - b)
  return withPlaces(survey, (place) => {
    const depthMm = levels[levels.length - 1 - levels.indexOf(place.depthMm)]
    if (depthMm === undefined) throw new Error(`No level at ${place.depthMm} mm`)
    return { depthMm, axisDegrees: place.axisDegrees }
  })
}

/** What was read, and what was out of reach, at the places where it belongs. */
function withPlaces(survey: Survey, placed: (place: Place) => Place): Survey {
  const { unreachable } = survey
  return {
    ...survey,
    readings: survey.readings.map((reading) => ({ ...reading, ...placed(reading) })),
    ...(unreachable ? { unreachable: unreachable.map(placed) } : {}),
  }
}

/** Dial readings: the needle goes the other way. Sizes: each lay as far on the other side of the setting. */
function turnSignOver(job: Job, setUp: SetUp): Job {
  if (setUp.entry === 'deviation' || setUp.entry === 'reverse') {
    const largerIs = setUp.largerIs === 'anticlockwise' ? 'clockwise' : 'anticlockwise'
    return withSetUp(job, setUp, { ...setUp, largerIs })
  }
  return withSizes(job, setUp, (sizeMm) => 2 * setUp.settingSizeMm - sizeMm)
}

/** The size that was set was another: sizes written down from it go with it, dial readings stay. */
function shiftSetting(job: Job, setUp: SetUp, byMm: number): Job {
  if (setUp.overContactsMm !== undefined && setUp.entry === 'reverse') {
    return withSetUp(job, setUp, { ...setUp, overContactsMm: rounded(setUp.overContactsMm + byMm) })
  }
  const shifted = withSetUp(job, setUp, { ...setUp, settingSizeMm: rounded(setUp.settingSizeMm + byMm) })
  return setUp.entry === 'size' ? withSizes(shifted, setUp, (sizeMm) => sizeMm + byMm) : shifted
}

function withSetUp(job: Job, before: SetUp, after: SetUp): Job {
  return { ...job, setUps: job.setUps.map((setUp) => (setUp.id === before.id ? after : setUp)) }
}

function withSizes(job: Job, setUp: SetUp, change: (sizeMm: number) => number): Job {
  const changed = (reading: Reading): Reading =>
    reading.sizesMm ? { ...reading, sizesMm: reading.sizesMm.map((size) => rounded(change(size))) } : reading
  const bores = job.bores.map((bore) => ({
    ...bore,
    surveys: bore.surveys.map((survey) =>
      survey.setUpId === setUp.id ? { ...survey, readings: survey.readings.map(changed) } : survey,
    ),
  }))
  return { ...job, bores }
}

function rounded(value: number): number {
  return Number(value.toFixed(decimals))
}
