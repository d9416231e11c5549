import type { StationFinding } from '../core/findings'
import { depth, sizeWithDoubt } from '../words/numbers'
import { words } from '../words/words'
import { angleLabel } from './angle-label'
import type { MapContact } from './map-contacts'

/** A reading where one of its contacts stood, as a line of a list. */
export function readingText({ depthMm, angleDegrees, station }: MapContact<StationFinding>): string {
  const said = words.charts
  const text = said.reading(
    `${depth(depthMm)}, ${angleLabel(angleDegrees)}`,
    sizeWithDoubt(station.diameterMm, station.expandedMm),
  )
  if (!station.counted) return said.uncounted(text)
  const verdict = station.conformity?.verdict
  return verdict === 'above' || verdict === 'below' ? said[verdict](text) : text
}
