import type { BlockDecision } from '../core/decision/block-decision'
import type { KnownDecision } from '../core/decision/decision'
import type { Change } from '../core/decision/what-would-change'
import { dayText } from './day-text'
import { plain } from './numbers'
import { oversizeText } from './oversize'
import type { OwnerEvidence } from './owner-evidence'
import { lookAt, type OwnerPart } from './owner-step'
import { ownerWords } from './owner-words'

/** What is suggested, what else could be done, and what each buys in hours. */
export function adviceStep(evidence: OwnerEvidence): OwnerPart {
  const { decision } = evidence
  const said = ownerWords.advice
  const ofPistons = decision.known
    ? decision.reasons.flatMap(({ row }) => (row?.includes(':') ? [row] : []))
    : []
  const part = { topic: 'advice', rows: ['outlook', 'next-check', ...ofPistons] } as const
  if (!decision.known) {
    const look = { from: 'above', beside: false } as const
    return { ...part, sentence: said.undecided[decision.why], beside: [said.lastWord], look }
  }
  const { block } = evidence
  const isTakenAlong = block?.alike === true && !block.boreIds.includes(evidence.bore.id)
  return {
    ...part,
    sentence: isTakenAlong ? alikeText(block) : suggestion(decision),
    beside: [
      ...(isTakenAlong ? [said.alone(suggestion(decision))] : []),
      ...(decision.checkOn === undefined ? [] : [said.runOnDay(dayText(decision.checkOn))]),
      ...(decision.facts.surface === 'covered' ? [said.covered] : []),
      ...playTexts(decision),
      ...openTexts(decision),
      ...choiceTexts(evidence, decision),
      ...hoursTexts(evidence),
      said.lastWord,
    ],
    look: lookAt(decision.reasons.find(({ place }) => place)?.place),
  }
}

/** Hours rounded down: a check comes sooner rather than later. */
const hours = (value: number) => plain(Math.floor(value), 0)

function suggestion({ outcome, checkAtHours, oversizeMm }: KnownDecision): string {
  const said = ownerWords.advice
  if (outcome === 'run-on' && checkAtHours !== undefined) return said.runOnBy(hours(checkAtHours))
  if (outcome === 'bore-oversize' && oversizeMm !== undefined) return said.boreTo(oversizeText(oversizeMm))
  return said.outcomes[outcome]
}

function playTexts({ facts: { clearance } }: KnownDecision): string[] {
  return clearance === 'not-judged' ? [] : [ownerWords.advice.play[clearance]]
}

/** One bore of an engine takes the others along to its size. */
function alikeText(block: BlockDecision): string {
  const { boreAlike, boreAlikeAny } = ownerWords.advice
  return block.oversizeMm === undefined ? boreAlikeAny : boreAlike(oversizeText(block.oversizeMm))
}

/** What is open now, and what follows once it is known. */
function openTexts({ outcome, reasons, changes }: KnownDecision): string[] {
  const said = ownerWords.advice
  if (outcome !== 'measure-again-better') return []
  const open = reasons.find(({ decides }) => decides)?.fact
  const then = (to: Change['to']) => changes.find((change) => change.fact === open && change.to === to)
  const [inside, over] = [then('inside'), then('above')]
  return [
    ...(inside ? [said.ifInside(said.follows[inside.outcome])] : []),
    ...(over ? [said.ifOver(said.follows[over.outcome])] : []),
  ]
}

/** What else could be done, as far as wall, limits and pistons at hand allow. */
function choiceTexts(evidence: OwnerEvidence, { outcome, facts }: KnownDecision): string[] {
  const { choices } = ownerWords.advice
  const isPlated = facts.wall === 'plated'
  const possible = [
    ['next-piston', facts.otherPiston === 'fits' && facts.clearance !== 'inside'],
    ['hone', facts.honing === 'room' && outcome !== 'run-on'],
    ['bore-oversize', facts.oversize === 'cleans-up'],
    ['re-plate', isPlated],
    ['replace-or-sleeve', !isPlated],
  ] as const
  return [
    ...runOnTexts(evidence, facts),
    ...possible.flatMap(([one, isPossible]) => (isPossible && one !== outcome ? [choices[one]] : [])),
  ]
}

function runOnTexts({ growth, survey }: OwnerEvidence, facts: KnownDecision['facts']): string[] {
  const { choices } = ownerWords.advice
  if ([facts.size, facts.ovality, facts.taper].includes('above')) return [choices['run-on-over']]
  if (facts.surface === 'ended' || facts.surface === 'marked') return [choices['run-on-marked']]
  const { outlook } = growth
  // That nobody knows the hours is said of all choices together.
  if (outlook?.known === false) return []
  const earliest = outlook && !outlook.now ? outlook.earliestHours : undefined
  if (earliest === undefined || survey.hoursRun === undefined) return [choices['run-on-open']]
  return [choices['run-on'](hours(earliest), plain(survey.hoursRun, 1))]
}

/** How long a wall lasts from new, by this one; or why nobody can say. */
function hoursTexts({ growth: { outlook } }: OwnerEvidence): string[] {
  const said = ownerWords.advice
  if (!outlook) return []
  if (!outlook.known) return [said.hours[outlook.why]]
  return outlook.now || outlook.earliestHours === undefined
    ? []
    : [said.fromNew(hours(outlook.earliestHours))]
}
