import { setRepeatsPerStation } from '../../session/session'
import { words } from '../../words/words'
import { AddToPlan } from './AddToPlan'
import { BoreSentence } from './BoreSentence'
import { LimitsSentence } from './LimitsSentence'
import { NextField } from './NextField'
import { OpeningsEditor } from './OpeningsEditor'
import { ReadingsGrid } from './ReadingsGrid'
import { SetUpSentence } from './SetUpSentence'
import { useEntry } from './use-entry'
import type { OnBench } from './use-job'

/** Left: set-up and limits as sentences, the grid of readings, and the field for the next one. */
export function Sheet({ bench }: { readonly bench: OnBench }) {
  return (
    <section className="sheet" aria-label={words.parts.sheet}>
      <div className="sheet-scroll">
        <SetUpSentence {...bench} />
        <LimitsSentence {...bench} />
        <BoreSentence {...bench} />
        <OpeningsEditor {...bench} />
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
      <AddToPlan {...bench} />
      <NextField entry={entry} bench={bench} onWanted={setRepeatsPerStation} />
    </>
  )
}
