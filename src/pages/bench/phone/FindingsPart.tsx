import './findings-part.css'
import type { ReactNode } from 'react'
import { showPart } from '../../../session/session'
import { Proof } from '../Proof'
import type { OnBench } from '../use-job'

/** What other layers put among the findings. */
export interface FindingsSlots {
  /** What can be done with the findings, above them. */
  readonly actions: ReactNode
  /** Where the figures are checked by simulation on request. */
  readonly simulation: ReactNode
}

/** What the readings prove, in full width; a finding that has a place opens the wall there. */
export function FindingsPart({ bench, actions, simulation }: FindingsSlots & { readonly bench: OnBench }) {
  return (
    <div className="findings-part">
      {actions ? <div className="findings-actions">{actions}</div> : null}
      <Proof bench={bench} simulation={simulation} onOpen={() => showPart('wall')} />
    </div>
  )
}
