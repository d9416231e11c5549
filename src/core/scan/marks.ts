import type { Port } from '../measured'
import { surfaceWidthDegrees } from '../surface-findings/surface-place'
import type { CellBox } from './cell-box'
import { formDoubtShare, formShare } from './form-doubt'
import { heightOf, type MarkHeight } from './height-of'
import { withoutHigherLobes } from './higher-lobes'
import { markPatterns } from './mark-patterns'
import { bridgeOf, isBesideOpening, placeOfBox, shapeOf, withinTurn } from './mark-place'
import type { RadialScan, ScanFit } from './radial-scan'
import { robustSigma } from './robust-weights'
import type { ScanMark, ScanMarks } from './scan-marks'
import { type SeenMark, seenMarks } from './seen-marks'
import { middle, type WorkingMap, workingMap } from './working-map'

/** What the marks of a scan are judged with, beside its fit. */
export interface MarkOptions {
  /** Roughly the bore's diameter, mm. */
  readonly nearDiameterMm: number
  /** Openings; places without a value are openings too. */
  readonly ports: readonly Port[]
  /** Standard deviation below which the probe says nothing, µm; that of a tenth of a micron read where absent. */
  readonly leastSigmaUm?: number
}

/** Resolution of a tenth of a micron over √12. */
const usualLeastSigmaUm = 0.1 / Math.sqrt(12)
/** What is left of a mark without its largest value stands out so far, or it is that value alone. */
const restStandsOut = 2
const leastCells = 2

/**
 * The marks of a scan: what stands out of its smooth form on either side, gathered, with place, size and height, and
 * the patterns that they make. In a clean scan (noise of one σ, any smooth form) less than one scan in a hundred shows
 * any mark; see `standingOut`. σ is robust, over √(1 − p/n) for a form of p coefficients from n values. A height is
 * over the smooth form, that of a narrow line within a wider mark over that mark; its doubt is that of the noise, σ/√n,
 * and of the smooth form, and holds no systematic error of the probe; ± is 95 % for the highest place of all that were
 * looked at. Own derivation on published parts, named with each. Throws for a diameter that is not above 0.
 */
export function marksOf(scan: RadialScan, fit: Pick<ScanFit, 'smooth'>, options: MarkOptions): ScanMarks {
  const { ports, nearDiameterMm } = options
  if (!(nearDiameterMm > 0))
    throw new RangeError(`marksOf: expected a diameter above 0 mm, got ${nearDiameterMm}`)
  const { residualUm, sigmaUm } = fit.smooth
  const leastSigma = options.leastSigmaUm ?? usualLeastSigmaUm
  const all = workingMap(scan, residualUm, sigmaUm, ports)
  const map = withoutHigherLobes(all, Math.max(all.sigma, leastSigma))
  const left = robustSigma(map.values, new Float64Array(map.values.length))
  const sigma = Math.max(left / Math.sqrt(1 - formShare(scan)), leastSigma)
  const { seen, threshold } = seenMarks(map, sigma, nearDiameterMm)
  const kept = seen.filter((one) => isMark(one, sigma)).sort((a, b) => b.region.evidence - a.region.evidence)
  const formDoubtUm = sigmaUm * formDoubtShare(scan)
  const marks = kept.map((one) => {
    const within = kept.findIndex(({ region }) => region === one.wide)
    return { ...markOf(map, one, sigma, formDoubtUm, options), ...(within >= 0 ? { within } : {}) }
  })
  return {
    marks,
    patterns: markPatterns(marks),
    loneValues: seen.length - kept.length,
    sigmaUm: sigma,
    threshold,
    leastHeightUm: (threshold * sigma) / 3,
    map,
  }
}

/** Two values or more, and not one of them alone stands out. */
function isMark({ region, heights }: SeenMark, sigma: number): boolean {
  const sizes = region.core.map((cell) => (region.sign === 'larger' ? 1 : -1) * (heights.values[cell] ?? 0))
  const rest = sizes.reduce((sum, size) => sum + size, 0) - Math.max(...sizes)
  return sizes.length >= leastCells && rest / (sigma * Math.sqrt(sizes.length - 1)) >= restStandsOut
}

function markOf(
  map: WorkingMap,
  { region, heights }: SeenMark,
  sigma: number,
  formDoubtUm: number,
  options: MarkOptions,
): ScanMark {
  const { sign, core, box, evidence } = region
  const { nearDiameterMm, ports } = options
  const place = placeOfBox(map, box)
  const acrossDegrees = surfaceWidthDegrees(place)
  const acrossMm = (Math.PI * nearDiameterMm * acrossDegrees) / 360
  const alongMm = place.toDepthMm - place.fromDepthMm
  const height = heightOf(heights, core, box, sign, sigma)
  const bridge = bridgeOf(map, core, ports)
  const doubtUm = Math.hypot(sigma / Math.sqrt(height.count), formDoubtUm)
  return {
    ...place,
    sign,
    shape: shapeOf(alongMm, acrossMm, acrossDegrees),
    acrossDegrees,
    acrossMm,
    alongMm,
    peak: {
      depthMm: middle(map.rowEdgesMm, Math.floor(height.cell / map.columns)),
      angleDegrees: withinTurn(middle(map.columnEdges, height.cell % map.columns)),
    },
    peakPlace: placeOfBox(map, boxAround(map, height)),
    heightUm: height.mean,
    doubtUm,
    expandedUm: height.factor * doubtUm,
    evidence,
    ...(bridge ? { bridge } : {}),
    besideOpening: bridge === undefined && isBesideOpening(map, core, nearDiameterMm),
  }
}

/** The cells that a height is the mean of. */
function boxAround({ rows, columns }: WorkingMap, { cell, window: { high, wide } }: MarkHeight): CellBox {
  const row = Math.floor(cell / columns)
  return {
    top: Math.max(0, row - (high >> 1)),
    bottom: Math.min(rows - 1, row + (high >> 1)),
    left: ((cell % columns) - (wide >> 1) + columns) % columns,
    wide: Math.min(wide, columns),
  }
}
