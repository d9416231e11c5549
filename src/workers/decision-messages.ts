import type { Sureness } from '../core/decision/sureness'
import type { Tipping } from '../core/decision/tipping'
import type { WhatIf } from '../core/decision/what-if'
import type { Slider, SliderName } from '../core/decision/what-if-sliders'
import type { Measured } from '../core/measured'

/** What the page asks about a bore's decision with something tried out: where it tips, or how sure it is. */
export interface DecisionAsked {
  readonly measured: Measured
  readonly boreId: string
  readonly whatIf: WhatIf
  readonly about:
    | {
        readonly kind: 'tipping'
        readonly sliders: readonly { readonly slider: Slider; readonly at: number }[]
      }
    | { readonly kind: 'sureness'; readonly trials: number; readonly seed: number }
}

/** What the worker says: each slider as it is found, how far it is, and at last that it is done. */
export type DecisionSaid =
  | { readonly kind: 'tipping'; readonly name: SliderName; readonly tipping: Tipping }
  | { readonly kind: 'progress'; readonly trials: number }
  | { readonly kind: 'sureness'; readonly sureness: Sureness | undefined }
  | { readonly kind: 'done' }
