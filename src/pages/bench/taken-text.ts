import { placeText } from '../../words/numbers'
import { words } from '../../words/words'
import type { Entry } from './use-entry'

/** The number that was taken last, to be read out while the next one is waited for. */
export function takenText({ correcting, taken }: Pick<Entry, 'correcting' | 'taken'>): string {
  return correcting || !taken ? '' : words.next.taken(placeText(taken), taken.typed)
}
