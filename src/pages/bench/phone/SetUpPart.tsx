import './set-up-part.css'
import { type ReactNode, useState } from 'react'
import { stationsPlanned } from '../../../job/selectors'
import { showPart } from '../../../session/session'
import { words } from '../../../words/words'
import { AddToPlan } from '../AddToPlan'
import { BoreSentence } from '../BoreSentence'
import { ChoiceField } from '../ChoiceField'
import { repeatChoices } from '../entry-order'
import { FieldLayoutContext } from '../field-layout'
import { useKeptSpecsSlot } from '../kept-specs-slot'
import { LimitsSentence } from '../LimitsSentence'
import { OpeningsEditor } from '../OpeningsEditor'
import { PastePanel } from '../PastePanel'
import { PistonsAndRings, PistonsButton } from '../PistonsAndRings'
import { PlanProposal } from '../PlanProposal'
import { pasteBlock } from '../paste-block'
import { planRepeats } from '../plan-repeats'
import { ReadingsGrid } from '../ReadingsGrid'
import { SetUpSentence } from '../SetUpSentence'
import { useEntry } from '../use-entry'
import type { OnBench } from '../use-job'
import type { WallColumnProps } from '../WallColumn'
import { PortMap } from './PortMap'

/** Everything that is settled before and after measuring, field beneath field. */
export function SetUpPart({ bench, paintOf }: Pick<WallColumnProps, 'bench' | 'paintOf'>) {
  const KeptSpecs = useKeptSpecsSlot()
  return (
    <FieldLayoutContext.Provider value="stacked">
      <div className="set-up-part" key={bench.bore.id}>
        {KeptSpecs ? <KeptSpecs place="start" /> : null}
        <Section title={words.setUp.title}>
          <SetUpSentence {...bench} />
        </Section>
        <Section title={words.limits.title}>
          <LimitsSentence {...bench} />
        </Section>
        <Section title={words.bore.title}>
          <BoreSentence {...bench} />
          <PortMap bench={bench} paintOf={paintOf} />
          <OpeningsEditor {...bench} />
        </Section>
        <Section title={words.pistons.title}>
          <Pistons {...bench} />
        </Section>
        <Section title={words.phone.plan}>
          <Plan bench={bench} />
        </Section>
      </div>
    </FieldLayoutContext.Provider>
  )
}

function Pistons(bench: OnBench) {
  const [isOpen, setIsOpen] = useState(false)
  return (
    <>
      <PistonsButton {...bench} isOpen={isOpen} onToggle={() => setIsOpen(!isOpen)} />
      <PistonsAndRings {...bench} isOpen={isOpen} />
    </>
  )
}

function Section({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <section className="set-up-section">
      <h2>{title}</h2>
      {children}
    </section>
  )
}

function Plan({ bench }: { readonly bench: OnBench }) {
  const entry = useEntry(bench)
  const goTo: typeof entry.goTo = (place) => {
    entry.goTo(place)
    showPart('enter')
  }
  const isPlanned = stationsPlanned(bench.job, bench.bore.id, bench.survey.id).length > 0
  return (
    <>
      <AddToPlan {...bench} />
      <FieldLayoutContext.Provider value="in-sentence">
        <PlanProposal {...bench} />
      </FieldLayoutContext.Provider>
      <ChoiceField
        label={words.next.repeatsPerStation}
        value={`${entry.wanted}`}
        options={repeatChoices(entry.wanted).map((count) => ({ value: `${count}`, text: `${count}` }))}
        onChoose={(value) => planRepeats(Number(value))}
      />
      {isPlanned ? <p className="aside">{words.phone.planHint}</p> : null}
      <FieldLayoutContext.Provider value="in-sentence">
        <div className="plan-grid">
          <ReadingsGrid
            bench={bench}
            rows={entry.rows}
            inHand={entry.station}
            actions={{ correct: goTo, clear: entry.clear, paste: pasteBlock }}
            asksInPlace={false}
          />
        </div>
        <PastePanel jobId={bench.job.id} />
      </FieldLayoutContext.Provider>
    </>
  )
}
