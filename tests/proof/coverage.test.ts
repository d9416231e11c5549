import { describe, expect, it } from 'vitest'
import { coverageOf } from './coverage'
import { report } from './record'
import { simulatedCases } from './simulated-cases'

const surveys = 10_000
const percent = (share: number) => `${(100 * share).toFixed(1)} %`

describe('10,000 simulated surveys from the stated budget', () => {
  it.each(Object.entries(simulatedCases).map(([name, c], i) => ({ name, c, seed: 20_260_101 + i })))(
    'hold the truth as often as they say: $name (seed $seed)',
    ({ name, c, seed }) => {
      const found = coverageOf(c, surveys, seed)
      const atLimit = !name.startsWith('an oval')
      report(
        `Coverage: ${name}`,
        {
          surveys,
          ...Object.fromEntries(Object.entries(found.linear).map(([q, share]) => [q, percent(share)])),
          ...Object.fromEntries(
            Object.entries(found.ranges).map(([q, share]) => [
              q,
              `${percent(share)}, + ${(found.halfWidthUm[q] ?? 0).toFixed(1)} µm`,
            ]),
          ),
          ...(atLimit
            ? {
                'one station proven above at the limit': percent(found.stationAbove),
                'the bore proven above at the limit': percent(found.boreAbove),
                'any station above by its own rule': percent(found.anyStationAbove),
              }
            : {}),
        },
        seed,
      )
      for (const [quantity, share] of Object.entries(found.linear)) {
        expect(share, quantity).toBeGreaterThanOrEqual(0.935)
        expect(share, quantity).toBeLessThanOrEqual(0.965)
      }
      for (const [quantity, share] of Object.entries(found.ranges)) {
        expect(share, quantity).toBeGreaterThanOrEqual(0.935)
      }
      if (!atLimit) return
      expect(found.stationAbove).toBeLessThanOrEqual(0.057)
      expect(found.boreAbove).toBeLessThanOrEqual(0.057)
    },
  )
})
