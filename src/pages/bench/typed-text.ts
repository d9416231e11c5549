import { isOfSizes } from '../../core/diameter/entry'
import type { SetUp } from '../../core/measured'
import { plain, size } from '../../words/numbers'

/** Readings as they would be typed again, with spaces between. */
export function typedText(values: readonly number[], { entry }: SetUp): string {
  return values
    .map((value) => (isOfSizes(entry) && Number(size(value)) === value ? size(value) : plain(value, 6)))
    .join(' ')
}
