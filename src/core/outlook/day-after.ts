const dayMs = 86_400_000
const lastYear = 9999

/**
 * The day so many days after one, both as in 2026-03-09: whole days, rounded down. Undefined past the year 9999,
 * which the form of a day does not hold. Throws for what is no such day. Source: ISO 8601-1:2019, 5.2.2, with the
 * Gregorian calendar of ECMA-262 `Date.UTC`.
 */
export function dayAfter(day: string, days: number): string | undefined {
  const start = Date.parse(`${day}T00:00:00Z`)
  // A 30 February is parsed as a day of March.
  if (Number.isNaN(start) || new Date(start).toISOString().slice(0, 10) !== day) {
    throw new RangeError(`dayAfter: expected year-month-day, got ${JSON.stringify(day)}`)
  }
  const then = new Date(start + Math.floor(days) * dayMs)
  return then.getUTCFullYear() > lastYear || Number.isNaN(then.getTime())
    ? undefined
    : then.toISOString().slice(0, 10)
}
