import './first-page.css'
import type { ReactNode } from 'react'
import { useStore } from 'zustand'
import { words } from '../words/words'
import { desk, startNewJob } from './desk'
import { ExampleList } from './ExampleList'
import { showKeptJobs } from './questions'
import { useFileChooser } from './use-file-chooser'

/** What a browser shows that has no job to go on with: three ways to begin. */
export function FirstPage() {
  const hasKept = useStore(desk, (state) => state.hasKept === true)
  const file = useFileChooser()
  const { firstPage, examples, app } = words
  return (
    <main className="first-page">
      <header>
        <p className="wordmark">{app.name}</p>
        <h1>{firstPage.heading}</h1>
        <p className="lead">{firstPage.lead}</p>
      </header>
      <section aria-label={firstPage.start} className="ways">
        <Way text={firstPage.measure} hint={firstPage.measureHint} onPick={() => void startNewJob()} main />
        <Way text={firstPage.open} hint={firstPage.openHint} onPick={file.choose}>
          <span className="drop-hint"> {firstPage.dropHint}</span>
        </Way>
        {hasKept ? <Way text={firstPage.kept} hint={firstPage.keptHint} onPick={showKeptJobs} /> : null}
        {file.field}
      </section>
      <section aria-labelledby="examples" className="examples">
        <h2 id="examples">{examples.title}</h2>
        <ExampleList />
      </section>
      <footer>
        <p>{app.nothingLeaves}</p>
        <p>{firstPage.manual}</p>
      </footer>
    </main>
  )
}

function Way(props: {
  readonly text: string
  readonly hint: string
  readonly onPick: () => void
  /** The one to begin with. */
  readonly main?: boolean
  readonly children?: ReactNode
}) {
  return (
    <div className="way">
      <button type="button" className={props.main ? 'button is-main' : 'button'} onClick={props.onPick}>
        {props.text}
      </button>
      <p>
        {props.hint}
        {props.children}
      </p>
    </div>
  )
}
