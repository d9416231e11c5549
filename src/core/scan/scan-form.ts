import { type CylinderForm, cylinderForm } from './cylinder-form'
import { type LevelForm, levelForm } from './level-form'
import { mostHarmonics } from './level-harmonics'
import type { RadialScan, ScanFit, ScanFitOptions } from './radial-scan'
import { rangeOfMany } from './range-of-many'
import { levelsAllRound, rowOf } from './scan-gaps'
import { filterTurn, turnKernel } from './turn-filter'
import { turnTable } from './turn-table'

/** What the form of a scan needs to know beside its fit. */
export interface ScanFormOptions extends ScanFitOptions {
  /** Standard uncertainty of the probe's scale over what it reads here, µm. */
  readonly scaleUm: number
  /** Undulations per revolution of which the filter lets half through; absent: no filter. */
  readonly cutOffUndulations?: number
}

/** What the probe itself brings to the form that a scan shows. */
export interface ScanDoubt {
  /** Standard uncertainty of a radius, after the filter where there is one, and its degrees of freedom. */
  readonly radiusUm: number
  readonly degreesOfFreedom: number
  /** What a perfectly round level, and a perfect cylinder, would show at most in 95 % of scans. */
  readonly roundShowsUm: number
  readonly cylinderShowsUm: number
}

/** The filter that a scan was looked at through. */
export interface ScanFilter {
  readonly cutOffUndulations: number
  /** Values for each wave at the cut-off; below 7 the scan is too coarse for it. */
  readonly valuesPerWave: number
  /** Radii about the axis after the filter, µm, row by row; NaN in ports. */
  readonly aboutAxisUm: Float64Array
  /** 1 where a value leans on one side because a gap lies within half a cut-off wavelength. */
  readonly nearGap: Uint8Array
  /** How many values are marked so. */
  readonly nearGapValues: number
}

/** What form a scan proves: level by level and as a whole. No size: see `sizeFromTies`. */
export interface ScanForm {
  readonly levels: readonly LevelForm[]
  readonly cylinder: CylinderForm
  readonly doubt: ScanDoubt
  readonly filter?: ScanFilter
}

/**
 * Roundness (ISO 12181-1:2011) of every level and cylindricity (ISO 12180-1:2011) of a scan about its axis, harmonics,
 * ovals and two-contact equivalents, through a Gaussian filter if one is asked for. Doubt: the probe's repeatability,
 * which the filter makes smaller, and its scale, which it does not; the place of the axis moves no form but by e²/2R.
 * Sources and accuracy: `levelForm`, `cylinderForm`, `turnKernel`.
 */
export function scanForm(
  scan: RadialScan,
  fit: Pick<ScanFit, 'aboutAxisUm'>,
  options: ScanFormOptions,
): ScanForm {
  const { depthsMm, anglesDegrees } = scan
  const filter = filterOf(scan, fit, options.cutOffUndulations)
  const aboutAxisUm = filter?.filter.aboutAxisUm ?? fit.aboutAxisUm
  const { u, degreesOfFreedom } = radiusDoubt(options, filter?.scatterFactor ?? 1)
  const nearRadiusUm = options.nearDiameterMm * 500
  const table = turnTable(anglesDegrees, 2 * mostHarmonics)
  const angles = anglesDegrees.length
  const levels = depthsMm.map((depthMm, level) =>
    levelForm({
      depthMm,
      anglesDegrees,
      radii: rowOf(aboutAxisUm, level, angles),
      nearRadiusUm,
      table,
      u,
      degreesOfFreedom,
    }),
  )
  const cylinder = cylinderForm(
    { depthsMm, anglesDegrees, aboutAxisUm, nearRadiusUm, u, degreesOfFreedom },
    levelsAllRound(scan),
  )
  const values = levels.map((level) => level.values)
  return {
    levels,
    cylinder,
    doubt: {
      radiusUm: u,
      degreesOfFreedom,
      roundShowsUm: u * rangeOfMany(Math.max(...values), degreesOfFreedom),
      cylinderShowsUm:
        u *
        rangeOfMany(
          values.reduce((sum, count) => sum + count, 0),
          degreesOfFreedom,
        ),
    },
    ...(filter ? { filter: filter.filter } : {}),
  }
}

/** Repeatability and scale of one radius, with the degrees of freedom of Welch and Satterthwaite (GUM, G.4.1). */
function radiusDoubt(options: ScanFormOptions, scatterFactor: number) {
  const repeat = options.repeatabilityUm * scatterFactor
  const u = Math.hypot(repeat, options.scaleUm)
  const effective =
    repeat > 0 ? options.repeatabilityDegreesOfFreedom * (u / repeat) ** 4 : Number.POSITIVE_INFINITY
  return {
    u,
    degreesOfFreedom: effective > 1e6 ? Number.POSITIVE_INFINITY : Math.max(1, Math.floor(effective + 1e-9)),
  }
}

function filterOf(
  scan: RadialScan,
  fit: Pick<ScanFit, 'aboutAxisUm'>,
  cutOffUndulations: number | undefined,
) {
  if (cutOffUndulations === undefined) return undefined
  const angles = scan.anglesDegrees.length
  const kernel = turnKernel(scan.anglesDegrees, cutOffUndulations)
  const aboutAxisUm = new Float64Array(fit.aboutAxisUm.length)
  const nearGap = new Uint8Array(fit.aboutAxisUm.length)
  let scatterFactor = 0
  for (const level of scan.depthsMm.keys()) {
    const filtered = filterTurn(kernel, rowOf(fit.aboutAxisUm, level, angles))
    aboutAxisUm.set(filtered.values, level * angles)
    nearGap.set(filtered.nearGap, level * angles)
    scatterFactor = Math.max(scatterFactor, filtered.scatterFactor)
  }
  const nearGapValues = nearGap.reduce((sum, near) => sum + near, 0)
  const filter: ScanFilter = {
    cutOffUndulations,
    valuesPerWave: angles / cutOffUndulations,
    aboutAxisUm,
    nearGap,
    nearGapValues,
  }
  return { filter, scatterFactor }
}
