import { describe, expect, it } from 'vitest'
import type { BoreFinding, ProvisionalReason, ShapeFinding } from '../../../src/core/findings'
import type { TaperRule } from '../../../src/core/measured'
import {
  aboutSentence,
  leanSentence,
  provisionalSentence,
  settleSentence,
  sureSentence,
  verdictSentence,
} from '../../../src/words/verdict'
import { at, band, bore, gradeA, ovality, station, taper, twoStations, verdict } from './finding-builder'

const here = at(8, 0)
const there = at(8, 90)
const both = [here, there]
const above = (places: readonly (typeof here)[]) =>
  verdict({ verdict: 'above', lean: 'above', above: places, provenAbove: places })
const below = (places: readonly (typeof here)[]) =>
  verdict({ verdict: 'below', lean: 'below', deciding: there, below: places, provenBelow: places })
const close = (change: Parameters<typeof verdict>[0] = {}) =>
  verdict({ verdict: 'too-close', tooClose: [here], leanProbability: 0.74, ...change })
/** Below the number given, while a limit per mm of travel waits for the travel. */
const openTaper: ShapeFinding<TaperRule> = {
  known: true,
  rule: 'between-levels-of-an-axis',
  valueMm: 0.016,
  lowMm: 0.01,
  highMm: 0.022,
  interval: 'range',
  larger: here,
  smaller: at(80, 0),
  limitMm: 0.025,
  limitOpen: 'no-travel',
}
const sixteen = { stations: 16 }

const verdicts: readonly (readonly [string, Partial<BoreFinding>])[] = [
  ['Inside the wear limit.', {}],
  ['Inside the new limits.', { pair: band }],
  ['Inside the limits of grade A.', { pair: gradeA }],
  ['Over the wear limit at 8 mm, 0°.', { verdict: above([here]) }],
  ['Over the wear limit at all 2 stations, most of all at 8 mm, 0°.', { verdict: above(both) }],
  [
    'Over the wear limit at 2 of 16 stations, most of all at 8 mm, 0°.',
    { verdict: { ...above(both), ...sixteen } },
  ],
  ['Over the largest new size at 8 mm, 0°.', { pair: band, verdict: above([here]) }],
  ['Over the largest size of grade A at 8 mm, 0°.', { pair: gradeA, verdict: above([here]) }],
  ['Under the smallest new size at 8 mm, 90°.', { pair: band, verdict: below([there]) }],
  [
    'Under the smallest new size at all 2 stations, most of all at 8 mm, 90°.',
    { pair: band, verdict: below(both) },
  ],
  ['Under the smallest size of grade A at 8 mm, 90°.', { pair: gradeA, verdict: below([there]) }],
  [
    'Over the largest new size at 8 mm, 0°. Under the smallest new size at 8 mm, 90°.',
    { pair: band, verdict: { ...above([here]), below: [there], provenBelow: [there] } },
  ],
  ['Too close to call at 8 mm, 0°.', { verdict: close() }],
  [
    'Too close to call at 2 of 16 stations, most of all at 8 mm, 0°.',
    { verdict: close({ ...sixteen, tooClose: both }) },
  ],
  [
    'Too close to call: one of 16 stations is over the wear limit.',
    { verdict: close({ ...sixteen, above: [here], tooClose: [] }) },
  ],
  [
    'Too close to call: 2 of 16 stations are over the largest new size.',
    { pair: band, verdict: close({ ...sixteen, above: both }) },
  ],
  [
    'Too close to call: one of 16 stations is over the largest size of grade A.',
    { pair: gradeA, verdict: close({ ...sixteen, above: [here] }) },
  ],
  [
    'Too close to call: one of 16 stations is under the smallest new size.',
    { pair: band, verdict: close({ ...sixteen, below: [there] }) },
  ],
  [
    'Too close to call: one of 16 stations is under the smallest size of grade A.',
    { pair: gradeA, verdict: close({ ...sixteen, below: [there] }) },
  ],
  ['No readings yet.', { stations: [], verdict: { known: false, why: 'no-readings' } }],
  ['No verdict on size: no limits are entered.', { verdict: { known: false, why: 'no-limits' } }],
  [
    'No verdict: every reading stands at a port or a belt and waits for your word.',
    { verdict: { known: false, why: 'all-blocked' } },
  ],
  ['Inside the wear limit. Out-of-round is too close to call.', { ovality: [ovality()] }],
  [
    'Inside the wear limit. Out-of-round is over its limit.',
    { ovality: [ovality({ verdict: 'above' })], taper: [taper()] },
  ],
  ['Inside the wear limit.', { ovality: [ovality({ verdict: 'inside' })], taper: [taper()] }],
  [
    'Inside the wear limit. Taper is over its limit.',
    { ovality: [ovality({ verdict: 'inside' })], taper: [taper({ verdict: 'above' })] },
  ],
  [
    'Inside the wear limit. Out-of-round is too close to call. Taper is over its limit.',
    { ovality: [ovality()], taper: [taper({ verdict: 'above' })] },
  ],
  [
    'Inside the wear limit. Out-of-round and taper are too close to call.',
    { ovality: [ovality()], taper: [taper({ verdict: 'too-close' })] },
  ],
  [
    'Inside the wear limit. Taper could not be judged.',
    { ovality: [ovality({ verdict: 'inside' })], taper: [openTaper] },
  ],
  [
    'Inside the wear limit. Out-of-round could not be judged.',
    {
      ovality: [{ known: false, rule: 'pooled', why: 'axes-not-named', limitMm: 0.015 }],
      taper: [{ known: false, rule: 'level-means', why: 'no-common-axis' }],
    },
  ],
  ['For comparison: 54.015 to 54.028 at 2 stations.', { role: 'for-comparison', ovality: [ovality()] }],
  ['For comparison: 54.028 at one station.', { role: 'for-comparison', stations: twoStations.slice(0, 1) }],
  ['For comparison: no readings yet.', { role: 'for-comparison', stations: [] }],
  [
    'For comparison: every reading stands at a port or a belt and waits for your word.',
    { role: 'for-comparison', stations: [station(here, 54, { counted: false })] },
  ],
]

describe('the verdict on a bore', () => {
  it.each(verdicts)('says: %s', (sentence, change) => {
    expect(verdictSentence(bore(change))).toBe(sentence)
  })

  it('names the largest of the stations over, and the smallest of those under', () => {
    const stations = [station(at(8, 0), 54.06), station(at(16, 0), 54.07), station(at(25, 0), 53.98)]
    const places = [at(8, 0), at(16, 0)]
    const over = verdict({ verdict: 'above', stations: 3, above: places, provenAbove: places })
    expect(verdictSentence(bore({ stations, verdict: over }))).toBe(
      'Over the wear limit at 2 of 3 stations, most of all at 16 mm, 0°.',
    )
  })
})

describe('a verdict that is too close to call', () => {
  it.each([
    ['3 chances in 4 that it is over.', close({ lean: 'above' })],
    ['3 chances in 4 that it is inside.', close()],
    ['3 chances in 4 that it is under.', close({ lean: 'below' })],
    ['About even whether it is inside or not.', close({ leanProbability: 0.51 })],
    ['At 8 mm, 0°: 3 chances in 4 that it is over.', close({ lean: 'above', tooClose: both })],
    [
      'At 8 mm, 0°: about even whether it is inside or not.',
      close({ leanProbability: 0.48, tooClose: both }),
    ],
    [
      'Taken alone, 8 mm, 0° is out, with 49 chances in 50. The furthest of 16 readings is often the unluckiest, so it takes more to prove it of the bore.',
      close({ ...sixteen, above: [here], tooClose: [], lean: 'above', leanProbability: 0.975 }),
    ],
  ])('says its lean: %s', (sentence, given) => {
    expect(leanSentence(bore({ verdict: given }))).toBe(sentence)
  })

  it.each([
    [
      'A reading good to ± 1.6 µm would settle it, if it stays the same.',
      close({ settledByExpandedMm: 0.00169 }),
    ],
    [
      'At 8 mm, 0° a reading good to ± 1.6 µm would settle it, if it stays the same.',
      close({ settledByExpandedMm: 0.00169, tooClose: both }),
    ],
    [
      'It stands so near the limit that no bore gauge would settle it.',
      close({ settledByExpandedMm: 0.0004 }),
    ],
    ['It stands so near the limit that no bore gauge would settle it.', close()],
  ])('says what would settle it: %s', (sentence, given) => {
    expect(settleSentence(bore({ verdict: given }))).toBe(sentence)
  })

  it('has a lean and a way to settle it only on a bore of this engine', () => {
    for (const say of [leanSentence, settleSentence]) {
      expect(say(bore())).toBeUndefined()
      expect(say(bore({ role: 'for-comparison', verdict: close() }))).toBeUndefined()
      expect(say(bore({ verdict: { known: false, why: 'no-limits' } }))).toBeUndefined()
    }
  })
})

describe('a proven verdict', () => {
  it.each([
    ['Nearest to being out is 8 mm, 0°: more than 99 chances in 100 that it is inside.', verdict()],
    ['At 8 mm, 0°: more than 99 chances in 100 that it is over.', above([here])],
    ['At 8 mm, 90°: more than 99 chances in 100 that it is under.', below([there])],
  ])('says how sure it is: %s', (sentence, given) => {
    expect(sureSentence(bore({ pair: band, verdict: given }))).toBe(sentence)
  })

  it('says nothing of this where it is too close to call', () => {
    expect(sureSentence(bore({ verdict: close() }))).toBeUndefined()
  })

  it('is about the stations measured', () => {
    expect(aboutSentence(bore({ verdict: verdict(sixteen) }))).toBe(
      'This is about the 16 stations measured, not about the wall between them.',
    )
    expect(aboutSentence(bore({ verdict: verdict({ stations: 1 }) }))).toMatch(/the one station measured/)
    expect(aboutSentence(bore({ role: 'for-comparison' }))).toBeUndefined()
  })
})

describe('a provisional verdict', () => {
  const stand = 'Assumed values stand in, and their doubt is in every ±.'
  const cases: readonly (readonly [string, readonly ProvisionalReason[]])[] = [
    ['Provisional: no closing zero was recorded.', ['no-closing-zero']],
    ['Provisional: the temperature of the bore was not recorded.', ['no-bore-temperature']],
    [
      'Provisional: no direction test was recorded, and clockwise is taken to be larger. If it is not, every figure is mirrored.',
      ['no-direction-test'],
    ],
    [
      'Provisional. Not recorded: closing zero, temperature of the bore, kind of wall.',
      ['no-closing-zero', 'no-bore-temperature', 'no-wall-kind'],
    ],
  ]
  it.each(cases)('says what was not recorded: %s', (sentence, provisional) => {
    expect(provisionalSentence(bore({ provisional }))).toBe(`${sentence} ${stand}`)
  })

  it('is any that rests on three contacts, which read a mean', () => {
    const three = { gaugeKind: 'three-contact-micrometer' } as const
    expect(provisionalSentence(bore({ ...three, verdict: verdict({ firm: false }) }))).toBe(
      'Provisional: three contacts read the mean of a level, and the verdict is about that mean only.',
    )
    expect(provisionalSentence(bore({ ...three, verdict: verdict({ firm: true }) }))).toBeUndefined()
  })

  it('says first of all that a contact was changed after the setting', () => {
    const changed = bore({ provisional: ['no-wall-kind', 'contact-changed'] })
    expect(provisionalSentence(changed)).toMatch(
      /^Provisional: a contact .* measure again\. Provisional: the kind of wall was not recorded\./,
    )
    expect(provisionalSentence(bore({ provisional: ['contact-changed'] }))).toMatch(/measure again\.$/)
  })

  it('is not spoken of where everything was recorded, or nothing read', () => {
    expect(provisionalSentence(bore())).toBeUndefined()
    expect(provisionalSentence(bore({ stations: [], provisional: ['no-closing-zero'] }))).toBeUndefined()
  })
})
