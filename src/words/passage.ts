/** A piece of the page of findings, worded and not yet laid out. */
export type Passage =
  | { readonly kind: 'title' | 'heading' | 'subheading' | 'paragraph'; readonly text: string }
  | { readonly kind: 'list'; readonly items: readonly string[] }
  | {
      readonly kind: 'table'
      readonly head: readonly string[]
      readonly rows: readonly (readonly string[])[]
    }
  | { readonly kind: 'entries'; readonly entries: readonly PassageEntry[] }

/** A finding as a line with its figure, and what stands beneath. */
export interface PassageEntry {
  readonly left: string
  readonly right: string
  readonly under: readonly string[]
  /** Columns that its line is set in. */
  readonly indent?: number
}
