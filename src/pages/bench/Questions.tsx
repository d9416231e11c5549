import type { Note, Place } from '../../core/findings'
import { confirmReading, setRepeats } from '../../job/commands'
import { pointAt } from '../../session/session'
import { placeText } from '../../words/numbers'
import { words } from '../../words/words'
import { perform } from './perform'
import type { OnBench } from './use-job'

/** Open questions about readings, each with what mends it in one touch. */
export function Questions({ bore, survey, finding }: OnBench) {
  const asked = finding.notes.flatMap((note) => askedOf(note))
  if (asked.length === 0) return null
  return (
    <section aria-label={words.questions.title}>
      {asked.map(({ place, text, canConfirm }) => (
        <div key={`${text}`} className="question">
          <p>
            <button
              type="button"
              className="question-text"
              onClick={() =>
                pointAt({ depthMm: place.depthMm, angleDegrees: place.axisDegrees, from: 'findings' })
              }
            >
              {text}
            </button>
          </p>
          {canConfirm ? (
            <button
              type="button"
              className="button"
              onClick={() =>
                perform(words.changes.confirmed(placeText(place)), (job) =>
                  confirmReading(job, bore.id, survey.id, place, true),
                )
              }
            >
              {words.questions.itIsRight}
            </button>
          ) : null}
          <button
            type="button"
            className="button"
            onClick={() =>
              perform(words.changes.readingOut(placeText(place)), (job) =>
                setRepeats(job, bore.id, survey.id, place, []),
              )
            }
          >
            {words.questions.takeItOut}
          </button>
        </div>
      ))}
    </section>
  )
}

function askedOf(note: Note): { place: Place; text: string; canConfirm: boolean }[] {
  if (note.code === 'blocked-reading') {
    const text = words.questions.blocked(placeText(note.place), words.app.and(note.by))
    return [{ place: note.place, text, canConfirm: true }]
  }
  if (note.code === 'below-smallest-new') {
    return [{ place: note.place, text: words.questions.belowNew(placeText(note.place)), canConfirm: false }]
  }
  return []
}
