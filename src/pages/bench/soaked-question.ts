import type { Note } from '../../core/findings'
import { setSetUp } from '../../job/set-up-commands'
import { soakedApart } from '../../words/notes'
import { temperature } from '../../words/numbers'
import { words } from '../../words/words'
import { perform } from './perform'
import type { Question } from './question'
import type { OnBench } from './use-job'

/** Bore and reference were at one temperature, it is said, and two are recorded: either both, or not yet equal. */
export function soakedQuestion(
  { setUp }: OnBench,
  note: Extract<Note, { code: 'soaked-but-apart' }>,
): Question {
  const change = (patch: Parameters<typeof setSetUp>[2]) => () => {
    perform(words.changes.setUp, (job) => setSetUp(job, setUp.id, patch))
  }
  const bothAt = (celsius: number) => ({
    label: words.questions.bothAt(temperature(celsius)),
    give: change({ boreTemperatureC: celsius, referenceTemperatureC: celsius }),
  })
  return {
    key: note.code,
    text: words.questions.soakedApart(...soakedApart(note)),
    answers: [
      bothAt(note.boreC),
      bothAt(note.referenceC),
      { label: words.questions.notYetEqual, give: change({ soakedTogether: undefined }) },
    ],
  }
}
