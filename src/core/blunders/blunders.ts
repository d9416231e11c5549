import type { Blunder, Unseen } from '../findings'
import { axesSwapped, canSeeAxesSwapped } from './axes-swapped'
import { canSeeDriftWithOrder, driftWithOrder } from './drift-with-order'
import { canSeeLevelsUpsideDown, levelsUpsideDown } from './levels-upside-down'
import { oversizeOpen } from './oversize-open'
import type { ReadSurvey } from './read-survey'
import { repeatsSpread } from './repeats-spread'
import { canSeeTypingSlips, typingSlips } from './typing-slips'
import { canSeeWholeSurveySlips, wholeSurveySlip } from './whole-survey'
import { canSeeWholeTurns, wholeTurns } from './whole-turn'

/**
 * Questions about the readings of a survey, the weightiest first. A slip of the whole survey or of a whole turn
 * spoils what the finer tests compare with, so those are asked first and alone.
 */
export function blundersOf(survey: ReadSurvey, stepMm: number): Blunder[] {
  if (survey.stations.length === 0) return []
  const turns = wholeTurns(survey)
  if (turns.length > 0) return turns
  const typed = typingSlips(survey)
  if (typed.length > 0) return typed
  const levels = levelsUpsideDown(survey)
  const oversize = oversizeOpen(survey)
  // Until the oversize is known, the setting cannot be told from it.
  const isOversize = oversize.some((one) => one.code === 'oversize-open' && one.nearestMm > 0)
  const whole = levels.length > 0 ? levels : isOversize ? [] : wholeSurveySlip(survey)
  return [
    ...oversize,
    ...whole,
    ...axesSwapped(survey),
    ...repeatsSpread(survey, stepMm),
    ...driftWithOrder(survey),
  ]
}

/** Slips that these readings could not have shown. */
export function unseenOf(survey: ReadSurvey): Unseen[] {
  if (survey.stations.length === 0) return []
  const unseen: Unseen[] = []
  if (!canSeeWholeSurveySlips(survey) && survey.caliperMm === undefined) unseen.push('setting-and-sign')
  if (survey.zeroMm !== undefined && !canSeeWholeTurns(survey)) unseen.push('whole-turn')
  if (!canSeeTypingSlips(survey)) unseen.push('digits')
  if (!canSeeLevelsUpsideDown(survey)) unseen.push('levels-upside-down')
  if (!canSeeAxesSwapped(survey)) unseen.push('axes-swapped')
  if (!canSeeDriftWithOrder(survey)) unseen.push('drift-with-order')
  return unseen
}
