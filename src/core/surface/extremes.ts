const known = new WeakMap<Float32Array, readonly [number, number]>()

/**
 * The least and the greatest of many values, looked for once: what is drawn is never changed in place. Values that are
 * NaN are passed over; without any other, (∞, −∞).
 */
export function extremesOf(values: Float32Array): readonly [least: number, greatest: number] {
  const before = known.get(values)
  if (before) return before
  let [least, greatest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (let i = 0; i < values.length; i++) {
    const value = values[i] ?? Number.NaN
    if (value < least) least = value
    if (value > greatest) greatest = value
  }
  known.set(values, [least, greatest])
  return [least, greatest]
}
