import { judgedLimits } from '../conformity/conformity'
import { specOfBore } from '../conformity/spec-of-bore'
import type { StationFinding } from '../findings'
import { type Level, levelsOf } from '../form/level'
import { ovalityPair } from '../form/ovality'
import { taperOfMeans, taperPair } from '../form/taper'
import type { TaperRule } from '../measured'
import { endsOf } from '../piston/clearance'
import type { Fit } from '../piston/fits'
import { pistonExpansion, wallExpansion } from '../temperature/expansion'
import type { DecisionFacts } from './decision-facts'
import type { Evidence } from './evidence'
import type { TrueValues } from './true-values'
import { leastHoningMm } from './wall-allows'

/**
 * The facts as they would be if the values drawn were the true ones: every limit is held against them as it stands,
 * without U and without a guard band. What was seen, and what the readings could not show (an oval, by three contacts;
 * a limit that waits), stays as it is. The doubt of how much walls and pistons grow to a temperature that the manual names for its clearance is left out.
 */
export function trueFactsOf(
  evidence: Evidence,
  seen: DecisionFacts,
  values: TrueValues,
): () => DecisionFacts {
  const levels = levelsOf(values.stations)
  return () => ({
    ...seen,
    grounds: 'repeated',
    size: trueSize(evidence, seen, values.stations),
    ovality: trueOvality(evidence, seen, levels),
    taper: trueTaper(evidence, seen, levels),
    plating: truePlating(evidence, seen, values.stations),
    ...trueClearances(evidence, seen, values),
    outlook: seen.outlook === 'now' ? 'ahead' : seen.outlook,
    honing: trueHoning(evidence, seen, values.stations),
  })
}

function trueSize(
  { finding: { pair }, measured, bore }: Evidence,
  seen: DecisionFacts,
  stations: readonly StationFinding[],
): DecisionFacts['size'] {
  if (!pair || seen.size === 'no-limit') return seen.size
  const past = (limits: { min?: number; max?: number }): DecisionFacts['size'] => {
    if (stations.some((s) => s.diameterMm > (limits.max ?? Number.POSITIVE_INFINITY))) return 'above'
    return stations.some((s) => s.diameterMm < (limits.min ?? 0)) ? 'below' : 'inside'
  }
  const size = past(judgedLimits(pair))
  if (size === 'inside') return seen.size === 'mean-only' ? 'mean-only' : 'inside'
  const grades = pair.kind === 'grade' ? (specOfBore(measured.spec, bore).grades ?? []) : []
  return grades.some(({ minMm: min, maxMm: max }) => past({ min, max }) === 'inside') ? 'other-grade' : size
}

function trueOvality({ finding, measured }: Evidence, { ovality }: DecisionFacts, levels: readonly Level[]) {
  const [own] = finding.ovality
  if (own?.limitMm === undefined || ovality === 'no-limit' || ovality === 'open') return ovality
  const pair = ovalityPair(own.rule, levels, measured.spec, own.limitMm)
  if (typeof pair === 'string') return 'open'
  return pair.first.diameterMm - pair.second.diameterMm > own.limitMm ? 'above' : 'inside'
}

function trueTaper({ finding }: Evidence, { taper }: DecisionFacts, levels: readonly Level[]) {
  const [own] = finding.taper
  if (own?.limitMm === undefined || taper === 'no-limit' || taper === 'open') return taper
  const taperMm = taperBy(own.rule, levels)
  if (taperMm === undefined) return 'open'
  return Math.abs(taperMm) > own.limitMm ? 'above' : 'inside'
}

function taperBy(rule: TaperRule, levels: readonly Level[]): number | undefined {
  if (rule === 'level-means') {
    const means = taperOfMeans(levels)
    return typeof means === 'string' ? undefined : means
  }
  const pair = taperPair(rule, levels, undefined)
  return typeof pair === 'string' ? undefined : pair.first.diameterMm - pair.second.diameterMm
}

/** Wear as it was found, moved by what its station moved: what it is counted from is kept. */
function truePlating(
  { finding, growth, bore }: Evidence,
  { plating }: DecisionFacts,
  stations: readonly StationFinding[],
): DecisionFacts['plating'] {
  const platingMm = (bore.wall?.platingUm ?? 0) / 1000
  const wear = growth.wear[0]
  if (!wear?.platingShare || platingMm <= 0) return plating
  const { largest } = wear
  const at = (list: readonly StationFinding[]) =>
    list.find((s) => s.depthMm === largest.depthMm && s.axisDegrees === largest.axisDegrees)?.diameterMm
  const [now, drawn] = [at(finding.stations), at(stations)]
  if (now === undefined || drawn === undefined) return plating
  return wear.platingShare.oneSide + (drawn - now) / platingMm >= 1 ? 'may-be-through' : 'left'
}

function trueClearances(
  evidence: Evidence,
  seen: DecisionFacts,
  values: TrueValues,
): Pick<DecisionFacts, 'clearance' | 'otherPiston'> {
  const { atHand, others } = evidence.pistons
  const here = atHand?.verdict === undefined ? undefined : trueClearance(evidence, atHand, values)
  const there = others.map((fit) => trueClearance(evidence, fit, values))
  return {
    clearance: here ?? seen.clearance,
    otherPiston: there.includes('inside') ? 'fits' : there.length > 0 ? 'none-fits' : 'none-listed',
  }
}

function trueClearance(
  { measured, bore }: Evidence,
  fit: Fit,
  { stations, pistonMm }: TrueValues,
): 'inside' | 'too-tight' | 'too-loose' | undefined {
  const piston = measured.pistons?.find(({ id }) => id === fit.pistonId)
  const sizeMm = pistonMm(fit)
  const running = stations.filter((s) => !s.land).map((s) => s.diameterMm)
  if (!piston || sizeMm === undefined || running.length === 0) return undefined
  const growth = (perK: number) => 1 + perK * (fit.atC - 20)
  const clearance = (boreMm: number) =>
    boreMm * growth(wallExpansion(bore.wall).perK) - sizeMm * growth(pistonExpansion(piston).perK)
  const mean = running.reduce((sum, mm) => sum + mm, 0) / running.length
  const sizes = fit.rule === 'mean-bore' ? [mean] : running
  const end = (which: 'smallest' | 'largest') =>
    clearance(which === 'smallest' ? Math.min(...sizes) : Math.max(...sizes))
  const { least, most } = endsOf[fit.rule]
  const { minMm = Number.NEGATIVE_INFINITY, maxMm = Number.POSITIVE_INFINITY } = fit.window ?? {}
  if (end(most) > maxMm) return 'too-loose'
  return end(least) < minMm ? 'too-tight' : 'inside'
}

function trueHoning(
  { finding: { pair } }: Evidence,
  { honing }: DecisionFacts,
  stations: readonly StationFinding[],
): DecisionFacts['honing'] {
  if (honing === 'not-allowed' || pair?.maxMm === undefined) return honing
  const largest = Math.max(...stations.map((s) => s.diameterMm))
  return pair.maxMm - largest >= leastHoningMm ? 'room' : 'no-room'
}
