/** The middle value; the mean of the two in the middle for an even number. Throws for none. */
export function median(values: readonly number[]): number {
  if (values.length === 0) throw new RangeError('median of no values')
  const sorted = [...values].sort((a, b) => a - b)
  const half = sorted.length >> 1
  const upper = sorted[half] ?? 0
  return sorted.length % 2 === 1 ? upper : ((sorted[half - 1] ?? 0) + upper) / 2
}
