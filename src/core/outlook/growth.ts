import { named } from '../conditions-of'
import type { BoreFinding, Findings } from '../findings'
import { readAlike } from '../gauge/read-alike'
import type { Measured } from '../measured'
import { type Outlook, outlookOf } from './outlook'
import { type Visit, type Wear, wearOf } from './wear'

/** How much a bore has grown by its latest survey, and when it would meet its limit. */
export interface Growth {
  readonly wear: readonly Wear[]
  /** Absent without readings. */
  readonly outlook?: Outlook
}

/**
 * Wear and outlook of a bore of this engine by its latest survey; of another bore, of an earlier survey, or of a bore that never ran, none. Not
 * a part of `inspect`: worked out where it is shown. Source: as for `wearOf` and `outlookOf`.
 */
export function growthOf(measured: Measured, { bores, earlier }: Findings, finding: BoreFinding): Growth {
  if (finding.role !== 'of-this-engine' || finding.stations.length === 0 || !bores.includes(finding)) {
    return { wear: [] }
  }
  const bore = named(measured.bores, finding.boreId, 'bore')
  const visitOf = (of: BoreFinding): Visit => ({
    survey: named(bore.surveys, of.surveyId, 'survey'),
    finding: of,
  })
  const visit = visitOf(finding)
  if (visit.survey.hoursRun === 0) return { wear: [] }
  const before = earlier
    .filter((one) => one.boreId === bore.id && readAlike(one.gaugeKind, finding.gaugeKind))
    .map(visitOf)
  return { wear: wearOf(bore, visit, before), outlook: outlookOf(visit, before) }
}
