import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Bore } from '../../../../src/core/measured'
import { clearAxes } from '../../../../src/core/plan/clear-axes'
import { measuringPlan, type PlanRequest } from '../../../../src/core/plan/measuring-plan'
import { planQuestions } from '../../../../src/core/plan/plan-axes'
import { blockedBy } from '../../../../src/core/ports/blocked'
import { inventedPorts } from '../surface/invented-cylinder'
import { plannedBores, plannedGauges } from './planned-bores'

function known(request: Partial<PlanRequest> & Pick<PlanRequest, 'bore'>) {
  const plan = measuringPlan({ gauge: { kind: 'dial-0.01' }, diameterMm: 54, question: 'size', ...request })
  if (!plan.known) throw new Error(`no plan: ${plan.why}`)
  return plan
}

/** Depth and codes of the reasons of each level. */
function levelsOf(request: Parameters<typeof known>[0]) {
  return known(request).levels.map(({ depthMm, reasons }) => [depthMm, ...reasons.map(({ code }) => code)])
}

const liner = { lengthMm: 140, ringTravelMm: { from: 8, to: 132 }, ports: [], belts: [] }
const twoStroke = { lengthMm: 88, ports: inventedPorts, belts: [] }

function port(fromDegrees: number, toDegrees: number): Bore['ports'][number] {
  return {
    id: `${fromDegrees}`,
    name: `at ${fromDegrees}`,
    fromDepthMm: 40,
    toDepthMm: 100,
    fromDegrees,
    toDegrees,
  }
}

describe('the levels of a plan', () => {
  it('of a plain bore are one in each land, one at each end of ring travel and the middle', () => {
    expect(levelsOf({ bore: liner })).toEqual([
      [5, 'upper-land'],
      [12, 'top-of-travel'],
      [70, 'middle'],
      [128, 'bottom-of-travel'],
      [135, 'lower-land'],
    ])
  })

  it('for the form along the depth have the quarters as well, for a four-cornered form no lower land', () => {
    expect(levelsOf({ bore: liner, question: 'along-depth' }).map(([depthMm]) => depthMm)).toEqual([
      5, 12, 41, 70, 99, 128, 135,
    ])
    expect(levelsOf({ bore: liner, question: 'bolts' }).map(([depthMm]) => depthMm)).toEqual([
      5, 12, 41, 70, 128,
    ])
  })

  it('of a bore with ports all round its middle are near its ends, above, beside and below the ports', () => {
    const { barred } = known({ bore: twoStroke })
    expect(barred).toHaveLength(1)
    expect(barred[0]).toMatchObject({ fromMm: 38.5, toMm: 58.5, holdsMiddle: true })
    expect(barred[0]?.names).toHaveLength(6)
    expect(levelsOf({ bore: twoStroke })).toEqual([
      [18, 'near-top'],
      [24, 'above-ports'],
      [32, 'beside-ports'],
      [60, 'below-ports'],
      [70, 'near-bottom'],
    ])
    expect(known({ bore: twoStroke }).levels.map(({ axesDegrees }) => axesDegrees)).toEqual([
      [0, 90],
      [0, 90],
      [90],
      [0, 90],
      [0, 90],
    ])
  })

  it('are about 20 mm from each end of a longer bore whose middle is barred', () => {
    const belt = { id: 'b', name: 'ports', fromDepthMm: 90, toDepthMm: 110 }
    const bore = { lengthMm: 200, ringTravelMm: { from: 10, to: 190 }, ports: [], belts: [belt] }
    const levels = levelsOf({ bore })
    expect(levels).toContainEqual([20, 'near-top'])
    expect(levels).toContainEqual([180, 'near-bottom'])
  })

  it('leave out a land too short for a contact, and say how high it is', () => {
    const bore = { ...liner, ringTravelMm: { from: 5, to: 132 } }
    expect(levelsOf({ bore })[0]).toEqual([9, 'top-of-travel'])
    expect(known({ bore }).shortLands).toEqual([{ which: 'upper', heightMm: 5 }])
  })

  it('that are read already stay and serve what they lie near to', () => {
    const standing = [4, 10, 40, 80, 125].map((depthMm) => ({ depthMm, code: 'read' as const }))
    expect(levelsOf({ bore: liner, standing })).toEqual([
      [4, 'read', 'upper-land'],
      [10, 'read', 'top-of-travel'],
      [40, 'read'],
      [80, 'read', 'middle'],
      [125, 'read', 'bottom-of-travel'],
      [135, 'lower-land'],
    ])
  })
})

describe('the axes of a plan', () => {
  it.each([
    ['size', [0, 90]],
    ['out-of-round', [0, 60, 120]],
    ['bolts', [0, 30, 60, 90, 120, 150]],
    ['along-depth', [0, 90]],
    ['wear', [0, 90]],
  ] as const)('for %s are %j', (question, axes) => {
    expect(known({ bore: liner, question }).axesDegrees).toEqual(axes)
  })

  it('hold those that are given, at equal angles where they can', () => {
    const axesFor = (givenAxesDegrees: number[]) =>
      known({ bore: liner, question: 'out-of-round', givenAxesDegrees }).axesDegrees
    expect(axesFor([0, 90])).toEqual([0, 45, 90, 135])
    expect(axesFor([20])).toEqual([20, 80, 140])
    expect(axesFor([0, 7])).toEqual([0, 7, 60, 120])
  })

  it('are turned from ports as little as completes the most levels, and not where axes are given', () => {
    const bore = { ...liner, ports: [port(-10, 10), port(170, 190)] }
    // 3.5 mm on a radius of 27 mm is 7.43°: an axis is clear from 17.43° on.
    expect(known({ bore }).axes).toMatchObject({ turnedDegrees: 20, axesDegrees: [20, 110] })
    expect(known({ bore, givenAxesDegrees: [0] }).axes).toMatchObject({ turnedDegrees: 0 })
  })

  it('have one of its own for a level that the others do not reach', () => {
    const crossed = [port(-30, 30), port(60, 120), port(150, 210), port(240, 300)]
    const plan = known({ bore: { ...liner, ports: crossed }, givenAxesDegrees: [0, 90] })
    expect(plan.axesDegrees).toEqual([0, 45, 90])
    expect(plan.levels.find(({ depthMm }) => depthMm === 70)?.axesDegrees).toEqual([45])
  })

  it('of three contacts is one', () => {
    expect(known({ bore: liner, gauge: { kind: 'three-contact-micrometer' } }).axesDegrees).toEqual([0])
  })
})

describe('a plan that cannot be made', () => {
  const why = (request: Partial<PlanRequest>) =>
    measuringPlan({ bore: liner, gauge: { kind: 'dial-0.01' }, diameterMm: 54, question: 'size', ...request })

  it('says why', () => {
    const belt = { id: 'b', name: 'sleeve', fromDepthMm: 0, toDepthMm: 140 }
    const three = { kind: 'three-contact-micrometer' } as const
    expect(why({ bore: { ports: [], belts: [] } })).toEqual({ known: false, why: 'no-length' })
    expect(why({ bore: { ...liner, lengthMm: 6 } })).toEqual({ known: false, why: 'too-short' })
    expect(why({ bore: { ...liner, belts: [belt] } })).toEqual({ known: false, why: 'all-barred' })
    expect(why({ gauge: three, question: 'bolts' })).toEqual({
      known: false,
      why: 'three-contacts-see-no-oval',
    })
    expect(why({ gauge: { kind: 'radial-probe' } })).toEqual({ known: false, why: 'radial-probe' })
    expect(() => why({ diameterMm: 0 })).toThrow(RangeError)
  })
})

describe('any plan', () => {
  const requests = fc
    .record({
      bore: plannedBores,
      gauge: plannedGauges,
      question: fc.constantFrom(...planQuestions),
      standing: fc.array(
        fc.record({
          depthMm: fc.double({ min: 0, max: 400, noNaN: true }),
          code: fc.constantFrom('read' as const, 'read-before' as const),
        }),
        { maxLength: 3 },
      ),
      givenAxesDegrees: fc.uniqueArray(fc.integer({ min: 0, max: 179 }), { maxLength: 3 }),
    })
    .map((request) => ({ ...request, diameterMm: request.bore.diameterMm }))

  it('proposes no station that is blocked, and no level without an axis (seed 53)', () => {
    let stations = 0
    fc.assert(
      fc.property(requests, (request) => {
        const plan = measuringPlan(request)
        if (!plan.known) return
        for (const { depthMm, axesDegrees } of plan.levels) {
          expect(axesDegrees.length).toBeGreaterThan(0)
          for (const axisDegrees of axesDegrees) {
            stations++
            expect(
              blockedBy(request.bore, request.gauge, { depthMm, axisDegrees }, request.diameterMm),
            ).toEqual([])
          }
        }
      }),
      { seed: 53, numRuns: 1000 },
    )
    expect(stations).toBeGreaterThan(4000)
  })

  it('stays in the bore and below half a turn, with levels in order and each once (seed 54)', () => {
    fc.assert(
      fc.property(requests, (request) => {
        const plan = measuringPlan(request)
        if (!plan.known) return
        const depths = plan.levels.map(({ depthMm }) => depthMm)
        expect(depths).toEqual([...new Set(depths)].sort((a, b) => a - b))
        for (const depthMm of depths) {
          expect(depthMm).toBeGreaterThan(0)
          expect(depthMm).toBeLessThan(request.bore.lengthMm)
        }
        for (const axis of plan.axesDegrees) {
          expect(axis).toBeGreaterThanOrEqual(0)
          expect(axis).toBeLessThan(180)
        }
      }),
      { seed: 54, numRuns: 500 },
    )
  })

  it('calls barred only what no axis reaches (seed 55)', () => {
    fc.assert(
      fc.property(requests, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (request, share) => {
        const plan = measuringPlan(request)
        if (!plan.known) return
        for (const { fromMm, toMm } of plan.barred) {
          const depthMm = fromMm + share * (toMm - fromMm)
          expect(clearAxes(request.bore, request.gauge, depthMm, request.diameterMm)).toEqual([])
        }
      }),
      { seed: 55, numRuns: 300 },
    )
  })
})
