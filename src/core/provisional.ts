import type { ProvisionalReason } from './findings'
import { presetOf } from './gauge/presets'
import type { Bore, Gauge, SetUp, Standard } from './measured'

/**
 * What was not recorded, so that an assumed value stands in the budget and the verdict is provisional. A
 * gauge that cannot drift from a setting (no preset drift and none given) needs no closing zero; sizes need
 * the opening zero only to tell the drift from the closing one.
 */
export function provisionalReasons(
  setUp: SetUp,
  gauge: Gauge,
  standard: Standard,
  bore: Bore,
): ProvisionalReason[] {
  const reasons: ProvisionalReason[] = []
  const drifts = (gauge.driftHalfWidthUm ?? presetOf(gauge.kind).driftHalfWidthUm) !== undefined
  const needsOpening = setUp.entry === 'deviation' || setUp.zeroCloseUm !== undefined
  if (needsOpening && setUp.zeroOpenUm === undefined) reasons.push('no-opening-zero')
  if (drifts && setUp.zeroCloseUm === undefined) reasons.push('no-closing-zero')
  if (setUp.boreTemperatureC === undefined) reasons.push('no-bore-temperature')
  if (setUp.referenceTemperatureC === undefined) reasons.push('no-reference-temperature')
  if (standard.kind === 'micrometer' && standard.errorUm === undefined) reasons.push('no-micrometer-check')
  if (setUp.entry === 'deviation' && setUp.largerIs === undefined) reasons.push('no-direction-test')
  if (bore.wall === undefined) reasons.push('no-wall-kind')
  return reasons
}
