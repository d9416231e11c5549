import { useStore } from 'zustand'
import { renameJob } from '../job/commands'
import { jobStore } from '../job/job-store'
import { perform } from '../pages/bench/perform'
import { TypedField } from '../pages/bench/TypedField'
import { words } from '../words/words'
import { desk, nameOr } from './desk'
import { saveLoop } from './keeping'
import { showKeeping } from './questions'

/** The name of the job, edited in place, and whether the job is kept. */
export function JobName() {
  const { id, name } = useStore(jobStore, ({ job }) => job)
  const rename = (typed: string) => perform(words.changes.jobName, (job) => renameJob(job, typed.trim()))
  return (
    <div className="bar-job">
      <h1 className="bar-heading">{nameOr(name)}</h1>
      <TypedField
        key={id}
        label={words.bar.jobName}
        text={name}
        placeholder={words.app.untitled}
        commit={rename}
        numeric={false}
      />
      <Saving />
    </div>
  )
}

/** Whether the job is kept, and the last thing done with a file. */
function Saving() {
  const state = useStore(saveLoop.state)
  const said = useStore(desk, (one) => one.said)
  const kept = {
    nothing: () => words.saving.notYet,
    saving: () => words.saving.saving,
    saved: () => (state.kind === 'saved' ? words.saving.saved(timeText(state.at)) : ''),
    failed: () => words.saving.failed,
  }[state.kind]()
  const failed = state.kind === 'failed'
  return (
    <>
      <button
        type="button"
        className={failed ? 'bar-saving is-failed' : 'bar-saving'}
        title={words.keeping.title}
        aria-haspopup="dialog"
        onClick={showKeeping}
      >
        {kept}
      </button>
      <span className="bar-saving" role="status">
        {said}
      </span>
    </>
  )
}

const clock = new Intl.DateTimeFormat(words.language.locale, { hour: '2-digit', minute: '2-digit' })

function timeText(at: Date): string {
  return clock.format(at)
}
