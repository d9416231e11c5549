import { describe, expect, it } from 'vitest'
import { slots } from '../../../src/words/slots'
import { words } from '../../../src/words/words'

describe('a sentence with fields', () => {
  it('is taken apart into its words and its fields, in its own order', () => {
    expect(slots('set to {size} mm by {standard}.')).toEqual([
      { text: 'set to ' },
      { slot: 'size' },
      { text: ' mm by ' },
      { slot: 'standard' },
      { text: '.' },
    ])
  })

  it('may begin or end with a field, and hold none', () => {
    expect(slots('{gauge}')).toEqual([{ slot: 'gauge' }])
    expect(slots('no field')).toEqual([{ text: 'no field' }])
    expect(slots('')).toEqual([])
  })

  it.each(['set to {size', 'set to size}', 'set to {}', 'set to {a b}'])(
    'with a broken field throws: %s',
    (text) => {
      expect(() => slots(text)).toThrow(/brace/)
    },
  )

  const fieldsOf = (template: string) =>
    slots(template).flatMap((part) => ('slot' in part ? [part.slot] : []))

  it.each([
    ['sizes', words.setUp.sizes, words.setUp.labels],
    ['deviations', words.setUp.deviations, words.setUp.labels],
    ['reverse method', words.setUp.reverse, words.setUp.labels],
    ['direct reading', words.setUp.direct, words.setUp.labels],
    ['direct reading, checked', words.setUp.directChecked, words.setUp.labels],
    ['which set-up', words.setUp.which, words.setUp.labels],
    ['more of the survey', words.setUp.more.survey, words.setUp.more.labels],
    ['more of a survey under a plate', words.setUp.more.surveyPlate, words.setUp.more.labels],
    ['more of the set-up', words.setUp.more.setUp, words.setUp.more.labels],
    ['closing zero', words.setUp.closing.deviation, words.setUp.closing.labels],
    ['closing step of the reverse method', words.setUp.closing.reverse, words.setUp.closing.labels],
    ['over the contacts', words.setUp.closing.overContacts, words.setUp.closing.labels],
    ['closing check', words.setUp.closing.direct, words.setUp.closing.labels],
    ['setting in the list', words.instruments.setUp, words.instruments.labels],
    ['micrometer check', words.setUp.micrometerCheck, words.setUp.labels],
    ['typical figures', words.setUp.typicalSentence, words.setUp.typicalLabels],
    ['survey', words.setUp.survey, words.setUp.surveyLabels],
    ['band', words.limits.band, words.limits.labels],
    ['ovality', words.limits.ovality, words.limits.labels],
    ['ovality axes', words.limits.ovalityAxes, words.limits.labels],
    ['taper', words.limits.taper, words.limits.labels],
    ['grade', words.limits.grade, words.limits.labels],
    ['grade of the bore', words.limits.boreGrade, words.limits.labels],
    ['bore', words.bore.sentence, words.bore.labels],
    ['plated bore', words.bore.plated, words.bore.labels],
    ['ring travel', words.bore.travel, words.bore.labels],
    ['surface finding', words.surface.sentence, words.surface.labels],
  ])('has a label for each field, and each field once: %s', (_, template, labels) => {
    const fields = fieldsOf(template)
    expect(fields.length).toBeGreaterThan(0)
    expect(new Set(fields).size).toBe(fields.length)
    for (const field of fields) expect(labels).toHaveProperty(field)
  })
})

describe('the texts', () => {
  const texts: string[] = []
  const gather = (value: unknown) => {
    if (typeof value === 'string') texts.push(value)
    else if (typeof value === 'object' && value !== null) Object.values(value).forEach(gather)
  }
  gather(words)

  it('are many, none blank, and none has two spaces or a space before its full stop', () => {
    expect(texts.length).toBeGreaterThan(300)
    for (const text of texts) expect(text).not.toMatch(/^\s*$| {2}| [.,;]/)
  })

  it('join lists as people say them', () => {
    expect(words.app.and(['exhaust'])).toBe('exhaust')
    expect(words.app.and(['exhaust', 'boost'])).toBe('exhaust and boost')
    expect(words.app.and(['exhaust', 'boost', 'belt'])).toBe('exhaust, boost and belt')
    expect(words.app.and([])).toBe('')
  })
})
