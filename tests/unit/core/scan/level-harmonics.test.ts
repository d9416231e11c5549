import { describe, expect, it } from 'vitest'
import { harmonicsWithin, levelHarmonics } from '../../../../src/core/scan/level-harmonics'
import { turnTable } from '../../../../src/core/scan/turn-table'
import { twoContact } from '../../../../src/core/scan/two-contact'
import { seededRandom } from '../../../proof/seeded-random'

const angles = Array.from({ length: 72 }, (_, i) => 5 * i)
const radians = Math.PI / 180
const level = (form: (turn: number) => number, isThere: (angle: number) => boolean = () => true) =>
  Float64Array.from(angles, (angle) => (isThere(angle) ? form(angle * radians) : Number.NaN))

describe('harmonic content of a level', () => {
  const parts = [3, 4, 0.5, 2, 1.5]
  const peaks = [10, 50, 70, 80, 33]
  const form = (turn: number) =>
    7 + parts.reduce((sum, part, k) => sum + part * Math.cos((k + 1) * (turn - (peaks[k] ?? 0) * radians)), 0)

  it.each([
    ['all round', () => true],
    ['over two gaps', (angle: number) => !(angle > 20 && angle < 50) && !(angle > 200 && angle < 235)],
  ])('is found exactly %s', (_, isThere) => {
    const found = levelHarmonics(level(form, isThere), turnTable(angles, 30), 5)
    expect(found?.meanUm).toBeCloseTo(7, 10)
    for (const [k, { waves, amplitudeUm, peakDegrees }] of (found?.harmonics ?? []).entries()) {
      expect(waves).toBe(k + 1)
      expect(amplitudeUm).toBeCloseTo(parts[k] ?? Number.NaN, 9)
      expect(peakDegrees).toBeCloseTo((peaks[k] ?? 0) % (360 / waves), 7)
    }
  })

  it('has the doubt that errors of 1 leave it, √(2/n) on an equal turn', () => {
    const found = levelHarmonics(level(form), turnTable(angles, 30), 10)
    for (const { covariance } of found?.harmonics ?? []) {
      expect(Math.sqrt(covariance.aa)).toBeCloseTo(Math.sqrt(2 / 72), 10)
      expect(Math.sqrt(covariance.bb)).toBeCloseTo(Math.sqrt(2 / 72), 10)
      expect(covariance.ab).toBeCloseTo(0, 10)
    }
  })

  it('goes no further than gaps and number of values let it', () => {
    expect(harmonicsWithin(360, 1)).toBe(10)
    expect(harmonicsWithin(360, 41)).toBe(4)
    expect(harmonicsWithin(360, 45)).toBe(4)
    expect(harmonicsWithin(360, 91)).toBe(1)
    expect(harmonicsWithin(11, 33)).toBe(2)
    expect(harmonicsWithin(3, 120)).toBe(0)
    expect(levelHarmonics(level(form), turnTable(angles, 30), 0)).toBeUndefined()
  })
})

describe('two-contact equivalents', () => {
  it('are free of eccentricity and of odd lobes, and twice an oval', () => {
    const found = twoContact(
      angles,
      level((turn) => 9 * Math.cos(turn) + 4 * Math.cos(3 * turn) + 6 * Math.cos(2 * turn)),
      0.5,
      50,
    )
    expect(found?.outOfRound.valueUm).toBeCloseTo(24, 9)
    expect(found?.largest).toEqual({ axisDegrees: 0, sumUm: expect.closeTo(12, 9) })
    expect(found?.smallest).toEqual({ axisDegrees: 90, sumUm: expect.closeTo(-12, 9) })
    expect(found?.sumsUm).toHaveLength(36)
  })

  it('leave out an axis that has a port at either end', () => {
    const found = twoContact(
      angles,
      level(
        () => 1,
        (angle) => angle < 100 || angle > 140,
      ),
      0.5,
      50,
    )
    expect(found?.axesDegrees.filter((axis) => axis > 95 && axis < 145)).toEqual([])
    expect(found?.axesDegrees).toContain(95)
    const none = twoContact(
      angles,
      level(
        () => 1,
        (angle) => angle < 170,
      ),
      0.5,
      50,
    )
    expect(none).toBeUndefined()
  })

  it('take the radius opposite between its neighbours where angles have no opposite, 45 angles, seed 93', () => {
    const odd = Array.from({ length: 45 }, (_, i) => 8 * i)
    const random = seededRandom(93)
    const slope = random.normal(3)
    const found = twoContact(
      odd,
      Float64Array.from(odd, (angle) => slope * angle),
      0.5,
      50,
    )
    for (const [i, axis] of (found?.axesDegrees ?? []).entries()) {
      if (axis + 180 > 352) continue
      expect(found?.sumsUm[i]).toBeCloseTo(slope * (2 * axis + 180), 9)
    }
    // From 352° on the neighbour lies past 0°.
    expect(found?.axesDegrees.at(-1)).toBe(176)
    expect(found?.sumsUm.at(-1)).toBeCloseTo(slope * (176 + 352 / 2), 9)
  })
})
