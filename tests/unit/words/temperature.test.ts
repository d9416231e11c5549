import { describe, expect, it } from 'vitest'
import type { TemperatureEffect } from '../../../src/core/findings'
import { noteTexts, temperatureSentence } from '../../../src/words/findings'
import { effectDetail, effectSentence, isCorrected } from '../../../src/words/temperature'
import { at, bore } from './finding-builder'

const warm: TemperatureEffect = {
  sizeMm: 72,
  boreC: 30,
  referenceC: 25,
  reference: 'ring',
  recorded: true,
  standardMm: 0.00414,
  boreMm: -0.01656,
  totalMm: -0.01242,
  expandedMm: 0.0013,
}

describe('what temperature does to a reading, in words', () => {
  it('is said as a sum, and for bore and standard apart', () => {
    expect(effectSentence(warm)).toBe('At these temperatures each reading is corrected by −12.4 µm.')
    expect(effectDetail(warm)).toBe(
      'The bore at 30 °C makes −16.6 µm of it, the ring at 25 °C +4.1 µm. This is good to ± 2 µm.',
    )
  })

  it('says what was not recorded, and what is corrected by nothing though its parts are not', () => {
    const none = { ...warm, standardMm: 0, boreMm: 0, totalMm: 0, recorded: false }
    expect(effectSentence(none)).toBe('At these temperatures nothing is corrected.')
    expect(effectDetail(none)).toBe(
      'This is good to ± 2 µm. Not both temperatures were recorded: what is missing is taken, and its doubt counted.',
    )
    expect(isCorrected(none)).toBe(false)
    expect(isCorrected({ ...warm, standardMm: 0.001, boreMm: -0.001, totalMm: 0 })).toBe(true)
  })

  it('stands beside the verdict where it alone keeps that open, and then not among the other notes', () => {
    const finding = bore({
      notes: [
        {
          code: 'temperature-decides',
          place: at(8, 0),
          expandedMm: 0.008,
          withoutMm: 0.003,
          verdict: 'inside',
        },
      ],
    })
    expect(temperatureSentence(finding)).toMatch(/would prove it inside\./)
    expect(noteTexts(finding).join(' ')).not.toMatch(/temperatures alone/)
    expect(temperatureSentence(bore())).toBeUndefined()
  })
})
