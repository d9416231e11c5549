import { describe, expect, it } from 'vitest'
import { blundersOf, unseenOf } from '../../../../src/core/blunders/blunders'
import { offsFromOthers } from '../../../../src/core/blunders/expected-from-others'
import type { ReadStation, ReadSurvey } from '../../../../src/core/blunders/read-survey'
import type { Blunder } from '../../../../src/core/findings'
import { report } from '../../../proof/record'
import { runCount } from '../../../proof/run-count'
import { ironBore, type Made, platedBore, readSurvey, reread } from './read-survey'

const surveys = runCount({ quick: 300, full: 10_000 })
const stepMm = 0.002
const bores: readonly (readonly [string, Made])[] = [
  ['an iron bore, ten-micron dial', ironBore],
  ['a plated bore, one-micron dial', platedBore],
]

function shareOf(
  made: Made,
  seed: number,
  spoil: (survey: ReadSurvey, at: ReadStation) => ReadSurvey,
  isFound: (found: readonly Blunder[], at: ReadStation) => boolean,
): number {
  let hits = 0
  for (let i = 0; i < surveys; i++) {
    const clean = readSurvey(made, seed + i)
    const at = clean.stations[i % clean.stations.length]
    if (!at) throw new Error('no stations')
    if (isFound(blundersOf(spoil(clean, at), stepMm), at)) hits++
  }
  return hits / surveys
}

const isAt = (station: ReadStation, at: ReadStation) =>
  station.depthMm === at.depthMm && station.axisDegrees === at.axisDegrees

describe.each(bores)('simulated surveys of %s, seeds from 7001', (name, made) => {
  it('raise a question in fewer than one clean survey in a hundred', () => {
    const asked = shareOf(
      made,
      7001,
      (survey) => survey,
      (found) => found.length > 0,
    )
    report(
      `Blunders, ${name}: clean surveys with a question`,
      { surveys, share: `${(100 * asked).toFixed(2)} %` },
      7001,
    )
    expect(asked).toBeLessThan(0.01)
  })

  it.each([1, -1])('show a reading that is %i turn off, with its mend', (turns) => {
    const turnMm = made.survey.turnMm ?? 0
    const found = shareOf(
      made,
      7001,
      (survey, at) => reread(survey, (size, s) => (isAt(s, at) ? size + turns * turnMm : size)),
      ([first, ...rest], at) =>
        rest.length === 0 &&
        first?.code === 'whole-turn' &&
        isAt({ ...at, ...first.place }, at) &&
        first.turns === turns &&
        first.mend.kind === 'shift-repeats' &&
        first.mend.byMm === -turns * turnMm &&
        first.mend.repeats.length === at.sizesMm.length,
    )
    expect(found).toBeGreaterThanOrEqual(0.99)
  })

  it('show a single repeat that is a turn off', () => {
    const turnMm = made.survey.turnMm ?? 0
    const found = shareOf(
      made,
      7001,
      (survey, at) =>
        reread(survey, (size, s, repeat) => (isAt(s, at) && repeat === 1 ? size + turnMm : size)),
      ([first], at) =>
        first?.code === 'whole-turn' &&
        isAt({ ...at, ...first.place }, at) &&
        first.mend.kind === 'shift-repeats' &&
        first.mend.repeats.join() === '1',
    )
    expect(found).toBeGreaterThanOrEqual(0.99)
  })

  it('show a sleeve misread by half a millimetre at the land', () => {
    const found = shareOf(
      made,
      7001,
      (survey) => reread(survey, (size) => size + 0.5),
      ([first], _at) => first?.code === 'setting' && first.cause === 'sleeve' && first.byMm === -0.5,
    )
    expect(found).toBeGreaterThanOrEqual(0.99)
  })

  it('show axes changed over at a level that holds a clear oval', () => {
    const depth = made.levelsMm[2] ?? 0
    const found = shareOf(
      made,
      7001,
      (survey) => {
        const sizes = (axis: number) =>
          survey.stations.find((s) => s.depthMm === depth && s.axisDegrees === axis)?.sizesMm ?? []
        return reread(survey, (size, s, repeat) => {
          if (s.depthMm !== depth || s.axisDegrees % 90 !== 0) return size
          return sizes(90 - s.axisDegrees)[repeat] ?? size
        })
      },
      (found) =>
        found.some(
          (b) => b.code === 'axes-swapped' && b.depthMm === depth && b.axesDegrees.join() === '0,90',
        ),
    )
    report(`Blunders, ${name}: axes changed over`, { surveys, found: `${(100 * found).toFixed(1)} %` }, 7001)
    // The plated bore's oval is only some five u: it need not always be seen.
    expect(found).toBeGreaterThanOrEqual(made === ironBore ? 0.99 : 0.5)
  })
})

describe('a wrong sign', () => {
  const turned = (made: Made, survey: ReadSurvey) =>
    reread(survey, (size) => 2 * (made.survey.zeroMm ?? 0) - size)

  it('is found where the land is known and lies clear of the zero, seeds from 7001', () => {
    const narrow: Made = {
      ...ironBore,
      trueMm: (depth, axis) => ironBore.trueMm(depth, axis) + 0.012,
      survey: { ...ironBore.survey, newMinMm: 86.015, newMaxMm: 86.025 },
    }
    const found = shareOf(
      narrow,
      7001,
      (survey) => turned(narrow, survey),
      ([first]) => first?.code === 'sign',
    )
    expect(found).toBeGreaterThanOrEqual(0.99)
  })

  it('is said to be invisible in the middle of a band, and without a land', () => {
    const made: Made = {
      ...ironBore,
      trueMm: (depth, axis) => (depth === 4 ? 86.002 : ironBore.trueMm(depth, axis)),
      survey: { ...ironBore.survey, newMinMm: 85.99, newMaxMm: 86.01 },
    }
    expect(unseenOf(readSurvey(made, 7001))).toContain('setting-and-sign')
    expect(unseenOf(readSurvey({ ...ironBore, landsMm: [] }, 7001))).toContain('setting-and-sign')
  })
})

describe('a caliper', () => {
  const noLand: Made = { ...ironBore, landsMm: [] }

  it('shows a sleeve step where there is no land', () => {
    const survey = { ...reread(readSurvey(noLand, 7001), (size) => size - 0.5), caliperMm: 86.05 }
    expect(blundersOf(survey, stepMm)).toEqual([
      {
        code: 'setting',
        cause: 'sleeve',
        by: 'caliper',
        byMm: 0.5,
        mend: { kind: 'shift-setting', byMm: 0.5 },
      },
    ])
  })

  it('is asked about itself where no slip explains the difference', () => {
    const survey = { ...readSurvey(noLand, 7001), caliperMm: 85.7 }
    expect(blundersOf(survey, stepMm).map(({ code }) => code)).toEqual(['caliper-disagrees'])
  })

  it('that agrees within its own doubt raises nothing', () => {
    expect(blundersOf({ ...readSurvey(noLand, 7001), caliperMm: 86 }, stepMm)).toEqual([])
  })
})

describe('levels', () => {
  /** The same readings with the levels written from the wrong end: the bottom takes the place of the land. */
  const turned = (made: Made) => (survey: ReadSurvey) => {
    const { levelsMm } = made
    const last = levelsMm[levelsMm.length - 1] ?? 0
    const stations = survey.stations.map((s) => {
      const depthMm = levelsMm[levelsMm.length - 1 - levelsMm.indexOf(s.depthMm)] ?? 0
      return { ...s, depthMm, land: s.depthMm === last }
    })
    return { ...survey, stations }
  }
  const isUpsideDown = ([first]: readonly Blunder[]) => first?.code === 'levels-upside-down'

  it('written from the wrong end are found by the land where the other end is worn, seeds from 7001', () => {
    const worn: Made = {
      ...ironBore,
      trueMm: (depth, axis) => ironBore.trueMm(depth, axis) + (depth === 4 ? 0 : 0.04),
    }
    const found = shareOf(worn, 7001, turned(worn), isUpsideDown)
    report(
      'Blunders, levels from the wrong end, bottom worn',
      { surveys, found: `${(100 * found).toFixed(1)} %` },
      7001,
    )
    expect(found).toBeGreaterThanOrEqual(0.99)
    expect(unseenOf(readSurvey(worn, 7001))).not.toContain('levels-upside-down')
  })

  it('written from the wrong end pass where the other end is as good as new, seeds from 7001', () => {
    // The bottom of this bore is worn by 6 µm beside a band of 20: it passes for a land.
    const found = shareOf(ironBore, 7001, turned(ironBore), isUpsideDown)
    report('Blunders, levels from the wrong end', { surveys, found: `${(100 * found).toFixed(1)} %` }, 7001)
    expect(found).toBeLessThan(0.2)
    expect(unseenOf(readSurvey(ironBore, 7001))).toContain('levels-upside-down')
  })

  it('written from the wrong end in a worn bore without a land are found, seeds from 7001', () => {
    const made: Made = { ...ironBore, levelsMm: [10, 40, 80, 125], landsMm: [] }
    const { levelsMm } = made
    const found = shareOf(
      made,
      7001,
      (survey) => ({
        ...survey,
        stations: survey.stations.map((s) => ({
          ...s,
          depthMm: levelsMm[levelsMm.length - 1 - levelsMm.indexOf(s.depthMm)] ?? 0,
        })),
      }),
      ([first]) => first?.code === 'levels-upside-down',
    )
    expect(found).toBeGreaterThanOrEqual(0.99)
  })
})

describe('a typing slip', () => {
  it.each([
    ['two digits changed over', 86.083, 86.038],
    ['ten times the deviation', 86.9, 86.09],
  ])('with %s is asked about with the likelier number', (_name, typed, meant) => {
    const clean = readSurvey({ ...ironBore, repeats: 1, repeatMm: 1e-5, scaleMm: 1e-4 }, 7001)
    const level = (s: ReadStation) => (s.depthMm === 40 ? meant : s.land ? 86.008 : meant)
    const survey = reread(clean, (_size, s) => (s.depthMm === 40 && s.axisDegrees === 45 ? typed : level(s)))
    const [first] = blundersOf(survey, stepMm)
    expect(first).toMatchObject({ code: 'digits', place: { depthMm: 40, axisDegrees: 45 }, readMm: typed })
    expect(first?.code === 'digits' ? first.likelierMm : 0).toBeCloseTo(meant, 9)
  })
})

describe('whether a typing slip of 0.09 mm in a plain bore that was read once would be seen', () => {
  const grids = [2, 3, 4, 5, 6].flatMap((levels) => [1, 2, 3, 4, 6].map((axes) => [levels, axes] as const))
  const surveyOf = (levels: number, axes: number, repeats: number) =>
    readSurvey(
      {
        ...ironBore,
        levelsMm: Array.from({ length: levels }, (_, i) => 10 + 12 * i),
        axesDegrees: Array.from({ length: axes }, (_, i) => (180 * i) / axes),
        landsMm: [],
        trueMm: (_depth, axis) => 86.05 + 0.004 * Math.cos((2 * axis * Math.PI) / 180),
        repeats,
        repeatMm: 0.0005,
        scaleMm: 0.0005,
      },
      7001,
    )
  // 86.05 is read 86.14: far beyond ten times the scatter, and far below a turn.
  const slipped = (survey: ReadSurvey, at: ReadStation) =>
    reread(survey, (size, s, repeat) => (isAt(s, at) && repeat === 0 ? size + 0.09 : size))

  it.each(grids)('is said truly for %i levels on %i axes', (levels, axes) => {
    const clean = surveyOf(levels, axes, 1)
    const standOut = clean.stations.filter((at) => {
      const survey = slipped(clean, at)
      const { offsMm, scatterMm } = offsFromOthers(survey.stations)
      return Math.abs(offsMm[clean.stations.indexOf(at)] ?? 0) > 10 * scatterMm
    })
    // Of three stations no question is asked.
    const isAsked = clean.stations.length > 3 && standOut.length === clean.stations.length
    expect(unseenOf(clean).includes('digits')).toBe(!isAsked)
  })

  it('is yes where each station was read twice', () => {
    const clean = surveyOf(3, 2, 2)
    expect(unseenOf(clean)).not.toContain('digits')
    const [first] = clean.stations
    if (!first) throw new Error('no stations')
    expect(blundersOf(slipped(clean, first), stepMm)).toMatchObject([{ code: 'repeats-spread' }])
  })
})

describe('repeats', () => {
  it('that spread far beyond the gauge are asked about, where they are', () => {
    const survey = reread(readSurvey(platedBore, 7002), (size, s, repeat) =>
      s.depthMm === 16 && s.axisDegrees === 90 && repeat === 0 ? size + 0.015 : size,
    )
    expect(blundersOf(survey, 0.001)).toMatchObject([
      { code: 'repeats-spread', place: { depthMm: 16, axisDegrees: 90 } },
    ])
  })
})

describe('a part that cools', () => {
  const zigzag = [4, 9, 1, 11, 7, 2, 10, 5, 0, 8, 6, 3]

  it('is seen where the order is not that of rows, and said to be invisible where it is', () => {
    const survey = readSurvey(
      { ...ironBore, levelsMm: [10, 40, 80], landsMm: [], repeatMm: 0.0005, scaleMm: 0.0005 },
      7003,
    )
    const inOrder = zigzag.flatMap((i) => survey.stations[i] ?? [])
    const cooling = (stations: readonly ReadStation[]) => ({
      ...survey,
      stations: stations.map((s, i) => ({ ...s, diameterMm: s.diameterMm - 0.004 * i })),
    })
    expect(unseenOf(survey)).toContain('drift-with-order')
    expect(unseenOf({ ...survey, stations: inOrder })).not.toContain('drift-with-order')
    const found = blundersOf(cooling(inOrder), stepMm).find(({ code }) => code === 'drift-with-order')
    expect(found?.code === 'drift-with-order' ? found.overSurveyMm : 0).toBeCloseTo(-0.044, 2)
    expect(blundersOf({ ...survey, stations: inOrder }, stepMm)).toEqual([])
  })
})
