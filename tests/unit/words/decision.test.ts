import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { blockDecisionOf } from '../../../src/core/decision/block-decision'
import { decisionFrom } from '../../../src/core/decision/decision'
import { decisionRules, ruleFor } from '../../../src/core/decision/decision-rules'
import { evidenceOf } from '../../../src/core/decision/evidence'
import type { Sureness } from '../../../src/core/decision/sureness'
import { changesOf } from '../../../src/core/decision/what-would-change'
import { inspect } from '../../../src/core/inspect'
import { readJob } from '../../../src/job/read-job'
import { blockDecisionTexts } from '../../../src/words/block-decision'
import { decisionTexts, surenessTexts } from '../../../src/words/decision'
import { decisionWords } from '../../../src/words/decision-words'
import { specification, wellWorn } from '../core/decision/specification'
import { first } from '../core/measured-bore'

function scenario(name: string) {
  const read = readJob(readFileSync(`scenarios/${name}.json`))
  if (!read.ok) throw new Error(name)
  const findings = inspect(read.job)
  const about = (boreName: string) => {
    const finding = first(findings.bores.filter((bore) => bore.boreName === boreName))
    const evidence = evidenceOf(read.job, findings, finding)
    const decision = decisionFrom(evidence)
    const texts = decisionTexts({ evidence, decision })
    if (!texts) throw new Error('no texts')
    return { decision, texts }
  }
  return { job: read.job, findings, about }
}

describe('a decision in words', () => {
  it.each([
    ['A-two-stroke-single', '1', 'Measure again, better: 8 mm, 0°; 8 mm, 90°.'],
    ['B-four-cylinder-iron', '1', 'Run on, and check again when the manual says.'],
    ['B-four-cylinder-iron', '2', 'Take the next piston: piston of grade 2.'],
    ['B-four-cylinder-iron', '3', 'Bore to the next oversize, +0.25 mm.'],
    ['B-four-cylinder-iron', '4', 'Measure again, better: 10 mm, 0°; 125 mm, 0°.'],
    ['B-four-cylinder-iron-as-typed', '2', 'Measure again, better: 40 mm, 0°; 40 mm, 90°.'],
    ['C-wet-liner-diesel', '1', 'Run on, and check again by 14375 h run.'],
    ['D1-compressor', '1', 'Hone within the limits: at most 58 µm on the diameter.'],
    ['D2-hydraulic-tube', '1', 'Replace it, or have it sleeved.'],
  ])('of %s, bore %s: %s', (name, bore, headline) => {
    expect(scenario(name).about(bore).texts.headline).toBe(headline)
  })

  it('gives each reason with its figures', () => {
    const { texts } = scenario('A-two-stroke-single').about('1')
    expect(texts.reasons.map(({ text }) => text).slice(0, 2)).toEqual([
      'Out-of-round, 14 µm (9 to 19), is too close to its limit of 15 µm to call.',
      'The largest diameter, 54.030 ± 0.007 at 8 mm, 0°, is inside its limit. Used of the allowed wear: 29 % to 74 %.',
    ])
  })

  it('says first that it hangs on readings that nobody repeated', () => {
    const { texts } = scenario('D2-hydraulic-tube').about('1')
    expect(texts.beneath).toEqual([
      'Every station was read only once. It hangs on 150 mm, 0°: read there twice more before you act on it.',
    ])
  })

  it('has the engine bored alike', () => {
    const { job, findings } = scenario('B-four-cylinder-iron')
    const block = blockDecisionOf(job, findings)
    expect(block && blockDecisionTexts(job, block)).toEqual([
      'Bore all 4 cylinders to +0.25 mm, since all go to one size.',
      'Bore 3 asks for it.',
    ])
  })

  it('has words for every fact that a rule goes by and that says something', () => {
    const silent = [
      'no-limit',
      'not-known',
      'not-judged',
      'nothing-against',
      'left',
      'repeated',
      'sound',
      'none',
    ]
    const asked = decisionRules.flatMap(({ all, any = {} }) =>
      [...Object.entries(all), ...Object.entries(any)].flatMap(([fact, words]) =>
        words.map((word) => [fact, word] as const),
      ),
    )
    expect(asked.length).toBeGreaterThan(80)
    const reasons: Readonly<Record<string, object>> = decisionWords.reasons
    // Why nothing is decided yet is said in the place of a decision.
    expect(Object.keys(decisionWords.undecided)).toEqual(
      expect.arrayContaining(['some-unread', 'land-alone']),
    )
    for (const [fact, word] of asked)
      if (!silent.includes(word) && fact !== 'stations') expect(reasons[fact]).toHaveProperty(word)
  })

  it('has words for whatever would change any case of the specification', () => {
    const told = specification.flatMap(([, cases]) =>
      cases.flatMap(([, facts]) => {
        const all = { ...wellWorn, ...facts }
        const { outcome } = ruleFor(all)
        return outcome === 'undecided' ? [] : changesOf(all, outcome)
      }),
    )
    expect(told.length).toBeGreaterThan(60)
    const changes: Readonly<Record<string, object>> = decisionWords.changes
    for (const { fact, to } of told) expect(changes[fact]).toHaveProperty([to])
  })

  it('calls nothing safe, and leaves the last word to the manual and a machinist', () => {
    const texts: string[] = []
    const gather = (value: unknown) => {
      if (typeof value === 'string') texts.push(value)
      else if (typeof value === 'object' && value !== null) Object.values(value).forEach(gather)
    }
    gather(decisionWords)
    expect(texts.filter((text) => /\bsafe/i.test(text))).toEqual([decisionWords.cautions['last-word']])
    for (const name of ['A-two-stroke-single', 'C-wet-liner-diesel', 'D1-compressor']) {
      expect(scenario(name).about('1').texts.cautions[0]).toBe(decisionWords.cautions['last-word'])
    }
  })
})

describe('how sure a decision is, in words', () => {
  const { decision } = scenario('C-wet-liner-diesel').about('1')
  const sure = (same: number, ...shares: [Sureness['shares'][number]['outcome'], number][]) =>
    surenessTexts(decision, {
      trials: 400,
      same,
      shares: shares.map(([outcome, share]) => ({ outcome, share })),
    })

  it.each([
    [
      sure(0.945, ['run-on', 0.945], ['hone', 0.0375], ['next-piston', 0.0175]),
      [
        'How sure: of the true sizes that these readings allow, 94 in 100 lead to the same.',
        'The others: hone within the limits, 4 in 100; take the next piston, 2 in 100.',
      ],
    ],
    [
      sure(0.9975, ['run-on', 0.9975], ['hone', 0.0025]),
      [
        'How sure: of the true sizes that these readings allow, more than 99 in 100 lead to the same.',
        'The others: hone within the limits, fewer than 1 in 100.',
      ],
    ],
    [sure(1, ['run-on', 1]), ['How sure: all true sizes that these readings allow lead to the same.']],
    [
      sure(0, ['hone', 0.775], ['re-plate', 0.225]),
      ['Were the sizes known exactly: hone within the limits, 78 in 100; have it plated anew, 22 in 100.'],
    ],
    [surenessTexts(decision, undefined), []],
  ])('%j', (said, expected) => {
    expect(said).toEqual(expected)
  })
})
