import './findings-part.css'
import { type ReactNode, Suspense, useState } from 'react'
import { showPart } from '../../../session/session'
import { AddSurface } from '../AddSurface'
import { FieldLayoutContext } from '../field-layout'
import { Proof } from '../Proof'
import { ScanMarksHere } from '../ScanMarksHere'
import { SurfaceFindings } from '../SurfaceFindings'
import { ScanList } from '../scan-parts'
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
      <FieldLayoutContext.Provider value="stacked">
        <Surface key={`${bench.bore.id} ${bench.survey.id}`} bench={bench} />
      </FieldLayoutContext.Provider>
    </div>
  )
}

function Surface({ bench }: { readonly bench: OnBench }) {
  const [isAdding, setIsAdding] = useState(false)
  return (
    <>
      <SurfaceFindings {...{ bench, isAdding, setIsAdding }} />
      {isAdding ? null : <AddSurface onAdd={() => setIsAdding(true)} />}
      {bench.bore.scans ? (
        <Suspense fallback={null}>
          <ScanList bench={bench} />
        </Suspense>
      ) : null}
      <ScanMarksHere bench={bench} />
    </>
  )
}
