import { pointAt } from '../../session/session'
import { words } from '../../words/words'
import { openQuestions } from './open-questions'
import type { Question } from './question'
import type { OnBench } from './use-job'

/** Open questions about readings, each with what mends it in one touch. */
export function Questions(bench: OnBench) {
  const asked = openQuestions(bench)
  if (asked.length === 0) return null
  return (
    <section aria-label={words.questions.title}>
      {asked.map((question) => (
        <QuestionRow key={question.key} question={question} />
      ))}
    </section>
  )
}

function QuestionRow({ question: { text, place, answers } }: { readonly question: Question }) {
  return (
    <div className="question">
      <p>
        {place ? (
          <button
            type="button"
            className="question-text"
            onClick={() =>
              pointAt({ depthMm: place.depthMm, angleDegrees: place.axisDegrees, from: 'findings' })
            }
          >
            {text}
          </button>
        ) : (
          text
        )}
      </p>
      {answers.map(({ label, give }) => (
        <button key={label} type="button" className="button" onClick={give}>
          {label}
        </button>
      ))}
    </div>
  )
}
