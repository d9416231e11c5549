import { lazy, Suspense, useId } from 'react'
import { useStore } from 'zustand'
import type { Problem } from '../core/problem'
import { problemPlace, problemText } from '../words/problems'
import { words } from '../words/words'
import { Dialog, useShown } from './Dialog'
import { desk } from './desk'
import { ExampleList } from './ExampleList'
import { ImportScan, ImportTable } from './imports'
import { JobNote } from './JobNote'
import { KeepingInFront } from './KeepingInFront'
import { LanguageList } from './LanguageList'
import {
  closeAids,
  closeExamples,
  closeKeys,
  closeLanguage,
  closeNote,
  closeProblems,
  closeTable,
  inFront,
  type Question,
} from './questions'

const KeyList = lazy(async () => ({ default: (await import('./KeyList')).KeyList }))

const AidsChoice = lazy(async () => ({ default: (await import('../pages/bench/AidsChoice')).AidsChoice }))

const LetterheadDialog = lazy(async () => ({
  default: (await import('./LetterheadDialog')).LetterheadDialog,
}))

const KeptSpecsDialog = lazy(async () => ({
  default: (await import('./KeptSpecsDialog')).KeptSpecsDialog,
}))

/** What stands in front of the page: lists, the note, what is wrong in a file, a question. */
export function InFront() {
  const { question, problems, examples, note, aids, keys, language, keptSpecs, letterhead, table } =
    useStore(inFront)
  return (
    <>
      {examples ? (
        <Dialog title={words.examples.title} onClose={closeExamples}>
          <ExampleList onChosen={closeExamples} />
        </Dialog>
      ) : null}
      {note ? (
        <Dialog title={words.note.title} onClose={closeNote}>
          <JobNote />
        </Dialog>
      ) : null}
      {keys ? (
        <Dialog title={words.keyList.title} onClose={closeKeys}>
          <Suspense fallback={null}>
            <KeyList />
          </Suspense>
        </Dialog>
      ) : null}
      {aids ? (
        <Dialog title={words.aids.title} onClose={closeAids}>
          <Suspense fallback={null}>
            <AidsChoice />
          </Suspense>
        </Dialog>
      ) : null}
      {language ? (
        <Dialog title={words.language.title} onClose={closeLanguage}>
          <p>{words.language.lead}</p>
          <LanguageList />
        </Dialog>
      ) : null}
      {keptSpecs ? (
        <Suspense fallback={null}>
          <KeptSpecsDialog />
        </Suspense>
      ) : null}
      {letterhead ? (
        <Suspense fallback={null}>
          <LetterheadDialog />
        </Suspense>
      ) : null}
      {table ? (
        <Dialog
          key={`${table.name} ${table.holds}`}
          title={table.holds === 'scan' ? words.scans.importTitle(table.name) : words.table.title(table.name)}
          className="import"
          onClose={closeTable}
        >
          <Suspense fallback={<p role="status">{words.table.reading}</p>}>
            {table.holds === 'scan' ? <ImportScan table={table} /> : <ImportTable table={table} />}
          </Suspense>
        </Dialog>
      ) : null}
      <KeepingInFront />
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
  const hasJob = useStore(desk, ({ shows, behindShelf }) => shows === 'bench' || behindShelf === 'bench')
  return (
    <>
      <p>{hasJob ? words.file.problemsLead : words.file.problemsLeadNoJob}</p>
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
