import { squaredLengthQuantile } from '../statistics/squared-length'
import { studentQuantile } from '../statistics/student'
import type { CirclePoints, CircleResult } from './circle-points'
import { distancesFrom } from './circle-points'
import { leastSquaresCircle } from './least-squares-circle'
import { type Harmonic, harmonicsWithin, type LevelHarmonics, levelHarmonics } from './level-harmonics'
import { minimumCircumscribedCircle } from './minimum-circumscribed-circle'
import type { Across } from './radial-scan'
import { type ScanRange, scanRange } from './range-of-many'
import { levelGap } from './scan-gaps'
import type { TurnTable } from './turn-table'
import { type TwoContact, twoContact } from './two-contact'
import { maximumInscribedCircle, minimumZoneCircle } from './zone-circles'

/** A reference circle of a level, about the axis. */
export interface LevelCircle {
  /** Its middle, µm from the axis. */
  readonly middleUm: Across
  /** Its radius, counted as the radii of the scan; for the minimum zone that of the circle half way between. */
  readonly radiusUm: number
  /** Greatest less least distance of the level from its middle: the roundness deviation by this circle. */
  readonly roundness: ScanRange
  /** Angles of the places that hold it, degrees; none for least squares. */
  readonly contactsDegrees: readonly number[]
}

/** The oval of a level as a difference of diameters, as for a fitted oval of stations. */
export interface ScanOval {
  readonly ovalUm: number
  /** U, two-sided 95 %. */
  readonly expandedUm: number
  /** Where the bore is widest, [0, 180), with U; absent where no direction stands out. */
  readonly longAxisDegrees?: number
  readonly longAxisExpandedDegrees?: number
  /** One-sided 95 % bound where no direction stands out. */
  readonly atMostUm?: number
}

/** The form of one level about the axis. */
export interface LevelForm {
  readonly depthMm: number
  readonly values: number
  /** The widest gap, degrees, from value to value. */
  readonly gapDegrees: number
  readonly leastSquares: CircleResult<LevelCircle>
  readonly minimumZone: CircleResult<LevelCircle>
  readonly maximumInscribed: CircleResult<LevelCircle>
  readonly minimumCircumscribed: CircleResult<LevelCircle>
  /** Absent where a gap lets no harmonic be told. */
  readonly harmonics?: LevelHarmonics
  /** Absent where a gap hides the second harmonic. */
  readonly oval?: ScanOval
  /** Absent where no axis has metal at both ends. */
  readonly twoContact?: TwoContact
}

/** What the form of a level is made from. */
export interface LevelInput {
  readonly depthMm: number
  readonly anglesDegrees: readonly number[]
  /** Radii about the axis, µm, less half of the near diameter; NaN in ports. */
  readonly radii: Float64Array
  readonly nearRadiusUm: number
  readonly table: TurnTable
  /** Standard uncertainty of a radius and its degrees of freedom. */
  readonly u: number
  readonly degreesOfFreedom: number
}

/**
 * Circles, harmonics, oval and two-contact equivalents of a level. The circles are those of ISO 12181-1:2011, about
 * true distances, and refused where `minimumZoneCircle` and the others say so; roundness with what the probe's
 * repeatability makes of it (`scanRange`). Oval: 4·amplitude of the second harmonic, as a difference of diameters, by
 * the rules of `fittedOval`.
 */
export function levelForm(input: LevelInput): LevelForm {
  const { depthMm, anglesDegrees, radii, table, u, degreesOfFreedom } = input
  const { values, gapDegrees } = levelGap(anglesDegrees, radii)
  const harmonics = levelHarmonics(radii, table, harmonicsWithin(values, gapDegrees))
  const second = harmonics?.harmonics[1]
  const equivalents = twoContact(anglesDegrees, radii, u, degreesOfFreedom)
  return {
    depthMm,
    values,
    gapDegrees,
    ...circlesOf(input),
    ...(harmonics ? { harmonics } : {}),
    ...(second ? { oval: ovalOf(second, u, degreesOfFreedom) } : {}),
    ...(equivalents ? { twoContact: equivalents } : {}),
  }
}

function circlesOf(input: LevelInput) {
  const { points, angles } = pointsOf(input)
  const made = (circle: {
    readonly x: number
    readonly y: number
    readonly radius: number
    readonly width: number
    readonly contacts: readonly { readonly index: number }[]
  }): { readonly known: true } & LevelCircle => ({
    known: true,
    middleUm: { x: circle.x, y: circle.y },
    radiusUm: circle.radius - input.nearRadiusUm,
    roundness: scanRange(circle.width, angles.length, input.u, input.degreesOfFreedom),
    contactsDegrees: circle.contacts.map(({ index }) => angles[index] ?? 0),
  })
  const widthAbout = (middle: { readonly x: number; readonly y: number }) => {
    const { largest, smallest } = distancesFrom(points, middle)
    return largest - smallest
  }
  const leastSquares = leastSquaresCircle(points)
  const zone = minimumZoneCircle(points, leastSquares)
  const inscribed = maximumInscribedCircle(points, leastSquares)
  const circumscribed = minimumCircumscribedCircle(points)
  return {
    leastSquares: leastSquares.known
      ? made({ ...leastSquares, width: widthAbout(leastSquares), contacts: [] })
      : leastSquares,
    minimumZone: zone.known
      ? made({ ...zone, radius: (zone.inner + zone.outer) / 2, width: zone.outer - zone.inner })
      : zone,
    maximumInscribed: inscribed.known
      ? made({ ...inscribed, radius: inscribed.inner, width: inscribed.outer - inscribed.inner })
      : inscribed,
    minimumCircumscribed: circumscribed.known
      ? made({
          ...circumscribed,
          width: widthAbout(circumscribed),
          contacts: circumscribed.contacts.map((index) => ({ index })),
        })
      : circumscribed,
  }
}

/** The values of a level as points across the bore, µm about the axis, with their angles. */
function pointsOf({ anglesDegrees, radii, nearRadiusUm, table }: LevelInput): {
  points: CirclePoints
  angles: number[]
} {
  const x = new Float64Array(anglesDegrees.length)
  const y = new Float64Array(anglesDegrees.length)
  const angles: number[] = []
  for (const [i, angle] of anglesDegrees.entries()) {
    const radius = nearRadiusUm + (radii[i] ?? Number.NaN)
    if (Number.isNaN(radius)) continue
    x[angles.length] = radius * (table.cosines[table.angles + i] ?? 0)
    y[angles.length] = radius * (table.sines[table.angles + i] ?? 0)
    angles.push(angle)
  }
  return { points: { x: x.subarray(0, angles.length), y: y.subarray(0, angles.length) }, angles }
}

function ovalOf(
  { amplitudeUm, cosineUm, sineUm, peakDegrees, covariance }: Harmonic,
  u: number,
  degreesOfFreedom: number,
): ScanOval {
  const { aa, ab, bb } = covariance
  const t = studentQuantile(0.975, degreesOfFreedom)
  const along = amplitudeUm > 0 ? { x: cosineUm / amplitudeUm, y: sineUm / amplitudeUm } : { x: 1, y: 0 }
  const variance = along.x ** 2 * aa + 2 * along.x * along.y * ab + along.y ** 2 * bb
  const across = along.y ** 2 * aa - 2 * along.x * along.y * ab + along.x ** 2 * bb
  const distance =
    (bb * cosineUm ** 2 - 2 * ab * cosineUm * sineUm + aa * sineUm ** 2) / (aa * bb - ab * ab) / u ** 2
  const named = squaredLengthQuantile(0.95, degreesOfFreedom)
  const largest = u * Math.sqrt((aa + bb) / 2 + Math.hypot((aa - bb) / 2, ab))
  return {
    ovalUm: 4 * amplitudeUm,
    expandedUm: 4 * t * u * Math.sqrt(variance),
    ...(distance > named
      ? {
          longAxisDegrees: peakDegrees,
          longAxisExpandedDegrees: Math.min(
            90,
            ((t * u * Math.sqrt(across)) / amplitudeUm / 2) * (180 / Math.PI),
          ),
        }
      : { atMostUm: 4 * (amplitudeUm + Math.sqrt(named) * largest) }),
  }
}
