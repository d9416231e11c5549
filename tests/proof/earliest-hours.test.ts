import { describe, expect, it } from 'vitest'
import { earliestHours } from './earliest-hours'
import { growingCases } from './growing-cases'
import { report } from './record'

const surveys = 10_000
const percent = (share: number) => `${(100 * share).toFixed(1)} %`

describe('the earliest hours of 10,000 bores that grow in proportion to their hours', () => {
  it.each(Object.entries(growingCases).map(([name, c], i) => ({ name, c, seed: 20_260_301 + i })))(
    'come before the true ones in at least 93.5 %: $name (seed $seed)',
    ({ name, c, seed }) => {
      const found = earliestHours(c, surveys, seed)
      report(
        `Earliest hours: ${name}`,
        {
          bores: surveys,
          'earliest before the true hours': percent(found.before),
          'growth within its doubt': percent(found.uncertain),
          'hours left in truth': found.trueAhead.toFixed(0),
          'hours left at the earliest, mean': found.namedAhead.toFixed(0),
        },
        seed,
      )
      expect(found.before).toBeGreaterThanOrEqual(0.935)
    },
  )
})
