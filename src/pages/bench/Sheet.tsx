import { Suspense, useState } from 'react'
import { words } from '../../words/words'
import { AddSurface } from './AddSurface'
import { AddToPlan } from './AddToPlan'
import { BoreSentence } from './BoreSentence'
import { DraftScope } from './draft-scope'
import { useKeptSpecsSlot } from './kept-specs-slot'
import { LimitsSentence } from './LimitsSentence'
import { NextField } from './NextField'
import { OpeningsEditor } from './OpeningsEditor'
import { PastePanel } from './PastePanel'
import { PistonsAndRings, PistonsButton } from './PistonsAndRings'
import { PlanProposal } from './PlanProposal'
import { pasteBlock } from './paste-block'
import { planRepeats } from './plan-repeats'
import { cellOf, ReadingsGrid } from './ReadingsGrid'
import { ScanMarksHere } from './ScanMarksHere'
import { SetUpSentence } from './SetUpSentence'
import { SurfaceFindings, type SurfaceProps } from './SurfaceFindings'
import { ScanList } from './scan-parts'
import { useAids } from './use-aids'
import { useEntry } from './use-entry'
import { useGaugeKeys } from './use-gauge-keys'
import type { OnBench } from './use-job'

/** Left: set-up and limits as sentences, the grid of readings, and the field for the next one. */
export function Sheet({ bench }: { readonly bench: OnBench }) {
  const [isAdding, setIsAdding] = useState(false)
  const [hasPistons, setHasPistons] = useState(false)
  const KeptSpecs = useKeptSpecsSlot()
  return (
    <section className="sheet" aria-label={words.parts.sheet}>
      <div className="sheet-scroll">
        {KeptSpecs ? <KeptSpecs place="start" /> : null}
        <DraftScope key={bench.bore.id} value={bench.survey.id}>
          <SetUpSentence {...bench} />
          <LimitsSentence {...bench} />
          <BoreSentence {...bench} />
          <div className="openings-row">
            <OpeningsEditor {...bench} />
            <div className="row-openers">
              <PistonsButton {...bench} isOpen={hasPistons} onToggle={() => setHasPistons(!hasPistons)} />
              <AddSurface short onAdd={() => setIsAdding(true)} />
            </div>
          </div>
        </DraftScope>
        <PistonsAndRings {...bench} isOpen={hasPistons} />
        <Entry bench={bench} surface={{ isAdding, setIsAdding }} />
      </div>
    </section>
  )
}

function Entry(props: { readonly bench: OnBench; readonly surface: Omit<SurfaceProps, 'bench'> }) {
  const { bench, surface } = props
  const entry = useEntry(bench)
  useAids(bench, entry)
  useGaugeKeys(entry)
  const { correct, clear, rows, station } = entry
  return (
    <>
      <DraftScope value={bench.survey.id}>
        <ReadingsGrid
          key={bench.survey.id}
          bench={bench}
          rows={rows}
          inHand={station}
          actions={{ correct, clear, paste: pasteBlock }}
          asksInPlace
        />
        <div className="plan-row" key={`plan ${bench.survey.id}`}>
          <AddToPlan {...bench} />
          <PlanProposal {...bench} />
        </div>
      </DraftScope>
      <PastePanel jobId={bench.job.id} />
      <SurfaceFindings key={`${bench.bore.id} ${bench.survey.id}`} bench={bench} {...surface} />
      {bench.bore.scans ? (
        <Suspense fallback={null}>
          <ScanList bench={bench} />
        </Suspense>
      ) : null}
      <ScanMarksHere bench={bench} />
      <NextField
        entry={entry}
        bench={bench}
        onWanted={planRepeats}
        onBlock={(text) => pasteBlock(text, cellOf(rows, station) ?? { row: 0, column: 0 })}
        {...(bench.job.bores.length > 1 ? { boreName: nameOf(bench.bore) } : {})}
      />
    </>
  )
}

function nameOf({ role, name }: OnBench['bore']): string {
  return role === 'for-comparison' ? name : words.bar.boreNamed(name)
}
