import { lengthUnit } from './length-unit'
import { words } from './words'

/**
 * A text as a voice should say it: the decimals of a number digit by digit, signs and units as words. A voice left
 * to itself says "fifty-four point twelve" for 54.012 or leaves a minus out.
 */
export function spoken(text: string): string {
  const said = words.spoken
  return (
    text
      .replace(
        /(\d)[.,](\d+)/g,
        (_, whole: string, decimals: string) => `${whole} ${said.point} ${[...decimals].join(' ')}`,
      )
      .replace(/[−–](?=\d)/g, `${said.minus} `)
      .replace(/±/g, ` ${said.plusMinus} `)
      .replace(/(\d) ?°/g, (_, digit: string) => `${digit} ${said.degrees}`)
      .replace(/\bmm\b/g, said.millimetres)
      .replace(/µm/g, said.microns)
      // The word is common; behind a length it is one only where lengths are written in inches.
      .replace(
        lengthUnit() === 'inch' ? /(\d) in\b(?! \d)/g : /$^/g,
        (_, digit: string) => `${digit} ${said.inches}`,
      )
      .replace(/ {2,}/g, ' ')
      .trim()
  )
}
