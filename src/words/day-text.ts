import { words } from './words'

/** A day as it is read, from year, month and day as they are kept: 2026-03-09 as 9 March 2026. */
export function dayText(isoDate: string): string {
  const [year, month, day] = isoDate.split('-').map(Number)
  const monthName = month === undefined ? undefined : words.number.months[month - 1]
  if (!year || !day || monthName === undefined) {
    throw new RangeError(`dayText: expected year-month-day, got ${JSON.stringify(isoDate)}`)
  }
  return words.number.day(day, monthName, year)
}
