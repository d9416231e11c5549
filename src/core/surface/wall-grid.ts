/**
 * The wall as the picture gets it: a grid of deviations whose rows include every level and whose columns
 * include every axis, both ways round, so that the drawn wall passes through each reading.
 */
export interface WallGrid {
  /** Middle of the pair of limits (or of the readings), mm; deviations are diameter less this. */
  readonly middleMm: number
  readonly lengthMm: number
  /** Row depths, increasing from 0 to the length, mm. */
  readonly depthsMm: Float64Array
  /** Column angles in [0, 2π), increasing, first 0, rad clockwise from the deck. The last joins the first. */
  readonly angles: Float64Array
  /** Diameter less middle, µm, row by row: [row · columns + column]. */
  readonly deviationsUm: Float32Array
  /** 1 where nobody measured: cell between rows r, r+1 and columns c, c+1 (round). [(rows−1) · columns]. */
  readonly hatched: Uint8Array
  /** 1 at points proven above, 2 below, in a patch that holds a station proven outside. As deviations. */
  readonly proven: Uint8Array
  /** Four deviations in µm at each point: below firm, inside from, inside to, above firm. Infinite if none. */
  readonly doubtUm: Float32Array
  /** So finely read that lines of equal diameter would hide it. */
  readonly isFine?: true
}

/** Another wall on the same lines, and how far a drawn wall is on its way there, from 0 to 1. */
export interface Toward {
  readonly grid: WallGrid
  readonly share: number
}
