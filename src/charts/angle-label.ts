import { degrees } from '../words/numbers'
import { words } from '../words/words'

/** Label of an angle with the side it is, where it is one of the four. */
export function angleLabel(angleDegrees: number): string {
  const sides: Record<number, string> = {
    0: words.sides.front,
    90: words.sides.right,
    180: words.sides.rear,
    270: words.sides.left,
  }
  const side = sides[angleDegrees]
  return side ? `${degrees(angleDegrees)} ${side}` : degrees(angleDegrees)
}
