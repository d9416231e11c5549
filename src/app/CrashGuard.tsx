import { Component, type ReactNode } from 'react'
import { jobStore } from '../job/job-store'
import { words } from '../words/words'
import { saveJobToFile } from './desk'

/** Stands in for a page that failed to draw; the job is still there, to be saved or stepped back. */
export class CrashGuard extends Component<{ readonly children: ReactNode }, { readonly crashed: boolean }> {
  override state = { crashed: false }

  static getDerivedStateFromError() {
    return { crashed: true }
  }

  override render() {
    if (!this.state.crashed) return this.props.children
    const last = jobStore.getState().past.at(-1)
    return (
      <main className="crashed">
        <h1>{words.app.name}</h1>
        <p role="alert">{words.app.crashed}</p>
        <div className="answers">
          <button type="button" className="button" onClick={() => location.reload()}>
            {words.app.reload}
          </button>
          <button type="button" className="button" onClick={() => void saveJobToFile(false)}>
            {words.saving.toFile}
          </button>
          {last ? (
            <button type="button" className="button" onClick={() => this.stepBack()}>
              {words.undo.undoOf(last.label)}
            </button>
          ) : null}
        </div>
      </main>
    )
  }

  stepBack() {
    jobStore.getState().undo()
    this.setState({ crashed: false })
  }
}
