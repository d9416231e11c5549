import { describe, expect, it } from 'vitest'
import type { Note } from '../../../src/core/findings'
import { ovalityRules, taperRules } from '../../../src/core/measured'
import { cautions, noteText, noteTexts, ruleText } from '../../../src/words/findings'
import { at, bore, ovality } from './finding-builder'

const notes: readonly (readonly [string, Note])[] = [
  [
    'This gauge can prove nothing inside this band: it is good to ± 7 µm. What could is ± 5.9 µm, and that only in the middle of the band.',
    { code: 'gauge-cannot-prove-band', expandedMm: 0.0064, neededExpandedMm: 0.00599 },
  ],
  [
    'This gauge can prove nothing inside this band: it is good to ± 7 µm. What could is less than any bore gauge reaches, and that only in the middle of the band.',
    { code: 'gauge-cannot-prove-band', expandedMm: 0.0064, neededExpandedMm: 0.0002 },
  ],
  [
    'At 8 mm, 0° the bore is smaller than the smallest new size, beyond doubt. Check the reading, the grade and the limit; on a plated wall it may be metal of the piston stuck on.',
    { code: 'below-smallest-new', place: at(8, 0) },
  ],
  [
    'The reading at 35 mm, 0° stands at exhaust and boost: kept, but in no verdict until you say that both contacts stood on metal.',
    { code: 'blocked-reading', place: at(35, 0), by: ['exhaust', 'boost'] },
  ],
  [
    'The bore is recorded at 26 °C and the micrometer at 23.5 °C, though they lay side by side until equal. Both cannot be; the difference goes into every size as it is recorded.',
    { code: 'soaked-but-apart', boreC: 26, referenceC: 23.5, reference: 'micrometer' },
  ],
  [
    'The doubt of the temperatures alone keeps this open: without it ± 8 µm at 8 mm, 0° would be ± 3 µm, and the same readings would prove it over. Let bore and ring or micrometer lie side by side until equal, read both with one thermometer, and measure again.',
    {
      code: 'temperature-decides',
      place: at(8, 0),
      expandedMm: 0.0079,
      withoutMm: 0.0028,
      verdict: 'above',
    },
  ],
  [
    'The correction for temperature, −16.6 µm, is more than half of the width between the limits (6 µm). Measure nearer to 20 °C.',
    { code: 'correction-exceeds-half-band', correctionMm: -0.01656, halfMm: 0.006 },
  ],
  [
    'The bore was 4.5 K colder than the ring or micrometer. Beyond 3 K a part seldom has one temperature throughout: let both lie side by side and measure again.',
    { code: 'part-and-standard-apart', differenceK: -4.5 },
  ],
  [
    'Two axes can miss an oval that lies between them, and set no upper limit to it. A reading at 45° would show it.',
    { code: 'two-axes-can-miss-an-oval', axesDegrees: [0, 90] },
  ],
  ['One axis shows nothing of an oval. Measure a second one across it.', { code: 'one-axis-sees-no-oval' }],
  [
    'Nobody measured from 33 mm to 54 mm.',
    { code: 'no-reading-between', gaps: [{ fromDepthMm: 33, toDepthMm: 54 }] },
  ],
  [
    'Nobody measured from 43 mm to 54 mm and from 70 mm to 72 mm.',
    {
      code: 'no-reading-between',
      gaps: [
        { fromDepthMm: 43, toDepthMm: 54 },
        { fromDepthMm: 70, toDepthMm: 72 },
      ],
    },
  ],
  [
    'Nobody measured from 0 mm to 5 mm, from 10 mm to 15 mm, from 20 mm to 25 mm, from 30 mm to 35 mm, from 40 mm to 45 mm, from 50 mm to 55 mm and in 2 more gaps.',
    {
      code: 'no-reading-between',
      gaps: [0, 10, 20, 30, 40, 50, 60, 70].map((from) => ({ fromDepthMm: from, toDepthMm: from + 5 })),
    },
  ],
  [
    'Out of reach of the gauge, so nobody measured there: 8 mm, 0°.',
    { code: 'stations-out-of-reach', places: [at(8, 0)] },
  ],
  ['Not read yet: 8 mm, 0°; 8 mm, 90°.', { code: 'stations-not-read', places: [at(8, 0), at(8, 90)] }],
  [
    'Not read yet: 8 mm, 0°; 9 mm, 0°; 10 mm, 0°; 11 mm, 0°; 12 mm, 0°; 13 mm, 0°; and 2 more.',
    { code: 'stations-not-read', places: [8, 9, 10, 11, 12, 13, 14, 15].map((depth) => at(depth, 0)) },
  ],
  [
    'The length of the bore is not known: it is drawn to 90 mm, 10 mm past the deepest level or mark.',
    { code: 'length-not-known', drawnMm: 90 },
  ],
]

describe('a note', () => {
  it.each(notes)('says: %s', (sentence, note) => {
    expect(noteText(note)).toBe(sentence)
  })

  it('on two contacts says that they see even lobes only and not which wall wore', () => {
    const said = noteText({ code: 'two-contacts-see-even-lobes-only' })
    expect(said).toMatch(/even lobes only/)
    expect(said).toMatch(/which of the two walls/)
  })
})

describe('the notes of a bore', () => {
  it('tell once that out-of-round is a difference of diameters and roundness one of radii', () => {
    const said = noteTexts(bore({ ovality: [ovality(), ovality({ rule: 'pooled' })] }))
    expect(said.filter((text) => /differences of diameters.*differences of radii/.test(text))).toHaveLength(1)
    expect(noteTexts(bore())).toEqual([])
  })

  it('say that three contacts read a mean', () => {
    const said = noteTexts(bore({ gaugeKind: 'three-contact-micrometer' }))
    expect(said).toContainEqual(expect.stringMatching(/^Three contacts read the mean/))
  })
})

describe('a rule', () => {
  it('has a text of its own for each formula', () => {
    const texts = [...ovalityRules, ...taperRules].map(ruleText)
    expect(new Set(texts).size).toBe(texts.length)
  })
})

describe('the cautions', () => {
  it('always give the last word to the manual and a qualified machinist, and never decide by figures alone', () => {
    const said = cautions(bore(), {}).join(' ')
    expect(said).toMatch(/service manual .* has the last word/)
    expect(said).toMatch(/qualified machinist/)
    expect(said).toMatch(/Figures alone do not decide/)
    expect(said).toMatch(/still warm/)
  })

  it('name bare aluminium and forbid an oversize on a plated wall', () => {
    const said = cautions(bore(), { wall: { kind: 'plated-aluminium' } }).join(' ')
    expect(said).toMatch(/bare aluminium/)
    expect(said).toMatch(/cannot be bored or honed to an oversize/)
  })

  it('warn against deciding on a provisional verdict', () => {
    const provisional = bore({ provisional: ['no-closing-zero'] })
    expect(cautions(provisional, {}).join(' ')).toMatch(/provisional verdict/)
    expect(cautions(bore(), {}).join(' ')).not.toMatch(/provisional/)
  })
})
