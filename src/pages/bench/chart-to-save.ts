import type { AxisEnd } from '../../charts/axis-near'
import type { Place } from '../../core/findings'
import type { ChartName } from '../../session/session'

/** A flat view that is saved, and where it is cut. */
export interface ChartToSave {
  readonly chart: ChartName
  readonly depthMm: number
  readonly axis: AxisEnd
  /** Of a course over hours: its station. */
  readonly station?: Place
}

/** Saves a view as a file; its name, or undefined where that failed. */
export type SaveChart = (chart: ChartToSave) => Promise<string | undefined>
