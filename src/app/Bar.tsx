import './bar.css'
import { useStore } from 'zustand'
import { renameJob } from '../job/commands'
import { jobStore } from '../job/job-store'
import { perform } from '../pages/bench/perform'
import { TypedField } from '../pages/bench/TypedField'
import { words } from '../words/words'
import { BoreTabs } from './BoreTabs'
import { desk, nameOr, saveLoop, startNewJob } from './desk'
import { JobMenu } from './JobMenu'
import { showNote } from './questions'
import { SendButton } from './SendButton'
import { type ChosenTheme, chooseTheme, themeStore } from './theme'

/** The top of the page: which job, whether it is kept, its bores, and what is done with the whole of it. */
export function Bar() {
  const invented = useStore(jobStore, ({ job }) => job.invented === true)
  return (
    <header className="bar">
      <span className="wordmark">{words.app.name}</span>
      <JobName />
      <BoreTabs />
      {invented ? (
        <div className="bar-banner">
          <button
            type="button"
            className="bar-about"
            aria-haspopup="dialog"
            title={words.note.about}
            onClick={showNote}
          >
            {words.demo.banner}
          </button>
          <button type="button" className="quiet" onClick={() => void startNewJob()}>
            {words.demo.startOwn}
          </button>
        </div>
      ) : null}
      <div className="bar-right">
        <UndoButtons />
        <SendButton />
        <JobMenu />
        <ThemeButton />
      </div>
    </header>
  )
}

function JobName() {
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
      <span className={failed ? 'bar-saving is-failed' : 'bar-saving'}>{kept}</span>
      <span className="bar-saving" role="status">
        {said}
      </span>
    </>
  )
}

const clock = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' })

function timeText(at: Date): string {
  return clock.format(at)
}

function UndoButtons() {
  const last = useStore(jobStore, ({ past }) => past.at(-1)?.label)
  const next = useStore(jobStore, ({ future }) => future[0]?.label)
  const { undo } = words
  return (
    <>
      <StepButton
        text={undo.undo}
        said={last === undefined ? undo.nothing : undo.undoOf(last)}
        possible={last !== undefined}
        onPress={() => jobStore.getState().undo()}
      />
      <StepButton
        text={undo.redo}
        said={next === undefined ? undo.nothingToRedo : undo.redoOf(next)}
        possible={next !== undefined}
        onPress={() => jobStore.getState().redo()}
      />
    </>
  )
}

/** Stays where it is and can be reached while there is nothing for it to do. */
function StepButton(props: {
  readonly text: string
  readonly said: string
  readonly possible: boolean
  readonly onPress: () => void
}) {
  return (
    <button
      type="button"
      className="bar-button"
      aria-label={props.said}
      title={props.said}
      aria-disabled={!props.possible}
      onClick={props.onPress}
    >
      {props.text}
    </button>
  )
}

function ThemeButton() {
  const chosen = useStore(themeStore, (state) => state.chosen)
  const { theme } = words.app
  const next = new Map<ChosenTheme, ChosenTheme>([
    [undefined, 'light'],
    ['light', 'dark'],
    ['dark', undefined],
  ])
  return (
    <button type="button" className="bar-button" onClick={() => chooseTheme(next.get(chosen))}>
      {words.app.themeIs(chosen === undefined ? theme.asSystem : theme[chosen])}
    </button>
  )
}
