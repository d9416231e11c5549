import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readJob } from '../../../src/job/read-job'
import type { Job } from '../../../src/job/schema'
import { stationsPlanned } from '../../../src/job/selectors'

function scenario(): Job {
  const file = new URL('../../../scenarios/A-two-stroke-single.json', import.meta.url)
  const result = readJob(readFileSync(file))
  if (!result.ok) throw new Error(JSON.stringify(result.problems, null, 2))
  return result.job
}

describe('the invented two-stroke single', () => {
  const job = scenario()

  it('says that it is invented, in its flag, its name and its note', () => {
    expect(job.invented).toBe(true)
    expect(job.name).toContain('(invented)')
    expect(job.note).toMatch(/everything in this job is invented/i)
  })

  it('has a used bore of this engine and a new one for comparison, measured with one set-up', () => {
    expect(job.bores.map(({ name, role }) => [name, role])).toEqual([
      ['1', 'of-this-engine'],
      ['New', 'for-comparison'],
    ])
    expect(job.setUps).toHaveLength(1)
    const surveys = job.bores.flatMap((bore) => bore.surveys)
    expect(surveys.map(({ hoursRun, setUpId }) => [hoursRun, setUpId])).toEqual([
      [185, job.setUps[0]?.id],
      [0, job.setUps[0]?.id],
    ])
  })

  it('has 21 readings of 3 repeats in each bore, six ports, and seven levels of which one has no reading', () => {
    for (const { ports, surveys } of job.bores) {
      const [survey] = surveys
      expect(ports).toHaveLength(6)
      expect(survey?.levelsMm).toEqual([8, 16, 25, 35, 48, 62, 80])
      expect(survey?.axesDegrees).toEqual([0, 45, 90, 135])
      expect(survey?.readings).toHaveLength(21)
      expect(survey?.readings.every(({ sizesMm }) => sizesMm?.length === 3)).toBe(true)
      expect(survey?.readings.some(({ depthMm }) => depthMm === 48)).toBe(false)
    }
  })

  it('has a port in the way at every station without a reading, and at none with one', () => {
    for (const { id } of job.bores) {
      const stations = stationsPlanned(job, id).flat()
      expect(stations).toHaveLength(28)
      for (const { depthMm, axisDegrees, reading, blockedBy } of stations) {
        expect(blockedBy.length === 0, `${depthMm} mm, ${axisDegrees}°`).toBe(reading !== undefined)
      }
    }
  })
})
