import { Component, type ReactNode, useEffect, useRef } from 'react'
import { useStore } from 'zustand'
import { jobStore } from '../job/job-store'
import { words } from '../words/words'
import { saveJobToFile, showShelf, startNewJob } from './desk'
import { saveLoop } from './keeping'
import { NotKept } from './NotKept'

/** Stands in for a page that failed to draw; the job is still there, to be saved, stepped back or left. */
export class CrashGuard extends Component<{ readonly children: ReactNode }, { readonly crashed: boolean }> {
  override state = { crashed: false }

  static getDerivedStateFromError() {
    return { crashed: true }
  }

  override render() {
    if (!this.state.crashed) return this.props.children
    return <Crashed onMended={() => this.setState({ crashed: false })} />
  }
}

function Crashed({ onMended }: { readonly onMended: () => void }) {
  const job = useStore(jobStore, (state) => state.job)
  const last = useStore(jobStore, ({ past }) => past.at(-1))
  const isKept = useStore(saveLoop.state, ({ kind }) => kind !== 'failed')
  const crashedWith = useRef(job)
  useEffect(() => {
    if (job !== crashedWith.current) onMended()
  }, [job, onMended])
  const { app, file, saving, undo } = words
  return (
    <main className="crashed">
      <h1>{app.name}</h1>
      <p role="alert">
        {app.crashed} {isKept ? app.crashedKept : null}
      </p>
      {isKept ? <p>{app.crashedAgain}</p> : <NotKept />}
      <div className="answers">
        <Choice text={app.reload} onPick={() => location.reload()} />
        {isKept ? <Choice text={saving.toFile} onPick={() => void saveJobToFile(false)} /> : null}
        {last ? <Choice text={undo.undoOf(last.label)} onPick={() => jobStore.getState().undo()} /> : null}
        <Choice text={file.new} onPick={() => void startNewJob()} />
        <Choice text={file.kept} onPick={showShelf} />
      </div>
    </main>
  )
}

function Choice({ text, onPick }: { readonly text: string; readonly onPick: () => void }) {
  return (
    <button type="button" className="button" onClick={onPick}>
      {text}
    </button>
  )
}
