import { describe, expect, it } from 'vitest'
import type { Verdict } from '../../../src/core/findings'
import { findingRows, markText, type Row, readOut } from '../../../src/words/findings'
import {
  at,
  band,
  bore,
  conformity,
  difference,
  findingsOf,
  gradeA,
  ovality,
  station,
  taper,
} from './finding-builder'

function rowOf(id: string, change: Parameters<typeof bore>[0]): Row {
  const finding = bore(change)
  const other = bore({ boreId: 'b2', boreName: 'New', role: 'for-comparison' })
  const row = findingRows(finding, findingsOf(finding, other)).find((one) => one.id === id)
  if (!row) throw new Error(`no row ${id}`)
  return row
}

const stationWith = (verdict: Verdict, lean: 'inside' | 'above' | 'below', leanProbability: number) => [
  station(at(8, 0), 54.028, { conformity: conformity({ verdict, lean, leanProbability }) }),
  station(at(8, 90), 54.015),
]

describe('the rows of findings', () => {
  it('come in the order in which they are read', () => {
    const finding = bore({
      ovality: [ovality(), ovality({ rule: 'pooled' })],
      taper: [taper()],
      differences: [difference()],
    })
    const other = bore({ boreId: 'b2', boreName: 'New', role: 'for-comparison' })
    expect(findingRows(finding, findingsOf(finding, other)).map(({ id }) => id)).toEqual([
      'largest',
      'smallest',
      'ovality',
      'ovality:pooled',
      'oval',
      'taper',
      'widest-mean',
      'difference:b2',
      'mean-difference:b2',
    ])
  })

  it('say in one line which grades the bore is inside, out of or too close to', () => {
    const grade = (gradeName: string, verdict: Verdict, canBeProven = true) => ({
      gradeName,
      minMm: 54,
      maxMm: 54.006,
      verdict,
      provenAbove: [],
      provenBelow: [],
      deciding: at(8, 0),
      lean: 'inside' as const,
      leanProbability: 0.8,
      canBeProven,
    })
    const grades = [
      grade('A', 'above'),
      grade('B', 'inside'),
      grade('C', 'too-close'),
      grade('D', 'below'),
      grade('E', 'too-close', false),
    ]
    expect(rowOf('grades', { grades, pair: band })).toMatchObject({
      name: 'Size grades',
      figure: 'inside B',
      detail:
        'too close to call: C · too narrow for this gauge: E · over: A · under: D · inside where all 2 stations are',
    })
    expect(rowOf('grades', { grades: grades.slice(0, 1) })).toMatchObject({
      figure: 'out of all',
      detail: 'over: A · inside where all 2 stations are · for information: the wear limit alone is judged',
    })
    expect(rowOf('grades', { grades: grades.slice(2, 3) }).figure).toBe('none proven')
    const many = Array.from({ length: 9 }, (_, i) => grade(`${i + 1}`, 'above'))
    expect(rowOf('grades', { grades: many }).detail).toMatch(/^over: 1, 2, 3, 4, 5, 6 and 3 more · /)
  })

  it('are none without a reading that counts', () => {
    const finding = bore({ stations: [station(at(8, 0), 54, { counted: false })] })
    expect(findingRows(finding, findingsOf(finding))).toEqual([])
  })

  it('give the largest diameter with its doubt, limit, chances and bar', () => {
    const row = rowOf('largest', { stations: stationWith('too-close', 'above', 0.74) })
    expect(row).toMatchObject({
      placeText: '8 mm, 0°',
      figure: '54.028 ± 0.005',
      detail: 'wear limit 54.050 · 3 chances in 4 that it is over',
      verdict: 'too-close',
      verdictText: 'too close',
    })
    expect(row.bar?.low).toBeCloseTo(54.0231, 9)
    expect(row.bar?.high).toBeCloseTo(54.0329, 9)
    expect(row.bar?.limit).toBe(54.05)
  })

  it('say about even as a clause of its own', () => {
    const { detail } = rowOf('largest', { stations: stationWith('too-close', 'inside', 0.5) })
    expect(detail).toBe('wear limit 54.050 · about even whether it is inside')
  })

  it.each([
    ['largest', band, 'largest new size 54.012 · more than 99 chances in 100 that it is inside'],
    ['smallest', band, 'smallest new size 54.000 · more than 99 chances in 100 that it is inside'],
    ['largest', gradeA, 'largest of grade A 54.006 · more than 99 chances in 100 that it is inside'],
    ['smallest', gradeA, 'smallest of grade A 54.000 · more than 99 chances in 100 that it is inside'],
  ])('name the limit the %s is judged by', (id, pair, detail) => {
    expect(rowOf(id, { pair }).detail).toBe(detail)
  })

  it('do not judge the smallest diameter beside a wear limit', () => {
    const row = rowOf('smallest', {})
    expect(row.detail).toBe('smallest new size 54.000, not judged beside a wear limit')
    expect(row).not.toHaveProperty('verdict')
    expect(row).not.toHaveProperty('bar')
  })

  it('say that no limit is entered where there is none', () => {
    const { pair: _, ...rest } = bore({
      stations: [station(at(8, 0), 54.028), station(at(8, 90), 54.015)].map(({ conformity: __, ...s }) => s),
      verdict: { known: false, why: 'no-limits' },
    })
    const row = findingRows(rest, findingsOf(rest))[0]
    expect(row).toMatchObject({ detail: 'no limit entered' })
    expect(row).not.toHaveProperty('verdict')
  })

  it('print the rule and the limit beside out-of-round, with its interval and not a ±', () => {
    expect(rowOf('ovality', { ovality: [ovality()] })).toMatchObject({
      name: 'Out-of-round',
      figure: '13 µm (7 to 19)',
      placeText: 'larger at 8 mm, 0°; smaller at 8 mm, 90°',
      detail: 'limit 15 µm · largest less smallest at one level · leans inside',
      verdict: 'too-close',
      bar: { low: 0.007, value: 0.013, high: 0.019, limit: 0.015 },
    })
  })

  it('print how a limit in proportion came about, and that it is the smallest', () => {
    const limitFrom = { of: 'bore', perMm: 0.00028, lengthMm: 54.012 } as const
    const detail = (change: Parameters<typeof ovality>[0]) =>
      rowOf('ovality', { ovality: [ovality({ verdict: 'above', ...change })] }).detail
    const rule = 'largest less smallest at one level'
    expect(detail({ limitMm: 0.01512336, limitFrom })).toBe(`limit 15.1 µm = 0.00028 of 54.012 mm · ${rule}`)
    expect(
      detail({ limitMm: 0.015, limitFrom: { of: 'travel', perMm: 0.0005, lengthMm: 30 }, limitsGiven: 2 }),
    ).toBe(`limit 15 µm = 0.0005 of 30 mm travel, the smallest of 2 given · ${rule}`)
    expect(detail({ limitMm: 0.015, limitsGiven: 3 })).toBe(`limit 15 µm, the smallest of 3 given · ${rule}`)
    expect(detail({ limitOpen: 'no-travel' })).toBe(
      `limit 15 µm · a limit goes by the travel: enter it among the limits · ${rule}`,
    )
  })

  it('print each other rule as a smaller line', () => {
    const pooled = ovality({ rule: 'pooled', valueMm: 0.022, lowMm: 0.0164, highMm: 0.0276 })
    expect(rowOf('ovality:pooled', { ovality: [ovality(), pooled] })).toMatchObject({
      rank: 'minor',
      name: 'by largest on X less smallest on Y, all levels pooled',
      figure: '22 µm (16 to 28)',
    })
  })

  it('leave out another rule that cannot be computed, and say why of the chosen one', () => {
    const none = { known: false, rule: 'pooled', why: 'axes-not-named' } as const
    expect(findingRows(bore({ ovality: [ovality(), none] }), findingsOf()).map(({ id }) => id)).not.toContain(
      'ovality:pooled',
    )
    expect(rowOf('ovality', { ovality: [{ ...none, limitMm: 0.015 }] })).toMatchObject({
      figure: 'not yet',
      detail:
        'name the axes X and Y of the manual among the limits · limit 15 µm · largest on X less smallest on Y, all levels pooled',
    })
  })

  it('show a taper that is tighter at the deck by its size, and where it is the larger', () => {
    const down = taper({
      valueMm: -0.016,
      lowMm: -0.022,
      highMm: -0.01,
      larger: at(80, 0),
      smaller: at(8, 0),
    })
    expect(rowOf('taper', { taper: [down] })).toMatchObject({
      figure: '16 µm (10 to 22)',
      placeText: 'larger at 80 mm, 0°; smaller at 8 mm, 0°',
      bar: { low: 0.01, value: 0.016, high: 0.022, limit: 0.025 },
    })
  })

  it('keep the sign of a figure whose interval holds both', () => {
    const unsure = taper({ valueMm: -0.003, lowMm: -0.009, highMm: 0.003 })
    expect(rowOf('taper', { taper: [unsure] })).toMatchObject({
      figure: '−3 µm (−9 to +3)',
      bar: { low: -0.003, value: 0.003, high: 0.009, limit: 0.025 },
    })
  })

  it('show a plain difference with ± and its chances', () => {
    const linear = taper({
      rule: 'level-means',
      interval: 'linear',
      valueMm: 0.024,
      lowMm: 0.0213,
      highMm: 0.0267,
      verdict: 'too-close',
      probabilityAbove: 0.26,
    })
    expect(rowOf('taper', { taper: [linear] })).toMatchObject({
      figure: '+24 ± 3 µm',
      detail: 'limit 25 µm · mean at the top less mean at the bottom · 3 chances in 4 that it is inside',
    })
  })

  it('give the mean of the widest level', () => {
    expect(rowOf('widest-mean', {})).toMatchObject({
      placeText: '8 mm',
      figure: '54.022 ± 0.005',
      detail: 'mean of 2 axes',
    })
  })

  it('set a bore beside the one for comparison, with what may be how they were made', () => {
    expect(rowOf('difference:b2', { differences: [difference()] })).toMatchObject({
      name: 'Largest difference from New',
      placeText: '8 mm, 0°',
      figure: '+24 ± 4 µm',
      detail:
        '2 stations both have · the largest read, not a bound · two new bores may differ by ± 10 µm as made',
    })
    expect(rowOf('mean-difference:b2', { differences: [difference()] })).toMatchObject({
      figure: '+18 ± 3 µm',
      detail: '2 stations both have',
    })
  })

  it('carry no verdict, limit or bar for a bore for comparison', () => {
    const finding = bore({ role: 'for-comparison', ovality: [ovality()], taper: [taper()] })
    for (const row of findingRows(finding, findingsOf(finding))) {
      expect(row).not.toHaveProperty('verdict')
      expect(row).not.toHaveProperty('bar')
      expect(row.detail).not.toMatch(/limit|chance/)
    }
  })
})

describe('the mark of a station', () => {
  it('is one word', () => {
    expect(markText(station(at(8, 0), 54))).toBe('inside')
    expect(markText(station(at(8, 0), 54, { counted: false }))).toBe('port?')
    const { conformity: _, ...unjudged } = station(at(8, 0), 54)
    expect(markText(unjudged)).toBe('no limit')
  })
})

describe('the read-out', () => {
  const nearest = station(at(25, 90), 54.012)
  const wall = { diameterMm: 54.0101, hatched: false, nearest, nearestDistanceMm: 5.2, isReading: false }

  it.each([
    ['25 mm · 90° · 54.012 ± 0.005 · a reading', { isReading: true, nearestDistanceMm: 0 }, 25, 90],
    ['30.2 mm · 90° · drawn 54.010; nearest reading 5 mm away, 54.012 ± 0.005', {}, 30.21, 89.7],
    [
      '37 mm · 0° · not measured; nearest reading 12 mm away',
      { hatched: true, nearestDistanceMm: 12 },
      37,
      359.8,
    ],
    ['37 mm · 10° · exhaust port', { hatched: true, port: 'exhaust port' }, 37, 10],
    [
      '25.4 mm · 90° · drawn 54.010; nearest reading less than 1 mm away, 54.012 ± 0.005',
      { nearestDistanceMm: 0.4 },
      25.4,
      90,
    ],
  ])('says what is there: %s', (line, change, depthMm, angleDegrees) => {
    expect(readOut({ ...wall, ...change }, { depthMm, angleDegrees })).toBe(line)
  })
})
