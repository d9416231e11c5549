import type { Measured, Piston } from '../core/measured'
import { oversizeText } from './oversize'
import { words } from './words'

/** What a piston is called: its name, else its grade, else its place in the list. */
export function pistonName(piston: Piston, { pistons = [] }: Pick<Measured, 'pistons'>): string {
  const own = piston.name?.trim()
  if (own) return own
  const { numbered, ofGrade, oversized } = words.pistons
  const called =
    piston.grade === undefined
      ? numbered(pistons.findIndex(({ id }) => id === piston.id) + 1)
      : ofGrade(piston.grade)
  return piston.oversizeMm ? oversized(called, oversizeText(piston.oversizeMm)) : called
}

/** The same, for a piston that is only known by its id. */
export function pistonNamed(id: string, measured: Pick<Measured, 'pistons'>): string {
  const piston = measured.pistons?.find((one) => one.id === id)
  if (!piston) throw new Error(`pistonNamed: no piston ${id}`)
  return pistonName(piston, measured)
}
