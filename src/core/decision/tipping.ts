import type { Decision } from './decision'
import type { Outcome } from './decision-rules'
import type { Evidence } from './evidence'
import { tryOut, type WhatIf } from './what-if'
import { type Slider, whatIfOf } from './what-if-sliders'

/** The first value at which the outcome is another, and which. */
export interface Tip {
  readonly value: number
  readonly outcome: Outcome | 'undecided'
}

/** Where a decision tips over, on either side of where a slider stands; absent where it does not on that side. */
export interface Tipping {
  readonly below?: Tip
  readonly above?: Tip
}

/** Looks on either side before the search closes in. */
const looks = 16

/**
 * Where the outcome tips over as one slider moves and all else stays as it is tried out: looked for outward in 16
 * strides to each end, then closed in on by halves to one step of the slider. A change that is undone within a stride
 * may go unseen. Yields after each look how many were made. Own derivation.
 */
export function* tippingOf(
  evidence: Evidence,
  whatIf: WhatIf,
  slider: Slider,
  at: number,
): Generator<number, Tipping> {
  let made = 0
  const start = outcomeOf(tryOut(evidence, { ...whatIf, ...whatIfOf(slider, at) }).decision)
  const outcomeAt = (steps: number) => {
    made++
    return outcomeOf(
      tryOut(evidence, { ...whatIf, ...whatIfOf(slider, valueAt(slider, at, steps)) }).decision,
    )
  }
  const found: { below?: Tip; above?: Tip } = {}
  for (const side of ['below', 'above'] as const) {
    const sign = side === 'below' ? -1 : 1
    const end = side === 'below' ? at - slider.from : slider.to - at
    const all = Math.floor(end / slider.step + 1e-6)
    let near = 0
    let far: number | undefined
    for (let look = 1; look <= looks && far === undefined; look++) {
      const steps = Math.round((all * look) / looks)
      if (steps === near) continue
      if (outcomeAt(sign * steps) === start) near = steps
      else far = steps
      yield made
    }
    while (far !== undefined && far - near > 1) {
      const middle = Math.floor((near + far) / 2)
      if (outcomeAt(sign * middle) === start) near = middle
      else far = middle
      yield made
    }
    if (far !== undefined)
      found[side] = { value: valueAt(slider, at, sign * far), outcome: outcomeAt(sign * far) }
  }
  return found
}

function valueAt({ step }: Slider, at: number, steps: number): number {
  return at + steps * step
}

function outcomeOf(decision: Decision): Tip['outcome'] {
  return decision.known ? decision.outcome : 'undecided'
}
