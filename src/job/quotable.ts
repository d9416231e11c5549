/**
 * Text from a file as it may stand in a message: cut to a number of characters, and without characters that
 * a screen or a terminal would obey instead of showing.
 */
export function quotable(text: string, most = 40): string {
  const characters = [...text.slice(0, 2 * most)].map((character) =>
    /\p{C}/u.test(character) ? '\uFFFD' : character,
  )
  const cut = text.length > 2 * most || characters.length > most
  return cut ? `${characters.slice(0, most - 1).join('')}…` : characters.join('')
}

/** A value of a document as a short text for a message. */
export function quotedValue(value: unknown): string {
  if (typeof value === 'string') return `"${quotable(value)}"`
  if (Array.isArray(value)) return '[…]'
  if (typeof value === 'object' && value !== null) return '{…}'
  return String(value)
}
