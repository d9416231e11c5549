import type { SetUp, Survey } from '../core/measured'
import { newJobSettingMm } from './new-job'
import type { Job } from './schema'
import { setSetUp } from './set-up-commands'

/** Stands among the answered questions of a survey once somebody said that the size is right. */
const confirmedKey = 'setting-size'

/**
 * Whether the setting size of a set-up is still the one that a new job begins with, and nobody said that it is
 * right: it then stands for nothing that anybody entered. In the reverse method it is asked for nowhere.
 */
export function isSettingOpen(job: Job, setUp: SetUp): boolean {
  if (setUp.settingSizeMm !== newJobSettingMm || setUp.entry === 'reverse') return false
  return !job.bores.some(({ surveys }) => surveys.some((survey) => isConfirmed(survey, setUp.id)))
}

function isConfirmed(survey: Survey, setUpId: string): boolean {
  return survey.setUpId === setUpId && survey.answered?.includes(confirmedKey) === true
}

/** Writes down the setting size, also where it is the one that the job began with. */
export function enterSetting(job: Job, setUpId: string, settingSizeMm: number): Job {
  const written = setSetUp(job, setUpId, { settingSizeMm })
  const setUp = written.setUps.find(({ id }) => id === setUpId)
  if (!setUp || !isSettingOpen(written, setUp)) return written
  const confirmed = (survey: Survey): Survey =>
    survey.setUpId === setUpId ? { ...survey, answered: [...(survey.answered ?? []), confirmedKey] } : survey
  return {
    ...written,
    bores: written.bores.map((bore) => ({ ...bore, surveys: bore.surveys.map(confirmed) })),
  }
}
