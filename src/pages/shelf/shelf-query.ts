import { standingAt, verdictPlaces } from '../../core/conformity/standing'
import { dayAfter } from '../../core/outlook/day-after'
import { folded } from '../../job/job-summary'
import type { ListedJob } from '../../job/listed-job'
import type { ShelfOrder, ShelfPlace, ShelfQuery } from '../../session/shelf-view'
import { words } from '../../words/words'

/** Numbers in names by their size, capitals and accents alike. */
const byName = new Intl.Collator(words.language.locale, { numeric: true, sensitivity: 'base' })

/** Where a job stands: deleted ones are no longer among the archived. */
export function placeOf({ archivedAt, deletedAt }: ListedJob): ShelfPlace {
  if (deletedAt !== undefined) return 'deleted'
  return archivedAt === undefined ? 'shelf' : 'archived'
}

/** The jobs in order, whatever is sought: what one order needs is worked out once. */
export function inOrder(jobs: readonly ListedJob[], order: ShelfOrder): readonly ListedJob[] {
  const latest = [...jobs].sort((a, b) => later(a.changedAt, b.changedAt))
  switch (order) {
    case 'changed':
      return latest
    case 'surveyed':
      return latest.sort((a, b) => later(a.surveyedOn ?? '', b.surveyedOn ?? ''))
    case 'check':
      return latest.sort((a, b) => later(b.checkOn ?? noDay, a.checkOn ?? noDay))
    case 'name':
      return latest.sort((a, b) => byName.compare(a.name, b.name))
    case 'verdict':
      return latest.sort((a, b) => severity(a) - severity(b))
  }
}

/** Past every day. */
const noDay = '9999-99-99'

function later(a: string, b: string): number {
  if (a === b) return 0
  return a > b ? -1 : 1
}

/** Proven out first, not judged last: nothing is known of it. */
function severity({ place }: ListedJob): number {
  return place === undefined ? verdictPlaces.length : verdictPlaces.indexOf(place)
}

/** Days within which a check is due soon. */
const soonDays = 30

/** The day up to which a check is asked for; undefined where it is asked for by no day. */
function lastDayAsked(check: ShelfQuery['check'], today: string): string | undefined {
  if (check === 'due') return today
  return check === 'soon' ? dayAfter(today, soonDays) : undefined
}

/**
 * Those of the jobs that are asked for, in the order in which they came. Every word sought must occur; what is due is
 * so by the day that it is, as in 2026-03-09.
 */
export function asked(jobs: readonly ListedJob[], query: ShelfQuery, today: string): readonly ListedJob[] {
  const { machine, from, to, standing, check, place } = query
  const until = lastDayAsked(check, today)
  const terms = folded(query.sought)
    .split(/\s+/)
    .filter((term) => term !== '')
  return jobs.filter((job) => {
    if (placeOf(job) !== place) return false
    if (machine !== '' && machineKey(job) !== machine) return false
    if (standing !== '' && standingAt(job.place) !== standing) return false
    if (until !== undefined && (job.checkOn ?? noDay) > until) return false
    if (check === 'some' && job.checkOn === undefined) return false
    if (check === 'none' && job.checkOn !== undefined) return false
    if (from !== '' && (job.surveyedOn ?? '') < from) return false
    if (to !== '' && (job.surveyedOn === undefined || job.surveyedOn > to)) return false
    return terms.every((term) => job.sought.includes(term))
  })
}

/** Asks for jobs without a machine; no machine is called so. */
export const withoutMachine = '\u0000'

function machineKey({ machine }: ListedJob): string {
  const named = machine?.trim() ?? ''
  return named === '' ? withoutMachine : named
}

/** The machines of all jobs, by name, each once; the one for jobs without a machine last, where there are any. */
export function machinesOf(jobs: readonly ListedJob[]): readonly string[] {
  const names = new Set(jobs.map(machineKey))
  const hasUnnamed = names.delete(withoutMachine)
  return [...[...names].sort(byName.compare), ...(hasUnnamed && names.size > 0 ? [withoutMachine] : [])]
}

/** How many filters are set: neither the search nor the order is one. */
export function filtersSet({ machine, from, to, standing, check, place }: ShelfQuery): number {
  return [machine, from, to, standing, check, place === 'shelf' ? '' : place].filter((one) => one !== '')
    .length
}
