import type { BoreFinding, LimitPair } from '../findings'

/** Share of the middle diameter that the furthest limit or reading may be drawn away from it. */
export const drawnShare = 0.3

/** Share of the middle diameter at which the slider ends: a wall at 0.2 or at 1.8 of the radius. */
export const drawnShareAtEnd = 0.8

/** Differences below this are the rounding of the arithmetic, not of any gauge, mm. */
const noSpreadMm = 1e-5

/**
 * The diameter drawn as it is, mm: the middle of the pair of limits. Where one of the two limits is missing,
 * or both, the middle between the smallest and the largest of what there is: that limit and the counted
 * readings. Undefined where there is neither.
 */
export function middleOf(
  pair: LimitPair | undefined,
  findings: readonly Pick<BoreFinding, 'stations'>[],
): number | undefined {
  const limits = limitsOf(pair)
  const shown = limits.length === 2 ? limits : [...limits, ...findings.flatMap(countedDiameters)]
  if (shown.length === 0) return undefined
  return (smallestOf(shown) + largestOf(shown)) / 2
}

/** Every limit and every counted reading of these bores, mm: what must have room in the picture. */
export function diametersShown(findings: readonly Pick<BoreFinding, 'stations' | 'pair'>[]): number[] {
  return findings.flatMap((finding) => [
    ...limitsOf(finding.pair),
    ...(finding.pair?.newMaxMm === undefined ? [] : [finding.pair.newMaxMm]),
    ...countedDiameters(finding),
  ])
}

/**
 * How many times the deviations are drawn: the largest of 1, 2, 5 × 10ⁿ (n may be negative) that draws the
 * furthest of these diameters no more than 0.30 of the middle diameter away from it. 1 where nothing differs
 * from the middle by 0.01 µm: there is nothing to show. Lengths in mm. Own derivation.
 */
export function exaggerationOf(middleMm: number, diametersMm: readonly number[]): number {
  const furthest = furthestFrom(middleMm, diametersMm)
  if (furthest < noSpreadMm) return 1
  return roundStepWithin((drawnShare * middleMm) / furthest)
}

/**
 * Where the slider of the exaggeration ends: the factor, not rounded, at which the furthest of these
 * diameters is drawn at 0.2 or 1.8 of the middle radius. 1 where nothing differs from the middle by 0.01 µm.
 */
export function exaggerationEnd(middleMm: number, diametersMm: readonly number[]): number {
  const furthest = furthestFrom(middleMm, diametersMm)
  return furthest < noSpreadMm ? 1 : (drawnShareAtEnd * middleMm) / furthest
}

/** Diameter as drawn, mm: the deviation from the middle times the exaggeration, on the middle. */
export function drawnDiameter(middleMm: number, exaggeration: number, diameterMm: number): number {
  return middleMm + exaggeration * (diameterMm - middleMm)
}

/** No finer step is drawn: a micron is what a gauge can prove, and what sizes are written to; in steps. */
const leastIsoStep = 1

/**
 * Step of the iso-lines, µm, for a wall that spans this many µm from its smallest to its largest diameter:
 * of 1, 2, 5 × 10ⁿ, n ≥ 0, the one whose number of lines is nearest, as a ratio, to √(6·12), so about 6 to
 * 12 (5.3 to 13.5 at the worst, where two steps are equally far). Never below 1 µm, so a wall that spans less
 * than 5 µm has fewer lines and one without a micron between its readings may have none. In another unit, `stepUm` µm stand for the 1. Own derivation.
 */
export function isoStep(spanUm: number, stepUm = 1): number {
  if (!Number.isFinite(spanUm) || spanUm < 0) {
    throw new RangeError(`isoStep: expected a span of 0 µm or more, got ${spanUm}`)
  }
  const wanted = spanUm / stepUm / Math.sqrt(6 * 12)
  if (wanted <= leastIsoStep) return leastIsoStep * stepUm
  const below = roundStepWithin(wanted)
  const above = nextRoundStep(below)
  return stepUm * (wanted * wanted <= below * above ? below : above)
}

function limitsOf(pair: LimitPair | undefined): number[] {
  return [pair?.minMm, pair?.maxMm].filter((limit) => limit !== undefined)
}

function countedDiameters(finding: Pick<BoreFinding, 'stations'>): number[] {
  return finding.stations.filter((s) => s.counted).map((s) => s.diameterMm)
}

function furthestFrom(middleMm: number, diametersMm: readonly number[]): number {
  if (!Number.isFinite(middleMm) || middleMm <= 0) {
    throw new RangeError(`exaggeration: expected a middle diameter above 0 mm, got ${middleMm}`)
  }
  return diametersMm.reduce((furthest, diameter) => Math.max(furthest, Math.abs(diameter - middleMm)), 0)
}

/** The largest of 1, 2, 5 × 10ⁿ not above x > 0, rounding of x forgiven. */
function roundStepWithin(x: number): number {
  const forgiven = x * (1 + 1e-9)
  const exponent = Math.floor(Math.log10(forgiven))
  const steps = [5, 2, 1].map((digit) => stepOf(digit, exponent))
  return steps.find((step) => step <= forgiven) ?? stepOf(5, exponent - 1)
}

function nextRoundStep(step: number): number {
  const exponent = Math.floor(Math.log10(step * (1 + 1e-9)))
  const digit = Math.round(step / stepOf(1, exponent))
  if (digit === 1) return stepOf(2, exponent)
  if (digit === 2) return stepOf(5, exponent)
  return stepOf(1, exponent + 1)
}

/** Read from decimal notation, so that a step below 1 is the double nearest to it. */
function stepOf(digit: number, exponent: number): number {
  return Number(`${digit}e${exponent}`)
}

function smallestOf(values: readonly number[]): number {
  return values.reduce((a, b) => Math.min(a, b))
}

function largestOf(values: readonly number[]): number {
  return values.reduce((a, b) => Math.max(a, b))
}
