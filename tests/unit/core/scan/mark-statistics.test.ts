import { describe, expect, it } from 'vitest'
import { fitScan } from '../../../../src/core/scan/fit-scan'
import { marksOf } from '../../../../src/core/scan/marks'
import { report } from '../../../proof/record'
import { runCount } from '../../../proof/run-count'
import { cleanForm, type PlantedMark, portedBore, simulatedScan } from '../../../proof/simulated-scan'

const sigmaUm = 0.8
const probe = { nearDiameterMm: 60, repeatabilityUm: sigmaUm, repeatabilityDegreesOfFreedom: 50 }
const fourteen = [4, 8, 14, 20, 26, 32, 38, 44, 50, 56, 62, 68, 76, 84]
const manyLevels = Array.from({ length: 128 }, (_, k) => 2 + (k * 84) / 127)

const grids = [
  { name: '72 angles at 14 depths', angles: 72, depthsMm: fourteen, quick: 25, full: 2000 },
  { name: '360 angles at 14 depths', angles: 360, depthsMm: fourteen, quick: 8, full: 600 },
  { name: '360 angles at 128 depths', angles: 360, depthsMm: manyLevels, quick: 1, full: 100 },
].flatMap((grid) => [
  { ...grid, wall: 'a plain bore', ports: [] },
  { ...grid, wall: 'a ported bore', ports: portedBore },
])

function marksIn(bore: Parameters<typeof simulatedScan>[0], seed: number) {
  const scan = simulatedScan(bore, seed)
  return marksOf(scan, fitScan(scan, probe), { nearDiameterMm: 60, ports: bore.ports ?? [] }).marks
}

describe('marks of simulated scans, noise 0.8 µm (seeds from 6001)', () => {
  it.each(grids)(
    'finds nothing in clean scans: $name, $wall',
    ({ name, wall, angles, depthsMm, ports, quick, full }) => {
      const scans = runCount({ quick, full })
      let withMarks = 0
      for (let i = 0; i < scans; i++) {
        const bore = { depthsMm, angles, ports, sigmaUm, form: cleanForm(6001 + i) }
        if (marksIn(bore, 6001 + i).length > 0) withMarks++
      }
      report(
        `Marks, ${name}, ${wall}: clean scans with a mark`,
        { scans, share: `${((100 * withMarks) / scans).toFixed(2)} %` },
        6001,
      )
      expect(withMarks).toBeLessThanOrEqual(scans / 100)
    },
  )

  it.each(grids)(
    'finds 99 % of marks of three angles by three depths and four σ: $name, $wall',
    ({ name, wall, angles, depthsMm, ports, quick, full }) => {
      const scans = runCount({ quick, full })
      let planted = 0
      let found = 0
      for (let i = 0; i < scans; i++) {
        const mark = plantedMark(i, depthsMm, angles)
        const bore = { depthsMm, angles, ports, sigmaUm, form: cleanForm(9001 + i), marks: [mark] }
        if (!isWhole(bore, mark)) continue
        planted++
        const sign = mark.heightUm > 0 ? 'larger' : 'smaller'
        if (marksIn(bore, 9001 + i).some((seen) => seen.sign === sign && doMeet(seen, mark, 360 / angles)))
          found++
      }
      report(
        `Marks, ${name}, ${wall}: three angles by three depths, four σ`,
        { planted, found: `${((100 * found) / planted).toFixed(1)} %` },
        9001,
      )
      expect(planted).toBeGreaterThan(0)
      expect(found).toBeGreaterThanOrEqual(Math.floor(0.99 * planted))
    },
  )
})

/** Wandering over the wall, proud and lying back by turns. */
function plantedMark(i: number, depthsMm: readonly number[], angles: number): PlantedMark {
  const row = (i * 7) % (depthsMm.length - 2)
  const column = (i * 31) % angles
  return {
    fromDepthMm: depthsMm[row] ?? 0,
    toDepthMm: depthsMm[row + 2] ?? 0,
    fromDegrees: (column * 360) / angles,
    toDegrees: (((column + 2) % angles) * 360) / angles,
    heightUm: (i % 2 === 0 ? -4 : 4) * sigmaUm,
  }
}

/** All nine places have a value. */
function isWhole(bore: Parameters<typeof simulatedScan>[0], mark: PlantedMark): boolean {
  const flat = { depthsMm: bore.depthsMm, angles: bore.angles, ports: bore.ports ?? [], sigmaUm: 0 }
  const { radiiUm } = simulatedScan({ ...flat, marks: [mark] }, 1)
  return radiiUm.filter((radius) => radius !== 0 && !Number.isNaN(radius)).length === 9
}

function doMeet(
  seen: { fromDepthMm: number; toDepthMm: number; fromDegrees: number; acrossDegrees: number },
  mark: PlantedMark,
  step: number,
): boolean {
  if (seen.fromDepthMm > mark.toDepthMm || seen.toDepthMm < mark.fromDepthMm) return false
  const middle = mark.fromDegrees + step
  const apart = ((seen.fromDegrees + seen.acrossDegrees / 2 - middle + 540) % 360) - 180
  return Math.abs(apart) <= seen.acrossDegrees / 2 + step
}
