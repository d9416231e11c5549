export const dayOrders = ['day-first', 'month-first'] as const
/** What comes first in a date such as 3/4/2024. */
export type DayOrder = (typeof dayOrders)[number]

export type TableDay =
  | { readonly ok: true; readonly day: string }
  | { readonly ok: false; readonly why: 'not-a-day' | 'day-order-open' }

/**
 * A day as 2024-05-31 from a cell: in that form (ISO 8601), with points as 31.5.2024 (the day is first wherever
 * points are written), or with strokes as 31/5/2024, where the order must be known.
 */
export function readTableDay(text: string, order: DayOrder | undefined): TableDay {
  const trimmed = text.trim()
  const iso = /^(\d{4})-(\d{1,2})-(\d{1,2})(?:[T ][\d:.]+Z?)?$/.exec(trimmed)
  if (iso) return dayOf(iso[1], iso[2], iso[3])
  const points = /^(\d{1,2})\.\s?(\d{1,2})\.\s?(\d{4})$/.exec(trimmed)
  if (points) return dayOf(points[3], points[2], points[1])
  const strokes = strokesIn(trimmed)
  if (!strokes) return { ok: false, why: 'not-a-day' }
  if (order === undefined) return { ok: false, why: 'day-order-open' }
  const [first, second, year] = strokes
  return order === 'day-first' ? dayOf(year, second, first) : dayOf(year, first, second)
}

/** The order in which dates with strokes are written, from one that allows only one; undefined where all allow both. */
export function dayOrderOf(cells: Iterable<string>): DayOrder | undefined {
  for (const text of cells) {
    const strokes = strokesIn(text.trim())
    if (!strokes) continue
    if (Number(strokes[0]) > 12) return 'day-first'
    if (Number(strokes[1]) > 12) return 'month-first'
  }
  return undefined
}

function strokesIn(text: string): readonly [string, string, string] | undefined {
  const [, first, second, year] = /^(\d{1,2})[/-](\d{1,2})[/-](\d{4})$/.exec(text) ?? []
  return first === undefined || second === undefined || year === undefined ? undefined : [first, second, year]
}

function dayOf(year = '', month = '', day = ''): TableDay {
  const text = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`
  const time = new Date(`${text}T00:00:00Z`)
  const isDay = !Number.isNaN(time.getTime()) && time.toISOString().startsWith(text)
  return isDay ? { ok: true, day: text } : { ok: false, why: 'not-a-day' }
}
