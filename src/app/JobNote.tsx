import { useId, useState } from 'react'
import { useStore } from 'zustand'
import { describeJob } from '../job/commands'
import { jobStore } from '../job/job-store'
import { perform } from '../pages/bench/perform'
import type { Refusal } from '../pages/bench/TypedField'
import { words } from '../words/words'

/** The note of the job, kept as it is typed; what cannot be kept stays in the field with the reason. */
export function JobNote() {
  const id = useId()
  const note = useStore(jobStore, ({ job }) => job.note ?? '')
  const [draft, setDraft] = useState<string>()
  const [refusal, setRefusal] = useState<Refusal>()
  const take = (typed: string) => {
    const note = typed.trim() === '' ? undefined : typed
    const why = perform(words.changes.note, (job) => describeJob(job, { note }), 'note')
    setRefusal(why)
    setDraft(why === undefined ? undefined : typed)
  }
  return (
    <>
      <p className="soft">{words.note.lead}</p>
      <textarea
        className="job-note"
        aria-label={words.note.title}
        rows={10}
        value={draft ?? note}
        aria-invalid={refusal !== undefined}
        aria-describedby={refusal === undefined ? undefined : id}
        onChange={(event) => take(event.target.value)}
      />
      {refusal === undefined ? null : (
        <span id={id} role="alert" className="refusal">
          {refusal}
        </span>
      )}
    </>
  )
}
