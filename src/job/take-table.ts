import { isOfSizes } from '../core/diameter/entry'
import type { Bore, SetUp, Survey } from '../core/measured'
import type { RefusedCell, TableReading } from '../formats/table-readings'
import { rangeOf } from './field-ranges'
import { mostOf } from './most-of'
import { patched } from './patch'
import type { Job } from './schema'
import { isSettingOpen } from './setting-size'
import { type TableTarget, targetsOf } from './table-target'
import { valueWriter, type WriteRefusal } from './table-value'
import type { TakeChoices } from './take-choices'
import { unreachableWhere } from './unreachable'

export type TakeRefusal =
  | WriteRefusal
  | 'out-of-range'
  | 'name-too-long'
  | 'deeper-than-bore'
  /** The station has readings already, and they were to be left as they are. */
  | 'station-read'
  | 'repeat-twice'
  | 'too-many-repeats'
  | 'too-many-levels'
  | 'too-many-axes'
  | 'too-many-readings'
  | 'too-many-bores'
  | 'too-many-surveys'

export interface TakenTable {
  /** The same object where nothing was taken. */
  readonly job: Job
  readonly readings: number
  readonly stations: number
  /** In the order of the table; those that the job had not are new. */
  readonly surveys: readonly TakenSurvey[]
  readonly refused: readonly RefusedCell<TakeRefusal>[]
}

export interface TakenSurvey {
  readonly boreId: string
  readonly boreName: string
  readonly surveyId: string
  readonly isNewBore: boolean
  readonly isNewSurvey: boolean
  readonly readings: number
}

/**
 * Takes the readings of a table into a job, as one change: levels, axes, surveys and bores that it has not are added,
 * and nothing that it has is changed but for stations that get further repeats. Each reading that cannot be taken is
 * refused by itself. `ids` gives a fresh id at each call.
 */
export function takeTable(
  job: Job,
  readings: readonly TableReading[],
  choices: TakeChoices,
  ids: () => string,
): TakenTable {
  const refused: RefusedCell<TakeRefusal>[] = []
  const refuse = ({ row, column, text }: TableReading, why: TakeRefusal) =>
    void refused.push({ row, column, text, why })
  const inRange = readings.filter((reading) => {
    const why = outOfRange(reading)
    if (why) refuse(reading, why)
    return !why
  })
  const sorted = targetsOf(job, inRange, choices, ids)
  for (const { reading, why } of sorted.refused) refuse(reading, why)
  const setUps = settledSetUps(sorted.setUps, sorted.targets, choices)
  const filled = sorted.targets.map((target) => ({
    target,
    ...filledSurvey(target, setUps, job, choices, refuse),
  }))
  const taken = filled.filter(({ readings: count }) => count > 0)
  const surveys = taken.map(({ target, survey, readings: count }) => ({
    boreId: target.bore.id,
    boreName: target.bore.name,
    surveyId: survey.id,
    isNewBore: target.isNewBore,
    isNewSurvey: target.isNewSurvey,
    readings: count,
  }))
  const sum = (count: (one: (typeof taken)[number]) => number) =>
    taken.reduce((all, one) => all + count(one), 0)
  return {
    job: taken.length === 0 ? job : withSurveys(job, taken, setUps),
    readings: sum((one) => one.readings),
    stations: sum((one) => one.stations),
    surveys,
    refused: refused.sort((a, b) => a.row - b.row || a.column - b.column),
  }
}

function outOfRange(reading: TableReading): TakeRefusal | undefined {
  const { as, value, depthMm, hoursRun } = reading
  const isOut = (field: string, found: number | undefined) => {
    const range = rangeOf(field)
    if (!range) throw new Error(`The field "${field}" has no range`)
    return found !== undefined && !(found >= range.least && found <= range.most)
  }
  // A deviation becomes a size; it is checked as such where it is written.
  const isValueOut = as === 'size' ? isOut('sizesMm', value) : isOut('dialUm', value)
  if (isValueOut || isOut('depthMm', depthMm) || isOut('hoursRun', hoursRun)) return 'out-of-range'
  const isLong = (text = '') => text.length > mostOf.nameLength
  return isLong(reading.bore) || isLong(reading.survey) ? 'name-too-long' : undefined
}

/** The set-ups with the setting size written down where nobody had and readings of the table are counted from it. */
function settledSetUps(
  setUps: readonly SetUp[],
  targets: readonly TableTarget[],
  { settingSizeMm }: TakeChoices,
): readonly SetUp[] {
  if (settingSizeMm === undefined) return setUps
  const counting = targets.filter(({ readings }) => readings.some(({ as }) => as !== 'size'))
  const needed = new Set(counting.map(({ survey }) => survey.setUpId))
  return setUps.map((setUp) =>
    needed.has(setUp.id) && isSettingOpen(setUp)
      ? patched<SetUp>(setUp, { settingSizeMm, settingAssumed: undefined })
      : setUp,
  )
}

interface Filled {
  readonly survey: Survey
  readonly readings: number
  readonly stations: number
}

type Refuse = (reading: TableReading, why: TakeRefusal) => void

/** One station's readings of the table, as they are to be written. */
interface Station {
  readonly depthMm: number
  readonly axisDegrees: number
  readonly values: { readonly value: number; readonly repeat: number | undefined }[]
}

function filledSurvey(
  target: TableTarget,
  setUps: readonly SetUp[],
  job: Job,
  { addRepeats }: TakeChoices,
  refuse: Refuse,
): Filled {
  const { survey, bore } = target
  const setUp = setUps.find(({ id }) => id === survey.setUpId)
  if (!setUp) throw new Error(`No set-up with the id "${survey.setUpId}"`)
  const write = valueWriter(setUp, job.standards)
  const before = new Map(survey.readings.map((reading) => [keyOf(reading), reading]))
  const levels = new Set(survey.levelsMm)
  const axes = new Set(survey.axesDegrees)
  const stations = new Map<string, Station>()
  for (const reading of target.readings) {
    const { depthMm, axisDegrees, repeat } = reading
    const key = keyOf(reading)
    const station = stations.get(key)
    const present = before.get(key)
    const count = (station?.values.length ?? 0) + (present?.sizesMm ?? present?.dialUm ?? []).length
    const isNew = !station && !present
    const written = write(reading)
    const why =
      (typeof written === 'string' ? written : undefined) ??
      (present && !addRepeats ? 'station-read' : undefined) ??
      (bore.lengthMm !== undefined && depthMm > bore.lengthMm ? 'deeper-than-bore' : undefined) ??
      (repeat !== undefined && station?.values.some((one) => one.repeat === repeat)
        ? 'repeat-twice'
        : undefined) ??
      (count >= mostOf.repeats ? 'too-many-repeats' : undefined) ??
      (isNew && !levels.has(depthMm) && levels.size >= mostOf.levels ? 'too-many-levels' : undefined) ??
      (isNew && !axes.has(axisDegrees) && axes.size >= mostOf.axes ? 'too-many-axes' : undefined) ??
      (isNew && before.size + stations.size >= mostOf.readings ? 'too-many-readings' : undefined)
    if (why !== undefined || typeof written === 'string') {
      refuse(reading, why ?? 'out-of-range')
      continue
    }
    levels.add(depthMm)
    axes.add(axisDegrees)
    if (station) station.values.push({ value: written, repeat })
    else stations.set(key, { depthMm, axisDegrees, values: [{ value: written, repeat }] })
  }
  const readings = [...stations.values()].reduce((sum, { values }) => sum + values.length, 0)
  return { survey: joined(survey, stations, setUp, levels, axes), readings, stations: stations.size }
}

function joined(
  survey: Survey,
  stations: ReadonlyMap<string, Station>,
  { entry }: SetUp,
  levels: ReadonlySet<number>,
  axes: ReadonlySet<number>,
): Survey {
  const field = isOfSizes(entry) ? 'sizesMm' : 'dialUm'
  const added = new Map([...stations].map(([key, station]) => [key, valuesOf(station)]))
  const kept = survey.readings.map((reading) => {
    const more = added.get(keyOf(reading))
    added.delete(keyOf(reading))
    return more ? { ...reading, [field]: [...(reading[field] ?? []), ...more] } : reading
  })
  const fresh = [...stations].flatMap(([key, { depthMm, axisDegrees }]) => {
    const values = added.get(key)
    return values ? [{ depthMm, axisDegrees, [field]: values }] : []
  })
  const inOrder = (values: ReadonlySet<number>) => [...values].sort((a, b) => a - b)
  return patched<Survey>(survey, {
    readings: [...kept, ...fresh],
    levelsMm: inOrder(levels),
    axesDegrees: inOrder(axes),
    ...unreachableWhere(survey, (place) => !stations.has(keyOf(place))),
  })
}

/** In the order of the repeats where they are numbered, else of the table. */
function valuesOf({ values }: Station): number[] {
  const last = Number.POSITIVE_INFINITY
  return [...values].sort((a, b) => (a.repeat ?? last) - (b.repeat ?? last) || 0).map(({ value }) => value)
}

function keyOf({ depthMm, axisDegrees }: { readonly depthMm: number; readonly axisDegrees: number }): string {
  return `${depthMm} ${axisDegrees}`
}

function withSurveys(
  job: Job,
  taken: readonly { readonly target: TableTarget; readonly survey: Survey }[],
  setUps: readonly SetUp[],
): Job {
  const bores = new Map<string, Bore>(job.bores.map((bore) => [bore.id, bore]))
  for (const { target, survey } of taken) {
    const bore = bores.get(target.bore.id) ?? { ...target.bore, surveys: [] }
    const index = bore.surveys.findIndex(({ id }) => id === survey.id)
    const surveys = index < 0 ? [...bore.surveys, survey] : bore.surveys.with(index, survey)
    bores.set(bore.id, { ...bore, surveys })
  }
  const used = new Set(taken.map(({ survey }) => survey.setUpId))
  const isKept = ({ id }: SetUp) => used.has(id) || job.setUps.some((setUp) => setUp.id === id)
  return { ...job, setUps: setUps.filter(isKept), bores: [...bores.values()] }
}
