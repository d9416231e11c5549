import type { Port } from '../measured'
import { portWidthDegrees } from './port-at'

/** A port as a rule and a protractor give it: its width along the wall and where its middle stands. */
export interface PortArc {
  readonly widthMm: number
  /** Degrees clockwise seen from the deck, in [0, 360). */
  readonly centreDegrees: number
}

/** Angles are kept to so many parts of a degree: half a micron of wall in a bore of 60 mm. */
const partsOfDegree = 1000

/**
 * Width of a port along the wall, mm, and its middle, from its edges: width = π·D·(degrees between the
 * edges)/360 for a bore of diameter D in mm. Exact but for rounding. Own derivation.
 */
export function portArc(port: Port, diameterMm: number): PortArc {
  const degrees = portWidthDegrees(port)
  return {
    widthMm: (Math.PI * checked(diameterMm) * degrees) / 360,
    centreDegrees: withinTurn(port.fromDegrees + degrees / 2),
  }
}

/**
 * Edges of a port from its width along the wall, mm, and its middle, degrees; to a thousandth of a degree,
 * each in [0, 360). Throws for a width that is not above 0 or reaches all round. Own derivation.
 */
export function portEdges(
  { widthMm, centreDegrees }: PortArc,
  diameterMm: number,
): Pick<Port, 'fromDegrees' | 'toDegrees'> {
  const degrees = (widthMm / (Math.PI * checked(diameterMm))) * 360
  if (!(degrees > 0 && degrees < 360)) {
    throw new RangeError(`portEdges: expected a width between 0 and all round, got ${widthMm} mm`)
  }
  return {
    fromDegrees: withinTurn(centreDegrees - degrees / 2),
    toDegrees: withinTurn(centreDegrees + degrees / 2),
  }
}

function withinTurn(degrees: number): number {
  const rounded = Math.round(degrees * partsOfDegree) / partsOfDegree
  return ((rounded % 360) + 360) % 360
}

function checked(diameterMm: number): number {
  if (diameterMm > 0 && Number.isFinite(diameterMm)) return diameterMm
  throw new RangeError(`port arc: expected a diameter above 0 mm, got ${diameterMm}`)
}
