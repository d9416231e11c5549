/** A place on the wall that is pointed at: angles in degrees clockwise seen from the deck, in [0, 360). */
export interface PointedPlace {
  readonly depthMm: number
  readonly angleDegrees: number
}
