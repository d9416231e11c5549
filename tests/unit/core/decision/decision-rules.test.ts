import { describe, expect, it } from 'vitest'
import { decisionRules, factsBehind, outcomes, ruleFor } from '../../../../src/core/decision/decision-rules'
import { specification, wellWorn } from './specification'

describe.each(specification)('a bore: %s', (_, cases) => {
  it.each(cases)('%s', (_what, facts, outcome, id) => {
    const rule = ruleFor({ ...wellWorn, ...facts })
    expect([rule.outcome, rule.id]).toEqual([outcome, id])
  })
})

describe('the table of rules', () => {
  const all = specification.flatMap(([, cases]) => cases)

  it('is specified by at least 60 cases', () => {
    expect(all.length).toBeGreaterThanOrEqual(60)
  })

  it('has a case for each of its rules, and rules of different names', () => {
    const ids = decisionRules.map(({ id }) => id)
    expect(new Set(ids).size).toBe(ids.length)
    expect(ids.filter((id) => !all.some(([, , , rule]) => rule === id))).toEqual([])
  })

  it('leads to every outcome that there is', () => {
    expect(outcomes.filter((outcome) => !all.some(([, , led]) => led === outcome))).toEqual([])
  })

  it('never runs on over a limit, a spoilt surface or readings that are in question (every combination of those facts)', () => {
    const words = {
      surface: ['ended', 'marked', 'covered', 'look-closer', 'nothing-against', 'cross-hatch'],
      readings: ['sound', 'none', 'unsteady', 'slip-asked', 'not-set'],
      size: ['inside', 'above', 'below', 'other-grade', 'under-new', 'too-close', 'mean-only', 'no-limit'],
      ovality: ['inside', 'above', 'too-close', 'open', 'no-limit'],
      taper: ['inside', 'above', 'too-close', 'open', 'no-limit'],
    } as const
    let combinations = 0
    for (const surface of words.surface)
      for (const readings of words.readings)
        for (const size of words.size)
          for (const ovality of words.ovality)
            for (const taper of words.taper) {
              combinations++
              const { outcome } = ruleFor({ ...wellWorn, surface, readings, size, ovality, taper })
              const isClear =
                (surface === 'nothing-against' || surface === 'cross-hatch') &&
                readings === 'sound' &&
                (size === 'inside' || size === 'no-limit') &&
                [ovality, taper].every((shape) => shape === 'inside' || shape === 'no-limit')
              expect(outcome === 'run-on').toBe(isClear)
            }
    expect(combinations).toBe(6 * 5 * 8 * 5 * 5)
  })

  it('names the facts behind a rule, those of its choice first', () => {
    const facts = { ...wellWorn, taper: 'above', ovality: 'too-close', oversize: 'cleans-up' } as const
    expect(factsBehind(facts, ruleFor(facts))).toEqual(['taper', 'oversize'])
  })
})
