import { words } from '../../words/words'

const calendar = new Intl.DateTimeFormat(words.language.locale, { dateStyle: 'medium', timeStyle: 'short' })
const days = new Intl.DateTimeFormat(words.language.locale, { dateStyle: 'medium' })

/** A moment as it is read, on this machine's clock; a damaged record may hold any text here. */
export function dayAndTime(iso: string): string {
  const at = new Date(iso)
  return Number.isNaN(at.getTime()) ? iso : calendar.format(at)
}

/** A day as it is read, short; from a moment or from year, month and day. */
export function shortDay(iso: string): string {
  const at = new Date(iso.length === 10 ? `${iso}T12:00:00` : iso)
  return Number.isNaN(at.getTime()) ? iso : days.format(at)
}
