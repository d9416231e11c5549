import { Fragment } from 'react'
import { words } from '../../words/words'
import { AddToPlan } from './AddToPlan'
import { BoreSentence } from './BoreSentence'
import { LimitsSentence } from './LimitsSentence'
import { NextField } from './NextField'
import { OpeningsEditor } from './OpeningsEditor'
import { PlanProposal } from './PlanProposal'
import { planRepeats } from './plan-repeats'
import { ReadingsGrid } from './ReadingsGrid'
import { SetUpSentence } from './SetUpSentence'
import { useEntry } from './use-entry'
import type { OnBench } from './use-job'

/** Left: set-up and limits as sentences, the grid of readings, and the field for the next one. */
export function Sheet({ bench }: { readonly bench: OnBench }) {
  return (
    <section className="sheet" aria-label={words.parts.sheet}>
      <div className="sheet-scroll">
        <Fragment key={bench.bore.id}>
          <SetUpSentence {...bench} />
          <LimitsSentence {...bench} />
          <BoreSentence {...bench} />
          <OpeningsEditor {...bench} />
        </Fragment>
        <Entry bench={bench} />
      </div>
    </section>
  )
}

function Entry({ bench }: { readonly bench: OnBench }) {
  const entry = useEntry(bench)
  return (
    <>
      <ReadingsGrid bench={bench} rows={entry.rows} inHand={entry.station} actions={entry} />
      <div className="plan-row">
        <AddToPlan {...bench} />
        <PlanProposal {...bench} />
      </div>
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
