import type { Page } from '@playwright/test'
import { dayAfter } from '../../src/core/outlook/day-after'
import { boreMapsOf, type JobSummary, summaryOf, summaryVersion } from '../../src/job/job-summary'
import type { Job } from '../../src/job/schema'
import { writeJob } from '../../src/job/write-job'
import { scenario } from '../unit/scenarios/scenario'

const machines = ['Saw', 'Pump, 86 mm', 'Compressor', 'Tractor', 'Press', 'Mower', 'Generator set', undefined]
const day = 24 * 60 * 60 * 1000
const firstDay = Date.UTC(2015, 0, 1)

/** Kinds of job that a shop has many of: their readings are those of the scenarios, invented. */
const kinds = [
  'A-two-stroke-single.json',
  'B-four-cylinder-iron.json',
  'C-wet-liner-diesel.json',
  'D1-compressor.json',
  'D2-hydraulic-tube.json',
].map(scenario)

/** The n-th of many jobs that differ in name, machine, person, day and verdict. */
export function oneOfMany(index: number): Job {
  const kind = kinds[index % kinds.length]
  const machine = machines[index % machines.length]
  if (!kind) throw new Error('There is no scenario')
  const { invented: _, machine: __, ...plain } = kind
  const date = new Date(firstDay + ((index * 37) % 4000) * day).toISOString().slice(0, 10)
  return {
    ...plain,
    id: `many-${index}`,
    name: `Job ${index + 1}`,
    ...(machine === undefined ? {} : { machine }),
    hoursPerWeek: 20,
    note: `Came in with order ${10_000 + index}. Ring lands cleaned, plug side marked with a punch.`,
    bores: kind.bores.map((bore) => ({
      ...bore,
      surveys: bore.surveys.map((survey) => ({ ...survey, date, measuredBy: `Fitter ${index % 12}` })),
    })),
  }
}

/** Puts so many jobs on the shelf of a page that has opened it, as they would lie there had each been saved. */
export async function keepMany(page: Page, count: number, { isSummed = true } = {}): Promise<void> {
  const summed = new Map<string, ReturnType<typeof summaryOf>>()
  const lot = 500
  for (let from = 0; from < count; from += lot) {
    const records = Array.from({ length: Math.min(lot, count - from) }, (_, step) => {
      const index = from + step
      const job = oneOfMany(index)
      const kind = `${index % kinds.length}`
      const alike = summed.get(kind) ?? summaryOf(job)
      summed.set(kind, alike)
      const changedAt = new Date(firstDay + index * 3_600_000).toISOString()
      const { id, name, formatVersion } = job
      return {
        job: { id, name, formatVersion, changedAt, text: writeJob(job) },
        entry: { version: summaryVersion, id, changedAt, ...alike, ...differing(job, alike) },
        maps: { id: `\u0001${id}`, maps: boreMapsOf(kinds[index % kinds.length] ?? job) },
      }
    })
    await page.evaluate(put, { records, isSummed })
  }
}

/** What of the summary differs between jobs of one kind: findings are worked out once for each kind. */
function differing(job: Job, alike: Pick<JobSummary, 'surveyedOn' | 'checkOn'>) {
  const date = job.bores.find(({ role }) => role === 'of-this-engine')?.surveys[0]?.date
  const { name, machine } = job
  const people = job.bores[0]?.surveys[0]?.measuredBy
  return {
    name,
    ...(machine === undefined ? {} : { machine }),
    ...(date === undefined ? {} : { surveyedOn: date, ...checkAfter(date, alike) }),
    sought: [name, machine, people, job.note]
      .filter((text) => text !== undefined)
      .join('\n')
      .toLowerCase(),
  }
}

/** As many days after its survey as of the job that was summed up. */
function checkAfter(date: string, { surveyedOn, checkOn }: Pick<JobSummary, 'surveyedOn' | 'checkOn'>) {
  if (surveyedOn === undefined || checkOn === undefined) return {}
  const days = (Date.parse(checkOn) - Date.parse(surveyedOn)) / day
  return { checkOn: dayAfter(date, days) }
}

interface Put {
  readonly records: readonly { readonly job: object; readonly entry: object; readonly maps: object }[]
  readonly isSummed: boolean
}

function put({ records, isSummed }: Put): Promise<void> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open('borewall')
    opening.onerror = () => reject(opening.error)
    opening.onsuccess = () => {
      const writing = opening.result.transaction(['jobs', 'entries'], 'readwrite')
      for (const { job, entry, maps } of records) {
        writing.objectStore('jobs').put(job)
        if (!isSummed) continue
        writing.objectStore('entries').put(entry)
        writing.objectStore('entries').put(maps)
      }
      writing.oncomplete = () => {
        opening.result.close()
        resolve()
      }
      writing.onabort = () => reject(writing.error)
    }
  })
}
