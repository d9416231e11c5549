import './in-front.css'
import { type ReactNode, type RefObject, useEffect, useId, useRef } from 'react'
import { useStore } from 'zustand'
import type { Problem } from '../core/problem'
import { problemPlace, problemText } from '../words/problems'
import { words } from '../words/words'
import { KeptJobs } from './KeptJobs'
import { closeKeptJobs, closeProblems, inFront, type Question } from './questions'

/** What stands in front of the page: a list of kept jobs, what is wrong in a file, a question. */
export function InFront() {
  const { question, problems, keptJobs } = useStore(inFront)
  return (
    <>
      {keptJobs ? (
        <Dialog title={words.kept.title} onClose={closeKeptJobs}>
          <KeptJobs />
        </Dialog>
      ) : null}
      {problems ? (
        <Dialog title={words.file.problemsTitle(problems.name)} onClose={closeProblems}>
          <ProblemList list={problems.list} />
        </Dialog>
      ) : null}
      {question ? <Asked key={question.text} question={question} /> : null}
    </>
  )
}

/** Shows a dialog in front of everything for as long as it is there. */
function useShown(): RefObject<HTMLDialogElement | null> {
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => {
    const element = dialog.current
    element?.showModal()
    // Enter pressed by habit must not answer for the user.
    element?.querySelector<HTMLElement>('[data-safe]')?.focus()
    return () => element?.close()
  }, [])
  return dialog
}

function Dialog(props: {
  readonly title: string
  readonly onClose: () => void
  readonly children: ReactNode
}) {
  const dialog = useShown()
  const id = useId()
  const close = () => dialog.current?.close()
  const onClose = () => {
    // The event comes late: it may be open again by then.
    if (!dialog.current?.open) props.onClose()
  }
  return (
    <dialog ref={dialog} className="in-front" aria-labelledby={id} onClose={onClose}>
      <h2 id={id}>{props.title}</h2>
      {props.children}
      <div className="answers">
        <button type="button" className="button" data-safe onClick={close}>
          {words.app.close}
        </button>
      </div>
    </dialog>
  )
}

function ProblemList({ list }: { readonly list: readonly Problem[] }) {
  return (
    <>
      <p>{words.file.problemsLead}</p>
      <ul className="problem-list">
        {list.map((problem) => (
          <li key={`${problem.path} ${problem.line} ${problem.column} ${problemText(problem)}`}>
            <span className="place">{problemPlace(problem)}</span> {problemText(problem)}
          </li>
        ))}
      </ul>
    </>
  )
}

function Asked({ question }: { readonly question: Question }) {
  const dialog = useShown()
  const id = useId()
  const { text, choices, onAnswer } = question
  return (
    <dialog
      ref={dialog}
      className="in-front"
      aria-labelledby={id}
      onCancel={(event) => {
        event.preventDefault()
        onAnswer(undefined)
      }}
    >
      <p id={id}>{text}</p>
      <div className="answers">
        {choices.map(({ answer, label }) => (
          <button key={answer} type="button" className="button" onClick={() => onAnswer(answer)}>
            {label}
          </button>
        ))}
        <button type="button" className="button" data-safe onClick={() => onAnswer(undefined)}>
          {choices.length === 0 ? words.app.close : words.app.cancel}
        </button>
      </div>
    </dialog>
  )
}
