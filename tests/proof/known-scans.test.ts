import { describe, expect, it } from 'vitest'
import { fitKnownScans, knownBores } from './known-scans'
import { report } from './record'

const scans = 400
const percent = (share: number) => `${(100 * share).toFixed(1)} %`
const um = (value: number) => `${value.toFixed(2)} µm`

describe('400 simulated scans of each bore, 100 of the dense ones, whose axis and form are known', () => {
  it.each(Object.entries(knownBores).map(([name, bore], i) => ({ name, bore, seed: 20_260_301 + i })))(
    'have the axis and the zones that the fits state: $name (seed $seed)',
    ({ name, bore, seed }) => {
      const found = fitKnownScans(bore, bore.angles === 360 ? scans / 4 : scans, seed)
      report(
        `Fitted scans: ${name}`,
        {
          scans: found.scans,
          'axis at the worse end, root mean square': um(found.axisRmsUm),
          'axis at the worse end, worst': um(found.axisWorstUm),
          'U of the axis holds the truth': percent(found.axisHeld),
          ...(bore.smeared
            ? {}
            : {
                'roundness by least squares within its interval': percent(found.roundnessHeld),
                'roundness by minimum zone within its interval': percent(found.zoneHeld),
                'minimum zone stated over true, mean': um(found.zoneOverUm),
                'cylindricity by minimum zone within its interval': percent(found.cylindricityHeld),
                'cylindricity stated over true, mean': um(found.cylindricityOverUm),
              }),
        },
        seed,
      )
      expect(found.axisRmsUm).toBeLessThanOrEqual(0.2)
      expect(found.axisHeld).toBeGreaterThanOrEqual(bore.smeared ? 0.9 : 0.935)
      if (bore.smeared) return
      expect(found.roundnessHeld).toBeGreaterThanOrEqual(0.935)
      expect(found.zoneHeld).toBeGreaterThanOrEqual(0.935)
      expect(found.cylindricityHeld).toBeGreaterThanOrEqual(0.935)
    },
  )
})
