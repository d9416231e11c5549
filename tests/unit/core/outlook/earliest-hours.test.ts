import { describe, expect, it } from 'vitest'
import { earliestHours } from '../../../proof/earliest-hours'
import { growingCases } from '../../../proof/growing-cases'

const bores = 300
/** Four binomial standard deviations of a share of 5 %. */
const slack = 4 * Math.sqrt((0.05 * 0.95) / bores)

describe(`the earliest hours of ${bores} bores that grow as they did; the full count runs with the proof`, {
  timeout: 60_000,
}, () => {
  it.each([
    ['two surveys, one station', 41],
    ['four surveys, one station', 42],
    ['two surveys, growth within its doubt', 43],
  ])(
    'come before the true ones as often as they say, within four standard deviations: %s (seed %s)',
    (name, seed) => {
      const c = growingCases[name]
      if (!c) throw new Error(`no case ${name}`)
      const found = earliestHours(c, bores, seed)
      expect(found.before).toBeGreaterThanOrEqual(0.95 - slack)
      // And not by being of no use: a bound that is always now would pass too.
      expect(found.namedAhead).toBeGreaterThan(0.25 * Math.min(found.trueAhead, 5000))
    },
  )
})
