import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { inspect } from '../../../src/core/inspect'
import type { SetUp } from '../../../src/core/measured'
import { findingsTable } from '../../../src/formats/findings-table'
import { readingsTable, tableUnits } from '../../../src/formats/readings-table'
import { readWholeTableFile } from '../../../src/formats/table-file'
import { decimalMarks } from '../../../src/formats/table-number'
import type { TableReading } from '../../../src/formats/table-readings'
import { separators } from '../../../src/formats/table-text'
import { tableStyles } from '../../../src/formats/write-table'
import { checkJob } from '../../../src/job/check-job'
import { jobOfTable } from '../../../src/job/job-of-table'
import { newJob } from '../../../src/job/new-job'
import type { Job } from '../../../src/job/schema'
import { takeTable } from '../../../src/job/take-table'
import { runCount } from '../../proof/run-count'
import { sampleJob } from './sample-job'

const counter = () => {
  let count = 0
  return () => `made-${++count}`
}

function readingsIn(text: string): readonly TableReading[] {
  const file = readWholeTableFile(new TextEncoder().encode(text))
  if (!file.ok) throw new Error(file.why)
  expect({ open: file.open, refused: file.content.refused }).toEqual({ open: [], refused: [] })
  return file.content.readings
}

/** A new job with one bore that was read at one station, and the choice to go on with it. */
function started(
  setUp: Partial<SetUp> = {},
  readings: Job['bores'][number]['surveys'][number]['readings'] = [],
) {
  const job = newJob(counter())
  const [bore] = job.bores
  const [survey] = bore?.surveys ?? []
  const [first] = job.setUps
  if (!bore || !survey || !first) throw new Error('A new job is not as it was')
  const levelsMm = readings.map(({ depthMm }) => depthMm)
  const made: Job = {
    ...job,
    setUps: [{ ...first, settingSizeMm: 54, ...setUp }],
    bores: [{ ...bore, surveys: [{ ...survey, levelsMm, readings }] }],
  }
  return { job: made, choices: { boreId: bore.id, surveyId: survey.id } }
}

const ids = counter()

describe('the readings of a table, taken into a job', () => {
  it('go into the survey in hand, as one document that any file may hold, and leave what is there', () => {
    const { job, choices } = started({}, [{ depthMm: 8, axisDegrees: 0, sizesMm: [54.001] }])
    const table = readingsIn('depth_mm;axis;read1_mm;read2_mm\n8;0;54,009;54,01\n16;45;54,012;54,013')
    const left = takeTable(job, table, choices, ids)
    expect(left.refused.map(({ row, column, why }) => [row, column, why])).toEqual([
      [1, 2, 'station-read'],
      [1, 3, 'station-read'],
    ])
    expect(left.job.bores[0]?.surveys[0]).toMatchObject({
      levelsMm: [8, 16],
      axesDegrees: [0, 45, 90],
      readings: [
        { depthMm: 8, axisDegrees: 0, sizesMm: [54.001] },
        { depthMm: 16, axisDegrees: 45, sizesMm: [54.012, 54.013] },
      ],
    })
    const added = takeTable(job, table, { ...choices, addRepeats: true }, ids)
    expect(added.refused).toEqual([])
    expect(added.job.bores[0]?.surveys[0]?.readings[0]).toMatchObject({ sizesMm: [54.001, 54.009, 54.01] })
    expect([checkJob(left.job).ok, checkJob(added.job).ok]).toEqual([true, true])
  })

  it('go to bores by their names and to surveys by name, day and hours, and what is not there is made', () => {
    const { job, choices } = started()
    const text =
      'bore;date;hours;depth_mm;axis;size_mm\n1;2024-05-31;185;8;0;54,01\n2;2024-05-31;185;8;0;54,02\n1;;;8;0;54,03'
    const taken = takeTable(job, readingsIn(text), choices, ids)
    expect(
      taken.surveys.map(({ boreName, isNewBore, isNewSurvey }) => [boreName, isNewBore, isNewSurvey]),
    ).toEqual([
      ['1', false, true],
      ['2', true, true],
      ['1', false, false],
    ])
    const once = takeTable(taken.job, readingsIn(text), choices, ids)
    expect(once.refused).toHaveLength(3)
    expect(once.job).toBe(taken.job)
    expect(taken.job.bores.map(({ name, surveys }) => [name, surveys.length])).toEqual([
      ['1', 2],
      ['2', 1],
    ])
  })

  it('are put in the order of their numbers, and a number twice at a station is refused', () => {
    const { job, choices } = started()
    const table = readingsIn('repeat;depth_mm;axis;size_mm\n2;8;0;54,02\n1;8;0;54,01\n2;8;0;54,03')
    const taken = takeTable(job, table, choices, ids)
    expect(taken.job.bores[0]?.surveys[0]?.readings).toMatchObject([{ sizesMm: [54.01, 54.02] }])
    expect(taken.refused.map(({ row, why }) => [row, why])).toEqual([[3, 'repeat-twice']])
  })

  it('are refused where no bore is so wide, so deep, or where too many would come', () => {
    const { job, choices } = started()
    const short: Job = { ...job, bores: job.bores.map((bore) => ({ ...bore, lengthMm: 80 })) }
    const table = readingsIn('depth_mm;axis;size_mm\n8;0;0,5\n90;0;54\n30000;0;54')
    expect(takeTable(short, table, choices, ids).refused.map(({ why }) => why)).toEqual([
      'out-of-range',
      'deeper-than-bore',
      'out-of-range',
    ])
    const many = Array.from({ length: 401 }, (_, level) => `${level};0;54`).join('\n')
    const full = takeTable(job, readingsIn(`depth_mm;axis;size_mm\n${many}`), choices, ids)
    expect(full.refused.map(({ row, why }) => [row, why])).toEqual([[401, 'too-many-levels']])
    expect(checkJob(full.job).ok).toBe(true)
  })
})

describe('deviations and dial readings of a table', () => {
  const deviations = 'depth_mm;axis;deviation_um\n8;0;9\n8;90;-3'
  const dials = 'depth_mm;axis;dial_um\n8;0;9\n8;90;-3'

  it('become sizes under a set-up of sizes whose setting is known', () => {
    const { job, choices } = started()
    const known: Job = { ...job, setUps: job.setUps.map(({ settingAssumed: _, ...setUp }) => setUp) }
    const taken = takeTable(known, readingsIn(deviations), choices, ids)
    expect(taken.job.bores[0]?.surveys[0]?.readings.map(({ sizesMm }) => sizesMm)).toEqual([
      [54.009],
      [53.997],
    ])
  })

  it('wait for a setting size that nobody wrote down, and write down the one that is given', () => {
    const { job, choices } = started()
    const waiting = takeTable(job, readingsIn(deviations), choices, ids)
    expect(waiting.refused.map(({ why }) => why)).toEqual(['setting-open', 'setting-open'])
    expect(waiting.job).toBe(job)
    const taken = takeTable(job, readingsIn(deviations), { ...choices, settingSizeMm: 60 }, ids)
    expect(taken.job.setUps[0]).not.toHaveProperty('settingAssumed')
    expect(taken.job.bores[0]?.surveys[0]?.readings[0]).toMatchObject({ sizesMm: [60.009] })
  })

  it('keep the diameters when sizes and deviations are written as readings of a dial that turns the other way', () => {
    const { job, choices } = started({
      entry: 'deviation',
      largerIs: 'anticlockwise',
      zeroOpenUm: 2,
      boreTemperatureC: 20,
      referenceTemperatureC: 20,
    })
    const known: Job = { ...job, setUps: job.setUps.map(({ settingAssumed: _, ...setUp }) => setUp) }
    const written = (text: string) =>
      takeTable(known, readingsIn(text), choices, ids).job.bores[0]?.surveys[0]?.readings.map(
        ({ dialUm }) => dialUm,
      )
    // Anticlockwise is larger: 9 µm over the setting stand 9 µm before the zero at 2.
    expect(written(deviations)).toEqual([[-7], [5]])
    expect(written('depth_mm;axis;size_mm\n8;0;54,009\n8;90;53,997')).toEqual([[-7], [5]])
    expect(written(dials)).toEqual([[9], [-3]])
  })

  it('have no place among sizes, or where nothing was measured to count from', () => {
    const why = (setUp: Partial<SetUp>, text: string) => {
      const { job, choices } = started(setUp)
      return takeTable(job, readingsIn(text), choices, ids).refused[0]?.why
    }
    expect(why({}, dials)).toBe('dial-among-sizes')
    expect(why({ entry: 'direct' }, deviations)).toBe('no-setting')
    expect(why({ entry: 'reverse' }, deviations)).toBe('no-setting')
    expect(why({ entry: 'reverse' }, 'depth_mm;axis;size_mm\n8;0;54')).toBe('no-size-over-contacts')
    expect(why({ entry: 'reverse' }, dials)).toBeUndefined()
  })

  it('get a set-up of their own in a new survey beside sizes', () => {
    const { job, choices } = started()
    const taken = takeTable(job, readingsIn(dials), { ...choices, newSurvey: true, settingSizeMm: 54 }, ids)
    expect(taken.job.setUps.map(({ entry }) => entry)).toEqual(['size', 'deviation'])
    expect(taken.job.setUps[1]).not.toHaveProperty('settingAssumed')
    expect(checkJob(taken.job).ok).toBe(true)
  })
})

/** Jobs of two bores with surveys that can be told apart, figures with as many decimals as a file keeps. */
const anyJob = (() => {
  const sizes = fc.integer({ min: 53_000_000, max: 55_000_000 }).map((nm) => nm / 1e6)
  const dials = fc.integer({ min: -500_000, max: 500_000 }).map((nm) => nm / 1e3)
  const places = fc.uniqueArray(
    fc.record({
      depthMm: fc.integer({ min: 0, max: 8000 }).map((d) => d / 100),
      axisDegrees: fc.integer({ min: 0, max: 179 }),
    }),
    { minLength: 1, maxLength: 5, selector: ({ depthMm, axisDegrees }) => `${depthMm} ${axisDegrees}` },
  )
  const values = (one: fc.Arbitrary<number>) => fc.array(one, { minLength: 1, maxLength: 3 })
  const hours = fc.option(
    fc.integer({ min: 0, max: 9_999_999 }).map((h) => h / 1e3),
    { nil: undefined },
  )
  const survey = fc.record({
    hours,
    isDial: fc.boolean(),
    places,
    sizes: fc.array(values(sizes), { minLength: 5, maxLength: 5 }),
    dials: fc.array(values(dials), { minLength: 5, maxLength: 5 }),
  })
  const names = fc.uniqueArray(fc.constantFrom('1', '=A1', '-2', 'left; rear', 'a "b", c', "'5"), {
    minLength: 2,
    maxLength: 2,
  })
  return fc
    .record({
      names,
      surveys: fc.array(fc.array(survey, { minLength: 1, maxLength: 3 }), { minLength: 2, maxLength: 2 }),
    })
    .map(({ names, surveys }): Job => {
      const job = newJob(counter())
      const [set] = job.setUps
      const [bore] = job.bores
      if (!set || !bore) throw new Error('A new job is not as it was')
      const dial: SetUp = { ...set, id: 'dial', entry: 'deviation', settingSizeMm: 54 }
      return {
        ...job,
        setUps: [{ ...set, id: 'size' }, dial],
        bores: surveys.map((list, index) => ({
          ...bore,
          id: `bore-${index}`,
          name: names[index] ?? '',
          surveys: list.map(({ hours, isDial, places, sizes, dials }, number) => ({
            id: `survey-${index}-${number}`,
            ...(hours === undefined ? {} : { hoursRun: hours }),
            setUpId: isDial ? 'dial' : 'size',
            levelsMm: [...new Set(places.map(({ depthMm }) => depthMm))],
            axesDegrees: [...new Set(places.map(({ axisDegrees }) => axisDegrees))],
            readings: places.map((place, at) => ({
              ...place,
              ...(isDial ? { dialUm: dials[at] ?? [] } : { sizesMm: sizes[at] ?? [] }),
            })),
          })),
        })),
      }
    })
})()

const written = (job: Job) =>
  job.bores.map(({ name, surveys }) => ({
    name,
    surveys: surveys.map(({ hoursRun, readings }) => ({ hoursRun, readings })),
  }))

describe('readings that were exported', () => {
  it('are read back the same, with either decimal mark, each separator and both kinds of unit (seed 6)', () => {
    fc.assert(
      fc.property(
        anyJob,
        fc.constantFrom(...tableUnits),
        fc.constantFrom(...decimalMarks),
        fc.constantFrom(...separators),
        (job, unit, decimal, separator) => {
          const table = readingsIn(readingsTable(job, unit, { decimal, separator }))
          const taken = jobOfTable(table, { name: 'Read back', settingSizeMm: 54 }, counter())
          const mixed = table.some(({ as }) => as === 'dial') && table.some(({ as }) => as === 'size')
          expect(taken.refused).toEqual([])
          expect(checkJob(taken.job).ok).toBe(true)
          expect(written(taken.job)).toEqual(written(job))
          expect(taken.job.setUps).toHaveLength(mixed ? 2 : 1)
        },
      ),
      { seed: 6, numRuns: runCount({ quick: 150, full: 5000 }) },
    )
  })

  it('fill an emptied job again as it was', () => {
    const emptied: Job = {
      ...sampleJob,
      bores: sampleJob.bores.map((bore) => ({
        ...bore,
        surveys: bore.surveys.map((survey) => ({ ...survey, readings: [] })),
      })),
    }
    const [bore] = emptied.bores
    const [survey] = bore?.surveys ?? []
    if (!bore || !survey) throw new Error('The sample is not as it was')
    const table = readingsIn(readingsTable(sampleJob, 'metric', tableStyles.comma))
    const taken = takeTable(emptied, table, { boreId: bore.id, surveyId: survey.id }, ids)
    const bare = (job: Job) =>
      written(job).map(({ surveys }) =>
        surveys.map(({ readings }) => readings.map(({ confirmed: _, ...reading }) => reading)),
      )
    expect(taken.refused).toEqual([])
    expect(bare(taken.job)).toEqual(bare(sampleJob))
  })
})

describe('findings that are exported', () => {
  it('have a row for each station, and heads that name their units', () => {
    const findings = inspect(sampleJob)
    const stations = [...findings.bores, ...findings.earlier].flatMap(({ stations }) => stations)
    const lines = findingsTable(sampleJob, findings, tableStyles.comma).trim().split('\r\n')
    expect(lines).toHaveLength(stations.length + 1)
    expect(lines[0]).toMatch(
      /^bore;role;survey;date;hours;level_mm;axis_deg;.*;diameter_at_20C_mm;.*;U_95_um;.*;verdict;/,
    )
    for (const line of lines) expect(line).not.toMatch(/NaN|Infinity|undefined|null/)
    const [head = [], first = []] = lines.map((line) => line.split(';'))
    const cell = first[head.indexOf('diameter_at_20C_mm')] ?? ''
    expect(Number(cell.replace(',', '.'))).toBeCloseTo(stations[0]?.diameterMm ?? 0, 6)
  })
})
