const tenths: string[] = []

/** A length of 0 CSS pixels or more as a style takes it, to a tenth. Each text is made once, not at each frame. */
export function pixelText(pixels: number): string {
  const tenth = Math.max(0, Math.round(pixels * 10))
  tenths[tenth] ??= `${tenth / 10}px`
  return tenths[tenth]
}
