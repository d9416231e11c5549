import type { Bore, Gauge, SetUp, Standard } from '../core/measured'
import { mostOf } from './most-of'
import { sameValue } from './same-value'
import type { Job } from './schema'

/**
 * Limits that the user typed from a service manual, kept for the next engine of the kind, with the cylinder they
 * are for: its ports, its levels and axes, how it is measured. It is kept as a job without readings, so that it is
 * read, checked and brought up to date as every job is.
 */
export interface KeptSpec {
  readonly id: string
  readonly name: string
  /** The day on which it was kept, as in 2024-05-31. */
  readonly typedOn: string
  readonly template: Job
}

/** Longest name of a kept spec. */
export const longestSpecName = mostOf.nameLength

/** Nobody typed anything yet that would be worth keeping. */
export function hasLimits({ spec }: Job): boolean {
  return Object.keys(spec).some((field) => field !== 'ovalityRule' && field !== 'taperRule')
}

/** Something of an engine is written down: readings, or what its walls showed. */
export function isMeasured({ bores }: Job): boolean {
  return bores.some(({ surveys }) =>
    surveys.some(({ readings, surfaceFindings = [] }) => readings.length + surfaceFindings.length > 0),
  )
}

/**
 * What a job has in common with the next engine of its kind: limits and rules, the bores of the engine with their
 * walls, ports, levels and axes, the instruments, how readings are written down and the setting size, which is asked
 * about again. What belongs to one engine or one day goes: readings, dates, grades stamped, oversizes finished to,
 * temperatures, zeros, the direction test, checks of instruments, names of people, the note, bores for comparison,
 * pistons that somebody measured, scans.
 */
export function templateOf(job: Job, id: string, name: string): Job {
  const own = job.bores.filter(({ role }) => role === 'of-this-engine')
  const kept = own.length > 0 ? own : job.bores
  const setUp = setUpOf(job, kept)
  const gauge = job.gauges.find((one) => one.id === setUp.gaugeId)
  const standard = job.standards.find((one) => one.id === setUp.standardId)
  if (!gauge || !standard) throw new Error(`The set-up "${setUp.id}" has no gauge or no standard`)
  return {
    format: job.format,
    formatVersion: job.formatVersion,
    id,
    name,
    ...(job.machine === undefined ? {} : { machine: job.machine }),
    ...readingsPlanned(job),
    spec: job.spec,
    gauges: [withoutChecks(gauge)],
    standards: [withoutError(standard)],
    thermometers: job.thermometers,
    setUps: [setUp],
    bores: kept.map((bore) => unmeasured(bore, setUp.id)),
    ...pistonsToBeHad(job),
  }
}

/** The sizes of the catalogue; a piston that was measured belongs to one engine. */
function pistonsToBeHad({ pistons = [] }: Job) {
  const toBeHad = pistons.filter(({ state }) => state === 'obtainable')
  return toBeHad.length === 0 ? {} : { pistons: toBeHad.map(({ boreId: _, ...piston }) => piston) }
}

function readingsPlanned({ repeatsPerStation, wantedDoubtUm }: Job) {
  return {
    ...(repeatsPerStation === undefined ? {} : { repeatsPerStation }),
    ...(wantedDoubtUm === undefined ? {} : { wantedDoubtUm }),
  }
}

/** The set-up of the latest survey, with what holds on another day too: the setting size is asked about again. */
function setUpOf(job: Job, bores: readonly Bore[]): SetUp {
  const used = bores[0]?.surveys.at(-1)?.setUpId
  const setUp = job.setUps.find(({ id }) => id === used)
  if (!setUp) throw new Error(`No set-up with the id "${used}"`)
  const { id, name, gaugeId, standardId, entry, settingSizeMm } = setUp
  const named = name === undefined ? {} : { name }
  return { id, ...named, gaugeId, standardId, entry, settingSizeMm, settingAssumed: true }
}

function withoutChecks({ checks: _, crossedStudies: __, ...gauge }: Gauge): Gauge {
  return gauge
}

/** What a micrometer read on its own standard was true of one day. */
function withoutError({ errorUm: _, ...standard }: Standard): Standard {
  return standard
}

function unmeasured({ grade: _, oversizeMm: __, scans: ___, surveys, ...bore }: Bore, setUpId: string): Bore {
  const latest = surveys.at(-1)
  if (!latest) throw new Error(`Bore "${bore.id}" has no survey`)
  const { id, levelsMm, axesDegrees } = latest
  return { ...bore, surveys: [{ id, setUpId, levelsMm, axesDegrees, readings: [] }] }
}

/**
 * A job with what a kept spec brings. A job of which nothing is measured takes all of it and keeps its own name,
 * machine and note; any other takes the limits and rules alone, and a bore stamped with a grade that these do not have
 * is no longer stamped.
 */
export function takeKeptSpec(job: Job, { template }: KeptSpec): Job {
  const { spec } = template
  if (isMeasured(job)) {
    if (sameValue(job.spec, spec)) return job
    const names = new Set(spec.grades?.map(({ name }) => name))
    return { ...job, spec, bores: job.bores.map((bore) => stampedOneOf(bore, names)) }
  }
  const { gauges, standards, thermometers, setUps, bores } = template
  const machine = job.machine ?? template.machine
  const taken = {
    ...job,
    ...readingsPlanned(template),
    ...pistonsToBeHad(template),
    ...{ spec, gauges, standards, thermometers, setUps, bores },
  }
  return machine === undefined ? taken : { ...taken, machine }
}

function stampedOneOf(bore: Bore, names: ReadonlySet<string>): Bore {
  if (bore.grade === undefined || names.has(bore.grade)) return bore
  const { grade: _, ...unstamped } = bore
  return unstamped
}

/** The kept spec whose limits and rules are those of a job. */
export function keptSpecOf(job: Job, kept: readonly KeptSpec[]): KeptSpec | undefined {
  return kept.find(({ template }) => sameValue(template.spec, job.spec))
}
