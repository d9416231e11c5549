/** A text that may stand in a row: the middle of what it names, and its width in the order of preference, pixels. */
export interface RowLabel {
  readonly x: number
  /** The text in full, then shorter ones. */
  readonly texts: readonly string[]
}

export interface PlacedLabel {
  readonly text: string
  /** Its left edge. */
  readonly x: number
  readonly width: number
}

const gap = 8

/**
 * Where labels of one row stand between two ends without touching: over their place where there is room, else
 * beside it, else in fewer words, else not at all. Those before have the first choice.
 */
export function labelRow(
  labels: readonly RowLabel[],
  ends: { readonly left: number; readonly right: number },
  letter: number,
): (PlacedLabel | undefined)[] {
  const taken: PlacedLabel[] = []
  const isFree = ({ x, width }: PlacedLabel) =>
    taken.every((other) => x >= other.x + other.width + gap || other.x >= x + width + gap)
  return labels.map((label) => {
    const offers = label.texts.flatMap((text) => {
      const width = text.length * letter
      const most = ends.right - width
      if (most < ends.left) return []
      return [label.x - width / 2, label.x - 4, label.x - width + 4]
        .map((x) => Math.min(most, Math.max(ends.left, x)))
        .filter((x) => x <= label.x + 4 && x + width >= label.x - 4)
        .map((x) => ({ text, x, width }))
    })
    const chosen = offers.find(isFree)
    if (chosen) taken.push(chosen)
    return chosen
  })
}

const lineHeight = 14

/** Where labels beneath each other stand, each at its place or as far below as the one before leaves room. */
export function labelsDown(places: readonly number[]): number[] {
  let last = Number.NEGATIVE_INFINITY
  return places.map((place) => {
    last = Math.max(place, last + lineHeight)
    return last
  })
}
