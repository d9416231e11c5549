import type { Place } from '../../core/findings'
import { samePlace } from './entry-order'

/** Something to be asked, in words, with what can be answered in one touch. */
export interface Question {
  readonly key: string
  readonly text: string
  readonly place?: Place
  /** All stations that it is about, where it is about more than its own. */
  readonly places?: readonly Place[]
  readonly answers: readonly Answer[]
}

export interface Answer {
  readonly label: string
  readonly give: () => void
}

/** Whether a question is about the readings of a station. */
export function concerns({ place, places = place ? [place] : [] }: Question, at: Place): boolean {
  return places.some((one) => samePlace(one, at))
}
