import type { BlockDecision } from '../core/decision/block-decision'
import type { Measured } from '../core/measured'
import { decisionWords } from './decision-words'
import { plain } from './numbers'
import { oversizeText } from './oversize'

/** What to do with an engine of several bores, the first sentence by itself. */
export function blockDecisionTexts(measured: Measured, block: BlockDecision): string[] {
  const said = decisionWords.block
  const own = measured.bores.filter(({ role }) => role === 'of-this-engine')
  const names = (ids: readonly string[]) => own.filter(({ id }) => ids.includes(id)).map(({ name }) => name)
  const { outcome, boreIds, alike, oversizeMm, checkAtHours, others, undecided } = block
  const what = decisionWords.short[outcome]
  const first = alike
    ? oversizeMm === undefined
      ? said.alike.plain(own.length)
      : said.alike.to(own.length, oversizeText(oversizeMm))
    : boreIds.length === own.length
      ? said.all(own.length, what)
      : said.some(names(boreIds), what)
  return [
    first,
    ...(alike && boreIds.length < own.length ? [said.asked(names(boreIds))] : []),
    ...(checkAtHours === undefined ? [] : [said.check(plain(Math.floor(checkAtHours), 0))]),
    ...(alike
      ? []
      : others.map((other) => said.some(names(other.boreIds), decisionWords.short[other.outcome]))),
    ...(undecided.length === 0 ? [] : [said.undecided(names(undecided))]),
  ]
}
