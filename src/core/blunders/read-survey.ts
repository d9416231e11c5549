import type { Place } from '../findings'

/** A station as the blunder tests see it. */
export interface ReadStation extends Place {
  /** Repeats as read, mm, in the order they were taken. */
  readonly sizesMm: readonly number[]
  /** Diameter at 20 °C, mm. */
  readonly diameterMm: number
  /** The station's own part of its standard uncertainty, mm. */
  readonly individualMm: number
  readonly land: boolean
}

/** A survey as the blunder tests see it. */
export interface ReadSurvey {
  /** Stations that count, in the order they were read. */
  readonly stations: readonly ReadStation[]
  /** Part of the standard uncertainty that all stations share, mm. */
  readonly commonMm: number
  /** Standard deviation of one reading, mm, and the degrees of freedom it rests on. */
  readonly repeatMm: number
  readonly repeatDegreesOfFreedom: number
  /** What a whole turn of the needle is worth, mm; absent where the gauge has no needle or it is not known. */
  readonly turnMm?: number
  /** Diameter that a reading without deviation stands for, at 20 °C, mm; absent where sizes are read directly. */
  readonly zeroMm?: number
  /** What a micrometer's sleeve can be misread by, mm; absent where none was used. */
  readonly sleeveStepMm?: number
  /** Sizes the bore had when new, mm. */
  readonly newMinMm?: number
  readonly newMaxMm?: number
  /** Oversizes that the bore may have been finished to, mm, while nobody said to which; absent otherwise. */
  readonly oversizesMm?: readonly number[]
  /** The whole bore is unworn: it has not run. */
  readonly unworn: boolean
  /** The bore by caliper, mm. */
  readonly caliperMm?: number
}

/** Wrong and right must differ by this many standard uncertainties before a question is asked. */
export const separation = 5
