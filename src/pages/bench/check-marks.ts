import type { Gauge } from '../../core/measured'
import { dialMarks, type Marks, sizeMarks } from './marks'

/** How the readings of a check or a study are written down. */
export type WrittenAs = 'sizesMm' | 'dialUm'

/** Such readings as the gauge shows them. */
export function marksOf(writtenAs: WrittenAs, gauge: Gauge): Marks {
  return writtenAs === 'sizesMm' ? sizeMarks(gauge.markedIn) : dialMarks(gauge.markedIn)
}
