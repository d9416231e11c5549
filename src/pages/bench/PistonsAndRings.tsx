import { lazy, Suspense, useState } from 'react'
import { words } from '../../words/words'
import { DraftScope } from './draft-scope'
import type { OnBench } from './use-job'

const PistonsPanel = lazy(async () => ({ default: (await import('./pistons/PistonsPanel')).PistonsPanel }))

/** A place that opens for pistons, ring gaps and boring; it is fetched when somebody opens it. */
export function PistonsAndRings(bench: OnBench) {
  // Once opened it stays, so that closing it loses nothing that was typed.
  const [wasOpened, setWasOpened] = useState(false)
  const { job, survey } = bench
  const listed = (job.pistons ?? []).length + (survey.ringGaps ?? []).length
  return (
    <details
      className="openings pistons"
      onToggle={(event) => {
        if (event.currentTarget.open) setWasOpened(true)
      }}
    >
      <summary>
        {words.pistons.title} {listed > 0 ? `(${listed})` : ''}
      </summary>
      {wasOpened ? (
        <DraftScope value={`pistons ${survey.id}`}>
          <Suspense fallback={<p className="aside">{words.pistons.loading}</p>}>
            <PistonsPanel {...bench} />
          </Suspense>
        </DraftScope>
      ) : null}
    </details>
  )
}
