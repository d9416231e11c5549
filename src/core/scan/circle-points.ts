/** Points across a bore, in one unit. */
export interface CirclePoints {
  readonly x: Float64Array
  readonly y: Float64Array
}

/** A circle, in the unit of its points. */
export interface Circle {
  readonly x: number
  readonly y: number
  readonly radius: number
}

/** Why a circle is not given. */
export type CircleRefusal =
  /** Fewer points than it takes. */
  | 'too-few-values'
  /** The points fit in a half-circle: nothing holds the circle on the other side. */
  | 'gap-of-half-a-turn'
  /** Points on a straight line, or all in one place. */
  | 'no-circle'

/** A result, or why there is none. */
export type CircleResult<T> =
  | ({ readonly known: true } & T)
  | { readonly known: false; readonly reason: CircleRefusal }

/** A circle that is not given, with the reason. */
export function refused(reason: CircleRefusal): { readonly known: false; readonly reason: CircleRefusal } {
  return { known: false, reason }
}

/** Whether points lie in every eighth of a turn around a centre, so that no gap between them is half a turn wide. */
export function isAllRound(
  { x, y }: CirclePoints,
  centre: { readonly x: number; readonly y: number },
): boolean {
  let eighths = 0
  for (let i = 0; i < x.length; i++) {
    const u = (x[i] ?? 0) - centre.x
    const v = (y[i] ?? 0) - centre.y
    eighths |= 1 << ((u > 0 ? 1 : 0) + (v > 0 ? 2 : 0) + (Math.abs(u) > Math.abs(v) ? 4 : 0))
  }
  return eighths === 0xff
}

/** The widest angle from one point to the next around a centre, rad; a whole turn for a single point. */
export function widestGap(
  { x, y }: CirclePoints,
  centre: { readonly x: number; readonly y: number },
): number {
  const turns = new Float64Array(x.length)
  for (let i = 0; i < x.length; i++) turns[i] = Math.atan2((y[i] ?? 0) - centre.y, (x[i] ?? 0) - centre.x)
  turns.sort()
  let widest = (turns[0] ?? 0) + 2 * Math.PI - (turns[turns.length - 1] ?? 0)
  for (let i = 1; i < turns.length; i++) widest = Math.max(widest, (turns[i] ?? 0) - (turns[i - 1] ?? 0))
  return widest
}

/** Largest and smallest distance of the points from a centre. */
export function distancesFrom({ x, y }: CirclePoints, centre: { readonly x: number; readonly y: number }) {
  let largest = 0
  let smallest = Number.POSITIVE_INFINITY
  for (let i = 0; i < x.length; i++) {
    const u = (x[i] ?? 0) - centre.x
    const v = (y[i] ?? 0) - centre.y
    const square = u * u + v * v
    if (square > largest) largest = square
    if (square < smallest) smallest = square
  }
  return { largest: Math.sqrt(largest), smallest: Math.sqrt(smallest) }
}
