import type { Bore } from '../core/measured'
import type { Compared } from './compared'
import type { Job } from './schema'

/** The bores that an owner is told of: those of the engine, else those there are. */
export function toldBores({ bores }: Pick<Job, 'bores'>): readonly Bore[] {
  const own = bores.filter(({ role }) => role === 'of-this-engine')
  return own.length > 0 ? own : bores
}

/** What stands beside a bore that is told of: one for comparison, else the same bore as it was when new. */
export function besideTold(all: readonly Compared[], told: Compared): Compared | undefined {
  const others = all.filter((one) => one !== told)
  return (
    others.find(({ bore }) => bore.role === 'for-comparison') ??
    others.find(({ bore, survey }) => bore === told.bore && survey.hoursRun === 0)
  )
}
