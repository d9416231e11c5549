import { Fragment, useState } from 'react'
import { words } from '../../words/words'
import { AddSurface } from './AddSurface'
import { AddToPlan } from './AddToPlan'
import { BoreSentence } from './BoreSentence'
import { LimitsSentence } from './LimitsSentence'
import { NextField } from './NextField'
import { OpeningsEditor } from './OpeningsEditor'
import { PlanProposal } from './PlanProposal'
import { planRepeats } from './plan-repeats'
import { ReadingsGrid } from './ReadingsGrid'
import { SetUpSentence } from './SetUpSentence'
import { SurfaceFindings, type SurfaceProps } from './SurfaceFindings'
import { useAids } from './use-aids'
import { useEntry } from './use-entry'
import type { OnBench } from './use-job'

/** Left: set-up and limits as sentences, the grid of readings, and the field for the next one. */
export function Sheet({ bench }: { readonly bench: OnBench }) {
  const [isAdding, setIsAdding] = useState(false)
  return (
    <section className="sheet" aria-label={words.parts.sheet}>
      <div className="sheet-scroll">
        <Fragment key={bench.bore.id}>
          <SetUpSentence {...bench} />
          <LimitsSentence {...bench} />
          <BoreSentence {...bench} />
          <div className="openings-row">
            <OpeningsEditor {...bench} />
            <AddSurface short onAdd={() => setIsAdding(true)} />
          </div>
        </Fragment>
        <Entry bench={bench} surface={{ isAdding, setIsAdding }} />
      </div>
    </section>
  )
}

function Entry(props: { readonly bench: OnBench; readonly surface: Omit<SurfaceProps, 'bench'> }) {
  const { bench, surface } = props
  const entry = useEntry(bench)
  useAids(bench, entry)
  return (
    <>
      <ReadingsGrid bench={bench} rows={entry.rows} inHand={entry.station} actions={entry} />
      <div className="plan-row">
        <AddToPlan {...bench} />
        <PlanProposal {...bench} />
      </div>
      <SurfaceFindings key={`${bench.bore.id} ${bench.survey.id}`} bench={bench} {...surface} />
      <NextField
        entry={entry}
        bench={bench}
        onWanted={planRepeats}
        {...(bench.job.bores.length > 1 ? { boreName: nameOf(bench.bore) } : {})}
      />
    </>
  )
}

function nameOf({ role, name }: OnBench['bore']): string {
  return role === 'for-comparison' ? name : words.bar.boreNamed(name)
}
