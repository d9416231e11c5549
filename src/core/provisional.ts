import { entryOf, isOfSizes } from './diameter/entry'
import { openingZeroUm } from './diameter/reading-reference'
import type { ProvisionalReason } from './findings'
import { presetOf } from './gauge/presets'
import type { Bore, Gauge, SetUp, Standard, Survey } from './measured'

/**
 * What was not recorded, so that an assumed value stands in the budget, or does not hold, and the verdict is
 * provisional. A gauge that cannot drift from a setting (no preset drift and none given) needs no closing
 * zero; only dial deviations need the opening one for more than to tell the drift from the closing one.
 */
export function provisionalReasons(
  setUp: SetUp,
  gauge: Gauge,
  standard: Standard,
  bore: Bore,
  survey: Survey,
): ProvisionalReason[] {
  const reasons: ProvisionalReason[] = []
  const entry = entryOf(setUp, gauge)
  const drifts = (gauge.driftHalfWidthUm ?? presetOf(gauge.kind).driftHalfWidthUm) !== undefined
  if (setUp.settingAssumed === true && (entry === 'size' || entry === 'deviation')) {
    reasons.push('no-setting-size')
  }
  const needsOpening = entry === 'deviation' || setUp.zeroCloseUm !== undefined
  if (needsOpening && openingZeroUm(setUp, gauge, standard) === undefined) reasons.push('no-opening-zero')
  if (drifts && setUp.zeroCloseUm === undefined) reasons.push('no-closing-zero')
  if (setUp.boreTemperatureC === undefined) reasons.push('no-bore-temperature')
  if (setUp.referenceTemperatureC === undefined) reasons.push('no-reference-temperature')
  if (standard.kind === 'micrometer' && standard.errorUm === undefined) reasons.push('no-micrometer-check')
  if (!isOfSizes(entry) && setUp.largerIs === undefined) reasons.push('no-direction-test')
  if (bore.wall === undefined) reasons.push('no-wall-kind')
  if (entry === 'reverse' && setUp.dialOverContactsUm === undefined) reasons.push('no-dial-over-contacts')
  if (survey.contactChanged === true) reasons.push('contact-changed')
  return reasons
}
