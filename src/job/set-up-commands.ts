/**
 * Changes to the instruments and set-ups of a job, as pure functions from one document to the next. A change
 * that changes nothing returns the same object; an id that does not exist is our own mistake and throws.
 */
import { entryOf, isOfSizes } from '../core/diameter/entry'
import { readingReference } from '../core/diameter/reading-reference'
import type { Entry, Gauge, SetUp, Standard, Survey, Thermometer } from '../core/measured'
import { standardExpansion } from '../core/temperature/expansion'
import { readingConverter } from './convert-entry'
import { type Patch, patched, withEntry } from './patch'
import type { Job } from './schema'

/** Changes a gauge but for its kind: that is changed in `instrument-kinds.ts`. */
export function setGauge(job: Job, id: string, patch: Patch<Omit<Gauge, 'id' | 'kind'>>): Job {
  return patched(job, { gauges: withEntry(job.gauges, id, (gauge) => patched(gauge, patch)) })
}

export function setStandard(job: Job, id: string, patch: Patch<Omit<Standard, 'id'>>): Job {
  return patched(job, { standards: withEntry(job.standards, id, (standard) => patched(standard, patch)) })
}

export function setThermometer(job: Job, id: string, patch: Patch<Omit<Thermometer, 'id'>>): Job {
  const thermometers = withEntry(job.thermometers, id, (thermometer) => patched(thermometer, patch))
  return patched(job, { thermometers })
}

/**
 * Changes a set-up; how readings are written down is changed by `changeEntry`, what it uses by `chooseGauge` and
 * `chooseStandard`.
 */
export function setSetUp(
  job: Job,
  id: string,
  patch: Patch<Omit<SetUp, 'id' | 'entry' | 'gaugeId' | 'standardId'>>,
): Job {
  return patched(job, { setUps: withEntry(job.setUps, id, (setUp) => patched(setUp, patch)) })
}

/**
 * Changes how readings are written down, and rewrites those there are so that their diameters stay. The reverse
 * method begins with what the readings were counted from, and takes the job's first micrometer where the set-up
 * had none (a new one where the job has none); what was measured over the contacts becomes the setting when
 * it is left.
 */
export function changeEntry(job: Job, setUpId: string, entry: Entry, ids: () => string): Job {
  const before = named(job.setUps, setUpId)
  const from = { ...before, entry: entryOf(before, named(job.gauges, before.gaugeId)) }
  if (before.entry === entry) return job
  const withStandard = entry === 'reverse' ? withMicrometer(job, before, ids) : job
  const to = entered(named(withStandard.setUps, setUpId), from, entry, job)
  const setUps = withEntry(withStandard.setUps, setUpId, () => to)
  return { ...withReadings(withStandard, from, to), setUps }
}

function entered(setUp: SetUp, from: SetUp, entry: Entry, job: Job): SetUp {
  if (from.entry === 'reverse') {
    const { overContactsMm = setUp.settingSizeMm } = setUp
    const { settingAssumed: _, ...known } = setUp
    const isKnown = setUp.overContactsMm !== undefined
    return { ...(isKnown ? known : setUp), entry, settingSizeMm: overContactsMm }
  }
  const isRead = job.bores.some((bore) =>
    bore.surveys.some((survey) => survey.setUpId === setUp.id && survey.readings.length > 0),
  )
  if (entry !== 'reverse' || setUp.overContactsMm !== undefined || !isRead) return { ...setUp, entry }
  const standard = named(job.standards, from.standardId)
  const reference = readingReference(from, standardExpansion(standard).perK)
  if (!reference) return { ...setUp, entry }
  const dialOverContactsUm = Math.round(reference.dialUm * 1000) / 1000
  return { ...setUp, entry, overContactsMm: reference.sizeMm, dialOverContactsUm }
}

function withMicrometer(job: Job, setUp: SetUp, ids: () => string): Job {
  if (named(job.standards, setUp.standardId).kind === 'micrometer') return job
  const known = job.standards.find(({ kind }) => kind === 'micrometer')
  const micrometer: Standard = known ?? { id: ids(), kind: 'micrometer' }
  const setUps = withEntry(job.setUps, setUp.id, (each) => ({ ...each, standardId: micrometer.id }))
  return { ...job, setUps, standards: known ? job.standards : [...job.standards, micrometer] }
}

/** The surveys of a set-up with their readings written as it is after the change. */
function withReadings(job: Job, from: SetUp, to: SetUp): Job {
  const convert = readingConverter(from, to, job.standards)
  if (isOfSizes(from.entry) && isOfSizes(to.entry)) return job
  const converted = (survey: Survey): Survey =>
    survey.setUpId === to.id ? { ...survey, readings: survey.readings.map(convert) } : survey
  return { ...job, bores: job.bores.map((bore) => ({ ...bore, surveys: bore.surveys.map(converted) })) }
}

function named<T extends { readonly id: string }>(list: readonly T[], id: string): T {
  const found = list.find((item) => item.id === id)
  if (!found)
    throw new Error(`Nothing with the id "${id}"; there is ${list.map((each) => each.id).join(', ')}`)
  return found
}
