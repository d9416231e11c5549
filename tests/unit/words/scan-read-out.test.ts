import { describe, expect, it } from 'vitest'
import { scanCutSentences, scanReadOut } from '../../../src/words/scan-read-out'
import { heldRows } from '../../../src/words/scan-table'
import { words } from '../../../src/words/words'

const place = { depthMm: 38.04, angleDegrees: 50, port: undefined, sizeMm: undefined }

describe('what a scan says of a place', () => {
  it('is its radius and how far it stands from the smooth form, or the size that it was given', () => {
    expect(scanReadOut({ ...place, radiusUm: -9, overUm: -14.25 })).toBe(
      '38 mm · 50° · radius −9 µm from the middle · −14.3 µm from the smooth form',
    )
    expect(scanReadOut({ ...place, radiusUm: -9, overUm: 2, sizeMm: 60.0123 })).toBe(
      '38 mm · 50° · twice the radius 60.012 · +2 µm from the smooth form',
    )
  })

  it('is the port, or that there is no radius', () => {
    const none = { ...place, radiusUm: undefined, overUm: undefined }
    expect(scanReadOut({ ...none, port: 'boost' })).toBe('38 mm · 50° · port “boost”')
    expect(scanReadOut(none)).toBe(`38 mm · 50° · ${words.scans.noRadius}`)
  })
})

describe('what a cut through a scan says', () => {
  it('is from what to what it goes, on the radius or as a size', () => {
    expect(scanCutSentences({ depthMm: 38 }, [-3, 4.2, 1], undefined)[0]).toBe(
      '3 radii at 38 mm, from −3 µm to +4.2 µm.',
    )
    expect(scanCutSentences({ angleDegrees: 50 }, [-3, 4.2], 60)[0]).toBe(
      '2 radii, doubled, at 50°, from 59.997 to 60.004.',
    )
    expect(scanCutSentences({ depthMm: 38 }, [], undefined)[0]).toBe(words.scans.noRadius)
  })
})

describe('what a file of radii is told to hold', () => {
  it('has even steps told as one, uneven ones from the least to the greatest, and its empty places counted', () => {
    const held = { depthsMm: [4, 84], values: 7, leastUm: -29.9, mostUm: 42, layout: 'list' as const }
    const told = (anglesDegrees: readonly number[]) =>
      heldRows({ ...held, anglesDegrees }).map(([, text]) => text)
    expect(told([0, 90, 180, 270])).toEqual([
      '2, from 4 mm to 84 mm',
      '4, 90° apart',
      '7',
      '1 (13 %): taken as ports or not measured',
      '−29.9 µm to +42 µm',
      'a list, one row for each radius',
    ])
    expect(told([0, 80, 180, 270])[1]).toBe('4, 80° to 100° apart')
  })
})
