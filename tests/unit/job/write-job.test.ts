import { expect, it } from 'vitest'
import { writeJob } from '../../../src/job/write-job'
import { sampleJob } from './sample-job'

it('writes JSON that means the job', () => {
  expect(JSON.parse(writeJob(sampleJob))).toEqual(sampleJob)
})

it('writes a reading, a port and a list of levels on a line each, and ends with a line end', () => {
  const lines = writeJob(sampleJob).split('\n')
  expect(lines).toContain(
    '            { "depthMm": 35, "axisDegrees": 90, "sizesMm": [54.018, 54.019], "confirmed": true }',
  )
  expect(lines.filter((line) => line.includes('"fromDegrees"') && line.includes('"id"'))).toHaveLength(2)
  expect(lines).toContain('          "levelsMm": [8, 35, 62],')
  expect(lines.at(-1)).toBe('')
  expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(160)
})
