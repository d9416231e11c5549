import { describe, expect, it } from 'vitest'
import { evidenceOf } from '../../../../src/core/decision/evidence'
import { type Sureness, surenessOf, usualSureness } from '../../../../src/core/decision/sureness'
import { inspect } from '../../../../src/core/inspect'
import type { Measured, Spec } from '../../../../src/core/measured'
import { type Circumstances, first, measuredBore, onlyScaleDoubt, type ReadingTable } from '../measured-bore'

const trials = 20_000
/** Three binomial standard deviations of a share at 20,000 trials. */
const within = (share: number) => 3 * Math.sqrt((share * (1 - share)) / trials)

function surely(measured: Measured, seed = 5): Sureness {
  const findings = inspect(measured)
  const steps = surenessOf(evidenceOf(measured, findings, first(findings.bores)), trials, seed)
  for (let step = steps.next(); ; step = steps.next()) {
    if (!step.done) continue
    if (!step.value) throw new Error('not reckoned')
    return step.value
  }
}

const shareOf = ({ shares }: Sureness, outcome: string) =>
  shares.find((one) => one.outcome === outcome)?.share ?? 0

const one: ReadingTable = { levelsMm: [10], axesDegrees: [0], rows: [[80]] }
const two: ReadingTable = { levelsMm: [10], axesDegrees: [0, 90], rows: [[80, 80]] }
/** One standard uncertainty of 2 µm below the limit. Φ(1) = 0.8413 (normal table). */
const spec: Spec = { wearLimitMm: 80.002 }
const phi1 = 0.8413

/** The same doubt, in the setting and so of all stations alike. */
const onlySettingDoubt: Circumstances = {
  ...onlyScaleDoubt(0),
  gauge: { ...onlyScaleDoubt(0).gauge, settingUm: 2 },
}

describe('how sure a decision is (20,000 trials, seed 5)', () => {
  it('is the share of true sizes that lead to an outcome: Φ(1) for a size one u below its limit', () => {
    const sureness = surely(measuredBore(one, { ...onlyScaleDoubt(2), spec }))
    expect(Math.abs(shareOf(sureness, 'run-on') - phi1)).toBeLessThan(within(phi1))
    expect(sureness.shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12)
  })

  it('is no higher for more stations with doubts of their own: Φ(1)² for two', () => {
    const sureness = surely(measuredBore(two, { ...onlyScaleDoubt(2), spec }))
    expect(Math.abs(shareOf(sureness, 'run-on') - phi1 ** 2)).toBeLessThan(within(phi1 ** 2))
  })

  it('draws what two stations share once for both: Φ(1) for two with one setting', () => {
    const sureness = surely(measuredBore(two, { ...onlySettingDoubt, spec }))
    expect(Math.abs(shareOf(sureness, 'run-on') - phi1)).toBeLessThan(within(phi1))
  })

  it('holds the true sizes against the limit as it stands: a guard band would make it less', () => {
    const proven = surely(measuredBore(one, { ...onlyScaleDoubt(2), spec: { wearLimitMm: 80.004 } }))
    expect(Math.abs(proven.same - 0.9772)).toBeLessThan(within(0.9772))
  })

  it('leaves an out-of-round to what the stations do not share: the difference of two has √2·u', () => {
    const level: ReadingTable = { levelsMm: [10], axesDegrees: [0, 90], rows: [[80.018, 80]] }
    const given = { spec: { wearLimitMm: 81, ovalityLimitMm: 0.018 + 0.002 * Math.SQRT2 } }
    const own = surely(measuredBore(level, { ...onlyScaleDoubt(2), ...given }))
    expect(Math.abs(shareOf(own, 'run-on') - phi1)).toBeLessThan(within(phi1))
    const shared = surely(measuredBore(level, { ...onlySettingDoubt, ...given }))
    expect(shareOf(shared, 'run-on')).toBe(1)
  })

  it('draws a micrometer that set the gauge and measured the piston once for both', () => {
    const pistons = [
      {
        id: 'p',
        state: 'fitted',
        readMm: 79.95,
        standardId: 'standard',
        readingDoubtUm: 0,
        temperatureC: 20,
        micrometerTemperatureC: 20,
        heightMm: 5,
        expansionPerK: 0,
        expansionDoubtPerK: 0,
      },
    ] as const
    const given: Circumstances = {
      ...onlyScaleDoubt(0),
      standard: { ...onlyScaleDoubt(0).standard, kind: 'micrometer', errorUm: 0, doubtUm: 2 },
      spec: { wearLimitMm: 81, clearanceMinMm: 0.01, clearanceLimitMm: 0.0501 },
    }
    const sureness = surely({ ...measuredBore(one, given), pistons })
    expect(shareOf(sureness, 'run-on')).toBe(1)
  })

  it('is the same for the same seed, and tells how far it is', () => {
    const measured = measuredBore(two, { ...onlyScaleDoubt(2), spec })
    expect(surely(measured, 3)).toEqual(surely(measured, 3))
    const findings = inspect(measured)
    const steps = surenessOf(evidenceOf(measured, findings, first(findings.bores)), 200, 1)
    expect([...steps]).toEqual([50, 100, 150, 200])
  })

  it('is not reckoned of readings that may be slips, nor without any', () => {
    const asked = (measured: Measured) => {
      const findings = inspect(measured)
      return usualSureness(evidenceOf(measured, findings, first(findings.bores)))
    }
    const measured = measuredBore(two, { ...onlyScaleDoubt(2), spec })
    const [bore] = measured.bores
    const [survey] = bore?.surveys ?? []
    if (!bore || !survey) throw new Error('no survey')
    const changed = { ...measured, bores: [{ ...bore, surveys: [{ ...survey, contactChanged: true }] }] }
    expect(asked(measured)?.shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12)
    expect(asked(changed)).toBeUndefined()
    expect(asked({ ...measured, spec: {} })).toBeUndefined()
  })

  it('needs a whole number of trials', () => {
    const measured = measuredBore(two, { ...onlyScaleDoubt(2), spec })
    const findings = inspect(measured)
    const evidence = evidenceOf(measured, findings, first(findings.bores))
    expect(() => surenessOf(evidence, 0.5, 1).next()).toThrow(/trials/)
  })
})
