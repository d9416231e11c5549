import type { SetUp } from '../core/measured'
import type { TableReading } from '../formats/table-readings'
import { newJob } from './new-job'
import type { Job } from './schema'
import { type TakenTable, takeTable } from './take-table'

/**
 * A new job of the readings of a table, with bores and surveys as the table has them. Where nothing in it is counted
 * from a setting, the middle of its sizes stands in for the setting size until somebody writes that down.
 */
export function jobOfTable(
  readings: readonly TableReading[],
  { name, settingSizeMm }: { readonly name: string; readonly settingSizeMm?: number | undefined },
  ids: () => string,
): TakenTable {
  const empty = newJob(ids)
  const [setUp] = empty.setUps
  const [bore] = empty.bores
  const [survey] = bore?.surveys ?? []
  if (!setUp || !bore || !survey) throw new Error('A new job has a set-up and a bore with a survey')
  const start: Job = {
    ...empty,
    name,
    setUps: [standIn(setUp, readings)],
    bores: [{ ...bore, surveys: [{ ...survey, axesDegrees: [] }] }],
  }
  const choices = { boreId: bore.id, surveyId: survey.id, newSurvey: true, settingSizeMm }
  const taken = takeTable(start, readings, choices, ids)
  return taken.readings === 0 ? taken : { ...taken, job: inOrder(taken) }
}

function standIn(setUp: SetUp, readings: readonly TableReading[]): SetUp {
  const sizes = readings.flatMap(({ as, value }) => (as === 'size' ? [value] : [])).sort((a, b) => a - b)
  const middle = sizes[Math.floor(sizes.length / 2)]
  const settingSizeMm = middle === undefined ? setUp.settingSizeMm : Math.max(1, Math.round(middle))
  const isDial = readings.length > 0 && readings.every(({ as }) => as === 'dial')
  return { ...setUp, settingSizeMm: Math.min(settingSizeMm, 2000), entry: isDial ? 'deviation' : 'size' }
}

/**
 * Bores and surveys in the order of the table, without those that a job begins with.
 */
function inOrder({ job, surveys }: TakenTable): Job {
  const bores = [...new Set(surveys.map(({ boreId }) => boreId))].flatMap((boreId) => {
    const bore = job.bores.find(({ id }) => id === boreId)
    if (!bore) return []
    const own = surveys.flatMap(({ surveyId }) => bore.surveys.filter(({ id }) => id === surveyId))
    return [{ ...bore, surveys: own }]
  })
  return { ...job, bores }
}
