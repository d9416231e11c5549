import { describe, expect, it } from 'vitest'
import { addBore } from '../../../src/job/bore-commands'
import { renameJob, setBore, setSpec } from '../../../src/job/commands'
import { newJob } from '../../../src/job/new-job'
import { addScan, removeScan } from '../../../src/job/scan-commands'
import {
  exaggerationEndOfJob,
  exaggerationOfJob,
  findingOf,
  findingsOf,
  gridOfBore,
  middleOfBore,
  pairOf,
  stationsPlanned,
  wallOfBore,
} from '../../../src/job/selectors'
import { countingIds, sampleJob } from './sample-job'

describe('what is selected from a job', () => {
  it('is computed once for each document', () => {
    expect(findingsOf(sampleJob)).toBe(findingsOf(sampleJob))
    expect(wallOfBore(sampleJob, 'bore')).toBe(wallOfBore(sampleJob, 'bore'))
    expect(gridOfBore(sampleJob, 'bore')).toBe(gridOfBore(sampleJob, 'bore'))
    expect(stationsPlanned(sampleJob, 'bore')).toBe(stationsPlanned(sampleJob, 'bore'))
    expect(findingsOf(renameJob(sampleJob, 'Other'))).not.toBe(findingsOf(sampleJob))
  })

  it('stays what it is where only scans come and go, and not where anything else changes', () => {
    const before = findingsOf(sampleJob)
    const scan = { id: 'more', hash: '00'.repeat(32), levels: 15, angles: 72, values: 1080 }
    const scanned = addScan(sampleJob, 'bore', scan)
    expect(findingsOf(scanned)).toBe(before)
    expect(gridOfBore(scanned, 'bore')).toBe(gridOfBore(sampleJob, 'bore'))
    expect(findingsOf(removeScan(scanned, 'bore', 'more'))).toBe(before)
    const longer = setBore(scanned, 'bore', { lengthMm: 95 })
    expect(findingOf(longer, 'bore')?.drawnLengthMm).toBe(95)
    expect(findingsOf(scanned)).toBe(before)
  })

  it('has a wall through each reading that counts', () => {
    const stations = findingOf(sampleJob, 'bore')?.stations.filter(({ counted }) => counted) ?? []
    expect(stations).toHaveLength(3)
    const wall = wallOfBore(sampleJob, 'bore')
    for (const { depthMm, axisDegrees, diameterMm } of stations) {
      expect(wall?.at(depthMm, (axisDegrees * Math.PI) / 180)).toBeCloseTo(diameterMm, 9)
    }
  })

  it('has the middle of the pair of limits in the grid', () => {
    expect(pairOf(sampleJob, 'bore')).toMatchObject({ kind: 'wear', maxMm: 54.05 })
    expect(gridOfBore(sampleJob, 'bore')?.middleMm).toBe(middleOfBore(sampleJob, 'bore'))
  })

  it('has nothing to draw while nothing is read, and no exaggeration without limits', () => {
    const job = newJob(countingIds())
    const [bore] = job.bores
    expect(wallOfBore(job, bore?.id ?? '')).toBeUndefined()
    expect(gridOfBore(job, bore?.id ?? '')).toBeUndefined()
    expect(exaggerationOfJob(job)).toBeUndefined()
    expect(stationsPlanned(job, bore?.id ?? '')).toEqual([])
  })

  it('has one exaggeration of 1, 2 or 5 times a power of ten for all bores, within the end of the slider', () => {
    const exaggeration = exaggerationOfJob(sampleJob) ?? 0
    const digit = exaggeration / 10 ** Math.floor(Math.log10(exaggeration))
    expect([1, 2, 5]).toContain(Math.round(digit))
    expect(exaggerationEndOfJob(sampleJob)).toBeGreaterThan(exaggeration)
    const two = addBore(sampleJob, countingIds(), 'for-comparison')
    expect(exaggerationOfJob(two)).toBe(exaggeration)
  })

  it('counts deviations of all bores from one middle when there are no limits', () => {
    const bare = setSpec(sampleJob, {
      newMinMm: undefined,
      newMaxMm: undefined,
      wearLimitMm: undefined,
      grades: undefined,
    })
    const two = addBore(bare, countingIds(), 'for-comparison')
    expect(middleOfBore(two, 'bore')).toBe(middleOfBore(two, 'id-1'))
  })

  it('is undefined for a bore that the job does not have', () => {
    expect(wallOfBore(sampleJob, 'nothing')).toBeUndefined()
    expect(pairOf(sampleJob, 'nothing')).toBeUndefined()
    expect(stationsPlanned(sampleJob, 'nothing')).toEqual([])
  })
})

describe('the stations planned', () => {
  it('are a row for each level with a station for each axis, readings beside them', () => {
    const rows = stationsPlanned(sampleJob, 'bore')
    expect(rows.map((row) => row.map(({ depthMm, axisDegrees }) => [depthMm, axisDegrees]))).toEqual([
      [
        [8, 0],
        [8, 90],
      ],
      [
        [35, 0],
        [35, 90],
      ],
      [
        [62, 0],
        [62, 90],
      ],
    ])
    expect(rows[0]?.[0]?.reading?.sizesMm).toEqual([54.033, 54.035, 54.033])
    expect(rows[2]?.[0]).not.toHaveProperty('reading')
  })

  it('name the ports in the way', () => {
    const [, second] = stationsPlanned(sampleJob, 'bore')
    expect(second?.map(({ blockedBy }) => blockedBy)).toEqual([['exhaust'], []])
  })

  it('are in order of depth and angle whatever the order in the file', () => {
    const job = {
      ...sampleJob,
      bores: sampleJob.bores.map((bore) => ({
        ...bore,
        surveys: bore.surveys.map((survey) => ({ ...survey, levelsMm: [62, 8, 35], axesDegrees: [90, 0] })),
      })),
    }
    expect(stationsPlanned(job, 'bore')).toEqual(stationsPlanned(sampleJob, 'bore'))
  })
})
