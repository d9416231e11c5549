import { proof } from '../conformity/conformity'
import type { BoreFinding, ShapeFinding } from '../findings'
import type { OvalityRule, TaperRule } from '../measured'
import { studentQuantile } from '../statistics/student'
import type { DecisionFacts } from './decision-facts'
import type { Evidence } from './evidence'
import { groundsFact } from './grounds-fact'
import { readingsFact } from './readings-fact'
import { surfaceFact } from './surface-fact'
import { countedStations, honingRoomMm, leastHoningMm, mayBeHoned } from './wall-allows'

type Shape = ShapeFinding<OvalityRule> | ShapeFinding<TaperRule>

/** The facts that a decision goes by, each as the findings prove it. Source: as for the findings; the words our own. */
export function factsOf(evidence: Evidence): DecisionFacts {
  const { finding, bore, setUp, growth, pistons, boring } = evidence
  const judged = {
    size: sizeFact(finding),
    ovality: shapeFact(finding.ovality[0]),
    taper: shapeFact(finding.taper[0]),
    plating: platingFact(growth.wear[0]?.platingShare?.oneSide),
  }
  return {
    surface: surfaceFact(finding.surface, bore),
    readings: readingsFact(finding, setUp),
    stations: stationsFact(finding),
    ...judged,
    grounds: groundsFact(evidence, judged),
    clearance: pistons.clearance,
    otherPiston: pistons.otherPiston,
    ringGap: ringGapFact(evidence),
    outlook: outlookFact(evidence),
    wall: bore.wall === undefined ? 'not-known' : bore.wall.kind === 'plated-aluminium' ? 'plated' : 'other',
    honing: honingFact(evidence),
    oversize: boring.fact,
  }
}

function stationsFact({ notes, stations }: BoreFinding): DecisionFacts['stations'] {
  if (notes.some(({ code }) => code === 'stations-not-read')) return 'some-unread'
  return stations.some(({ counted, land }) => counted && !land) ? 'all-read' : 'land-alone'
}

function sizeFact(finding: BoreFinding): DecisionFacts['size'] {
  const { verdict, pair, grades, notes, gaugeKind } = finding
  if (!verdict.known) return 'no-limit'
  const isOut = verdict.verdict === 'above' || verdict.verdict === 'below'
  // A bore that has left its grade may be of another: the limits of one grade end nothing.
  if (isOut && pair?.kind === 'grade') {
    if (grades.some((grade) => grade.verdict === 'inside')) return 'other-grade'
    if (grades.some((grade) => grade.verdict === 'too-close')) return 'too-close'
  }
  if (verdict.verdict !== 'inside') return verdict.verdict
  if (gaugeKind === 'three-contact-micrometer' && !verdict.firm) return 'mean-only'
  return notes.some(({ code }) => code === 'below-smallest-new') ? 'under-new' : 'inside'
}

function shapeFact(shape: Shape | undefined): DecisionFacts['ovality'] {
  if (!shape || (shape.limitMm === undefined && shape.limitOpen === undefined)) return 'no-limit'
  if (!shape.known) return shape.why === 'no-readings' ? 'no-limit' : 'open'
  return shape.verdict ?? 'open'
}

/** Of the plating, if one wall took all of the wear. */
function platingFact(share: number | undefined): DecisionFacts['plating'] {
  if (share === undefined) return 'not-known'
  return share >= 1 ? 'may-be-through' : 'left'
}

function ringGapFact({ ringGaps }: Evidence): DecisionFacts['ringGap'] {
  const standing = ringGaps.known ? ringGaps.standing : undefined
  return standing === undefined ? 'not-judged' : gapFacts[standing.verdict]
}

const gapFacts = {
  inside: 'inside',
  'too-close': 'too-close',
  'too-large': 'above',
  'too-small': 'below',
} as const

function outlookFact({ growth: { outlook } }: Evidence): DecisionFacts['outlook'] {
  if (!outlook) return 'not-known'
  if (!outlook.known) return outlook.why === 'shrunk' ? 'shrunk' : 'not-known'
  return outlook.now ? 'now' : 'ahead'
}

function honingFact(evidence: Evidence): DecisionFacts['honing'] {
  if (!mayBeHoned(evidence.bore.wall)) return 'not-allowed'
  const room = roomToHoneMm(evidence)
  return room !== undefined && room >= leastHoningMm ? 'room' : 'no-room'
}

/** How much may be honed off within the largest size allowed, mm on the diameter, at 95 %; undefined without a limit or readings. */
export function roomToHoneMm({ finding }: Evidence): number | undefined {
  const maxMm = finding.pair?.maxMm
  if (maxMm === undefined) return undefined
  const bounds = countedStations(finding.stations).map(
    (s) => s.diameterMm + studentQuantile(proof, s.degreesOfFreedom) * s.standardUncertaintyMm,
  )
  return honingRoomMm(bounds, maxMm)
}
