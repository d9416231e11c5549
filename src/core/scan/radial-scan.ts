/** Radii that a probe turned in the bore has read, level by level: a form, and no size. */
export interface RadialScan {
  /** Strictly increasing from the deck, mm. */
  readonly depthsMm: readonly number[]
  /** Strictly increasing in [0, 360), clockwise seen from the deck. */
  readonly anglesDegrees: readonly number[]
  /**
   * µm, positive away from the axis, row by row: [level · angles + angle]; NaN where there is a port. Counted from
   * any one radius for the whole scan.
   */
  readonly radiiUm: Float64Array
}

/** What a fit of a scan needs to know beside the radii. */
export interface ScanFitOptions {
  /** Roughly the bore's diameter, mm: it only weighs terms of the second order, e²/2R. */
  readonly nearDiameterMm: number
  /** Standard deviation with which the probe repeats, µm, and the degrees of freedom it rests on. */
  readonly repeatabilityUm: number
  readonly repeatabilityDegreesOfFreedom: number
}

/** A vector across the bore: x towards 0°, y towards 90°. */
export interface Across {
  readonly x: number
  readonly y: number
}

/** The straight axis of the bore as the spindle of the probe saw it. */
export interface ScanAxis {
  /** Where it stands at depth 0, µm from the spindle. */
  readonly atDeckUm: Across
  /** How it leans, µm for each mm of depth. */
  readonly leanUmPerMm: Across
  /** Standard uncertainties, from the scatter about the smooth form. With one level nothing is known of a lean. */
  readonly atDeckDoubtUm: Across
  readonly leanDoubtUmPerMm?: Across
  /** How far it stands from the spindle at the level where that is most, µm. */
  readonly farthestUm: number
}

/** The smooth form of the wall about the axis: low harmonics around, each smooth along the depth. */
export interface SmoothForm {
  /** Form at each place of the scan, µm about the axis, ports included. */
  readonly formUm: Float64Array
  /** Radius about the axis less the form, µm; NaN where there is a port. */
  readonly residualUm: Float64Array
  /** Weight that each place had in the end, 0 to 1: low where something stands out; 0 in ports. */
  readonly weights: Float64Array
  /** Standard deviation of what is left over, estimated robustly, µm. */
  readonly sigmaUm: number
}

/** What marks and drawing need of a scan: its axis, its radii about it, and its smooth form. */
export interface ScanFit {
  readonly axis: ScanAxis
  /** Radii about the axis, µm; NaN where there is a port. */
  readonly aboutAxisUm: Float64Array
  readonly smooth: SmoothForm
}
