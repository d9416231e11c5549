/**
 * What another language has to fill: the same keys, the same figures taken in, texts of its own. Given the
 * English table, which is the one that says what there is.
 */
export type Texts<English> = English extends string
  ? string
  : English extends (...figures: infer Figures) => infer Said
    ? (...figures: Figures) => Texts<Said>
    : English extends object
      ? { readonly [Key in keyof English]: Texts<English[Key]> }
      : English
