import { describe, expect, it } from 'vitest'
import type { Contribution, StationFinding } from '../../../../src/core/findings'
import { fitScan } from '../../../../src/core/scan/fit-scan'
import type { RadialScan } from '../../../../src/core/scan/radial-scan'
import { sizeFromTies } from '../../../../src/core/scan/size-from-ties'
import { station } from '../../words/finding-builder'
import { scuffOptions } from './four-corner-scuff'

const probe = { repeatabilityUm: 0.8, repeatabilityDegreesOfFreedom: 50, scaleUm: 0.5 }
const radians = Math.PI / 180

/** An oval taper on a spindle beside its axis; the port lies from 40° to 60°, 20 to 30 mm deep. */
const wall = (z: number, angle: number) => 4 * Math.cos(2 * angle * radians) + 0.1 * z
const scan: RadialScan = (() => {
  const depthsMm = Array.from({ length: 10 }, (_, i) => 5 + 5 * i)
  const anglesDegrees = Array.from({ length: 72 }, (_, i) => 5 * i)
  const radiiUm = depthsMm.flatMap((z) =>
    anglesDegrees.map((angle) =>
      z >= 20 && z <= 30 && angle >= 40 && angle <= 60
        ? Number.NaN
        : wall(z, angle) + 12 * Math.cos(angle * radians) + 0.05 * z * Math.sin(angle * radians),
    ),
  )
  return { depthsMm, anglesDegrees, radiiUm: Float64Array.from(radiiUm) }
})()
const fit = fitScan(scan, scuffOptions)

function part(
  id: string,
  scope: Contribution['scope'],
  um: number,
  nu = Number.POSITIVE_INFINITY,
): Contribution {
  const kind = scope === 'station' ? 'repeatability' : 'setting'
  return { kind, id, scope, signedMm: um / 1000, degreesOfFreedom: nu, assumed: false }
}

/** A station on this wall of 30 mm radius: 2 µm shared, 1 µm its own. */
function tie(
  depthMm: number,
  axisDegrees: number,
  offUm = 0,
  change: Partial<StationFinding> = {},
): StationFinding {
  const sum = wall(depthMm, axisDegrees) + wall(depthMm, axisDegrees + 180)
  return station({ depthMm, axisDegrees }, 60 + (sum + offUm) / 1000, {
    individualMm: 0.001,
    contributions: [
      part('setting', 'set-up', 2),
      part(`repeats ${depthMm} ${axisDegrees}`, 'station', 1, 20),
    ],
    ...change,
  })
}

describe('the size of a scan', () => {
  it('is what its ties add to every radius, on levels and angles of the scan and between them', () => {
    const size = sizeFromTies(scan, fit, [tie(10, 0), tie(35, 90), tie(22.5, 2.5), tie(47, 133)], probe)
    if (!size.known) throw new Error(size.reason)
    // Between two angles 5° apart the oval bends by less than 0.02 µm.
    expect(size.addUm).toBeCloseTo(30_000, 1)
    for (const { departureUm } of size.ties) expect(Math.abs(departureUm)).toBeLessThan(0.03)
    expect(size.tiesAgree).toBe(true)
  })

  it('keeps the doubt that the ties share, while their own and the probe’s fall with their number', () => {
    const doubt = (ties: readonly StationFinding[]) => {
      const size = sizeFromTies(scan, fit, ties, probe)
      return size.known ? size.standardUncertaintyUm : Number.NaN
    }
    // Half of √(2² + 1²/n + 2·(0.8² + 0.5²)/n).
    expect(doubt([tie(10, 0)])).toBeCloseTo(0.5 * Math.sqrt(4 + 1 + 1.78), 9)
    const four = [tie(10, 0), tie(10, 90), tie(40, 0), tie(40, 90)]
    expect(doubt(four)).toBeCloseTo(0.5 * Math.sqrt(4 + (1 + 1.78) / 4), 9)
  })

  it('is not there without a tie, and says of each station why it ties nothing', () => {
    const stations = [
      tie(25, 50),
      tie(25, 130),
      tie(3, 0),
      tie(60, 0),
      tie(10, 0, 0, { counted: false }),
      tie(10, 0, 0, { contactDegrees: [0, 120, 240] }),
    ]
    const size = sizeFromTies(scan, fit, [...stations.slice(0, 1), ...stations.slice(2)], probe)
    expect(size).toMatchObject({ known: false, reason: 'no-tie' })
    expect(size.loose.map(({ reason }) => reason)).toEqual([
      'in-a-gap',
      'outside-the-scan',
      'outside-the-scan',
      'not-a-diameter',
      'not-a-diameter',
    ])
    expect(sizeFromTies(scan, fit, stations, probe)).toMatchObject({ known: true, loose: { length: 5 } })
    expect(sizeFromTies(scan, fit, [], probe)).toEqual({ known: false, reason: 'no-tie', loose: [] })
  })

  it('is told as doubtful where the ties differ by more than their doubts', () => {
    const agree = (offUm: number) => {
      const size = sizeFromTies(scan, fit, [tie(10, 0), tie(10, 90), tie(40, 45, offUm)], probe)
      return size.known && size.tiesAgree
    }
    expect(agree(3)).toBe(true)
    expect(agree(20)).toBe(false)
  })
})
