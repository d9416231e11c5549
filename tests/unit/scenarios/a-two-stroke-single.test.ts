import { describe, expect, it } from 'vitest'
import { scenario } from './scenario'

describe('the invented two-stroke single', () => {
  const job = scenario('A-two-stroke-single.json')

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
})
