/** Figures keep their unit and their ± on the line that they stand on. */
export function unbroken(text: string): string {
  return text.replace(/(\d) (?=(?:%|µm|mm|h)(?!\p{L}))/gu, '$1\u00a0').replace(/ ?± /g, '\u00a0±\u00a0')
}
