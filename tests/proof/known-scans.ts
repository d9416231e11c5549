import { fitScan } from '../../src/core/scan/fit-scan'
import type { RadialScan } from '../../src/core/scan/radial-scan'
import { type ScanFormOptions, scanForm } from '../../src/core/scan/scan-form'
import { type SeededRandom, seededRandom } from './seeded-random'

/** A scanned bore of 60 mm and 80 mm length whose axis and form are known. */
export interface KnownBore {
  readonly levels: number
  readonly angles: number
  /** Ports in a belt of the wall, as a two-stroke has them. */
  readonly ported: boolean
  /** Smears on the wall, four to a bore, up to 25 µm, scores in them. */
  readonly smeared: boolean
}

/** What the fits of many such scans made of the truth. */
export interface KnownScans {
  readonly scans: number
  /** Distance of the axis from the true one at the worse end of the scan, µm. */
  readonly axisRmsUm: number
  readonly axisWorstUm: number
  /** Share of the axis' four figures whose U holds the truth. */
  readonly axisHeld: number
  /** Share of levels, and of scans, whose interval holds the true roundness and cylindricity; smears leave none known. */
  readonly roundnessHeld: number
  readonly zoneHeld: number
  readonly cylindricityHeld: number
  /** Stated less true, mean, µm. */
  readonly zoneOverUm: number
  readonly cylindricityOverUm: number
}

export const probe: ScanFormOptions = {
  nearDiameterMm: 60,
  repeatabilityUm: 0.8,
  repeatabilityDegreesOfFreedom: 50,
  scaleUm: 0,
}

/** Arcs of the ports, degrees, and their belt, mm. */
const arcs = [
  [5, 42],
  [60, 98],
  [104, 136],
  [166, 194],
  [224, 256],
  [262, 300],
  [318, 355],
] as const
const belt = [45, 58] as const
const spanMm = [4, 84] as const

/** A scan with what is true of it. */
export interface Truth {
  readonly scan: RadialScan
  readonly x: number
  readonly y: number
  readonly leanX: number
  readonly leanY: number
  readonly roundnessUm: number
  readonly cylindricityUm: number
}

/** One lobed form all along, a taper, a spindle beside the axis that leans, the probe's scatter and rounding. */
export function knownScan(bore: KnownBore, random: SeededRandom): Truth {
  const [x, y] = [random.rectangular(30), random.rectangular(30)]
  const [leanX, leanY] = [random.rectangular(0.2), random.rectangular(0.2)]
  const lobes = 2 + Math.floor(3 * random.even())
  const amplitude = 6 * random.even()
  const turn = 2 * Math.PI * random.even()
  const taper = random.rectangular(0.1)
  const smears = bore.smeared ? [50, 130, 215, 310].map((angle) => smear(angle, random)) : []
  const [top, bottom] = spanMm
  const depthsMm = Array.from(
    { length: bore.levels },
    (_, i) => top + ((bottom - top) * i) / (bore.levels - 1),
  )
  const anglesDegrees = Array.from({ length: bore.angles }, (_, i) => (360 * i) / bore.angles)
  const radiiUm = depthsMm.flatMap((z) =>
    anglesDegrees.map((degrees) => {
      if (bore.ported && isInPort(z, degrees)) return Number.NaN
      const angle = (degrees * Math.PI) / 180
      const form = amplitude * Math.cos(lobes * angle - turn) + taper * z
      const marks = smears.reduce((sum, height) => sum + height(z, degrees), 0)
      const seen = (x + leanX * z) * Math.cos(angle) + (y + leanY * z) * Math.sin(angle)
      return Math.round(10 * (seen + form + marks + random.normal(0.8))) / 10
    }),
  )
  return {
    scan: { depthsMm, anglesDegrees, radiiUm: Float64Array.from(radiiUm) },
    x,
    y,
    leanX,
    leanY,
    roundnessUm: 2 * amplitude,
    cylindricityUm: 2 * amplitude + Math.abs(taper) * (bottom - top),
  }
}

function isInPort(z: number, degrees: number): boolean {
  return z >= belt[0] && z <= belt[1] && arcs.some(([from, to]) => degrees >= from && degrees <= to)
}

/** Metal stuck on the wall around a place, and a score along its middle. */
function smear(around: number, random: SeededRandom): (z: number, degrees: number) => number {
  const height = -25 * random.even()
  const [centre, depth] = [around + random.rectangular(6), 36 + random.rectangular(10)]
  return (z, degrees) => {
    const off = ((degrees - centre + 540) % 360) - 180
    const shape = Math.exp(-((off / 6) ** 2) - ((z - depth) / 16) ** 2)
    return height * shape + (Math.abs(off) < 0.8 && Math.abs(z - depth) < 16 ? 11 : 0)
  }
}

/** Fits many such scans and holds what comes out against the truth. */
export function fitKnownScans(bore: KnownBore, scans: number, seed: number): KnownScans {
  const random = seededRandom(seed)
  const sums = { square: 0, worst: 0, held: 0, round: 0, zone: 0, cylinder: 0, zoneOver: 0, cylinderOver: 0 }
  for (let i = 0; i < scans; i++) {
    const truth = knownScan(bore, random)
    const fit = fitScan(truth.scan, probe)
    const error = axisError(truth, fit.axis)
    sums.square += error.worse ** 2
    sums.worst = Math.max(sums.worst, error.worse)
    sums.held += error.held / 4
    if (bore.smeared) continue
    const { levels, cylinder } = scanForm(truth.scan, fit, probe)
    for (const { leastSquares, minimumZone } of levels) {
      if (!leastSquares.known || !minimumZone.known) throw new Error('a level without a circle')
      sums.round += holds(leastSquares.roundness, truth.roundnessUm) / levels.length
      sums.zone += holds(minimumZone.roundness, truth.roundnessUm) / levels.length
      sums.zoneOver += (minimumZone.roundness.valueUm - truth.roundnessUm) / levels.length
    }
    if (!cylinder.known) throw new Error('a scan without a cylinder')
    sums.cylinder += holds(cylinder.minimumZone.cylindricity, truth.cylindricityUm)
    sums.cylinderOver += cylinder.minimumZone.cylindricity.valueUm - truth.cylindricityUm
  }
  return {
    scans,
    axisRmsUm: Math.sqrt(sums.square / scans),
    axisWorstUm: sums.worst,
    axisHeld: sums.held / scans,
    roundnessHeld: sums.round / scans,
    zoneHeld: sums.zone / scans,
    cylindricityHeld: sums.cylinder / scans,
    zoneOverUm: sums.zoneOver / scans,
    cylindricityOverUm: sums.cylinderOver / scans,
  }
}

function axisError(truth: Truth, axis: ReturnType<typeof fitScan>['axis']) {
  const at = (z: number) =>
    Math.hypot(
      axis.atDeckUm.x + z * axis.leanUmPerMm.x - truth.x - z * truth.leanX,
      axis.atDeckUm.y + z * axis.leanUmPerMm.y - truth.y - z * truth.leanY,
    )
  const lean = axis.leanDoubtUmPerMm ?? { x: 0, y: 0 }
  const figures = [
    [axis.atDeckUm.x - truth.x, axis.atDeckDoubtUm.x],
    [axis.atDeckUm.y - truth.y, axis.atDeckDoubtUm.y],
    [axis.leanUmPerMm.x - truth.leanX, lean.x],
    [axis.leanUmPerMm.y - truth.leanY, lean.y],
  ] as const
  return {
    worse: Math.max(at(spanMm[0]), at(spanMm[1])),
    held: figures.filter(([error, u]) => Math.abs(error) <= 1.96 * u).length,
  }
}

function holds(range: { readonly lowUm: number; readonly highUm: number }, truth: number): number {
  return truth >= range.lowUm && truth <= range.highUm ? 1 : 0
}

/** The bores that are scanned, by what is hard about them. */
export const knownBores: Readonly<Record<string, KnownBore>> = {
  'a clean bore, 14 levels of 72': { levels: 14, angles: 72, ported: false, smeared: false },
  'a clean bore, 40 levels of 360': { levels: 40, angles: 360, ported: false, smeared: false },
  'ports, 14 levels of 72': { levels: 14, angles: 72, ported: true, smeared: false },
  'ports and smears, 14 levels of 72': { levels: 14, angles: 72, ported: true, smeared: true },
  'ports and smears, 14 levels of 360': { levels: 14, angles: 360, ported: true, smeared: true },
}
