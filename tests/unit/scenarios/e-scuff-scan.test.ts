import { describe, expect, it } from 'vitest'
import { fitScan } from '../../../src/core/scan/fit-scan'
import { sizeFromTies } from '../../../src/core/scan/size-from-ties'
import { withoutScans } from '../../../src/job/embedded-scans'
import { scanOfBytes } from '../../../src/job/scan-bytes'
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

  it('is the scan where nobody read the bore, and it has no size', () => {
    const { job, bore, survey, entry, radii, options, fit } = opened('E-scuff-scan-72.json')
    expect(shownScan(job, bore, survey, undefined)).toBe(entry)
    expect(tieStations(job, bore, entry)).toEqual([])
    expect(sizeFromTies(radii, fit, [], options)).toMatchObject({ known: false, reason: 'no-tie' })
    expect(nearDiameterOf(job, bore, survey)).toBe(60.025)
  })
})
