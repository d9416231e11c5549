import { describe, expect, it } from 'vitest'
import type { Flaw } from '../../../src/core/problem'
import { checkJob } from '../../../src/job/check-job'
import { fieldRanges } from '../../../src/job/field-ranges'
import { mostOf } from '../../../src/job/most-of'
import { newJob } from '../../../src/job/new-job'
import { countingIds, sampleJob, spoilt } from './sample-job'

type Path = (string | number)[]
const setUp: Path = ['setUps', 0]
const bore: Path = ['bores', 0]
const survey: Path = [...bore, 'surveys', 0]
const reading: Path = [...survey, 'readings', 0]

function problemsOf(path: Path, value: unknown) {
  const result = checkJob(spoilt(path, value))
  return result.ok ? [] : result.problems.map(({ problem }) => problem)
}

describe('the schema of a job', () => {
  it('takes a job with every field filled in, and gives it back equal', () => {
    expect(checkJob(sampleJob)).toEqual({ ok: true, job: sampleJob })
  })

  it('refuses a job without bores', () => {
    const result = checkJob({ ...newJob(countingIds()), bores: [] })
    const problems = result.ok ? [] : result.problems.map(({ problem }) => problem)
    expect(problems).toEqual([{ code: 'list-too-short', least: 1, path: 'bores' }])
  })

  it('takes a new job', () => {
    const job = newJob(countingIds())
    expect(checkJob(job)).toEqual({ ok: true, job })
  })

  it('takes every optional field left out', () => {
    const optional: Path[] = [
      ...['machine', 'note', 'invented'].map((key) => [key]),
      ...['newMinMm', 'newMaxMm', 'wearLimitMm', 'ovalityRule', 'ovalityAxesDegrees'].map((key) => [
        'spec',
        key,
      ]),
      ...['name', 'stepUm', 'scaleUm', 'contactHalfWidthMm'].map((key) => ['gauges', 0, key]),
      ...['errorUm', 'doubtUm', 'expansionPerK'].map((key) => ['standards', 0, key]),
      ...[
        'largerIs',
        'zeroOpenUm',
        'zeroCloseUm',
        'boreTemperatureC',
        'boreThermometerId',
        'soakedTogether',
      ].map((key) => [...setUp, key]),
      ...['grade', 'lengthMm', 'ringTravelMm', 'wall'].map((key) => [...bore, key]),
      ...['name', 'date', 'hoursRun'].map((key) => [...survey, key]),
    ]
    for (const path of optional) expect(problemsOf(path, undefined), path.join('.')).toEqual([])
  })

  const wrong: [string, Path, unknown, string, Flaw][] = [
    [
      'a field left out that must be there',
      [...setUp, 'settingSizeMm'],
      undefined,
      'setUps[0].settingSizeMm',
      { code: 'missing', field: 'settingSizeMm' },
    ],
    ['a choice left out', [...bore, 'role'], undefined, 'bores[0].role', { code: 'missing', field: 'role' }],
    [
      'a number written as text',
      [...setUp, 'settingSizeMm'],
      '54',
      'setUps[0].settingSizeMm',
      { code: 'wrong-kind', expected: 'number', found: '"54"' },
    ],
    ['a text written as a number', ['name'], 7, 'name', { code: 'wrong-kind', expected: 'text', found: '7' }],
    [
      'null for not recorded',
      [...setUp, 'zeroCloseUm'],
      null,
      'setUps[0].zeroCloseUm',
      { code: 'wrong-kind', expected: 'number', found: 'null' },
    ],
    [
      'a list where a bore should be',
      bore,
      [],
      'bores[0]',
      { code: 'wrong-kind', expected: 'object', found: '[…]' },
    ],
    [
      'an object where a list should be',
      ['bores'],
      {},
      'bores',
      { code: 'wrong-kind', expected: 'list', found: '{…}' },
    ],
    [
      'yes for true',
      ['invented'],
      'yes',
      'invented',
      { code: 'wrong-kind', expected: 'true-or-false', found: '"yes"' },
    ],
    [
      'a kind of wall nobody knows',
      [...bore, 'wall', 'kind'],
      'wood',
      'bores[0].wall.kind',
      {
        code: 'not-one-of',
        options: ['plated-aluminium', 'aluminium-silicon', 'grey-iron', 'steel'],
        found: '"wood"',
      },
    ],
    [
      'a bore of 3 m',
      ['spec', 'wearLimitMm'],
      3000,
      'spec.wearLimitMm',
      { code: 'out-of-range', found: 3000, least: 1, most: 2000, mostExcluded: false, unit: 'mm' },
    ],
    [
      'a reading with a lost decimal point',
      [...reading, 'sizesMm', 1],
      54035,
      'bores[0].surveys[0].readings[0].sizesMm[1]',
      { code: 'out-of-range', found: 54035, least: 1, most: 2000, mostExcluded: false, unit: 'mm' },
    ],
    [
      'a number too large for any place',
      [...setUp, 'settingSizeMm'],
      1e308,
      'setUps[0].settingSizeMm',
      { code: 'out-of-range', found: 1e308, least: 1, most: 2000, mostExcluded: false, unit: 'mm' },
    ],
    [
      'an infinite number',
      [...setUp, 'settingSizeMm'],
      Number.POSITIVE_INFINITY,
      'setUps[0].settingSizeMm',
      {
        code: 'out-of-range',
        found: Number.POSITIVE_INFINITY,
        least: 1,
        most: 2000,
        mostExcluded: false,
        unit: 'mm',
      },
    ],
    [
      'not a number',
      [...setUp, 'zeroOpenUm'],
      Number.NaN,
      'setUps[0].zeroOpenUm',
      {
        code: 'out-of-range',
        found: Number.NaN,
        least: -20000,
        most: 20000,
        mostExcluded: false,
        unit: 'µm',
      },
    ],
    [
      'a bore hotter than any bench',
      [...setUp, 'boreTemperatureC'],
      81,
      'setUps[0].boreTemperatureC',
      { code: 'out-of-range', found: 81, least: -50, most: 80, mostExcluded: false, unit: '°C' },
    ],
    [
      'an axis of 180°, which is the one of 0°',
      [...survey, 'axesDegrees', 2],
      180,
      'bores[0].surveys[0].axesDegrees[2]',
      { code: 'out-of-range', found: 180, least: 0, most: 180, mostExcluded: true, unit: '°' },
    ],
    [
      'expansion in µm/m/K instead of 1/K',
      ['standards', 0, 'expansionPerK'],
      11.5,
      'standards[0].expansionPerK',
      { code: 'out-of-range', found: 11.5, least: 0, most: 0.0001, mostExcluded: false, unit: '1/K' },
    ],
    ['a key nobody knows', ['colour'], 'red', '', { code: 'unknown-key', key: 'colour' }],
    [
      'a misspelt key',
      [...reading, 'sizesmm'],
      [],
      'bores[0].surveys[0].readings[0]',
      { code: 'unknown-key', key: 'sizesmm', nearest: 'sizesMm' },
    ],
    [
      'a misspelt key in an optional part',
      [...bore, 'wall', 'plattingUm'],
      70,
      'bores[0].wall',
      { code: 'unknown-key', key: 'plattingUm', nearest: 'platingUm' },
    ],
    [
      'a blank name of a port',
      [...bore, 'ports', 0, 'name'],
      '  ',
      'bores[0].ports[0].name',
      { code: 'text-blank' },
    ],
    ['an empty id', [...bore, 'ports', 0, 'id'], '', 'bores[0].ports[0].id', { code: 'text-blank' }],
    [
      'a name with an escape character',
      [...bore, 'name'],
      'a\u001b[2J',
      'bores[0].name',
      { code: 'control-character' },
    ],
    ['a note with a zero byte', ['note'], 'a\u0000', 'note', { code: 'control-character' }],
    [
      'a name of 200 letters',
      ['name'],
      'n'.repeat(200),
      'name',
      { code: 'text-too-long', length: 200, most: mostOf.nameLength },
    ],
    [
      'a day that never was',
      [...survey, 'date'],
      '2023-02-29',
      'bores[0].surveys[0].date',
      { code: 'not-a-date', found: '"2023-02-29"' },
    ],
    [
      'a reading without repeats',
      [...reading, 'sizesMm'],
      [],
      'bores[0].surveys[0].readings[0].sizesMm',
      { code: 'list-too-short', least: 1 },
    ],
    [
      'a check without readings',
      ['gauges', 0, 'checks', 0, 'sizesMm'],
      [],
      'gauges[0].checks[0].sizesMm',
      { code: 'list-too-short', least: 1 },
    ],
    [
      '99 repeats',
      [...reading, 'sizesMm'],
      Array(99).fill(54),
      'bores[0].surveys[0].readings[0].sizesMm',
      { code: 'list-too-long', length: 99, most: 50 },
    ],
    [
      'smallest above largest',
      ['spec', 'newMinMm'],
      54.02,
      'spec.newMinMm',
      { code: 'low-above-high', lowField: 'newMinMm', low: 54.02, highField: 'newMaxMm', high: 54.012 },
    ],
    [
      'a grade upside down',
      ['spec', 'grades', 0, 'maxMm'],
      53,
      'spec.grades[0].minMm',
      { code: 'low-above-high', lowField: 'minMm', low: 54, highField: 'maxMm', high: 53 },
    ],
    [
      'a port upside down',
      [...bore, 'ports', 0, 'toDepthMm'],
      20,
      'bores[0].ports[0].fromDepthMm',
      { code: 'low-above-high', lowField: 'fromDepthMm', low: 29, highField: 'toDepthMm', high: 20 },
    ],
    [
      'a belt upside down',
      [...bore, 'belts', 0, 'toDepthMm'],
      20,
      'bores[0].belts[0].fromDepthMm',
      { code: 'low-above-high', lowField: 'fromDepthMm', low: 70, highField: 'toDepthMm', high: 20 },
    ],
    [
      'ring travel upside down',
      [...bore, 'ringTravelMm', 'to'],
      2,
      'bores[0].ringTravelMm.from',
      { code: 'low-above-high', lowField: 'from', low: 6, highField: 'to', high: 2 },
    ],
    [
      'a port all round',
      [...bore, 'ports', 0, 'toDegrees'],
      315,
      'bores[0].ports[0].toDegrees',
      { code: 'port-all-round' },
    ],
    [
      'the manual’s axes at one place',
      ['spec', 'ovalityAxesDegrees', 'y'],
      0,
      'spec.ovalityAxesDegrees.y',
      { code: 'duplicate-value', value: 0, unit: '°' },
    ],
    [
      'a gauge that is not listed',
      [...setUp, 'gaugeId'],
      'other',
      'setUps[0].gaugeId',
      { code: 'unknown-reference', list: 'gauges', found: 'other', known: ['gauge'] },
    ],
    [
      'a standard that is not listed',
      [...setUp, 'standardId'],
      'ring',
      'setUps[0].standardId',
      { code: 'unknown-reference', list: 'standards', found: 'ring', known: ['micrometer'] },
    ],
    [
      'a thermometer that is not listed',
      [...setUp, 'boreThermometerId'],
      't',
      'setUps[0].boreThermometerId',
      { code: 'unknown-reference', list: 'thermometers', found: 't', known: ['thermometer'] },
    ],
    [
      'a set-up that is not listed',
      [...survey, 'setUpId'],
      's',
      'bores[0].surveys[0].setUpId',
      { code: 'unknown-reference', list: 'setUps', found: 's', known: ['set-up'] },
    ],
    [
      'a grade that is not listed',
      [...bore, 'grade'],
      'C',
      'bores[0].grade',
      { code: 'unknown-reference', list: 'spec.grades', found: 'C', known: ['A', 'B'] },
    ],
    [
      'two grades of one name',
      ['spec', 'grades', 1, 'name'],
      'A',
      'spec.grades[1].name',
      { code: 'duplicate-name', name: 'A' },
    ],
    [
      'two ports of one id',
      [...bore, 'ports', 1, 'id'],
      'exhaust',
      'bores[0].ports[1].id',
      { code: 'duplicate-id', id: 'exhaust' },
    ],
    [
      'one level twice',
      [...survey, 'levelsMm', 3],
      8,
      'bores[0].surveys[0].levelsMm[3]',
      { code: 'duplicate-value', value: 8, unit: 'mm' },
    ],
    [
      'one axis twice',
      [...survey, 'axesDegrees', 2],
      90,
      'bores[0].surveys[0].axesDegrees[2]',
      { code: 'duplicate-value', value: 90, unit: '°' },
    ],
    [
      'a level below the end of the bore',
      [...survey, 'levelsMm', 3],
      90,
      'bores[0].surveys[0].levelsMm[3]',
      { code: 'deeper-than-bore', depthMm: 90, lengthMm: 88 },
    ],
    [
      'a reading off the levels',
      [...reading, 'depthMm'],
      9,
      'bores[0].surveys[0].readings[0].depthMm',
      { code: 'off-level', depthMm: 9, levelsMm: [8, 35, 62] },
    ],
    [
      'a reading off the axes',
      [...reading, 'axisDegrees'],
      45,
      'bores[0].surveys[0].readings[0].axisDegrees',
      { code: 'off-axis', axisDegrees: 45, axesDegrees: [0, 90] },
    ],
    [
      'two readings at one station',
      [...reading, 'axisDegrees'],
      90,
      'bores[0].surveys[0].readings[1]',
      { code: 'duplicate-station', depthMm: 8, axisDegrees: 90 },
    ],
    [
      'a reading without values',
      [...reading, 'sizesMm'],
      undefined,
      'bores[0].surveys[0].readings[0]',
      { code: 'reading-values', found: 'none', expected: 'sizesMm' },
    ],
    [
      'a part of a reading to be taken',
      ['repeatsPerStation'],
      1.5,
      'repeatsPerStation',
      { code: 'wrong-kind', expected: 'whole-number', found: '1.5' },
    ],
    [
      'a station out of reach that is read',
      [...survey, 'unreachable', 0, 'depthMm'],
      8,
      'bores[0].surveys[0].unreachable[0]',
      { code: 'unreachable-station', found: 'read', depthMm: 8, axisDegrees: 90 },
    ],
    [
      'a station out of reach that is not planned',
      [...survey, 'unreachable', 0, 'axisDegrees'],
      45,
      'bores[0].surveys[0].unreachable[0].axisDegrees',
      { code: 'off-axis', axisDegrees: 45, axesDegrees: [0, 90] },
    ],
    [
      'a check of a gauge with both kinds of values',
      ['gauges', 0, 'checks', 0, 'dialUm'],
      [3],
      'gauges[0].checks[0]',
      { code: 'check-values', found: 'both' },
    ],
    [
      'a check of a gauge without values',
      ['gauges', 0, 'checks', 1, 'dialUm'],
      undefined,
      'gauges[0].checks[1]',
      { code: 'check-values', found: 'none' },
    ],
    [
      'a crossed study with both kinds of values',
      ['gauges', 0, 'crossedStudies', 0, 'readings', 1],
      { person: 'One', part: '2', dialUm: [3] },
      'gauges[0].crossedStudies[0]',
      { code: 'study-values', found: 'both' },
    ],
    [
      'a reading of a crossed study without values',
      ['gauges', 0, 'crossedStudies', 1, 'readings', 0, 'dialUm'],
      undefined,
      'gauges[0].crossedStudies[1]',
      { code: 'study-values', found: 'none' },
    ],
    [
      'a share that is none',
      ['spec', 'taperLimitPerMmOfTravel'],
      0.5,
      'spec.taperLimitPerMmOfTravel',
      { code: 'out-of-range', found: 0.5, least: 0, most: 0.1, mostExcluded: false },
    ],
    [
      'a reading with both kinds of values',
      [...reading, 'dialUm'],
      [3],
      'bores[0].surveys[0].readings[0]',
      { code: 'reading-values', found: 'both', expected: 'sizesMm' },
    ],
  ]
  it.each(wrong)('refuses %s, and says where and why', (_, path, value, where, flaw) => {
    expect(problemsOf(path, value)).toEqual([{ ...flaw, path: where }])
  })

  it('refuses sizes where the set-up says dial deviations, at every reading', () => {
    const found = problemsOf([...setUp, 'entry'], 'deviation')
    const flaw = { code: 'reading-values', found: 'sizesMm', expected: 'dialUm' }
    expect(found).toEqual([0, 1, 2].map((n) => ({ ...flaw, path: `bores[0].surveys[0].readings[${n}]` })))
  })

  it('refuses one survey id in two bores, since findings name a survey by its id alone', () => {
    const [first] = sampleJob.bores
    const result = checkJob({ ...sampleJob, bores: [first, { ...first, id: 'second' }] })
    const problems = result.ok ? [] : result.problems.map(({ problem }) => problem)
    expect(problems).toEqual([{ code: 'duplicate-id', id: 'survey', path: 'bores[1].surveys[0].id' }])
  })

  it('refuses two bores of one id', () => {
    const [first] = sampleJob.bores
    const result = checkJob({ ...sampleJob, bores: [first, first] })
    const problems = result.ok ? [] : result.problems.map(({ problem }) => problem)
    expect(problems).toContainEqual({ code: 'duplicate-id', id: 'bore', path: 'bores[1].id' })
  })

  it('names all problems at once, and counts those past two hundred', () => {
    const readings = Array.from({ length: 300 }, () => ({ depthMm: -1, axisDegrees: 0, sizesMm: [54] }))
    const result = checkJob(spoilt([...survey, 'readings'], readings))
    const problems = result.ok ? [] : result.problems.map(({ problem }) => problem)
    // Out of range and off the levels 300 times, and the same station again 299 times.
    expect(problems).toHaveLength(201)
    expect(problems.at(-1)).toEqual({ code: 'more-problems', count: 699, path: '' })
  })

  it('has a range for every number, and none that is upside down', () => {
    for (const [field, { least, most }] of Object.entries(fieldRanges)) {
      expect(least, field).toBeLessThan(most)
    }
  })

  it('takes the ends of every range of one number, except an end that is excluded', () => {
    const lone: Path[] = [
      ['spec', 'ovalityLimitMm'],
      ['spec', 'taperLimitMm'],
      ['gauges', 0, 'stepUm'],
      ['gauges', 0, 'repeatabilityDegreesOfFreedom'],
      ['standards', 0, 'errorUm'],
      ['thermometers', 0, 'doubtK'],
      [...setUp, 'settingSizeMm'],
      [...setUp, 'boreTemperatureC'],
      [...setUp, 'zeroOpenUm'],
      [...survey, 'hoursRun'],
      [...bore, 'wall', 'platingUm'],
    ]
    for (const path of lone) {
      const range = Object.entries(fieldRanges).find(([field]) => field === path.at(-1))?.[1]
      if (!range) throw new Error(`No range for ${path.join('.')}`)
      expect(problemsOf(path, range.least), path.join('.')).toEqual([])
      expect(problemsOf(path, range.most), path.join('.')).toEqual([])
      expect(problemsOf(path, range.least - 0.0001), path.join('.')).toHaveLength(1)
      expect(problemsOf(path, range.most + 0.0001), path.join('.')).toHaveLength(1)
    }
  })
})
