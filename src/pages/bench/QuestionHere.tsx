import type { Place } from '../../core/findings'
import { concerns, type Question } from './question'

/** The open question about one of some stations, the first that has one, with its answers; it waits and stops nothing. */
export function QuestionHere(props: {
  readonly questions: readonly Question[]
  readonly places: readonly Place[]
}) {
  const question = questionAt(props.questions, props.places)
  return (
    <div className="question-here" role="status">
      {question ? (
        <>
          <p>{question.text}</p>
          {question.answers.map(({ label, give }) => (
            <button key={label} type="button" className="quiet" onClick={give}>
              {label}
            </button>
          ))}
        </>
      ) : null}
    </div>
  )
}

export function questionAt(questions: readonly Question[], places: readonly Place[]): Question | undefined {
  return places.flatMap((place) => questions.filter((question) => concerns(question, place)))[0]
}
