import type { ProvisionalReason } from './findings'
import type { Bore, SetUp, Standard } from './measured'

/** What was not recorded, so that an assumed value stands in the budget and the verdict is provisional. */
export function provisionalReasons(setUp: SetUp, standard: Standard, bore: Bore): ProvisionalReason[] {
  const reasons: ProvisionalReason[] = []
  if (setUp.entry === 'deviation' && setUp.zeroOpenUm === undefined) reasons.push('no-opening-zero')
  if (setUp.zeroCloseUm === undefined) reasons.push('no-closing-zero')
  if (setUp.boreTemperatureC === undefined) reasons.push('no-bore-temperature')
  if (setUp.referenceTemperatureC === undefined) reasons.push('no-reference-temperature')
  if (standard.kind === 'micrometer' && standard.errorUm === undefined) reasons.push('no-micrometer-check')
  if (setUp.entry === 'deviation' && setUp.largerIs === undefined) reasons.push('no-direction-test')
  if (bore.wall === undefined) reasons.push('no-wall-kind')
  return reasons
}
