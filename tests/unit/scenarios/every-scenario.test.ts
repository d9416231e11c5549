import { describe, expect, it } from 'vitest'
import { stationsPlanned } from '../../../src/job/selectors'
import { proven, scenario, scenarioFiles } from './scenario'

/** All but the one that was scanned and never read. */
const readFiles = scenarioFiles.filter((file) => file !== 'E-scuff-scan-72.json')

describe('the scenarios', () => {
  it('are those that the page offers as examples', () => {
    expect(scenarioFiles).toEqual([
      'A-two-stroke-single.json',
      'B-four-cylinder-iron-as-typed.json',
      'B-four-cylinder-iron.json',
      'C-wet-liner-diesel.json',
      'D1-compressor.json',
      'D2-hydraulic-tube.json',
      'E-scuff-scan-360.json',
      'E-scuff-scan-72.json',
    ])
    const ids = scenarioFiles.map((file) => scenario(file).id)
    expect(new Set(ids).size).toBe(ids.length)
  })

  it.each(scenarioFiles)('%s says that it is invented, in its flag, its name and its note', (file) => {
    const job = scenario(file)
    expect(job.invented).toBe(true)
    expect(job.name).toContain('(invented)')
    expect(job.note).toMatch(/^everything in this job is invented/i)
  })

  it.each(scenarioFiles)(
    '%s has both zeros, both temperatures and the direction for every set-up',
    (file) => {
      for (const setUp of scenario(file).setUps) {
        expect(setUp.zeroOpenUm).toBeTypeOf('number')
        expect(setUp.zeroCloseUm).toBeTypeOf('number')
        expect(Math.abs((setUp.zeroCloseUm ?? 0) - (setUp.zeroOpenUm ?? 0))).toBeLessThanOrEqual(2)
        expect(setUp.boreTemperatureC).toBeTypeOf('number')
        expect(setUp.referenceTemperatureC).toBeTypeOf('number')
        expect(setUp.largerIs).toMatch(/clockwise/)
      }
    },
  )

  it.each(readFiles)('%s has a reading wherever one was planned and none of them in a port', (file) => {
    const job = scenario(file)
    for (const { id } of job.bores) {
      const stations = stationsPlanned(job, id).flat()
      expect(stations.length).toBeGreaterThan(0)
      for (const { depthMm, axisDegrees, reading, blockedBy } of stations) {
        expect(blockedBy.length === 0, `${depthMm} mm, ${axisDegrees}°`).toBe(reading !== undefined)
      }
    }
  })

  it.each(readFiles)('%s opens to a firm verdict for every bore of its engine', (file) => {
    const job = scenario(file)
    for (const bore of job.bores.filter(({ role }) => role === 'of-this-engine')) {
      const { verdict, provisional } = proven(job, bore.id)
      expect(verdict.known && verdict.firm).toBe(true)
      expect(provisional).toEqual([])
    }
  })
})
