import { describe, expect, it } from 'vitest'
import type { Bore } from '../../../src/core/measured'
import { measuringPlan, type PlanRequest } from '../../../src/core/plan/measuring-plan'
import { bandTexts, planAxesText, planNotes, planRows, repeatsTexts } from '../../../src/words/plan'
import { inventedPorts } from '../core/surface/invented-cylinder'

const twoStroke = { lengthMm: 88, ports: inventedPorts, belts: [] as Bore['belts'] }

function planned(rest: Partial<PlanRequest> = {}) {
  const plan = measuringPlan({
    bore: twoStroke,
    gauge: { kind: 'dial-0.01' },
    diameterMm: 54,
    question: 'out-of-round',
    ...rest,
  })
  if (!plan.known) throw new Error(plan.why)
  return plan
}

describe('a plan in words', () => {
  it('gives each level its axes and its reasons', () => {
    expect(planRows(planned()).map(({ depth, axes, why }) => `${depth} | ${axes} | ${why}`)).toEqual([
      '18 mm | all | near the upper end',
      '24 mm | all | just above exhaust, where the wall is still whole',
      '32 mm | only 60° and 120° | beside exhaust, what can be reached there; too few for an oval',
      '60 mm | all | just below exhaust and 5 more, where the wall is whole again',
      '70 mm | all | near the lower end',
    ])
  })

  it('says that the middle of a bore with ports all round cannot be measured, and what is missing', () => {
    expect(planNotes(planned())).toEqual([
      'The middle of this bore cannot be measured: between 38.5 mm and 58.5 mm no axis has metal under every contact (exhaust and 5 more). The levels above and below say nothing about it.',
      'Ring travel is not recorded, so no level can be put into a land: enter it in the sentence about the bore.',
    ])
  })

  it('says why so many axes, what keeps more, and how far they are turned', () => {
    expect(planAxesText(planned())).toMatch(/^Axes 0°, 60° and 120°: three are the fewest/)
    expect(planAxesText(planned({ givenAxesDegrees: [0, 90] }))).toMatch(
      /^Axes 0°, 45°, 90° and 135°: .* So many keep those that the manual names or that are read already\.$/,
    )
    const port = { id: 'p', name: 'exhaust', fromDepthMm: 20, toDepthMm: 60, fromDegrees: -10, toDegrees: 10 }
    const bore = { ...twoStroke, ports: [port] }
    expect(planAxesText(planned({ bore, question: 'size' }))).toMatch(/Turned by 20° from the front/)
    const gauge = { kind: 'three-contact-micrometer' } as const
    expect(planAxesText(planned({ gauge, question: 'size' }))).toMatch(/^Axis \d+°: three contacts/)
  })

  it('lists what can be measured with ranges rounded inwards', () => {
    expect(bandTexts(planned(), 'dial-0.01')).toEqual([
      '3.5 to 25.5 mm: every axis',
      '25.5 to 38.5 mm: 53° to 127°',
      '38.5 to 58.5 mm: no axis (exhaust and 5 more)',
      '58.5 to 84.5 mm: every axis',
    ])
  })
})

describe('the readings for a wanted doubt in words', () => {
  it('are a number with the doubt that it leaves', () => {
    expect(repeatsTexts({ reached: true, repeats: 1, expandedMm: 0.0048, onceMm: 0.0048 })).toEqual([
      'One reading at each station will do (± 4.8 µm).',
    ])
    expect(repeatsTexts({ reached: true, repeats: 3, expandedMm: 0.00481, onceMm: 0.006 })).toEqual([
      '3 readings at each station (± 4.9 µm; from one, ± 6 µm).',
    ])
  })

  it('say that no number suffices, and what would', () => {
    expect(
      repeatsTexts({
        reached: false,
        onceMm: 0.008,
        leastMm: 0.007,
        remedies: [
          { kind: 'set-by-ring', leastMm: 0.003, repeats: 2 },
          { kind: 'know-the-temperatures', leastMm: 0.006 },
        ],
      }),
    ).toEqual([
      'No number of readings reaches that here. What they do not shrink leaves ± 7 µm.',
      'Set by a ring: 2 readings would do.',
      'Temperatures known twice as well: ± 6 µm at best.',
    ])
    const [text, rest] = repeatsTexts({
      reached: false,
      onceMm: 0.008,
      leastMm: 0,
      repeats: 62,
      remedies: [],
    })
    expect(text).toBe(
      'That would take 62 readings at each station, more than anyone takes (from one, ± 8 µm).',
    )
    expect(rest).toBe('Nothing that is known of this gauge and setting would change that much.')
  })
})
