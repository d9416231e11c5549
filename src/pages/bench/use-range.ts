import type { Problem, ProblemCode } from '../../core/problem'
import { setWaiting, type WaitingEnds } from '../../session/session'
import { words } from '../../words/words'
import { refusalOf } from './perform'
import type { Refusal, Waits } from './TypedField'
import { useSession } from './use-job'

type End = 'low' | 'high'

/** One end of a range, for its field. `Missing` is undefined where the range may be open there. */
export interface RangeEnd<Missing> {
  /** What its field shows: what waits, else what is kept. */
  readonly value: number | Missing
  readonly keep: (value: number | Missing) => Refusal
  readonly waits: Waits | undefined
}

interface Look {
  /** How its figures are written. */
  readonly written: (value: number) => string
  /** Its ends are angles, in no order. */
  readonly isRound?: boolean
}

interface RangeProps<Missing> extends Look {
  /** Tells it from the other ranges of the job. */
  readonly name: string
  /** The ends as the job has them. */
  readonly low: number | Missing
  readonly high: number | Missing
  readonly keep: (low: number | Missing, high: number | Missing) => readonly Problem[]
}

const nothing: WaitingEnds = {}

/** What is wrong only between the two ends: it may come right with the other. */
const betweenEnds: readonly ProblemCode[] = ['low-above-high', 'port-all-round']

/**
 * The two ends of a range, typed one after the other. An end typed past the other is not refused: it waits in
 * its field, whatever part of the page is looked at, and both are kept as one change once they are in order.
 */
export function useRange<Missing>(range: RangeProps<Missing>): Record<End, RangeEnd<Missing>> {
  const { name } = range
  const waiting = useSession((state) => state.waiting[name]) ?? nothing
  const shown = { low: waiting.low ?? range.low, high: waiting.high ?? range.high }

  const take = (end: End, value: number | Missing, others: WaitingEnds): Refusal => {
    const ends = { low: others.low ?? range.low, high: others.high ?? range.high, [end]: value }
    const problems = range.keep(ends.low, ends.high)
    const isBetween = typeof value === 'number' && problems.every(({ code }) => betweenEnds.includes(code))
    if (problems.length > 0 && !isBetween) return refusalOf(problems)
    setWaiting(name, problems.length > 0 ? { ...others, [end]: value } : nothing)
    return undefined
  }
  const takeBack = (end: End) => {
    const { [end]: _, ...others } = waiting
    const rest: WaitingEnds = others
    setWaiting(name, rest)
    if (rest.low !== undefined) take('low', rest.low, rest)
    if (rest.high !== undefined) take('high', rest.high, rest)
  }
  const endOf = (end: End): RangeEnd<Missing> => ({
    value: shown[end],
    keep: (value) => take(end, value, waiting),
    waits:
      waiting[end] === undefined
        ? undefined
        : { said: waitsText(end, shown.low, shown.high, range), takeBack: () => takeBack(end) },
  })
  return { low: endOf('low'), high: endOf('high') }
}

/** Computed anew each time: undo may have changed the other end since. */
function waitsText(end: End, low: unknown, high: unknown, { written, isRound }: Look): string {
  const said = words.number.waits
  if (typeof low !== 'number' || typeof high !== 'number') return said.alone
  if (isRound) return (high - low) % 360 === 0 ? said.same : said.fits
  if (low <= high) return said.fits
  return end === 'low' ? said.low(written(low), written(high)) : said.high(written(high), written(low))
}
