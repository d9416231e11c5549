/** How many random cases to try: a few at every test, all of them in the proof run. */
export function runCount(counts: { readonly quick: number; readonly full: number }): number {
  return process.env.PROOF === '1' ? counts.full : counts.quick
}
