import { describe, expect, it } from 'vitest'
import type { OvalityRule, TaperRule } from '../../src/core/measured'
import { findingOf, measuredBore } from '../unit/core/measured-bore'

/**
 * One table of readings (A across, B along; top, middle, bottom) by the definitions of four workshop manuals,
 * makers left out: the same words, different figures. Arithmetic done by hand.
 */
const finding = findingOf(
  measuredBore(
    {
      levelsMm: [10, 45, 90],
      axesDegrees: [0, 90],
      rows: [
        [80.062, 80.041],
        [80.035, 80.028],
        [80.012, 80.01],
      ],
    },
    { spec: { ovalityAxesDegrees: { x: 0, y: 90 } } },
  ),
)

function ovality(rule: OvalityRule): number {
  const found = finding.ovality.find((shape) => shape.rule === rule)
  if (!found?.known) throw new Error(`no ${rule}`)
  return found.valueMm
}

function taper(rule: TaperRule): number {
  const found = finding.taper.find((shape) => shape.rule === rule)
  if (!found?.known) throw new Error(`no ${rule}`)
  return found.valueMm
}

function sizeAt(place = finding.largest): number {
  const at = finding.stations.find((s) => s.depthMm === place?.depthMm && s.axisDegrees === place.axisDegrees)
  return at?.diameterMm ?? Number.NaN
}

describe('the same six readings by the definitions of four workshop manuals', () => {
  it('are 0.021 mm out of round as the largest |A − B| at one level', () => {
    expect(ovality('largest-less-smallest-at-a-level')).toBeCloseTo(0.021, 9)
    expect(ovality('across-less-along-at-a-level')).toBeCloseTo(0.021, 9)
  })

  it('are 0.052 mm out of round as largest A over levels less smallest B over levels', () => {
    expect(ovality('pooled')).toBeCloseTo(0.052, 9)
  })

  it('have a taper of 0.050 mm as largest at the top less largest at the bottom', () => {
    expect(taper('largest-top-less-largest-bottom')).toBeCloseTo(0.05, 9)
  })

  it('have a taper of 0.052 mm as largest at the top less smallest at the bottom', () => {
    expect(taper('largest-top-less-smallest-bottom')).toBeCloseTo(0.052, 9)
  })

  it('have 0.050 mm of what some call cylindricity, the larger of the two ranges along an axis', () => {
    expect(taper('between-levels-of-an-axis')).toBeCloseTo(0.05, 9)
  })

  it('have a taper of 0.0405 mm between the level means', () => {
    expect(taper('level-means')).toBeCloseTo(0.0405, 9)
  })

  it('spread over 0.052 mm from the largest to the smallest of the six', () => {
    expect(sizeAt(finding.largest) - sizeAt(finding.smallest)).toBeCloseTo(0.052, 9)
  })

  it('have a local cylinder taper of 0.025 mm in plane A (ISO 12180-1:2011), half of ours', () => {
    expect(taper('top-less-bottom-of-an-axis') / 2).toBeCloseTo(0.025, 9)
  })
})
