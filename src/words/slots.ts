/** A piece of a sentence with fields in it: words to print, or the name of a field to put there. */
export type SentencePart = { readonly text: string } | { readonly slot: string }

/**
 * A template like `set to {size} mm by {standard}` in the order in which its words and fields stand, which
 * differs from language to language. Throws for a brace that does not close: our own mistake.
 */
export function slots(template: string): SentencePart[] {
  return template
    .split(/(\{[A-Za-z]+\})/)
    .filter((piece) => piece !== '')
    .map((piece) => {
      if (/^\{[A-Za-z]+\}$/.test(piece)) return { slot: piece.slice(1, -1) }
      if (/[{}]/.test(piece)) throw new Error(`slots: a brace without a name in ${JSON.stringify(template)}`)
      return { text: piece }
    })
}
