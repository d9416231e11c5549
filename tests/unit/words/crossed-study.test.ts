import { describe, expect, it } from 'vitest'
import { crossedStudies } from '../../../src/core/gauge/crossed-study'
import { inspect } from '../../../src/core/inspect'
import type { CrossedStudy, Spec } from '../../../src/core/measured'
import {
  studyHeading,
  studyReadText,
  studyRows,
  studySentences,
  studyText,
} from '../../../src/words/crossed-study'
import { findingsPage } from '../../../src/words/findings-page'
import { first, measuredBore } from '../core/measured-bore'

const spec: Spec = { newMinMm: 80, newMaxMm: 80.02 }
const place = { levelsMm: [10], axesDegrees: [0], rows: [[80.01]] }

/** Invented: parts 10 µm apart, Ben reads 3 µm more than Ada, repeats 1 µm apart. */
const reading = (person: string, part: number, from: number) => ({
  person,
  part: `${part}`,
  dialUm: [from, from + 1],
})
const study: CrossedStudy = {
  date: '2026-03-09',
  readings: [1, 2, 3, 4].flatMap((part) => [
    reading('Ada', part, 10 * part),
    reading('Ben', part, 10 * part + 3),
  ]),
}

function told(of: CrossedStudy, given: Parameters<typeof measuredBore>[1] = { spec }) {
  const measured = measuredBore(place, { ...given, gauge: { ...given?.gauge, crossedStudies: [of] } })
  return { measured, finding: first(crossedStudies(measured)) }
}

describe('what a crossed study shows, in words', () => {
  it('is who read what, the spreads with their intervals and shares, and what they mean', () => {
    const { finding, measured } = told(study)
    expect(studyHeading(finding, measured)).toBe('Dial bore gauge 0.001, set by micrometer, 9 March 2026')
    expect(studyReadText(finding)).toBe('2 people read 4 parts twice each.')
    expect(studyRows(finding).map(({ name, amount, share }) => `${name}: ${amount}, ${share}`)).toEqual([
      'the gauge: repeats by one person: 0.6 µm, 5 %',
      'the people: one reads higher than another: 2.11 µm, 16 %',
      'gauge and people together: 2.2 µm, 17 %',
      'the parts: 12.9 µm, 99 %',
      'all readings: 13.1 µm, 100 %',
    ])
    const sentences = studySentences(finding)
    expect(sentences[5]).toMatch(/does not depend on the part.* in 100 % of such studies/)
    expect(sentences[0]).toMatch(
      /^In these hands the gauge tells \d+ sizes of such parts apart \(from 0 to \d+/,
    )
    expect(sentences[6]).toMatch(/^By averages and ranges, the older way: the gauge 0\.8\d µm/)
    expect(sentences[7]).toMatch(/^By that way it tells 8 sizes apart too\. It has no interval of its own/)
    expect(sentences[1]).toMatch(
      /^Six standard deviations of a reading by any of these people, 13\.2 µm, are 66 %/,
    )
    expect(sentences[2]).toMatch(
      /^In the hands of any of them a station of bore bore, read once, is good to ± \d+ µm/,
    )
    expect(sentences[3]).toMatch(/^That can(not)? answer/)
  })

  it('of one person has no people, and says plainly where parts cannot be told apart', () => {
    const alone = told({ readings: [reading('Ada', 1, 0), reading('Ada', 2, 0.5)] }).finding
    expect(studyReadText(alone)).toBe('One person read 2 parts twice each.')
    expect(studyRows(alone).map(({ name }) => name)).toEqual([
      'the gauge: repeats by one person',
      'the parts',
      'all readings',
    ])
    expect(studySentences(alone).some((said) => said.includes('cannot tell such parts apart'))).toBe(true)
  })

  it.each([
    [{ readings: study.readings.slice(1) }, /^Ada, part 1: no reading, where most have 2\./],
    [{ readings: study.readings.slice(2, 4).concat(study.readings.slice(5)) }, /at one more place|, part \d/],
    [{ readings: study.readings.slice(0, 2) }, /^It takes two parts/],
    [{ readings: study.readings.map((one) => ({ ...one, dialUm: [1] })) }, /^Each part was read once/],
  ])('that is not whole says what is wanting, and where', (of, said) => {
    const { finding } = told(of)
    expect(studyReadText(finding)).toMatch(said)
    expect(studyRows(finding)).toEqual([])
    expect(studySentences(finding)).toEqual([])
  })

  it('stands in the page that inspect prints', () => {
    const { measured, finding } = told(study)
    const passages = findingsPage({ ...measured, name: 'Pump' }, inspect(measured))
    const at = passages.findIndex((one) => one.kind === 'heading' && one.text === 'Crossed studies of gauges')
    expect(at).toBeGreaterThan(0)
    expect(passages[at + 2]).toEqual({ kind: 'paragraph', text: studyReadText(finding) })
    expect(studyText(finding)).toContain('the parts: 12.9 µm, between')
  })
})
