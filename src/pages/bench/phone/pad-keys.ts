import { words } from '../../../words/words'

export const digitKeys = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '0', '00'] as const
export type PadKey = (typeof digitKeys)[number] | 'delete' | 'sign' | 'point'

/** What stands in the field after a key of the pad; a key that makes no number leaves it as it is. */
export function afterKey(typed: string, key: PadKey): string {
  const start = typed.search(/\S*$/)
  return typed.slice(0, start) + numberAfter(typed.slice(start), key)
}

function numberAfter(number: string, key: PadKey): string {
  switch (key) {
    case 'delete':
      return number.slice(0, -1)
    case 'sign':
      return /^[-\u2212]/.test(number) ? number.slice(1) : `-${number.replace(/^\+/, '')}`
    case 'point':
      if (/[.,]/.test(number)) return number
      return `${number}${/\d$/.test(number) ? '' : '0'}${words.language.decimalMark}`
    default:
      return number + key
  }
}
