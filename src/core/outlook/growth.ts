import { named } from '../conditions-of'
import { asMadeUncertainty } from '../difference/difference'
import type { BoreFinding, Findings } from '../findings'
import { readAlike } from '../gauge/read-alike'
import type { Bore, Measured } from '../measured'
import { type NextCheck, nextCheckOf } from './next-check'
import { type Outlook, outlookOf } from './outlook'
import { visitsOf } from './visits-of'
import { type NewBore, type Wear, wearOf } from './wear'

/** How much a bore has grown by its latest survey, and when it would meet its limit. */
export interface Growth {
  readonly wear: readonly Wear[]
  /** Absent without readings. */
  readonly outlook?: Outlook
  /** When to measure again; absent where neither limit, hours nor service interval say. */
  readonly nextCheck?: NextCheck
}

/**
 * Wear, outlook and next check of a bore of this engine by its latest survey; none of another bore or of an earlier
 * survey, and of a bore that never ran the next check alone. Not a part of `inspect`: worked out where it is shown.
 * Source: as for `wearOf`, `outlookOf` and `nextCheckOf`.
 */
export function growthOf(measured: Measured, findings: Findings, finding: BoreFinding): Growth {
  const found = visitsOf(measured, findings, finding)
  if (!found) return { wear: [] }
  const { bore, visit, before } = found
  const isNew = visit.survey.hoursRun === 0
  const outlook = isNew ? undefined : outlookOf(visit, before)
  const nextCheck = nextCheckOf(measured, visit.survey, outlook)
  const newBores = newBoresOf(measured, bore, finding, findings.bores)
  return {
    wear: isNew ? [] : wearOf(bore, visit, before, newBores),
    ...(outlook ? { outlook: withCheck(outlook, nextCheck) } : {}),
    ...(nextCheck ? { nextCheck } : {}),
  }
}

function withCheck(outlook: Outlook, nextCheck: NextCheck | undefined): Outlook {
  return outlook.known && !outlook.now && nextCheck?.hours !== undefined
    ? { ...outlook, nextCheckHours: nextCheck.hours }
    : outlook
}

/** Bores for comparison that never ran, where it is known how far two new ones may lie apart. */
function newBoresOf(
  measured: Measured,
  bore: Bore,
  { gaugeKind }: BoreFinding,
  bores: readonly BoreFinding[],
): NewBore[] {
  return bores.flatMap((finding): NewBore[] => {
    if (finding.role !== 'for-comparison' || !readAlike(finding.gaugeKind, gaugeKind)) return []
    const other = named(measured.bores, finding.boreId, 'bore')
    const survey = named(other.surveys, finding.surveyId, 'survey')
    const asMadeMm = asMadeUncertainty(measured.spec, bore, other)
    const isAlike = (other.oversizeMm ?? 0) === (bore.oversizeMm ?? 0)
    return survey.hoursRun === 0 && isAlike && asMadeMm !== undefined ? [{ survey, finding, asMadeMm }] : []
  })
}
