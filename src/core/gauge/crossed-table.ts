import type { CrossedStudy } from '../measured'

/** Readings of several people on several parts, as often by each on each, µm. */
export interface CrossedTable {
  readonly people: readonly string[]
  readonly parts: readonly string[]
  readonly trials: number
  /** By person, part and trial. */
  readonly valuesUm: readonly (readonly (readonly number[])[])[]
}

/** Why a study cannot be worked out. */
export type CrossedRefusal =
  | { readonly why: 'no-readings' | 'one-part' | 'one-trial' }
  | { readonly why: 'too-many'; readonly readings: number; readonly most: number }
  /** A person's readings of a part are more or fewer than those of most others. */
  | {
      readonly why: 'uneven'
      readonly person: string
      readonly part: string
      readonly found: number
      readonly usual: number
      /** How many more cells are uneven. */
      readonly others: number
    }

/** The intervals need distributions that are computed up to so many degrees of freedom. */
const mostReadings = 500

/** The readings of a study as a full table, people and parts in the order of their first reading; or what is wrong. */
export function crossedTable({ readings }: CrossedStudy): CrossedTable | CrossedRefusal {
  const people = [...new Set(readings.map(({ person }) => person))]
  const parts = [...new Set(readings.map(({ part }) => part))]
  const valuesUm = people.map((person) =>
    parts.map((part) =>
      readings
        .filter((reading) => reading.person === person && reading.part === part)
        .flatMap(({ dialUm, sizesMm }) => dialUm ?? (sizesMm ?? []).map((mm) => mm * 1000)),
    ),
  )
  const counts = valuesUm.flat().map((values) => values.length)
  const count = counts.reduce((sum, each) => sum + each, 0)
  if (count === 0) return { why: 'no-readings' }
  const usual = mostUsual(counts)
  const uneven = people.flatMap((person, i) =>
    parts.flatMap((part, j) => {
      const found = valuesUm[i]?.[j]?.length ?? 0
      return found === usual ? [] : [{ person, part, found }]
    }),
  )
  const [first] = uneven
  if (first) return { why: 'uneven', ...first, usual, others: uneven.length - 1 }
  if (parts.length < 2) return { why: 'one-part' }
  if (usual < 2) return { why: 'one-trial' }
  if (count > mostReadings) return { why: 'too-many', readings: count, most: mostReadings }
  return { people, parts, trials: usual, valuesUm }
}

/** The count that most cells have; of two that are as usual, the larger. */
function mostUsual(counts: readonly number[]): number {
  const times = new Map<number, number>()
  for (const count of counts) times.set(count, (times.get(count) ?? 0) + 1)
  return [...times].reduce((best, each) =>
    each[1] > best[1] || (each[1] === best[1] && each[0] > best[0]) ? each : best,
  )[0]
}
