/**
 * The lists of instruments and set-ups that the surveys of a job share: adding to them, taking out of them,
 * and naming what uses what. Pure, as all changes of a job.
 */
import { entriesOf, isOfSizes } from '../core/diameter/entry'
import type { Bore, GaugeKind, SetUp, StandardKind, Survey } from '../core/measured'
import { readingConverter } from './convert-entry'
import { withEntry } from './patch'
import { pistonsUsing } from './piston-commands'
import type { Job } from './schema'
import { changeEntry } from './set-up-commands'

export function addGauge(job: Job, kind: GaugeKind, ids: () => string): Job {
  return { ...job, gauges: [...job.gauges, { id: ids(), kind }] }
}

export function addStandard(job: Job, kind: StandardKind, ids: () => string): Job {
  return { ...job, standards: [...job.standards, { id: ids(), kind }] }
}

export function addThermometer(job: Job, ids: () => string): Job {
  return { ...job, thermometers: [...job.thermometers, { id: ids() }] }
}

/** Adds another setting with the instruments of one there is; what was read at that one is not taken over. */
export function addSetUp(job: Job, likeId: string, ids: () => string): Job {
  const { gaugeId, standardId, entry, settingSizeMm, ...like } = setUpOf(job, likeId)
  const added: SetUp = {
    id: ids(),
    gaugeId,
    standardId,
    entry,
    settingSizeMm,
    ...(like.settingAssumed === undefined ? {} : { settingAssumed: like.settingAssumed }),
    ...(like.largerIs === undefined ? {} : { largerIs: like.largerIs }),
    ...(like.boreThermometerId === undefined ? {} : { boreThermometerId: like.boreThermometerId }),
    ...(like.referenceThermometerId === undefined
      ? {}
      : { referenceThermometerId: like.referenceThermometerId }),
  }
  return { ...job, setUps: [...job.setUps, added] }
}

export type InstrumentList = 'gauges' | 'standards' | 'thermometers'

/** The set-ups that name an instrument. */
export function setUpsUsing(job: Job, list: InstrumentList, id: string): readonly SetUp[] {
  return job.setUps.filter((setUp) => {
    if (list === 'gauges') return setUp.gaugeId === id
    if (list === 'standards') return setUp.standardId === id
    return setUp.boreThermometerId === id || setUp.referenceThermometerId === id
  })
}

/** A survey with the bore that it is one of. */
export interface SurveyOfBore {
  readonly bore: Bore
  readonly survey: Survey
}

/** The surveys measured with a set-up, in the order of their bores. */
export function surveysUsing(job: Job, setUpId: string): readonly SurveyOfBore[] {
  return job.bores.flatMap((bore) =>
    bore.surveys.filter((survey) => survey.setUpId === setUpId).map((survey) => ({ bore, survey })),
  )
}

/** Takes an instrument out of its list. Throws for one that a set-up or a piston names. */
export function removeInstrument(job: Job, list: InstrumentList, id: string): Job {
  const [user] = setUpsUsing(job, list, id)
  if (user) throw new Error(`The set-up "${user.id}" uses "${id}"`)
  const [piston] = list === 'gauges' ? [] : pistonsUsing(job, id)
  if (piston) throw new Error(`The piston "${piston.id}" was measured with "${id}"`)
  if (!job[list].some((instrument) => instrument.id === id)) throw new Error(`Nothing with the id "${id}"`)
  const without = <T extends { readonly id: string }>(all: readonly T[]) =>
    all.filter((each) => each.id !== id)
  return {
    ...job,
    gauges: list === 'gauges' ? without(job.gauges) : job.gauges,
    standards: list === 'standards' ? without(job.standards) : job.standards,
    thermometers: list === 'thermometers' ? without(job.thermometers) : job.thermometers,
  }
}

/** Takes a set-up out of its list. Throws for one that a survey names. */
export function removeSetUp(job: Job, id: string): Job {
  setUpOf(job, id)
  const [user] = surveysUsing(job, id)
  if (user) throw new Error(`The survey "${user.survey.id}" uses "${id}"`)
  return { ...job, setUps: job.setUps.filter((setUp) => setUp.id !== id) }
}

/** Names the gauge of a set-up; where it does not allow the way readings are written down, that changes too. */
export function chooseGauge(job: Job, setUpId: string, gaugeId: string, ids: () => string): Job {
  const gauge = job.gauges.find(({ id }) => id === gaugeId)
  if (!gauge) throw new Error(`No gauge with the id "${gaugeId}"`)
  const setUp = setUpOf(job, setUpId)
  if (setUp.gaugeId === gaugeId) return job
  const [usual, ...others] = entriesOf(gauge.kind)
  const fits = usual === undefined || [usual, ...others].includes(setUp.entry)
  const refitted = fits ? job : changeEntry(job, setUpId, usual, ids)
  return withSetUp(refitted, setUpId, { gaugeId })
}

export function chooseStandard(job: Job, setUpId: string, standardId: string): Job {
  if (!job.standards.some(({ id }) => id === standardId))
    throw new Error(`No standard with the id "${standardId}"`)
  if (setUpOf(job, setUpId).standardId === standardId) return job
  return withSetUp(job, setUpId, { standardId })
}

function withSetUp(job: Job, id: string, change: Partial<SetUp>): Job {
  return { ...job, setUps: withEntry(job.setUps, id, (setUp) => ({ ...setUp, ...change })) }
}

/**
 * Names the set-up that a survey was measured with. What was written down stays written down; only where one
 * set-up has sizes and the other dial readings are the readings rewritten, so that their diameters stay.
 */
export function chooseSetUp(job: Job, boreId: string, surveyId: string, setUpId: string): Job {
  const to = setUpOf(job, setUpId)
  const bores = withEntry(job.bores, boreId, (bore) => {
    const surveys = withEntry(bore.surveys, surveyId, (survey) => {
      if (survey.setUpId === setUpId) return survey
      const from = setUpOf(job, survey.setUpId)
      const isAlike = isOfSizes(from.entry) === isOfSizes(to.entry)
      const convert = readingConverter(from, to, job.standards)
      return { ...survey, setUpId, readings: isAlike ? survey.readings : survey.readings.map(convert) }
    })
    return surveys === bore.surveys ? bore : { ...bore, surveys }
  })
  return bores === job.bores ? job : { ...job, bores }
}

function setUpOf(job: Job, id: string): SetUp {
  const setUp = job.setUps.find((each) => each.id === id)
  if (!setUp) throw new Error(`No set-up with the id "${id}"`)
  return setUp
}
