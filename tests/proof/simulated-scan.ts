import type { Port } from '../../src/core/measured'
import { portAt } from '../../src/core/ports/port-at'
import type { RadialScan } from '../../src/core/scan/radial-scan'
import { seededDraws } from '../../src/core/statistics/seeded-draws'

/** Something on the wall of a simulated scan: its height within a box of the grid, or falling off to its edges. */
export interface PlantedMark {
  readonly fromDepthMm: number
  readonly toDepthMm: number
  readonly fromDegrees: number
  readonly toDegrees: number
  readonly heightUm: number
}

/** A grid, openings, and how the wall departs from a cylinder. */
export interface SimulatedScan {
  readonly depthsMm: readonly number[]
  readonly angles: number
  readonly ports?: readonly Port[]
  readonly sigmaUm: number
  readonly form?: (depthMm: number, angle: number) => number
  readonly marks?: readonly PlantedMark[]
}

/** A scan of an invented bore: its form, marks and normal noise, to a tenth of a micron; ports are gaps. */
export function simulatedScan(bore: SimulatedScan, seed: number): RadialScan {
  const draws = seededDraws(seed)
  const { depthsMm, angles, ports = [], marks = [] } = bore
  const anglesDegrees = Array.from({ length: angles }, (_, k) => (360 * k) / angles)
  const radiiUm = new Float64Array(depthsMm.length * angles)
  for (const [row, depth] of depthsMm.entries()) {
    for (const [column, angle] of anglesDegrees.entries()) {
      const height = marks.reduce((sum, mark) => sum + (isWithin(mark, depth, angle) ? mark.heightUm : 0), 0)
      const form = bore.form?.(depth, (angle * Math.PI) / 180) ?? 0
      const read = Math.round(10 * (form + height + bore.sigmaUm * draws.normal())) / 10
      radiiUm[row * angles + column] = portAt(ports, depth, angle) ? Number.NaN : read
    }
  }
  return { depthsMm, anglesDegrees, radiiUm }
}

function isWithin(mark: PlantedMark, depthMm: number, angle: number): boolean {
  if (depthMm < mark.fromDepthMm - 1e-9 || depthMm > mark.toDepthMm + 1e-9) return false
  const width = (mark.toDegrees - mark.fromDegrees + 360) % 360
  return (angle - mark.fromDegrees + 360.000001) % 360 <= width + 0.000002
}

/**
 * A clean wall as bores are: the spindle beside the axis and leaning, an oval of some microns, three, four and five
 * lobes, a taper, and the print of the head bolts near the deck; sizes and directions by seed, µm.
 */
export function cleanForm(seed: number): (depthMm: number, angle: number) => number {
  const { even } = seededDraws(seed ^ 0x5ca1ab1e)
  const [beside, lean, oval, three, four, five, taper, bolts, ring] = [30, 0.2, 8, 3, 2, 0.8, 0.15, 3, 6].map(
    (most) => most * even(),
  )
  const turn = Array.from({ length: 7 }, () => 2 * Math.PI * even())
  const at = (value: number | undefined) => value ?? 0
  return (z, angle) =>
    at(beside) * Math.cos(angle - at(turn[0])) +
    at(lean) * z * Math.cos(angle - at(turn[1])) +
    at(oval) * Math.cos(2 * (angle - at(turn[2]))) +
    at(three) * Math.cos(3 * (angle - at(turn[3]))) +
    at(four) * Math.cos(4 * (angle - at(turn[4]))) +
    at(five) * Math.cos(5 * (angle - at(turn[5]))) +
    at(taper) * z +
    at(bolts) * Math.exp(-z / 12) * Math.cos(4 * (angle - at(turn[6]))) +
    at(ring) * Math.exp(-(((z - 10) / 8) ** 2))
}

/** The openings of an invented ported bore of 60 mm. */
export const portedBore: readonly Port[] = [
  ['exhaust right', 5, 42, 31, 58],
  ['exhaust left', 318, 355, 31, 58],
  ['main transfer right', 60, 98, 45, 58],
  ['rear transfer right', 104, 136, 45, 58],
  ['boost', 166, 194, 45, 58],
  ['rear transfer left', 224, 256, 45, 58],
  ['main transfer left', 262, 300, 45, 58],
].map(([name, fromDegrees, toDegrees, fromDepthMm, toDepthMm]) => ({
  id: String(name),
  name: String(name),
  fromDegrees: Number(fromDegrees),
  toDegrees: Number(toDegrees),
  fromDepthMm: Number(fromDepthMm),
  toDepthMm: Number(toDepthMm),
}))
