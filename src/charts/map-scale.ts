/** Where the wall unrolled lies on the paper: angle across with 0° in the middle, depth down, pixels. */
export interface MapScale {
  readonly left: number
  readonly top: number
  readonly width: number
  readonly height: number
  readonly lengthMm: number
}

export interface MapPlace {
  readonly depthMm: number
  readonly angleDegrees: number
}

/** Seen from inside the bore: clockwise from above runs to the right. 180° lies at both edges. */
export function acrossOf(scale: MapScale, angleDegrees: number): number {
  const turned = (((angleDegrees + 180) % 360) + 360) % 360
  return scale.left + (turned / 360) * scale.width
}

export function downOf(scale: MapScale, depthMm: number): number {
  return scale.top + (depthMm / scale.lengthMm) * scale.height
}

/** The place under a pixel, or undefined off the wall. */
export function placeUnder(scale: MapScale, x: number, y: number): MapPlace | undefined {
  const across = (x - scale.left) / scale.width
  const down = (y - scale.top) / scale.height
  if (across < 0 || across > 1 || down < 0 || down > 1) return undefined
  return { depthMm: down * scale.lengthMm, angleDegrees: (across * 360 + 180) % 360 }
}

/** The stretches across that an arc covers, in pixels: two where it runs over 180°. */
export function stretchesOf(
  scale: MapScale,
  fromDegrees: number,
  toDegrees: number,
): { x: number; width: number }[] {
  const span = (((toDegrees - fromDegrees) % 360) + 360) % 360
  const x = acrossOf(scale, fromDegrees)
  const width = (span / 360) * scale.width
  const over = x + width - (scale.left + scale.width)
  if (over <= 1e-9) return [{ x, width }]
  return [
    { x, width: width - over },
    { x: scale.left, width: over },
  ]
}
