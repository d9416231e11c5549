import type { BoreFinding, BoreVerdict, LimitPair, Place, ShapeFinding } from '../core/findings'
import type { OvalityRule, TaperRule } from '../core/measured'
import { chances, doubtNeeded, isAboutEven, placeText, size } from './numbers'
import { words } from './words'

type Known = Extract<BoreVerdict, { readonly known: true }>
type Shape = ShapeFinding<OvalityRule> | ShapeFinding<TaperRule>

/**
 * The verdict on a bore: on its size, then on out-of-round and taper where they are over their limits, too
 * close to call or could not be judged. A bore for comparison gets its sizes and no verdict.
 */
export function verdictSentence(finding: BoreFinding): string {
  if (finding.role === 'for-comparison') return comparisonSentence(finding)
  return [sizeSentence(finding), ...shapeSentences(finding)].join(' ')
}

function sizeSentence(finding: BoreFinding): string {
  const { verdict, pair } = finding
  if (!verdict.known) return words.verdict.none[verdict.why]
  if (!pair) throw new Error('verdictSentence: a verdict without limits')
  switch (verdict.verdict) {
    case 'inside':
      return insideSentence(pair)
    case 'above': {
      const above = aboveSentence(pair, where(finding, verdict, verdict.provenAbove, 'above'))
      if (verdict.provenBelow.length === 0) return above
      return `${above} ${belowSentence(pair, where(finding, verdict, verdict.provenBelow, 'below'))}`
    }
    case 'below':
      return belowSentence(pair, where(finding, verdict, verdict.provenBelow, 'below'))
    case 'too-close':
      return tooCloseSentence(pair, verdict)
  }
}

function insideSentence(pair: LimitPair): string {
  const { inside } = words.verdict
  return pair.kind === 'grade' ? inside.grade(pair.gradeName ?? '') : inside[pair.kind]
}

function aboveSentence(pair: LimitPair, at: string): string {
  const { above } = words.verdict
  return pair.kind === 'grade' ? above.grade(at, pair.gradeName ?? '') : above[pair.kind](at)
}

function belowSentence(pair: LimitPair, at: string): string {
  const { below } = words.verdict
  if (pair.kind === 'wear') throw new Error('verdictSentence: below is not judged beside a wear limit')
  return pair.kind === 'grade' ? below.grade(at, pair.gradeName ?? '') : below.band(at)
}

/** One place, or how many stations with the one that is furthest out. */
function where(
  finding: BoreFinding,
  verdict: Known,
  places: readonly Place[],
  side: 'above' | 'below',
): string {
  const out = finding.stations.filter((s) => s.counted && places.some((place) => same(s, place)))
  const [first, ...rest] = out
  if (!first) throw new Error(`verdictSentence: ${side}, but at no station`)
  if (rest.length === 0) return placeText(first)
  const worst = rest.reduce(
    (a, b) => ((side === 'above' ? b.diameterMm > a.diameterMm : b.diameterMm < a.diameterMm) ? b : a),
    first,
  )
  return words.verdict.where.worst(out.length, verdict.stations, placeText(worst))
}

function tooCloseSentence(pair: LimitPair, verdict: Known): string {
  const { above, below, tooClose, stations, deciding } = verdict
  const { tooCloseAbove, tooCloseBelow, where: many } = words.verdict
  if (above.length > 0) {
    return pair.kind === 'grade'
      ? tooCloseAbove.grade(above.length, stations, pair.gradeName ?? '')
      : tooCloseAbove[pair.kind](above.length, stations)
  }
  if (below.length > 0) {
    return pair.kind === 'grade'
      ? tooCloseBelow.grade(below.length, stations, pair.gradeName ?? '')
      : tooCloseBelow.band(below.length, stations)
  }
  const place = placeText(deciding)
  return words.verdict.tooClose(tooClose.length === 1 ? place : many.worst(tooClose.length, stations, place))
}

function shapeSentences(finding: BoreFinding): string[] {
  const { shape } = words.verdict
  const ovality = shapeVerdict(finding.ovality[0])
  const taper = shapeVerdict(finding.taper[0])
  if (ovality && ovality === taper) return [shape.both[ovality]]
  return [...(ovality ? [shape.ovality[ovality]] : []), ...(taper ? [shape.taper[taper]] : [])]
}

/** What must be said of a shape beside the verdict on size; nothing where it is inside or has no limit. */
function shapeVerdict(shape: Shape | undefined): 'above' | 'too-close' | 'unknown' | undefined {
  if (!shape || (shape.limitMm === undefined && shape.limitOpen === undefined)) return undefined
  if (!shape.known) return shape.why === 'no-readings' ? undefined : 'unknown'
  if (shape.verdict === undefined) return 'unknown'
  return shape.verdict === 'inside' ? undefined : shape.verdict
}

function comparisonSentence(finding: BoreFinding): string {
  const sizes = finding.stations.filter((s) => s.counted).map((s) => s.diameterMm)
  if (sizes.length > 0) {
    return words.verdict.comparison(size(Math.min(...sizes)), size(Math.max(...sizes)), sizes.length)
  }
  return finding.stations.length > 0 ? words.verdict.comparisonBlocked : words.verdict.comparisonNone
}

/** For a verdict on size that is too close to call: to which side it leans, with its chances. */
export function leanSentence(finding: BoreFinding): string | undefined {
  const verdict = judged(finding)
  if (verdict?.verdict !== 'too-close') return undefined
  const place = placeText(verdict.deciding)
  if (verdict.above.length + verdict.below.length > 0) {
    return words.verdict.alone(place, chances(verdict.leanProbability), verdict.stations)
  }
  const { lean, leanAt } = words.verdict
  const several = verdict.tooClose.length > 1
  if (isAboutEven(verdict.leanProbability)) return several ? leanAt.even(place) : lean.even
  const said = chances(verdict.leanProbability)
  return several ? leanAt[verdict.lean](place, said) : lean[verdict.lean](said)
}

/** For a verdict on size that is too close to call: what reading would settle it. */
export function settleSentence(finding: BoreFinding): string | undefined {
  const verdict = judged(finding)
  if (verdict?.verdict !== 'too-close') return undefined
  const needed =
    verdict.settledByExpandedMm === undefined ? undefined : doubtNeeded(verdict.settledByExpandedMm)
  if (needed === undefined) return words.verdict.settledByNone
  return verdict.tooClose.length > 1
    ? words.verdict.settleAt(placeText(verdict.deciding), needed)
    : words.verdict.settle(needed)
}

/** For a verdict on size that is proven: how sure it is at the station that decides. */
export function sureSentence(finding: BoreFinding): string | undefined {
  const verdict = judged(finding)
  if (!verdict || verdict.verdict === 'too-close') return undefined
  return words.verdict.sure[verdict.verdict](placeText(verdict.deciding), chances(verdict.leanProbability))
}

/** Why the verdict is provisional: what was not recorded or does not hold, or that three contacts read no diameter. */
export function provisionalSentence(finding: BoreFinding): string | undefined {
  if (finding.stations.length === 0) return undefined
  const { contactChanged, aboutMeanOnly } = words.verdict
  const changed = finding.provisional.includes('contact-changed') ? contactChanged : undefined
  const aboutMean = isAboutMeanOnly(finding) ? aboutMeanOnly : undefined
  const said = [changed, notRecordedSentence(finding), aboutMean].filter((text) => text !== undefined)
  return said.length > 0 ? said.join(' ') : undefined
}

/** Three contacts read the mean of a level; a firm verdict has readings of two contacts beside it. */
export function isAboutMeanOnly({ gaugeKind, verdict }: BoreFinding): boolean {
  return gaugeKind === 'three-contact-micrometer' && !(verdict.known && verdict.firm)
}

function notRecordedSentence(finding: BoreFinding): string | undefined {
  const notRecorded = finding.provisional.filter((reason) => reason !== 'contact-changed')
  const [first, ...rest] = notRecorded
  if (first === undefined) return undefined
  const { provisional, provisionalSeveral, missing, assumed } = words.verdict
  const what =
    rest.length === 0 ? provisional[first] : provisionalSeveral(notRecorded.map((reason) => missing[reason]))
  return `${what} ${assumed}`
}

/** What the verdict is about: the stations measured. */
export function aboutSentence(finding: BoreFinding): string | undefined {
  const verdict = judged(finding)
  return verdict && words.verdict.about(verdict.stations)
}

function judged({ role, verdict }: BoreFinding): Known | undefined {
  return role === 'of-this-engine' && verdict.known ? verdict : undefined
}

function same(a: Place, b: Place): boolean {
  return a.depthMm === b.depthMm && a.axisDegrees === b.axisDegrees
}
