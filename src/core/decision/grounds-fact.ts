import type { Place, ShapeFinding, StationFinding } from '../findings'
import { levelsOf } from '../form/level'
import { ovalityBy } from '../form/ovality'
import { taperBy } from '../form/taper'
import type { OvalityRule, TaperRule } from '../measured'
import type { DecisionFacts } from './decision-facts'
import type { Evidence } from './evidence'

type Shape = ShapeFinding<OvalityRule> | ShapeFinding<TaperRule>

/**
 * Whether what is out of its limit stands without any one station that was read only once: some fact that is out must
 * still be out with each such station of its own left away. Own rule: a gross slip in one reading is in no ±. Nor is
 * metal cut on values that stand in for what was not recorded.
 */
export function groundsFact(
  evidence: Evidence,
  out: Pick<DecisionFacts, 'size' | 'ovality' | 'taper' | 'plating'>,
): DecisionFacts['grounds'] {
  const firm: boolean[] = []
  if (out.size === 'above') firm.push(sizeStands(evidence))
  if (out.ovality === 'above') firm.push(shapeStands(evidence, 'ovality'))
  if (out.taper === 'above') firm.push(shapeStands(evidence, 'taper'))
  if (out.plating === 'may-be-through') firm.push(platingStands(evidence))
  if (firm.length === 0) return 'repeated'
  if (evidence.finding.provisional.length > 0) return 'assumed'
  return firm.includes(true) ? 'repeated' : 'one-reading'
}

/** Whether a station was read only once. */
export function isReadOnce(stations: readonly StationFinding[], place: Place): boolean {
  return stations.some((s) => isAt(s, place) && s.counted && s.repeats === 1)
}

function sizeStands({ finding: { verdict, stations } }: Evidence): boolean {
  if (!verdict.known) return true
  const { provenAbove } = verdict
  return provenAbove.length > 1 || !provenAbove.some((place) => isReadOnce(stations, place))
}

function shapeStands(evidence: Evidence, which: 'ovality' | 'taper'): boolean {
  const { finding, measured } = evidence
  const shape: Shape | undefined = finding[which][0]
  if (!shape?.known) return true
  return [shape.larger, shape.smaller]
    .filter((place) => isReadOnce(finding.stations, place))
    .every((place) => {
      const levels = levelsOf(finding.stations.filter((s) => !isAt(s, place)))
      const { spec } = measured
      const without =
        which === 'ovality'
          ? ovalityBy(finding.ovality[0]?.rule ?? 'pooled', levels, spec, finding.gaugeKind)
          : taperBy(finding.taper[0]?.rule ?? 'level-means', levels, spec)
      return without.known && without.verdict === 'above'
    })
}

function platingStands({ finding, growth }: Evidence): boolean {
  const most = growth.wear[0]?.largest
  return most === undefined || !isReadOnce(finding.stations, most)
}

/** Whether two places are the same station. */
export function isAt(a: Place, b: Place): boolean {
  return a.depthMm === b.depthMm && a.axisDegrees === b.axisDegrees
}
