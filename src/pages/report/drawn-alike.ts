import type { BoreFinding } from '../../core/findings'

/** Whether both contacts of a reading are drawn alike, since two contacts cannot tell which wall wore. */
export function isMeasuredAlike({ notes }: Pick<BoreFinding, 'notes'>): boolean {
  return notes.some(({ code }) => code === 'two-contacts-see-even-lobes-only')
}
