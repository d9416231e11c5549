import type { Bore } from '../core/measured'
import { length } from './numbers'
import { words } from './words'

/** The standard size, or +0.5 mm. */
export function oversizeText(oversizeMm: number): string {
  const said = words.limits
  return oversizeMm === 0 ? said.standardSize : said.oversizeOf(length(oversizeMm, 3))
}

/** That the limits are those of an oversize. */
export function oversizeSentence({ oversizeMm = 0 }: Pick<Bore, 'oversizeMm'>): string | undefined {
  return oversizeMm === 0 ? undefined : words.limits.oversizeMoves(oversizeText(oversizeMm))
}
