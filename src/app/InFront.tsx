import { useId } from 'react'
import { useStore } from 'zustand'
import type { Problem } from '../core/problem'
import { problemPlace, problemText } from '../words/problems'
import { words } from '../words/words'
import { Dialog, useShown } from './Dialog'
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
