import { describe, expect, it } from 'vitest'
import { fitScan } from '../../../src/core/scan/fit-scan'
import { sizeFromTies } from '../../../src/core/scan/size-from-ties'
import { columnAt, rowAt } from '../../../src/core/surface/drawn-position'
import { scanGridOf } from '../../../src/core/surface/scan-grid'
import { withoutScans } from '../../../src/job/embedded-scans'
import { scanOfBytes } from '../../../src/job/scan-bytes'
import type { Job } from '../../../src/job/schema'
import { nearDiameterOf, scanFormOptions, shownScan, tieStations } from '../../../src/job/shown-scan'
import { proven, scenario } from './scenario'

function opened(file: string) {
  const { job, scans } = withoutScans(scenario(file))
  const [bore] = job.bores
  const [survey] = bore?.surveys ?? []
  const [entry] = bore?.scans ?? []
  const radii = scanOfBytes(Buffer.from(scans[0]?.base64 ?? '', 'base64'))
  if (!bore || !survey || !entry || !radii) throw new Error(`${file} has no scan`)
  const options = scanFormOptions(job, entry, nearDiameterOf(job, bore, survey))
  return { job, bore, survey, entry, radii, options, fit: fitScan(radii, options) }
}

/** The spindle as it was invented: off the axis by 18 and −11 µm, leaning by 0.15 and −0.05 µm for each mm. */
const spindle = { atDeckUm: { x: 18, y: -11 }, leanUmPerMm: { x: 0.15, y: -0.05 } }

describe.each([
  { file: 'E-scuff-scan-360.json', angles: 360, empty: 766 },
  { file: 'E-scuff-scan-72.json', angles: 72, empty: 154 },
])('the invented scuffed cylinder in $file', ({ file, angles, empty }) => {
  const { bore, entry, radii, fit } = opened(file)

  it('has its 14 levels and all of its angles, with the places of its ports empty', () => {
    expect(radii.depthsMm).toEqual([4, 8, 14, 20, 26, 32, 38, 44, 50, 56, 62, 68, 76, 84])
    expect(radii.anglesDegrees).toHaveLength(angles)
    const missing = radii.radiiUm.filter((radius) => Number.isNaN(radius)).length
    expect(missing).toBe(empty)
    expect(entry).toMatchObject({ levels: 14, angles, values: 14 * angles - empty })
    expect(bore.ports).toHaveLength(7)
  })

  it('gives back the spindle that it was invented with, ports and smears notwithstanding', () => {
    for (const side of ['x', 'y'] as const) {
      expect(Math.abs(fit.axis.atDeckUm[side] - spindle.atDeckUm[side])).toBeLessThan(0.2)
      expect(Math.abs(fit.axis.leanUmPerMm[side] - spindle.leanUmPerMm[side])).toBeLessThan(0.005)
    }
  })

  it('shows the smears that it was invented with where they are deepest, at 50° and 310°', () => {
    const residualAt = (depth: number, angle: number) =>
      fit.smooth.residualUm[radii.depthsMm.indexOf(depth) * angles + radii.anglesDegrees.indexOf(angle)]
    for (const angle of [50, 310]) expect(residualAt(38, angle)).toBeLessThan(-8)
    for (const angle of [90, 270]) expect(Math.abs(residualAt(38, angle) ?? 99)).toBeLessThan(5)
  })
})

describe('what is drawn of the invented scuffed cylinder', () => {
  it('is the scan that readings give a size, unless the readings are chosen', () => {
    const { job, bore, survey, entry, radii, options, fit } = opened('E-scuff-scan-360.json')
    expect(shownScan(job, bore, survey, undefined)).toBe(entry)
    expect(shownScan(job, bore, survey, 'readings')).toBeUndefined()
    const size = sizeFromTies(radii, fit, tieStations(job, bore, entry), options)
    expect(size).toMatchObject({ known: true, tiesAgree: true })
    expect(proven(job, bore.id).blunders).toEqual([])
  })

  it('has limits with the doubt of the nearest station, and is proven only where a station is', () => {
    const { job, bore, entry, radii, options, fit } = opened('E-scuff-scan-360.json')
    const drawn = (limits: Partial<Job['spec']>) => {
      const judged: Job = { ...job, spec: { ...job.spec, ...limits } }
      const stations = tieStations(judged, bore, entry)
      const size = sizeFromTies(radii, fit, stations, options)
      if (!size.known) throw new Error('Expected a size')
      const grid = scanGridOf(radii, fit, {
        middleMm: 60.025,
        lengthMm: 90,
        belts: [],
        isLocal: false,
        tied: { byUm: size.addUm, stations },
      })
      const at = (depthMm: number, degrees: number) =>
        Math.round(rowAt(grid, depthMm)) * grid.angles.length +
        (Math.round(columnAt(grid, (degrees * Math.PI) / 180)) % grid.angles.length)
      return { grid, at, stations }
    }
    const { grid, at, stations } = drawn({})
    const front = stations.find(({ depthMm, axisDegrees }) => depthMm === 8 && axisDegrees === 0)
    expect(grid.doubtUm[at(8, 180) * 4 + 3]).toBeCloseTo(
      ((front?.doubt?.aboveFirmMm ?? 0) - 60.025) * 1000,
      3,
    )
    expect(grid.proven.every((mark) => mark === 0)).toBe(true)
    // The station at 8 mm, 0° reads 60.029.
    const tight = drawn({ wearLimitMm: 60.022 })
    expect(tight.grid.proven[tight.at(8, 0)]).toBe(1)
    expect(tight.grid.proven[tight.at(38, 50)]).toBe(0)
  })

  it('is the scan where nobody read the bore, and it has no size', () => {
    const { job, bore, survey, entry, radii, options, fit } = opened('E-scuff-scan-72.json')
    expect(shownScan(job, bore, survey, undefined)).toBe(entry)
    expect(tieStations(job, bore, entry)).toEqual([])
    expect(sizeFromTies(radii, fit, [], options)).toMatchObject({ known: false, reason: 'no-tie' })
    expect(nearDiameterOf(job, bore, survey)).toBe(60.025)
  })
})
