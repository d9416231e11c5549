import { describe, expect, it } from 'vitest'
import { type Evidence, evidenceOf } from '../../../../src/core/decision/evidence'
import { type Tipping, tippingOf } from '../../../../src/core/decision/tipping'
import { tryOut, type WhatIf } from '../../../../src/core/decision/what-if'
import {
  type Slider,
  type SliderName,
  slidersOf,
  whatIfOf,
} from '../../../../src/core/decision/what-if-sliders'
import { inspect } from '../../../../src/core/inspect'
import type { Measured, Spec } from '../../../../src/core/measured'
import { type Circumstances, first, measuredBore, onlyScaleDoubt, type ReadingTable } from '../measured-bore'

/** One station with u = 2 µm, ν infinite: proven inside up to 1.645·u (normal table) below its limit, over from as much above it. */
const spec: Spec = { newMinMm: 80, newMaxMm: 80.02, wearLimitMm: 80.1 }
const one = (mm: number): ReadingTable => ({ levelsMm: [10], axesDegrees: [0], rows: [[[mm, mm, mm]]] })
const proof = 0.00329

function evidenceFor(measured: Measured): Evidence {
  const findings = inspect(measured)
  return evidenceOf(measured, findings, first(findings.bores))
}

function single(mm: number, given: Circumstances = {}): Evidence {
  return evidenceFor(measuredBore(one(mm), { ...onlyScaleDoubt(2), spec, ...given }))
}

const outcomeOf = (evidence: Evidence, whatIf: WhatIf) => {
  const { decision } = tryOut(evidence, whatIf)
  return decision.known ? decision.outcome : 'undecided'
}

function slider(evidence: Evidence, name: SliderName): Slider {
  return first(slidersOf(evidence).filter((each) => each.name === name))
}

function tipping(evidence: Evidence, name: SliderName, whatIf: WhatIf = {}): Tipping {
  const moved = slider(evidence, name)
  const steps = tippingOf(evidence, whatIf, moved, moved.value)
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value
}

/** Run at two counts of hours, so that it grows by 10 µm in 100 h. */
function grown(): Measured {
  const measured = measuredBore(one(80.06), { ...onlyScaleDoubt(0.2), spec })
  const [bore] = measured.bores
  const [survey] = bore?.surveys ?? []
  const [reading] = survey?.readings ?? []
  if (!bore || !survey || !reading) throw new Error('no reading')
  const before = {
    ...survey,
    id: 'before',
    hoursRun: 500,
    readings: [{ ...reading, sizesMm: [80.05, 80.05] }],
  }
  return { ...measured, bores: [{ ...bore, surveys: [before, { ...survey, hoursRun: 600 }] }] }
}

describe('trying out', () => {
  it('a reading, a limit or a temperature leads where the same job would lead, and leaves the job as it is', () => {
    const evidence = single(80.05)
    const before = structuredClone(evidence.measured)
    const reading = { depthMm: 10, axisDegrees: 0, diameterMm: 80.12 }
    expect(outcomeOf(evidence, {})).toBe('run-on')
    expect(outcomeOf(evidence, { reading })).toBe('replace-or-sleeve')
    expect(outcomeOf(evidence, { limitMm: 80.03 })).toBe('replace-or-sleeve')
    expect(outcomeOf(evidence, { reading, limitMm: 80.2 })).toBe('run-on')
    expect(evidence.measured).toEqual(before)
  })

  it('moves a dial reading by as much, whichever way its needle goes', () => {
    for (const largerIs of ['clockwise', 'anticlockwise'] as const) {
      const table: ReadingTable = { levelsMm: [10], axesDegrees: [0], rows: [[[50, 50]]] }
      const evidence = evidenceFor(
        measuredBore(table, { ...onlyScaleDoubt(2), spec, setUp: { entry: 'deviation', largerIs } }),
      )
      const tried = tryOut(evidence, { reading: { depthMm: 10, axisDegrees: 0, diameterMm: 80.07 } })
      expect(first(tried.evidence.finding.stations).diameterMm).toBeCloseTo(80.07, 6)
    }
  })

  it('moves the limits of the oversize that the bore has', () => {
    const evidence = single(80.55, { bore: { ...onlyScaleDoubt(2).bore, oversizeMm: 0.5 } })
    expect(slider(evidence, 'limit').value).toBeCloseTo(80.6, 9)
    expect(outcomeOf(evidence, { limitMm: 80.53 })).toBe('replace-or-sleeve')
    expect(outcomeOf(evidence, { limitMm: 80.56 })).toBe('run-on')
  })

  it('a warmer bore is a smaller one at 20 °C: 80 mm of iron by 0.84 µm for each kelvin (10.5 per million, handbook)', () => {
    const bore = { wall: { kind: 'grey-iron', expansionPerK: 10.5e-6, expansionDoubtPerK: 0 } } as const
    const evidence = single(80.05, { bore })
    const warm = tryOut(evidence, { boreTemperatureC: 30 }).evidence
    expect(first(warm.finding.stations).diameterMm).toBeCloseTo(80.05 - 0.0084, 4)
  })

  it('hours takes it along its outlook: inside until the earliest, over from the latest on', () => {
    const evidence = evidenceFor(grown())
    const { outlook } = evidence.growth
    if (!outlook?.known || outlook.earliestHours === undefined || outlook.latestHours === undefined) {
      throw new Error('no outlook')
    }
    const { earliestHours, latestHours, lastHours } = outlook
    // 40 µm are left at 10 µm in 100 h: about 400 h on.
    expect(earliestHours - lastHours).toBeGreaterThan(350)
    expect(latestHours - lastHours).toBeLessThan(450)
    expect(outcomeOf(evidence, { hours: earliestHours - lastHours - 1 })).toBe('run-on')
    expect(outcomeOf(evidence, { hours: earliestHours - lastHours + 1 })).toBe('measure-again-better')
    expect(outcomeOf(evidence, { hours: latestHours - lastHours + 1 })).toBe('replace-or-sleeve')
  })
})

describe('what can be tried out', () => {
  it('is what there is: hours need an outlook, a temperature a recorded one, a piston one at hand', () => {
    expect(slidersOf(single(80.05)).map(({ name }) => name)).toEqual(['temperature', 'limit', 'reading'])
    expect(slidersOf(evidenceFor(grown())).map(({ name }) => name)).toContain('hours')
    const bare = single(80.05, { spec: {}, setUp: {} })
    expect(slidersOf(bare).map(({ name }) => name)).toEqual(['temperature', 'reading'])
  })

  it('reaches past where the size and its limit meet', () => {
    const evidence = single(80.05)
    for (const name of ['limit', 'reading'] as const) {
      const { from, to } = slider(evidence, name)
      expect(from).toBeLessThan(80.05)
      expect(to).toBeGreaterThan(80.1)
    }
  })

  it('is the reading of the station that is asked for', () => {
    const two = { levelsMm: [10, 50], axesDegrees: [0], rows: [[80.05], [80.02]] }
    const evidence = evidenceFor(measuredBore(two, { ...onlyScaleDoubt(2), spec }))
    const at = { depthMm: 50, axisDegrees: 0 }
    expect(slidersOf(evidence, at).find(({ name }) => name === 'reading')).toMatchObject({
      value: 80.02,
      place: at,
    })
  })
})

describe('where a decision tips over', () => {
  it('is the first micron past what the limit leaves to the doubt, on the side where it does (1.645·u)', () => {
    const evidence = single(80.05)
    const { below, above } = tipping(evidence, 'reading')
    // Under the smallest new size by as much it is a question.
    expect(below?.value).toBeCloseTo(79.996, 6)
    expect(above?.outcome).toBe('measure-again-better')
    expect(above?.value).toBeGreaterThan(80.1 - proof)
    expect((above?.value ?? 0) - 0.001).toBeLessThanOrEqual(80.1 - proof)
  })

  it('is told of both sides, each with what it tips to', () => {
    const { below, above } = tipping(single(80.1), 'limit')
    expect(below?.outcome).toBe('replace-or-sleeve')
    expect(below?.value).toBeCloseTo(80.1 - 0.004, 6)
    expect(above?.outcome).toBe('run-on')
    expect(above?.value).toBeCloseTo(80.1 + 0.004, 6)
  })

  it('is none where nothing in reach changes it', () => {
    const evidence = single(80.05)
    expect(tipping(evidence, 'temperature')).toEqual({})
  })

  it('keeps what else is tried out', () => {
    const evidence = single(80.05)
    const { above } = tipping(evidence, 'reading', { limitMm: 80.08 })
    expect(above?.value).toBeCloseTo(80.077, 6)
  })

  it('holds when it is tried out: another outcome there, the same one step before (each slider)', () => {
    const evidence = evidenceFor(grown())
    let told = 0
    for (const each of slidersOf(evidence)) {
      const found = tipping(evidence, each.name)
      for (const tip of [found.below, found.above]) {
        if (!tip) continue
        told++
        const back = tip.value > each.value ? -each.step : each.step
        expect(outcomeOf(evidence, whatIfOf(each, tip.value))).toBe(tip.outcome)
        expect(outcomeOf(evidence, whatIfOf(each, tip.value + back))).toBe('run-on')
      }
    }
    expect(told).toBeGreaterThanOrEqual(3)
  })
})
