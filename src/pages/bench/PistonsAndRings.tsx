import { lazy, Suspense, useState } from 'react'
import { words } from '../../words/words'
import { DraftScope } from './draft-scope'
import type { OnBench } from './use-job'

const PistonsPanel = lazy(async () => ({ default: (await import('./pistons/PistonsPanel')).PistonsPanel }))

/** Whether the place for pistons and rings is open, and the button that opens it. */
export function PistonsButton({
  job,
  survey,
  isOpen,
  onToggle,
}: OnBench & { readonly isOpen: boolean; readonly onToggle: () => void }) {
  const listed = (job.pistons ?? []).length + (survey.ringGaps ?? []).length
  return (
    <button
      type="button"
      className="quiet pistons-button"
      aria-expanded={isOpen}
      title={words.pistons.title}
      onClick={onToggle}
    >
      {words.pistons.open} {listed > 0 ? `(${listed})` : ''}
    </button>
  )
}

/** Pistons, ring gaps and boring, fetched when somebody opens them. */
export function PistonsAndRings({ isOpen, ...bench }: OnBench & { readonly isOpen: boolean }) {
  // Once opened it stays, so that closing it loses nothing that was typed.
  const [wasOpened, setWasOpened] = useState(isOpen)
  if (isOpen && !wasOpened) setWasOpened(true)
  if (!wasOpened && !isOpen) return null
  return (
    <section aria-label={words.pistons.title} hidden={!isOpen}>
      <DraftScope value={`pistons ${bench.survey.id}`}>
        <Suspense fallback={<p className="aside">{words.pistons.loading}</p>}>
          <PistonsPanel {...bench} />
        </Suspense>
      </DraftScope>
    </section>
  )
}
