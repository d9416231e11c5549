import { describe, expect, it } from 'vitest'
import type { LevelFinding } from '../../../src/core/findings'
import { profileSentences } from '../../../src/words/profile'
import { sectionSentences, sectionText } from '../../../src/words/section'
import { inventedCylinder } from '../core/surface/invented-cylinder'

const level: LevelFinding = {
  depthMm: 8,
  land: false,
  axesDegrees: [0, 45, 90, 135],
  meanMm: 54.022,
  meanExpandedMm: 0.0065,
}
const { finding } = inventedCylinder()
const at8 = (change: Partial<LevelFinding>) =>
  sectionSentences({ ...finding, levels: [{ ...level, ...change }] }, 8)

describe('what is said of a section', () => {
  it('names the oval with its long axis where a direction stands out', () => {
    const fittedOval = {
      axes: 4,
      ovalMm: 0.0138,
      expandedMm: 0.0035,
      longAxisDegrees: 179.8,
      longAxisExpandedDegrees: 6.2,
    }
    expect(at8({ fittedOval })).toEqual([
      'Mean 54.022 ± 0.007.',
      'Oval 14 ± 4 µm, long axis 0° ± 7°.',
      'Drawn alike on both sides: two contacts cannot tell which wall wore.',
    ])
  })

  it('bounds an oval without a direction, and says what three, two and one axes leave open', () => {
    const round = { axes: 3, ovalMm: 0.001, expandedMm: 0.004, atMostMm: 0.0052 }
    expect(at8({ fittedOval: round })).toContain('No oval stands out; at most 5 µm.')
    expect(at8({ fittedOval: round })).toContain('Three axes cannot tell an oval from a four-lobed form.')
    const two = { axesDegrees: [0, 90] }
    expect(at8({ ...two, ovalAtLeastMm: 0.008 })[1]).toMatch(/^Oval of 8 µm or more; two axes/)
    expect(at8({ ...two, ovalAtLeastMm: 0 })[1]).toMatch(/^Two axes show no oval for certain/)
    expect(at8({ axesDegrees: [0] })[1]).toBe('One axis shows nothing of an oval.')
  })

  it('says of three contacts that they read a mean and no oval', () => {
    const three = { ...finding, gaugeKind: 'three-contact-micrometer', levels: [level] } as const
    expect(sectionSentences(three, 8)).toEqual([
      'Mean 54.022 ± 0.007.',
      'Three contacts read the mean of a level: a round ring, measured under each contact, and no oval.',
    ])
  })

  it('says that nobody measured where nobody did', () => {
    expect(sectionText(finding, 48)).toBe('Round section at 48 mm. Nobody measured at this level.')
  })
})

describe('what is said of a profile', () => {
  it('names its largest and smallest reading with their doubt', () => {
    const said = profileSentences(finding, { ringTravelMm: { from: 8, to: 82.5 } }, 0)
    expect(said[0]).toBe('Largest 54.034 ± 0.004 at 8 mm.')
    expect(said[1]).toBe('Smallest 54.015 ± 0.004 at 62 mm.')
    expect(said[2]).toBe('The rings run from 8 to 82.5 mm; the wall beyond is land.')
  })

  it('says so where an axis has one reading or none', () => {
    expect(profileSentences(finding, {}, 60)[0]).toBe('Nobody measured along this axis.')
    const one = finding.stations.filter((s) => s.depthMm === 35)
    expect(profileSentences({ ...finding, stations: one }, {}, 90)[0]).toMatch(/^One reading, 54\.018/)
  })
})
