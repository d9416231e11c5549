import { describe, expect, it } from 'vitest'
import { blockDecisionFrom, blockDecisionOf } from '../../../../src/core/decision/block-decision'
import type { Decision } from '../../../../src/core/decision/decision'
import type { Outcome } from '../../../../src/core/decision/decision-rules'
import { ruleFor } from '../../../../src/core/decision/decision-rules'
import { inspect } from '../../../../src/core/inspect'
import { measuredBore } from '../measured-bore'

const facts = {
  surface: 'nothing-against',
  readings: 'sound',
  stations: 'all-read',
  size: 'inside',
  ovality: 'inside',
  taper: 'inside',
  plating: 'not-known',
  grounds: 'repeated',
  clearance: 'inside',
  otherPiston: 'none-listed',
  ringGap: 'not-judged',
  outlook: 'ahead',
  wall: 'other',
  honing: 'room',
  oversize: 'cleans-up',
} as const

function own(outcome: Outcome, more: { oversizeMm?: number; checkAtHours?: number } = {}): Decision {
  const rule = ruleFor(facts).id
  return { known: true, outcome, rule, facts, reasons: [], changes: [], hints: [], cautions: [], ...more }
}

const bores = (...decisions: Decision[]) =>
  decisions.map((decision, index) => ({ boreId: `${index + 1}`, decision }))

describe('an engine of several bores', () => {
  it('has all cylinders bored alike as soon as one of them asks for it, to the largest that is asked for', () => {
    const block = blockDecisionFrom(
      bores(
        own('run-on'),
        own('bore-oversize', { oversizeMm: 0.25 }),
        own('bore-oversize', { oversizeMm: 0.5 }),
        own('measure-again-better'),
      ),
      true,
    )
    expect(block).toMatchObject({
      outcome: 'bore-oversize',
      alike: true,
      oversizeMm: 0.5,
      boreIds: ['2', '3'],
    })
  })

  it('has only those bored that ask for it where the manual lets each have its own size', () => {
    const block = blockDecisionFrom(bores(own('run-on'), own('bore-oversize', { oversizeMm: 0.25 })), false)
    expect(block).toMatchObject({ outcome: 'bore-oversize', alike: false, boreIds: ['2'] })
    expect(block?.others).toEqual([{ outcome: 'run-on', boreIds: ['1'] }])
  })

  it('is held up by the most far-reaching of its bores', () => {
    const order: Outcome[] = [
      'replace-or-sleeve',
      're-plate',
      'bore-oversize',
      'clean-and-measure-again',
      'measure-again-better',
      'hone',
      'next-piston',
      'run-on',
    ]
    for (const [index, outcome] of order.entries()) {
      const block = blockDecisionFrom(
        bores(
          ...order
            .slice(index)
            .reverse()
            .map((one) => own(one)),
        ),
        true,
      )
      expect(block?.outcome).toBe(outcome)
    }
  })

  it('runs on to the soonest check of any bore', () => {
    const block = blockDecisionFrom(
      bores(own('run-on', { checkAtHours: 900 }), own('run-on', { checkAtHours: 700 })),
      true,
    )
    expect(block).toMatchObject({ outcome: 'run-on', checkAtHours: 700, others: [] })
  })

  it('tells the bores that are not decided, and is none while no bore is', () => {
    const open: Decision = { known: false, why: 'no-readings' }
    expect(blockDecisionFrom(bores(own('run-on'), open), true)?.undecided).toEqual(['2'])
    expect(blockDecisionFrom(bores(open, open), true)).toBeUndefined()
  })

  it('is an engine of two bores or more', () => {
    const measured = measuredBore({ levelsMm: [10], axesDegrees: [0], rows: [[80]] })
    expect(blockDecisionOf(measured, inspect(measured))).toBeUndefined()
  })
})
