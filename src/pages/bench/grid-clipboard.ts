import type { Gauge, SetUp } from '../../core/measured'
import type { PlannedStation } from '../../job/selectors'
import { repeatsAt } from './entry-order'
import { typedText } from './typed-text'

/**
 * Stations as a spreadsheet takes them: a cell for each, tabs between, readings as they are typed with spaces
 * between the repeats.
 */
export function stationsText(
  rows: readonly (readonly PlannedStation[])[],
  setUp: SetUp,
  gauge: Gauge,
): string {
  return rows
    .map((row) => row.map((station) => typedText(repeatsAt(station), setUp, gauge)).join('\t'))
    .join('\n')
}
