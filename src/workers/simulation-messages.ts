import type { Measured } from '../core/measured'
import type { Simulation } from '../core/simulation/simulate'

/** What the page asks of the worker. */
export interface SimulationAsked {
  readonly measured: Measured
  readonly trials: number
  readonly seed: number
}

/** What the worker says: how far it is, then the result. */
export type SimulationSaid =
  | { readonly kind: 'progress'; readonly trials: number }
  | { readonly kind: 'done'; readonly simulation: Simulation }
