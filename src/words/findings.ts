import type {
  BoreFinding,
  Conformity,
  Difference,
  Findings,
  LimitPair,
  Place,
  StationFinding,
} from '../core/findings'
import type { Clamping } from '../core/measured'
import { depthFormRow, ovalRow } from './form-rows'
import { gradesRow } from './grade-rows'
import {
  chances,
  depth,
  differenceWithDoubt,
  isAboutEven,
  placeText,
  plusMinusMicrons,
  size,
  sizeWithDoubt,
} from './numbers'
import { joined, marked, type Row } from './row'
import { shapeRows } from './shape-rows'
import { words } from './words'

export { cautions, noteText, noteTexts, ruleText, temperatureSentence } from './notes'
export { problemPlace, problemText } from './problems'
export { readOut } from './read-out'
export type { Bar, Row } from './row'

/** The findings of a bore in the order in which they are read; none without a counted reading. */
export function findingRows(finding: BoreFinding, findings: Findings): Row[] {
  const counted = finding.stations.filter((s) => s.counted)
  if (counted.length === 0) return []
  const judged = finding.role === 'of-this-engine'
  return [
    ...extremeRow('largest', words.findings.largest, finding, finding.largest),
    ...extremeRow('smallest', words.findings.smallest, finding, finding.smallest),
    ...gradesRow(finding),
    ...shapeRows('ovality', words.findings.ovality, finding.ovality, judged),
    ...ovalRow(finding),
    ...shapeRows('taper', words.findings.taper, finding.taper, judged),
    ...depthFormRow(finding),
    ...widestMeanRow(finding),
    ...finding.differences.flatMap((d) => differenceRows(d, findings)),
  ]
}

function extremeRow(
  id: 'largest' | 'smallest',
  name: string,
  { stations, pair, role }: BoreFinding,
  place: Place | undefined,
): Row[] {
  const station = place && stations.find((s) => s.counted && samePlace(s, place))
  if (!place || !station) return []
  const { diameterMm: value, expandedMm, conformity } = station
  const row = {
    id,
    name,
    rank: 'main',
    place,
    placeText: placeText(place),
    figure: sizeWithDoubt(value, expandedMm),
  } as const
  if (role === 'for-comparison') return [{ ...row, detail: '' }]
  if (id === 'smallest' && pair?.kind === 'wear') return [{ ...row, detail: limitText(id, pair) }]
  const limit = id === 'largest' ? pair?.maxMm : pair?.minMm
  return [
    {
      ...row,
      detail: joined(limitText(id, pair), conformity && chanceText(conformity)),
      ...(conformity ? marked(conformity.verdict) : {}),
      ...(limit === undefined
        ? {}
        : { bar: { low: value - expandedMm, value, high: value + expandedMm, limit } }),
    },
  ]
}

function limitText(id: 'largest' | 'smallest', pair: LimitPair | undefined): string {
  const { limits } = words.findings
  const limit = id === 'largest' ? pair?.maxMm : pair?.minMm
  if (!pair || limit === undefined) return limits.none
  if (pair.kind === 'wear')
    return id === 'largest' ? limits.wear(size(limit)) : limits.minNotJudged(size(limit))
  if (pair.kind === 'grade') {
    const grade = pair.gradeName ?? ''
    return id === 'largest' ? limits.gradeMax(grade, size(limit)) : limits.gradeMin(grade, size(limit))
  }
  return id === 'largest' ? limits.max(size(limit)) : limits.min(size(limit))
}

function chanceText({ lean, leanProbability }: Conformity): string {
  const { chance } = words.findings
  return isAboutEven(leanProbability) ? chance.even : chance[lean](chances(leanProbability))
}

function widestMeanRow({ levels }: BoreFinding): Row[] {
  const [first, ...rest] = levels
  if (!first) return []
  const widest = rest.reduce((a, b) => (b.meanMm > a.meanMm ? b : a), first)
  return [
    {
      id: 'widest-mean',
      name: words.findings.widestMean,
      rank: 'main',
      placeText: depth(widest.depthMm),
      figure: sizeWithDoubt(widest.meanMm, widest.meanExpandedMm),
      detail: words.findings.meanOf(widest.axesDegrees.length),
    },
  ]
}

function differenceRows(difference: Difference, findings: Findings): Row[] {
  const { largest, mean, stations, asMadeExpandedMm: asMade, againstBoreId, clampings } = difference
  const other = findings.bores.find((bore) => bore.boreId === againstBoreId)
  if (!other) throw new Error(`findingRows: no bore ${againstBoreId} to compare with`)
  const said = words.findings
  const both = said.stationsBoth(stations.length)
  const bolted = (clamping: Clamping) => words.setUp.more.clampings[clamping]
  return [
    {
      id: `difference:${againstBoreId}`,
      name: said.difference(other.boreName),
      rank: 'main',
      place: { depthMm: largest.depthMm, axisDegrees: largest.axisDegrees },
      placeText: placeText(largest),
      figure: differenceWithDoubt(largest.differenceMm, largest.expandedMm),
      detail: joined(
        both,
        stations.length > 1 ? said.largestRead : undefined,
        asMade === undefined ? undefined : said.asMade(plusMinusMicrons(asMade)),
        clampings && said.clampingsApart(bolted(clampings[0]), bolted(clampings[1])),
      ),
    },
    {
      id: `mean-difference:${againstBoreId}`,
      name: said.meanDifference(other.boreName),
      rank: 'main',
      figure: differenceWithDoubt(mean.differenceMm, mean.expandedMm),
      detail: joined(both, asMadeText(difference)),
    },
  ]
}

/** Whether two bores differ by more than how they were made, where that is known. */
export function asMadeText({ beyondAsMade }: Difference): string | undefined {
  if (beyondAsMade === undefined) return undefined
  return words.findings.madeSo[beyondAsMade ? 'beyond' : 'within']
}

/** The word for how a station stands. */
export function markText(station: StationFinding): string {
  if (!station.counted) return words.marks.blocked
  return station.conformity ? words.marks[station.conformity.verdict] : words.marks.none
}

function samePlace(a: Place, b: Place): boolean {
  return a.depthMm === b.depthMm && a.axisDegrees === b.axisDegrees
}
