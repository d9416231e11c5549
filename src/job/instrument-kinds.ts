/** Kinds of gauges and standards, with what follows from them, as pure changes of a job. */
import { entriesOf } from '../core/diameter/entry'
import { usualStandardOf } from '../core/gauge/presets'
import type { Gauge, GaugeKind, SetUp, StandardKind } from '../core/measured'
import { chooseStandard, setUpsUsing } from './instrument-list'
import { patched, withEntry } from './patch'
import type { Job } from './schema'
import { changeEntry } from './set-up-commands'

/**
 * Changes the kind of a gauge, and in the set-ups that use it what cannot or would not be with that kind: how
 * readings are written down, and what it is set by. Its own step goes: it belonged to the other kind.
 */
export function changeGaugeKind(job: Job, gaugeId: string, kind: GaugeKind, ids: () => string): Job {
  if (gaugeOf(job, gaugeId).kind === kind) return job
  const users = setUpsUsing(job, 'gauges', gaugeId)
  const refitted = users.reduce((next, setUp) => refit(next, setUp, kind, ids), job)
  return withGauge(refitted, gaugeId, (gauge) => patched<Gauge>(gauge, { kind, stepUm: undefined }))
}

function refit(job: Job, setUp: SetUp, kind: GaugeKind, ids: () => string): Job {
  const [usual, ...others] = entriesOf(kind)
  if (usual === undefined) throw new Error(`A gauge of the kind ${kind} cannot be read`)
  const fits = [usual, ...others].includes(setUp.entry)
  const entered = fits ? job : changeEntry(job, setUp.id, usual, ids)
  const standard = usualStandardOf(kind)
  const isReverse = fits && setUp.entry === 'reverse'
  return standard === undefined || isReverse ? entered : withStandardOf(entered, setUp.id, standard, ids)
}

/**
 * Names a standard of a kind for a set-up. A gauge of that set-up alone, of a kind that says what it is set by,
 * goes with it.
 */
export function chooseStandardKind(job: Job, setUpId: string, kind: StandardKind, ids: () => string): Job {
  const chosen = withStandardOf(job, setUpId, kind, ids)
  const gauge = gaugeOf(chosen, setUpOf(chosen, setUpId).gaugeId)
  const isAlone = setUpsUsing(chosen, 'gauges', gauge.id).length === 1
  const likewise = ofTheSameMake[gauge.kind]?.[kind]
  return isAlone && likewise && likewise !== gauge.kind
    ? withGauge(chosen, gauge.id, (before) => ({ ...before, kind: likewise }))
    : chosen
}

const dial0001 = { ring: 'dial-0.001-ring', micrometer: 'dial-0.001-micrometer' } as const
/** One gauge under two kinds, by what it is set by. */
const ofTheSameMake: { readonly [Kind in GaugeKind]?: Readonly<Record<StandardKind, GaugeKind>> } = {
  'dial-0.001-ring': dial0001,
  'dial-0.001-micrometer': dial0001,
}

/**
 * The standard there is turned into that kind while nothing but its kind is recorded and no other set-up uses it,
 * else the job's first of that kind, else a new one. So a ring never takes over what a micrometer read on its
 * own standard.
 */
function withStandardOf(job: Job, setUpId: string, kind: StandardKind, ids: () => string): Job {
  const { standardId } = setUpOf(job, setUpId)
  const standard = job.standards.find(({ id }) => id === standardId)
  if (!standard || standard.kind === kind) return job
  const other = job.standards.find((each) => each.kind === kind)
  if (other) return chooseStandard(job, setUpId, other.id)
  const isBlank = Object.keys(standard).every((key) => key === 'id' || key === 'kind')
  if (isBlank && setUpsUsing(job, 'standards', standardId).length === 1) {
    return { ...job, standards: withEntry(job.standards, standardId, ({ id }) => ({ id, kind })) }
  }
  const id = ids()
  return chooseStandard({ ...job, standards: [...job.standards, { id, kind }] }, setUpId, id)
}

function withGauge(job: Job, id: string, change: (gauge: Gauge) => Gauge): Job {
  return { ...job, gauges: withEntry(job.gauges, id, change) }
}

function gaugeOf(job: Job, gaugeId: string): Gauge {
  const gauge = job.gauges.find(({ id }) => id === gaugeId)
  if (!gauge) throw new Error(`No gauge with the id "${gaugeId}"`)
  return gauge
}

function setUpOf(job: Job, setUpId: string): SetUp {
  const setUp = job.setUps.find(({ id }) => id === setUpId)
  if (!setUp) throw new Error(`No set-up with the id "${setUpId}"`)
  return setUp
}
