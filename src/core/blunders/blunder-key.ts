import type { Blunder } from '../findings'

/** What a question is known by once it is answered: its kind and its place. */
export function blunderKey(blunder: Blunder): string {
  switch (blunder.code) {
    case 'whole-turn':
    case 'digits':
    case 'repeats-spread':
      return `${blunder.code} ${blunder.place.depthMm} ${blunder.place.axisDegrees}`
    case 'axes-swapped':
      return `${blunder.code} ${blunder.depthMm}`
    case 'setting':
      return `${blunder.code} ${blunder.cause}`
    default:
      return blunder.code
  }
}
