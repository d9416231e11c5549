import { isOfSizes } from '../core/diameter/entry'
import type { Bore, SetUp, Survey } from '../core/measured'
import type { TableReading } from '../formats/table-readings'
import { nextBoreName } from './bore-commands'
import { mostOf } from './most-of'
import type { Job } from './schema'
import type { TakeChoices } from './take-choices'

/** A survey that readings of a table go to, with those readings in the order of the table. */
export interface TableTarget {
  /** With its surveys as they were; none for a new bore. */
  readonly bore: Bore
  readonly survey: Survey
  readonly isNewBore: boolean
  readonly isNewSurvey: boolean
  readonly readings: TableReading[]
}

interface Homeless {
  readonly reading: TableReading
  readonly why: 'too-many-bores' | 'too-many-surveys'
}

/**
 * Sorts the readings of a table by the survey they belong to. A bore is known by its name; a survey by all that the
 * table says of it: name, day, hours. What the job has not is made: a bore like the one in hand but without its
 * plan, a survey under the set-up of the one before. Where that set-up holds sizes and the table what a dial showed,
 * the new survey gets a set-up of its own.
 */
export function targetsOf(
  job: Job,
  readings: readonly TableReading[],
  choices: TakeChoices,
  ids: () => string,
): {
  readonly targets: readonly TableTarget[]
  readonly setUps: readonly SetUp[]
  readonly refused: readonly Homeless[]
} {
  const setUps = [...job.setUps]
  const bores: Bore[] = [...job.bores]
  const isOld = new Set(job.bores.map(({ id }) => id))
  const targets = new Map<string, TableTarget | Homeless['why']>()
  const refused: Homeless[] = []
  const names = new Map<string, Bore | 'too-many-bores'>()
  const boreFor = (reading: TableReading): Bore | 'too-many-bores' => {
    const name = reading.bore ?? ''
    const known = names.get(name)
    if (known) return known
    const bore = boreNamed(reading.bore, bores, choices) ?? madeBore(reading.bore)
    names.set(name, bore)
    return bore
  }
  const madeBore = (name: string | undefined): Bore | 'too-many-bores' => {
    if (bores.length >= mostOf.bores) return 'too-many-bores'
    const bore = newBore(job, name ?? nextBoreName(bores), boreInHand(job, choices), ids)
    bores.push(bore)
    return bore
  }
  const made = (reading: TableReading): TableTarget | Homeless['why'] => {
    const bore = boreFor(reading)
    if (typeof bore === 'string') return bore
    const isNewBore = !isOld.has(bore.id)
    const present = isNewBore ? undefined : surveyNamed(reading, bore, choices)
    if (present) return { bore, survey: present, isNewBore, isNewSurvey: false, readings: [] }
    const others = [...targets.values()].filter((one) => typeof one !== 'string' && one.bore.id === bore.id)
    if (bore.surveys.length + others.length >= mostOf.surveys) return 'too-many-surveys'
    const setUp = setUpFor(reading, latestSetUp(job, bore, choices), setUps, job, ids)
    return { bore, survey: newSurvey(reading, setUp.id, ids), isNewBore, isNewSurvey: true, readings: [] }
  }
  for (const reading of readings) {
    // No name holds the sign between them.
    const key = `${reading.bore}\n${reading.survey}\n${reading.date}\n${reading.hoursRun}`
    const target = targets.get(key) ?? made(reading)
    targets.set(key, target)
    if (typeof target === 'string') refused.push({ reading, why: target })
    else target.readings.push(reading)
  }
  const found = [...targets.values()].filter((target) => typeof target !== 'string')
  return { targets: merged(found), setUps, refused }
}

/** Two ways of naming one survey are one target. */
function merged(targets: readonly TableTarget[]): readonly TableTarget[] {
  const byId = new Map<string, TableTarget>()
  for (const target of targets) {
    const same = byId.get(target.survey.id)
    if (same) for (const reading of target.readings) same.readings.push(reading)
    else byId.set(target.survey.id, target)
  }
  return [...byId.values()]
}

function boreInHand({ bores }: Job, { boreId }: TakeChoices): Bore {
  const bore = bores.find(({ id }) => id === boreId)
  if (!bore) throw new Error(`No bore with the id "${boreId}"`)
  return bore
}

function boreNamed(
  name: string | undefined,
  bores: readonly Bore[],
  { boreId, newBore }: TakeChoices,
): Bore | undefined {
  if (name === undefined) return newBore ? undefined : bores.find(({ id }) => id === boreId)
  return bores.find((bore) => bore.name.trim() === name)
}

function surveyNamed(reading: TableReading, bore: Bore, choices: TakeChoices): Survey | undefined {
  const { survey: name, date, hoursRun } = reading
  if (name === undefined && date === undefined && hoursRun === undefined) {
    if (choices.newSurvey) return undefined
    const latest = bore.surveys.at(-1)
    return bore.id === choices.boreId
      ? (bore.surveys.find(({ id }) => id === choices.surveyId) ?? latest)
      : latest
  }
  return bore.surveys.find(
    (survey) =>
      (name === undefined || survey.name?.trim() === name) &&
      (date === undefined || survey.date === date) &&
      (hoursRun === undefined || survey.hoursRun === hoursRun),
  )
}

/** A bore like another, but for its name, its grade and what was measured in it. */
function newBore(job: Job, name: string, like: Bore, ids: () => string): Bore {
  const own = job.bores.find(({ role }) => role === 'of-this-engine') ?? like
  const { grade: _, oversizeMm: __, ...walls } = own
  return { ...walls, id: ids(), name, role: 'of-this-engine', surveys: [] }
}

function newSurvey({ survey, date, hoursRun }: TableReading, setUpId: string, ids: () => string): Survey {
  return {
    id: ids(),
    ...(survey === undefined ? {} : { name: survey }),
    ...(date === undefined ? {} : { date }),
    ...(hoursRun === undefined ? {} : { hoursRun }),
    setUpId,
    levelsMm: [],
    axesDegrees: [],
    readings: [],
  }
}

function latestSetUp(job: Job, bore: Bore, choices: TakeChoices): SetUp {
  const survey = bore.surveys.at(-1) ?? boreInHand(job, choices).surveys.at(-1)
  const setUp = job.setUps.find(({ id }) => id === survey?.setUpId)
  if (!setUp) throw new Error(`No set-up with the id "${survey?.setUpId}"`)
  return setUp
}

/** The set-up that a reading can be written under: that of before, or one like it that holds dial readings. */
function setUpFor({ as }: TableReading, before: SetUp, setUps: SetUp[], job: Job, ids: () => string): SetUp {
  if (as !== 'dial' || !isOfSizes(before.entry) || setUps.length >= mostOf.setUps) return before
  const alike = ({ gaugeId, standardId, settingSizeMm, entry }: SetUp) =>
    entry === 'deviation' &&
    gaugeId === before.gaugeId &&
    standardId === before.standardId &&
    settingSizeMm === before.settingSizeMm
  const made = setUps.slice(job.setUps.length).find(alike)
  if (made) return made
  const fresh: SetUp = { ...before, id: ids(), entry: 'deviation' }
  setUps.push(fresh)
  return fresh
}
