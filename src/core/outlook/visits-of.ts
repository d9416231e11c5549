import { named } from '../conditions-of'
import type { BoreFinding, Findings } from '../findings'
import { readAlike } from '../gauge/read-alike'
import type { Bore, Measured } from '../measured'
import type { Visit } from './wear'

/** The latest survey of a bore with the earlier ones that were read alike, the oldest first. */
export interface Visits {
  readonly bore: Bore
  readonly visit: Visit
  readonly before: readonly Visit[]
}

/**
 * The surveys that growth is told from; undefined for a bore that is not of this engine, for an earlier survey and
 * without readings. Own derivation: two contacts and three do not read the same.
 */
export function visitsOf(
  measured: Measured,
  { bores, earlier }: Findings,
  finding: BoreFinding,
): Visits | undefined {
  if (finding.role !== 'of-this-engine' || finding.stations.length === 0 || !bores.includes(finding)) {
    return undefined
  }
  const bore = named(measured.bores, finding.boreId, 'bore')
  const visitOf = (of: BoreFinding): Visit => ({
    survey: named(bore.surveys, of.surveyId, 'survey'),
    finding: of,
  })
  const before = earlier
    .filter((one) => one.boreId === bore.id && readAlike(one.gaugeKind, finding.gaugeKind))
    .map(visitOf)
  return { bore, visit: visitOf(finding), before }
}
