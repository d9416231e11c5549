import type { Decision, DecisionReason, KnownDecision } from '../core/decision/decision'
import type { DecisionHint } from '../core/decision/decision-hints'
import type { Evidence } from '../core/decision/evidence'
import type { MeasureAgain } from '../core/decision/measure-again'
import type { Sureness } from '../core/decision/sureness'
import type { Change } from '../core/decision/what-would-change'
import type { Place } from '../core/findings'
import { dayText } from './day-text'
import { reasonText } from './decision-reasons'
import { decisionWords } from './decision-words'
import { doubtNeeded, inMicrons, placeText, plain } from './numbers'
import { oversizeText } from './oversize'
import { pistonNamed } from './piston-names'
import { words } from './words'

/** A decision in words. */
export interface DecisionTexts {
  readonly headline: string
  /** That it hangs on a single reading. */
  readonly beneath: readonly string[]
  /** What would settle it, and how to measure better. */
  readonly how: readonly string[]
  readonly reasons: readonly ReasonText[]
  readonly changes: readonly string[]
  readonly hints: readonly string[]
  readonly cautions: readonly string[]
}

/** A reason with where its figures stand among the findings. */
export interface ReasonText extends Pick<DecisionReason, 'decides' | 'row' | 'place'> {
  readonly text: string
}

/** A decision with what it was made from. */
export interface Decided {
  readonly evidence: Evidence
  readonly decision: Decision
}

/** A decision in words, for the page and for the command alike; undefined for a bore that none is made about. */
export function decisionTexts({ evidence, decision }: Decided): DecisionTexts | undefined {
  const none = { beneath: [], how: [], reasons: [], changes: [], hints: [], cautions: [] }
  if (!decision.known) {
    const isAsked = decision.why === 'no-readings' || decision.why === 'no-limits'
    return isAsked ? { ...none, headline: decisionWords.undecided[decision.why] } : undefined
  }
  const { reasons, changes, hints, cautions, measure } = decision
  return {
    headline: outcomeSentence(evidence, decision),
    beneath: hints.filter(isReadOnce).map(hintText),
    how: measure ? measureTexts(measure) : [],
    reasons: reasons.map(({ fact, is, decides, row, place }) => ({
      text: reasonText(evidence, decision, fact, is),
      decides,
      ...(row === undefined ? {} : { row }),
      ...(place ? { place } : {}),
    })),
    changes: changes.map((change) => changeText(decision, change)),
    hints: hints.filter((hint) => !isReadOnce(hint)).map(hintText),
    cautions: cautions.map((code) => decisionWords.cautions[code]),
  }
}

/** The outcome as one sentence. */
export function outcomeSentence(evidence: Evidence, decision: KnownDecision): string {
  const said = decisionWords.outcomes
  switch (decision.outcome) {
    case 'run-on':
      return runOnSentence(decision)
    case 'clean-and-measure-again':
      return said['clean-and-measure-again']
    case 'measure-again-better': {
      const places = decision.measure?.places ?? []
      const { all, at } = said['measure-again-better']
      return places.length === 0 ? all : at(placesText(places))
    }
    case 'next-piston':
      return nextPistonSentence(evidence, decision)
    case 'hone': {
      const { honeAtMostMm } = decision
      return honeAtMostMm === undefined || honeAtMostMm <= 0
        ? said.hone.plain
        : said.hone.atMost(inMicrons(Math.floor(honeAtMostMm * 1000) / 1000))
    }
    case 'bore-oversize': {
      const { plain: some, to } = said['bore-oversize']
      return decision.oversizeMm === undefined ? some : to(oversizeText(decision.oversizeMm))
    }
    case 're-plate':
      return said['re-plate']
    case 'replace-or-sleeve':
      return said['replace-or-sleeve'][evidence.bore.wall?.liner ? 'liner' : 'plain']
  }
}

function runOnSentence({ checkAtHours, checkOn }: KnownDecision): string {
  const said = decisionWords.outcomes['run-on']
  if (checkAtHours === undefined) return said.plain
  const hours = plain(Math.floor(checkAtHours), 0)
  return checkOn === undefined ? said.at(hours) : said.on(hours, dayText(checkOn))
}

function nextPistonSentence({ measured, finding }: Evidence, decision: KnownDecision): string {
  const said = decisionWords.outcomes['next-piston']
  if (decision.nextPistonId !== undefined) return said.named(pistonNamed(decision.nextPistonId, measured))
  const grade = finding.grades.find(({ verdict }) => verdict === 'inside')
  return decision.facts.size === 'other-grade' && grade ? said.grade(grade.gradeName) : said.plain
}

/** More places than these are only counted. */
const mostPlaces = 6

function placesText(places: readonly Place[]): string {
  const shown = places.slice(0, mostPlaces).map(placeText)
  return words.notes.places(shown, places.length - shown.length)
}

function measureTexts({ better, expandedMm, shapeExpandedMm }: MeasureAgain): string[] {
  const said = decisionWords
  const needed = (mm: number | undefined) => (mm === undefined ? undefined : doubtNeeded(mm))
  const [ofSize, ofShape] = [needed(expandedMm), needed(shapeExpandedMm)]
  return [
    ...(ofSize === undefined ? [] : [said.needs.size(ofSize)]),
    ...(ofShape === undefined ? [] : [said.needs.shape(ofShape)]),
    ...(better.length > 0 ? [said.better(better.map((way) => said.betters[way]))] : []),
  ]
}

function changeText({ facts }: KnownDecision, { fact, to, outcome }: Change): string {
  const said: Readonly<Record<string, Readonly<Record<string, string | Readonly<Record<string, string>>>>>> =
    decisionWords.changes
  const text = said[fact]?.[to]
  if (text === undefined) throw new Error(`changeText: no words for ${fact} turned ${to}`)
  const condition = typeof text === 'string' ? text : (text[facts[fact]] ?? text.other)
  if (condition === undefined) throw new Error(`changeText: no words for ${fact} turned ${to}`)
  return decisionWords.change(condition, decisionWords.short[outcome])
}

function isReadOnce({ code }: DecisionHint): boolean {
  return code === 'read-once'
}

function hintText(hint: DecisionHint): string {
  if (hint.code !== 'read-once') return decisionWords.hints[hint.code]
  return decisionWords.readOnce[hint.all ? 'all' : 'some'](placesText(hint.places))
}

/** How sure a decision is, in a sentence or two; none where that cannot be reckoned. */
export function surenessTexts(decision: Decision, sureness: Sureness | undefined): string[] {
  if (!decision.known || !sureness) return []
  const said = decisionWords.sure
  if (sureness.same === 1) return [said.all]
  const hundredths = inHundredths(sureness.shares.map(({ share }) => share))
  const shares = sureness.shares.map(({ outcome, share }, index) => ({
    outcome,
    count: countText(share, hundredths[index] ?? 0),
  }))
  const written = (list: typeof shares) =>
    list.map(({ outcome, count }) => said.share(decisionWords.short[outcome], count)).join('; ')
  const own = shares.find(({ outcome }) => outcome === decision.outcome)
  if (!own) return [said.ifKnown(written(shares))]
  return [said.same(own.count), said.besides(written(shares.filter((share) => share !== own)))]
}

/** Shares that make up one in whole hundredths that make up a hundred: what falls off goes to the largest remainders. */
function inHundredths(shares: readonly number[]): number[] {
  const whole = shares.map((share) => Math.floor(share * 100 + 1e-9))
  const left =
    Math.round(shares.reduce((sum, share) => sum + share, 0) * 100) - whole.reduce((a, b) => a + b, 0)
  const byRemainder = shares
    .map((share, index) => ({ index, remainder: share * 100 - (whole[index] ?? 0) }))
    .sort((a, b) => b.remainder - a.remainder)
    .slice(0, Math.max(0, left))
    .map(({ index }) => index)
  return whole.map((count, index) => (byRemainder.includes(index) ? count + 1 : count))
}

/** Never 0 or 100 of what is only nearly so. */
function countText(share: number, hundredths: number): string {
  const said = decisionWords.sure
  if (share > 0.99) return said.almostAll
  return share < 0.01 ? said.hardlyAny : plain(hundredths, 0)
}
