import { quotable } from './quotable'

/** The path to a field as people write it: `bores[0].surveys[0].levelsMm[2]`; empty for the whole. */
export function pathText(keys: readonly PropertyKey[]): string {
  return keys.reduce<string>((text, key) => {
    if (typeof key === 'number') return `${text}[${key}]`
    return text === '' ? quotable(String(key)) : `${text}.${quotable(String(key))}`
  }, '')
}
