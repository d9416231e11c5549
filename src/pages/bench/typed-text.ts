import type { Gauge, SetUp } from '../../core/measured'
import { readingMarks } from './read-repeats'

/** Readings as they would be typed again, with spaces between. */
export function typedText(values: readonly number[], setUp: SetUp, gauge: Gauge): string {
  const marks = readingMarks(setUp, gauge)
  return values.map(marks.written).join(' ')
}
