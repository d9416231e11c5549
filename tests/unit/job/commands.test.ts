import { describe, expect, it } from 'vitest'
import { addBore, addSurvey, removeBore, removeSurvey } from '../../../src/job/bore-commands'
import {
  confirmReading,
  describeJob,
  mirrorPort,
  moveAxis,
  moveLevel,
  removeAxis,
  removeLevel,
  renameJob,
  setAxes,
  setBelts,
  setBore,
  setLevels,
  setPorts,
  setRepeats,
  setSpec,
  setSurvey,
} from '../../../src/job/commands'
import { newJob } from '../../../src/job/new-job'
import type { Job } from '../../../src/job/schema'
import { findingsOf } from '../../../src/job/selectors'
import {
  changeEntry,
  setGauge,
  setSetUp,
  setStandard,
  setThermometer,
} from '../../../src/job/set-up-commands'
import { countingIds, sampleJob } from './sample-job'

const at = (depthMm: number, axisDegrees: number) => ({ depthMm, axisDegrees })
const surveyOf = (job: Job, bore = 0) => job.bores[bore]?.surveys[0]
const readingAt = (job: Job, depthMm: number, axisDegrees: number) =>
  surveyOf(job)?.readings.find(
    (reading) => reading.depthMm === depthMm && reading.axisDegrees === axisDegrees,
  )

describe('a new job', () => {
  it('has one bore of this engine, one survey on two axes, and nothing recorded', () => {
    const job = newJob(countingIds())
    expect(job.bores.map(({ name, role }) => [name, role])).toEqual([['1', 'of-this-engine']])
    expect(surveyOf(job)).toMatchObject({ levelsMm: [], axesDegrees: [0, 90], readings: [] })
    expect(job.setUps).toMatchObject([{ entry: 'size' }])
    expect(Object.keys(job.setUps[0] ?? {})).toEqual([
      'id',
      'gaugeId',
      'standardId',
      'entry',
      'settingSizeMm',
      'settingAssumed',
    ])
  })
})

describe('changing fields', () => {
  const changes: [string, (job: Job) => Job, (job: Job) => unknown, unknown][] = [
    ['the name of the job', (job) => renameJob(job, 'Saw'), (job) => job.name, 'Saw'],
    ['its note', (job) => describeJob(job, { note: 'Dry' }), (job) => job.note, 'Dry'],
    ['a limit', (job) => setSpec(job, { wearLimitMm: 54.06 }), (job) => job.spec.wearLimitMm, 54.06],
    ['a gauge', (job) => setGauge(job, 'gauge', { stepUm: 2 }), (job) => job.gauges[0]?.stepUm, 2],
    [
      'a standard',
      (job) => setStandard(job, 'micrometer', { errorUm: -1 }),
      (job) => job.standards[0]?.errorUm,
      -1,
    ],
    [
      'a thermometer',
      (job) => setThermometer(job, 'thermometer', { doubtK: 0.5 }),
      (job) => job.thermometers[0]?.doubtK,
      0.5,
    ],
    [
      'a set-up',
      (job) => setSetUp(job, 'set-up', { zeroCloseUm: 2 }),
      (job) => job.setUps[0]?.zeroCloseUm,
      2,
    ],
    ['a bore', (job) => setBore(job, 'bore', { lengthMm: 90 }), (job) => job.bores[0]?.lengthMm, 90],
    [
      'a survey',
      (job) => setSurvey(job, 'bore', 'survey', { hoursRun: 7 }),
      (job) => surveyOf(job)?.hoursRun,
      7,
    ],
  ]
  it.each(changes)('changes %s and leaves the old document as it was', (_, change, read, value) => {
    const before = structuredClone(sampleJob)
    expect(read(change(sampleJob))).toBe(value)
    expect(sampleJob).toEqual(before)
  })

  it.each(changes)('gives back the same document when %s stays as it is', (_, change) => {
    const changed = change(sampleJob)
    expect(changed).not.toBe(sampleJob)
    expect(change(changed)).toBe(changed)
  })

  it('takes a field out when it is said to be not recorded', () => {
    const job = setSetUp(sampleJob, 'set-up', { zeroCloseUm: undefined, boreTemperatureC: undefined })
    expect(job.setUps[0]).not.toHaveProperty('zeroCloseUm')
    expect(job.setUps[0]).not.toHaveProperty('boreTemperatureC')
    expect(setSetUp(job, 'set-up', { zeroCloseUm: undefined })).toBe(job)
  })

  it('shares every part that a change does not touch', () => {
    const job = setSetUp(sampleJob, 'set-up', { zeroCloseUm: 2 })
    expect(job.bores).toBe(sampleJob.bores)
    expect(job.spec).toBe(sampleJob.spec)
  })

  it('throws for an id that the job does not have', () => {
    expect(() => setGauge(sampleJob, 'nothing', { stepUm: 2 })).toThrow('nothing')
    expect(() => setBore(sampleJob, 'nothing', { name: '2' })).toThrow('nothing')
    expect(() => setSurvey(sampleJob, 'bore', 'nothing', {})).toThrow('nothing')
  })

  it('lets a bore follow its grade when that is renamed, and lose it when that goes', () => {
    const [, gradeB] = sampleJob.spec.grades ?? []
    if (!gradeB) throw new Error('Two grades expected')
    const renamed = setSpec(sampleJob, { grades: [{ name: 'Red', minMm: 54, maxMm: 54.006 }, gradeB] })
    expect(renamed.bores[0]?.grade).toBe('Red')
    expect(setSpec(sampleJob, { grades: [gradeB] }).bores[0]).not.toHaveProperty('grade')
    expect(setSpec(sampleJob, { grades: undefined }).bores[0]).not.toHaveProperty('grade')
  })
})

describe('changing how readings are written down', () => {
  it('makes dial deviations of sizes and back again, to the same figures', () => {
    const deviations = changeEntry(sampleJob, 'set-up', 'deviation', countingIds())
    // Larger is anticlockwise and the zero is the mean of 0 and 1 µm: 54.033 stands at 0.5 − 33 µm.
    expect(readingAt(deviations, 8, 0)).toEqual({ ...at(8, 0), dialUm: [-32.5, -34.5, -32.5] })
    expect(readingAt(deviations, 35, 90)?.confirmed).toBe(true)
    expect(changeEntry(deviations, 'set-up', 'size', countingIds())).toEqual(sampleJob)
  })

  it('leaves every diameter at 20 °C as it was', () => {
    for (const largerIs of ['clockwise', 'anticlockwise', undefined] as const) {
      for (const zeroCloseUm of [3, undefined]) {
        const job = setSetUp(sampleJob, 'set-up', { largerIs, zeroOpenUm: -2, zeroCloseUm })
        const before = findingsOf(job).bores[0]?.stations ?? []
        const after =
          findingsOf(changeEntry(job, 'set-up', 'deviation', countingIds())).bores[0]?.stations ?? []
        expect(after).toHaveLength(3)
        for (const [index, station] of after.entries()) {
          expect(station.diameterMm).toBeCloseTo(before[index]?.diameterMm ?? 0, 8)
        }
      }
    }
  })

  it('does nothing when readings are written down that way already', () => {
    expect(changeEntry(sampleJob, 'set-up', 'size', countingIds())).toBe(sampleJob)
  })
})

describe('bores', () => {
  it('adds one for comparison with the same plan and set-up, without readings', () => {
    const job = addBore(sampleJob, countingIds(), 'for-comparison', 'New')
    const [first, second] = job.bores
    expect(second).toEqual({
      id: 'id-1',
      name: 'New',
      role: 'for-comparison',
      lengthMm: 88,
      wall: first?.wall,
      ports: first?.ports,
      belts: first?.belts,
      surveys: [{ id: 'id-2', setUpId: 'set-up', levelsMm: [8, 35, 62], axesDegrees: [0, 90], readings: [] }],
    })
    expect(addBore(sampleJob, countingIds(), 'of-this-engine').bores[1]?.name).toBe('2')
  })

  it('removes one, but never the only one', () => {
    const two = addBore(sampleJob, countingIds(), 'for-comparison')
    expect(removeBore(two, 'id-1')).toEqual(sampleJob)
    expect(() => removeBore(sampleJob, 'bore')).toThrow('only bore')
    expect(() => removeBore(two, 'nothing')).toThrow('nothing')
  })

  it('are measured anew with the same plan and set-up, and the survey is taken out again', () => {
    const again = addSurvey(sampleJob, 'bore', countingIds())
    const [before, after] = again.bores[0]?.surveys ?? []
    expect(before).toBe(sampleJob.bores[0]?.surveys[0])
    expect(after).toEqual({
      id: 'id-1',
      setUpId: before?.setUpId,
      levelsMm: before?.levelsMm,
      axesDegrees: before?.axesDegrees,
      readings: [],
    })
    expect(removeSurvey(again, 'bore', 'id-1')).toEqual(sampleJob)
    expect(() => removeSurvey(sampleJob, 'bore', before?.id ?? '')).toThrow('only survey')
    expect(() => removeSurvey(again, 'bore', 'nothing')).toThrow('nothing')
    expect(() => addSurvey(sampleJob, 'nothing', countingIds())).toThrow('nothing')
  })
})

describe('ports and belts', () => {
  const two = addBore(sampleJob, countingIds(), 'for-comparison')
  const ports = (job: Job, bore: number) => job.bores[bore]?.ports.map(({ id }) => id)

  it('change in all bores while all are alike', () => {
    const job = setPorts(two, 'bore', [])
    expect([ports(job, 0), ports(job, 1)]).toEqual([[], []])
    expect(setBelts(two, 'id-1', []).bores.map(({ belts }) => belts)).toEqual([[], []])
  })

  it('change in one bore once they differ', () => {
    const [exhaust] = sampleJob.bores[0]?.ports ?? []
    if (!exhaust) throw new Error('A port expected')
    const differing: Job = {
      ...two,
      bores: two.bores.map((bore, n) => (n === 1 ? { ...bore, ports: [] } : bore)),
    }
    const job = setPorts(differing, 'bore', [exhaust])
    expect([ports(job, 0), ports(job, 1)]).toEqual([['exhaust'], []])
  })

  it('stay the same document when they stay the same', () => {
    expect(setPorts(two, 'bore', structuredClone(two.bores[0]?.ports ?? []))).toBe(two)
  })

  it('get a mirror image about 0° and 180°, in all bores', () => {
    const job = mirrorPort(two, 'bore', 'transfer', () => 'image', ' left')
    const image = {
      id: 'image',
      name: 'transfer left',
      fromDepthMm: 42,
      toDepthMm: 55,
      fromDegrees: 260,
      toDegrees: 298,
    }
    expect(job.bores.map((bore) => bore.ports.at(-1))).toEqual([image, image])
  })

  it('mirror a port across 0° onto itself', () => {
    const job = mirrorPort(sampleJob, 'bore', 'exhaust', () => 'image')
    expect(job.bores[0]?.ports.at(-1)).toMatchObject({ fromDegrees: 315, toDegrees: 45 })
  })
})

describe('levels and axes', () => {
  it('are kept in order and once each', () => {
    expect(surveyOf(setLevels(sampleJob, 'bore', 'survey', [62, 8, 35, 20, 8]))?.levelsMm).toEqual([
      8, 20, 35, 62,
    ])
    expect(surveyOf(setAxes(sampleJob, 'bore', 'survey', [90, 45, 0]))?.axesDegrees).toEqual([0, 45, 90])
  })

  it('with readings are not dropped unasked', () => {
    expect(() => setLevels(sampleJob, 'bore', 'survey', [35, 62])).toThrow('8 mm holds readings')
    expect(() => setAxes(sampleJob, 'bore', 'survey', [0])).toThrow('90° holds readings')
    expect(() => removeLevel(sampleJob, 'bore', 'survey', 8)).toThrow('8 mm holds readings')
    expect(() => removeAxis(sampleJob, 'bore', 'survey', 0)).toThrow('0° holds readings')
  })

  it('go with their readings when that was asked for, and without asking when they are empty', () => {
    const level = surveyOf(removeLevel(sampleJob, 'bore', 'survey', 8, { withReadings: true }))
    expect(level).toMatchObject({ levelsMm: [35, 62], readings: [at(35, 90)] })
    const axis = surveyOf(removeAxis(sampleJob, 'bore', 'survey', 90, { withReadings: true }))
    expect(axis).toMatchObject({ axesDegrees: [0], readings: [at(8, 0)] })
    expect(surveyOf(removeLevel(sampleJob, 'bore', 'survey', 62))?.levelsMm).toEqual([8, 35])
  })

  it('move with their readings', () => {
    const level = surveyOf(moveLevel(sampleJob, 'bore', 'survey', 8, 40))
    expect(level?.levelsMm).toEqual([35, 40, 62])
    expect(level?.readings.map(({ depthMm }) => depthMm)).toEqual([40, 40, 35])
    const axis = surveyOf(moveAxis(sampleJob, 'bore', 'survey', 90, 135))
    expect(axis?.axesDegrees).toEqual([0, 135])
    expect(axis?.readings.map(({ axisDegrees }) => axisDegrees)).toEqual([0, 135, 135])
    expect(moveLevel(sampleJob, 'bore', 'survey', 8, 8)).toBe(sampleJob)
    expect(() => moveLevel(sampleJob, 'bore', 'survey', 8, 35)).toThrow('one at 35 already')
    expect(() => moveAxis(sampleJob, 'bore', 'survey', 45, 60)).toThrow('Nothing at 45')
  })
})

describe('readings', () => {
  it('are added behind those taken before', () => {
    const job = setRepeats(sampleJob, 'bore', 'survey', at(35, 0), [54.02])
    expect(surveyOf(job)?.readings.at(-1)).toEqual({ ...at(35, 0), sizesMm: [54.02] })
  })

  it('are changed in their place and keep what else was said of them', () => {
    const job = setRepeats(sampleJob, 'bore', 'survey', at(35, 90), [54.02])
    expect(surveyOf(job)?.readings[2]).toEqual({ ...at(35, 90), sizesMm: [54.02], confirmed: true })
    expect(setRepeats(job, 'bore', 'survey', at(35, 90), [54.02])).toBe(job)
  })

  it('are deleted by no repeats', () => {
    const job = setRepeats(sampleJob, 'bore', 'survey', at(8, 0), [])
    expect(readingAt(job, 8, 0)).toBeUndefined()
    expect(setRepeats(job, 'bore', 'survey', at(8, 0), [])).toBe(job)
  })

  it('are dial deviations where the set-up says so', () => {
    const job = setRepeats(
      changeEntry(sampleJob, 'set-up', 'deviation', countingIds()),
      'bore',
      'survey',
      at(35, 0),
      [-7],
    )
    expect(readingAt(job, 35, 0)).toEqual({ ...at(35, 0), dialUm: [-7] })
  })

  it('stand only at stations of the survey', () => {
    expect(() => setRepeats(sampleJob, 'bore', 'survey', at(9, 0), [54])).toThrow('no station at 9 mm, 0°')
  })

  it('are confirmed, and the confirmation is taken back', () => {
    const confirmed = confirmReading(sampleJob, 'bore', 'survey', at(8, 0), true)
    expect(readingAt(confirmed, 8, 0)?.confirmed).toBe(true)
    expect(confirmReading(confirmed, 'bore', 'survey', at(8, 0), true)).toBe(confirmed)
    expect(confirmReading(confirmed, 'bore', 'survey', at(8, 0), false)).toEqual(sampleJob)
    expect(() => confirmReading(sampleJob, 'bore', 'survey', at(62, 0), true)).toThrow(
      'No reading at 62 mm, 0°',
    )
  })
})
