import type { BoreFinding, StationFinding } from '../core/findings'
import type { Bore } from '../core/measured'
import { degrees, depth, depthFigure, sizeWithDoubt } from './numbers'
import { words } from './words'

/** What the readings along one axis say, a sentence each. */
export function profileSentences(
  finding: Pick<BoreFinding, 'stations' | 'gaugeKind'>,
  { ringTravelMm }: Pick<Bore, 'ringTravelMm'>,
  axisDegrees: number,
): string[] {
  const said = words.profile
  const read = finding.stations.filter((s) => s.counted && s.axisDegrees === axisDegrees)
  return [
    ...extremes(read),
    ...(ringTravelMm ? [said.travel(depthFigure(ringTravelMm.from), depth(ringTravelMm.to))] : []),
    said.doubt,
    ...(finding.gaugeKind === 'three-contact-micrometer' ? [said.round] : []),
  ]
}

function extremes(read: readonly StationFinding[]): string[] {
  const said = words.profile
  const [first, second] = read
  if (!first) return [said.notRead]
  if (!second) return [said.alone(written(first), depth(first.depthMm))]
  const largest = read.reduce((a, b) => (b.diameterMm > a.diameterMm ? b : a))
  const smallest = read.reduce((a, b) => (b.diameterMm < a.diameterMm ? b : a))
  return [
    said.largest(written(largest), depth(largest.depthMm)),
    said.smallest(written(smallest), depth(smallest.depthMm)),
  ]
}

function written({ diameterMm, expandedMm }: StationFinding): string {
  return sizeWithDoubt(diameterMm, expandedMm)
}

/** A profile as one text, for who does not see it. */
export function profileText(
  finding: Pick<BoreFinding, 'stations' | 'gaugeKind'>,
  bore: Pick<Bore, 'ringTravelMm'>,
  axisDegrees: number,
): string {
  return [
    `${words.profile.title(degrees(axisDegrees))}.`,
    ...profileSentences(finding, bore, axisDegrees),
  ].join(' ')
}
