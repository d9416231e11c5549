import type { Place } from '../../core/findings'
import { setRepeats } from '../../job/commands'
import { isSettingOpen } from '../../job/setting-size'
import { type Entering, nothingTyped, setEntering, setTaken } from '../../session/session'
import { placeText } from '../../words/numbers'
import { words } from '../../words/words'
import { repeatsAt } from './entry-order'
import type { EntryState } from './entry-state'
import { perform } from './perform'
import { readRepeats } from './read-repeats'

/** Takes what is typed; how many repeats the station has then, undefined when it was refused. */
export function take(now: EntryState): number | undefined {
  const { station, typed, replaces } = now
  const { bore, setUp, gauge } = now.bench
  if (!station) {
    refuse(now, words.next.noStation)
    return undefined
  }
  const read = readRepeats(typed, setUp, gauge, isSettingOpen(setUp))
  if (!read.ok) {
    refuse(now, read.why)
    return undefined
  }
  const all = withRepeats(repeatsAt(station), read.values, replaces)
  if (!record(now, station, all, words.changes.reading(placeText(station)))) return undefined
  const { depthMm, axisDegrees } = station
  setTaken({ boreId: bore.id, depthMm, axisDegrees, typed: typed.trim() })
  return all.length
}

/** Sets the repeats of a station; false, with the reason shown, when they were refused. */
export function record(now: EntryState, at: Place, values: readonly number[], label: string): boolean {
  const { bore, survey } = now.bench
  const why = perform(label, (job) => setRepeats(job, bore.id, survey.id, at, values))
  if (why === undefined) setEntering(survey.id, nothingTyped)
  else refuse(now, why)
  return why === undefined
}

/** What is typed stays in the field, with the reason. */
function refuse({ bench, typed, replaces, station }: EntryState, refusal: string) {
  setEntering(bench.survey.id, {
    typed,
    refusal,
    ...(replaces === undefined ? {} : { replaces }),
    ...(station ? { at: { depthMm: station.depthMm, axisDegrees: station.axisDegrees } } : {}),
  })
  setTaken(undefined)
}

function withRepeats(
  before: readonly number[],
  values: readonly number[],
  replaces: Entering['replaces'],
): readonly number[] {
  if (replaces === 'all') return values
  return replaces === undefined ? [...before, ...values] : before.toSpliced(replaces, 1, ...values)
}
