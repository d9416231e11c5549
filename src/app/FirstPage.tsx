import './first-page.css'
import type { ReactNode } from 'react'
import { useStore } from 'zustand'
import type { ShelfErrorCode } from '../storage/shelf-error'
import { languages } from '../words/languages'
import { words } from '../words/words'
import { desk, showShelf, startNewJob } from './desk'
import { ExampleList } from './ExampleList'
import { LanguageList } from './LanguageList'
import { useFileChooser } from './use-file-chooser'

/** What a browser shows that has no job to go on with: three ways to begin. */
export function FirstPage() {
  const hasKept = useStore(desk, (state) => state.hasKept === true)
  const trouble = useStore(desk, (state) => state.trouble)
  const file = useFileChooser()
  const { firstPage, examples, app } = words
  return (
    <main className="first-page">
      <header>
        <p className="wordmark">{app.name}</p>
        <h1>{firstPage.heading}</h1>
        <p className="lead">{firstPage.lead}</p>
        {trouble === undefined ? null : <Unreachable why={trouble} />}
      </header>
      <section aria-label={firstPage.start} className="ways">
        <Way text={firstPage.measure} hint={firstPage.measureHint} onPick={() => void startNewJob()} main />
        <Way text={firstPage.open} hint={firstPage.openHint} onPick={file.choose}>
          <span className="drop-hint"> {firstPage.dropHint}</span>
        </Way>
        {hasKept ? <Way text={firstPage.kept} hint={firstPage.keptHint} onPick={showShelf} /> : null}
        {file.field}
      </section>
      <section aria-labelledby="examples" className="examples">
        <h2 id="examples">{examples.title}</h2>
        <ExampleList />
      </section>
      <footer>
        <p>{app.nothingLeaves}</p>
        <p>{firstPage.manual}</p>
        {languages.length > 1 ? <LanguageList /> : null}
      </footer>
    </main>
  )
}

/** Nobody is to take jobs that cannot be reached for lost. */
function Unreachable({ why }: { readonly why: ShelfErrorCode }) {
  const { saving } = words
  return (
    <div className="unreachable" role="alert">
      <p>
        {saving.unreachable} {saving.unreachableWhy[why]}
      </p>
      <button type="button" className="button" onClick={() => location.reload()}>
        {saving.retry}
      </button>
    </div>
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
