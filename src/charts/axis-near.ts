/** An axis, and the end of it that is meant, degrees. */
export interface AxisEnd {
  readonly axisDegrees: number
  readonly angleDegrees: number
}

/** Of these axes the one with a contact nearest to an angle, and that contact's angle; undefined without axes. */
export function axisNear(
  axesDegrees: readonly number[],
  contactDegrees: readonly number[],
  angleDegrees: number,
): AxisEnd | undefined {
  const ends = axesDegrees.flatMap((axisDegrees) =>
    contactDegrees.map((contact) => ({ axisDegrees, angleDegrees: (axisDegrees + contact) % 360 })),
  )
  const apart = (end: AxisEnd) => {
    const between = Math.abs(end.angleDegrees - angleDegrees) % 360
    return Math.min(between, 360 - between)
  }
  return ends.reduce<AxisEnd | undefined>(
    (best, end) => (best && apart(best) <= apart(end) ? best : end),
    undefined,
  )
}
