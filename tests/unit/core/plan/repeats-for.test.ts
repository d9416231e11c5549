import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { conditionsOf } from '../../../../src/core/conditions-of'
import type { GaugeKind, Measured } from '../../../../src/core/measured'
import { planQuestions } from '../../../../src/core/plan/plan-axes'
import { mostRepeats, type RepeatsRequest, repeatsFor } from '../../../../src/core/plan/repeats-for'
import { repeatabilityOf } from '../../../../src/core/uncertainty/station-contributions'
import { type Circumstances, findingOf, first, measuredBore } from '../measured-bore'

/** One station read so often, each time alike. */
function readOnce(repeats: number, given: Circumstances = {}): Measured {
  const cell = Array.from({ length: repeats }, () => 80)
  return measuredBore({ levelsMm: [50], axesDegrees: [0], rows: [[cell]] }, given)
}

function request(given: Circumstances, rest: Partial<RepeatsRequest>): RepeatsRequest {
  const measured = readOnce(1, given)
  const bore = first(measured.bores)
  const conditions = conditionsOf(measured, bore, first(bore.surveys))
  return {
    question: 'size',
    conditions,
    diameterMm: 80,
    repeatability: repeatabilityOf(conditions.gauge, 'survey', []),
    axes: 2,
    wantedMm: 0.005,
    ...rest,
  }
}

/** A gauge whose only doubts are repeats of known scatter and, where given, a dial. */
function scatterOnly(repeatabilityUm: number, scaleUm = 0): Circumstances {
  return {
    gauge: {
      kind: 'dial-0.001-ring',
      stepUm: 0.001,
      repeatabilityUm,
      repeatabilityDegreesOfFreedom: 1_000_000,
      settingUm: 0,
      scaleUm,
    },
    setUp: { entry: 'direct' },
    standard: { kind: 'ring', doubtUm: 0, expansionPerK: 0, expansionDoubtPerK: 0 },
    bore: { wall: { kind: 'grey-iron', expansionPerK: 0, expansionDoubtPerK: 0 } },
  }
}

describe('the readings that a wanted doubt takes', () => {
  it('grow with its inverse square: 1.96·4 µm/√n is 3 µm or less from n = 7 on', () => {
    const answer = repeatsFor(request(scatterOnly(4), { wantedMm: 0.003 }))
    expect(answer).toMatchObject({ reached: true, repeats: 7 })
    expect(answer.onceMm).toBeCloseTo(0.00784, 5)
  })

  it('are twice as many for a difference of two diameters, 14, and half of those for level means of two axes', () => {
    const repeats = (rest: Partial<RepeatsRequest>) => {
      const answer = repeatsFor(request(scatterOnly(4), { wantedMm: 0.003, ...rest }))
      return answer.repeats
    }
    expect(repeats({ question: 'out-of-round' })).toBe(14)
    expect(repeats({ question: 'along-depth', axes: 2 })).toBe(7)
    // (1.96·4/3)²·(1 + 1/2) is 10.2: own arithmetic.
    expect(repeats({ question: 'wear', axes: 2 })).toBe(11)
  })

  it('are more than anyone takes beyond twenty: then the number stands beside what would help', () => {
    const answer = repeatsFor(request(scatterOnly(4), { wantedMm: 0.001 }))
    // (1.96·4)² is 61.5.
    expect(answer).toMatchObject({ reached: false, repeats: 62 })
  })

  it('do not reach what a dial of 2 µm leaves, 3.92 µm, however many there are', () => {
    const answer = repeatsFor(request(scatterOnly(4, 2), { wantedMm: 0.0039 }))
    expect(answer).toMatchObject({ reached: false, remedies: [] })
    expect(answer).not.toHaveProperty('repeats')
    expect(answer.reached ? undefined : answer.leastMm).toBeCloseTo(0.00392, 5)
  })

  it('are given for what would be done first: a ring, or a finer gauge', () => {
    const byMicrometer = repeatsFor(request({}, { wantedMm: 0.004 }))
    expect(byMicrometer.reached ? [] : byMicrometer.remedies.map(({ kind }) => kind)).toContain('set-by-ring')
    const coarse: Circumstances = { gauge: { kind: 'dial-0.01-simple' } }
    const answer = repeatsFor(request(coarse, { question: 'out-of-round', wantedMm: 0.005 }))
    const remedies = answer.reached ? [] : answer.remedies
    expect(remedies.map(({ kind }) => kind)).toEqual(['finer-gauge'])
    expect(remedies[0]?.repeats).toBeGreaterThan(0)
  })

  it('are those with which inspect gives no more than the wanted doubt, and one fewer gives more (seed 56)', () => {
    const kinds: readonly GaugeKind[] = ['dial-0.001-ring', 'dial-0.01', 'dial-0.01-simple', 'air-plug']
    let several = 0
    fc.assert(
      fc.property(
        fc.constantFrom(...kinds),
        fc.double({ min: 0.5, max: 1, noNaN: true }),
        fc.double({ min: 1, max: 12, noNaN: true }),
        (kind, share, repeatabilityUm) => {
          const given = { gauge: { kind, repeatabilityUm } }
          const wantedMm = share * repeatsFor(request(given, { wantedMm: 1 })).onceMm
          const answer = repeatsFor(request(given, { wantedMm }))
          if (!answer.reached) return
          // Up to eight readings the survey's own scatter, here none, does not take the place of the gauge's.
          if (answer.repeats > 8) return
          const doubtFrom = (repeats: number) =>
            first(findingOf(readOnce(repeats, given)).stations).expandedMm
          expect(doubtFrom(answer.repeats)).toBeCloseTo(answer.expandedMm, 12)
          expect(answer.expandedMm).toBeLessThanOrEqual(wantedMm)
          if (answer.repeats === 1) return
          several++
          expect(doubtFrom(answer.repeats - 1)).toBeGreaterThan(wantedMm)
        },
      ),
      { seed: 56, numRuns: 300 },
    )
    expect(several).toBeGreaterThan(20)
  })

  it('are never given where even countless readings would not do, for any question (seed 57)', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...planQuestions),
        fc.integer({ min: 1, max: 6 }),
        fc.double({ min: 0.0001, max: 0.03, noNaN: true }),
        (question, axes, wantedMm) => {
          const answer = repeatsFor(request({ gauge: { kind: 'dial-0.01' } }, { question, axes, wantedMm }))
          if (answer.reached) {
            expect(answer.expandedMm).toBeLessThanOrEqual(wantedMm)
            expect(answer.repeats).toBeLessThanOrEqual(mostRepeats)
          } else if (answer.repeats === undefined) expect(answer.leastMm).toBeGreaterThan(wantedMm)
          else expect(answer.repeats).toBeGreaterThan(mostRepeats)
        },
      ),
      { seed: 57, numRuns: 300 },
    )
  })

  it.each([0, -1, Number.NaN])('are not asked for a doubt of %d mm', (wantedMm) => {
    expect(() => repeatsFor(request({}, { wantedMm }))).toThrow(RangeError)
  })
})
