import type { Bore, Role } from '../core/measured'
import { patched } from './patch'
import { pistonsWithoutBore } from './piston-commands'
import type { Job } from './schema'

/** Adds a bore with the plan of the first one, measured with the same set-up. Its name is the next number. */
export function addBore(
  job: Job,
  ids: () => string,
  role: Role,
  name: string = nextBoreName(job.bores),
): Job {
  const [first] = job.bores
  const survey = first?.surveys.at(-1)
  if (!first || !survey) throw new Error('A job has at least one bore with a survey')
  const { lengthMm, ringTravelMm, ports, belts, wall } = first
  const { setUpId, levelsMm, axesDegrees } = survey
  const bore: Bore = {
    id: ids(),
    name,
    role,
    ...(lengthMm === undefined ? {} : { lengthMm }),
    ...(ringTravelMm === undefined || role === 'for-comparison' ? {} : { ringTravelMm }),
    ...(wall === undefined ? {} : { wall }),
    ports,
    belts,
    surveys: [{ id: ids(), setUpId, levelsMm, axesDegrees, readings: [] }],
  }
  return { ...job, bores: [...job.bores, bore] }
}

/** The lowest number that no bore is called by. */
export function nextBoreName(bores: readonly Pick<Bore, 'name'>[]): string {
  const taken = new Set(bores.map(({ name }) => name))
  let number = 1
  while (taken.has(String(number))) number += 1
  return String(number)
}

/** A piston that ran in it stays on the list. Throws for the only bore: a job has at least one. */
export function removeBore(job: Job, boreId: string): Job {
  if (!job.bores.some(({ id }) => id === boreId)) throw new Error(`No bore with the id "${boreId}"`)
  if (job.bores.length === 1) throw new Error('The only bore of a job cannot be removed')
  const bores = job.bores.filter(({ id }) => id !== boreId)
  return { ...job, ...pistonsWithoutBore(job, boreId), bores }
}

/** Adds an occasion on which a bore is measured anew, with the plan and the set-up of its latest survey. */
export function addSurvey(job: Job, boreId: string, ids: () => string): Job {
  return withSurveys(job, boreId, (surveys) => {
    const latest = surveys.at(-1)
    if (!latest) throw new Error(`Bore "${boreId}" has no survey`)
    const { setUpId, levelsMm, axesDegrees } = latest
    return [...surveys, { id: ids(), setUpId, levelsMm, axesDegrees, readings: [] }]
  })
}

/** Throws for the only survey: a bore has at least one. A scan that got its size from it has none then. */
export function removeSurvey(job: Job, boreId: string, surveyId: string): Job {
  return withSurveys(
    job,
    boreId,
    (surveys) => {
      if (!surveys.some(({ id }) => id === surveyId)) throw new Error(`No survey with the id "${surveyId}"`)
      if (surveys.length === 1) throw new Error('The only survey of a bore cannot be removed')
      return surveys.filter(({ id }) => id !== surveyId)
    },
    (scans) =>
      scans.map((scan) => (scan.tieSurveyId === surveyId ? patched(scan, { tieSurveyId: undefined }) : scan)),
  )
}

type Scans = NonNullable<Bore['scans']>

function withSurveys(
  job: Job,
  boreId: string,
  change: (surveys: Bore['surveys']) => Bore['surveys'],
  changeScans: (scans: Scans) => Scans = (scans) => scans,
): Job {
  if (!job.bores.some(({ id }) => id === boreId)) throw new Error(`No bore with the id "${boreId}"`)
  const bores = job.bores.map((bore) =>
    bore.id === boreId
      ? {
          ...bore,
          surveys: change(bore.surveys),
          ...(bore.scans ? { scans: changeScans(bore.scans) } : {}),
        }
      : bore,
  )
  return { ...job, bores }
}
