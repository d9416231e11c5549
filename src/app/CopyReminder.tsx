import { useStore } from 'zustand'
import { jobStore } from '../job/job-store'
import { words } from '../words/words'
import { copyState, dismissReminder, reminderOf } from './copy-reminder'
import { saveJobToFile } from './desk'

/** One quiet line while the job stands in no file outside this browser. Nothing else. */
export function CopyReminder() {
  const state = useStore(copyState)
  const job = useStore(jobStore, (one) => one.job)
  const reminder = reminderOf(state, job, Date.now())
  if (reminder === undefined) return null
  const said = words.keeping
  return (
    <>
      <span>{said.reminder[reminder]}</span>
      <button type="button" className="quiet" onClick={() => void saveJobToFile(false)}>
        {words.saving.toFile}
      </button>
      <button
        type="button"
        className="quiet"
        aria-label={said.dismissLabel}
        onClick={() => void dismissReminder()}
      >
        {said.dismiss}
      </button>
    </>
  )
}

/** Whether the line would say anything. */
export function useReminder(): boolean {
  const state = useStore(copyState)
  return useStore(jobStore, ({ job }) => reminderOf(state, job, Date.now()) !== undefined)
}
