import { blunderKey } from '../../core/blunders/blunder-key'
import type { Blunder, Note, Place } from '../../core/findings'
import { confirmReading, setRepeats } from '../../job/commands'
import { answerBlunder, mendBlunder } from '../../job/mend'
import { blunderText, mendName } from '../../words/blunders'
import { placeText } from '../../words/numbers'
import { oversizeText } from '../../words/oversize'
import { words } from '../../words/words'
import { perform } from './perform'
import type { Answer, Question } from './question'
import { settingQuestion } from './setting-question'
import { soakedQuestion } from './soaked-question'
import type { OnBench } from './use-job'

/** Open questions about the readings of the bore on the bench, each with what mends it in one touch. */
export function openQuestions(bench: OnBench): readonly Question[] {
  const { finding } = bench
  return [
    ...settingQuestion(bench),
    ...finding.blunders.map((blunder) => blunderQuestion(bench, blunder)),
    ...finding.notes.flatMap((note) => noteQuestion(bench, note)),
  ]
}

function blunderQuestion({ bore, survey }: OnBench, blunder: Blunder): Question {
  const mend = 'mend' in blunder ? blunder.mend : undefined
  const isOversize = blunder.code === 'oversize-open'
  const place = placeOf(blunder)
  const key = blunderKey(blunder)
  return {
    key,
    text: blunderText(blunder),
    ...(place ? { place } : {}),
    ...(blunder.code === 'axes-swapped'
      ? { places: blunder.axesDegrees.map((axisDegrees) => ({ depthMm: blunder.depthMm, axisDegrees })) }
      : {}),
    answers: [
      ...(mend
        ? [
            {
              label: isOversize
                ? words.questions.itIs(oversizeText(blunder.nearestMm))
                : words.questions.mend,
              give: () => {
                perform(mendName(mend), (job) => mendBlunder(job, bore.id, survey.id, mend))
              },
            },
          ]
        : []),
      ...(isOversize
        ? []
        : [
            {
              label: words.questions.itIsRight,
              give: () => {
                perform(words.blunders.answered, (job) => answerBlunder(job, bore.id, survey.id, key))
              },
            },
          ]),
    ],
  }
}

function placeOf(blunder: Blunder): Place | undefined {
  if ('place' in blunder) return blunder.place
  return blunder.code === 'axes-swapped'
    ? { depthMm: blunder.depthMm, axisDegrees: blunder.axesDegrees[0] }
    : undefined
}

function noteQuestion(bench: OnBench, note: Note): Question[] {
  if (note.code === 'soaked-but-apart') return [soakedQuestion(bench, note)]
  if (note.code !== 'blocked-reading' && note.code !== 'below-smallest-new') return []
  const { bore, survey } = bench
  const { place } = note
  const where = placeText(place)
  const takeOut: Answer = {
    label: words.questions.takeItOut,
    give: () => {
      perform(words.changes.readingOut(where), (job) => setRepeats(job, bore.id, survey.id, place, []))
    },
  }
  if (note.code === 'below-smallest-new') {
    return [
      { key: `${note.code} ${where}`, text: words.questions.belowNew(where), place, answers: [takeOut] },
    ]
  }
  const confirm: Answer = {
    label: words.questions.itIsRight,
    give: () => {
      perform(words.changes.confirmed(where), (job) => confirmReading(job, bore.id, survey.id, place, true))
    },
  }
  const text = words.questions.blocked(where, words.app.and(note.by))
  return [{ key: `${note.code} ${where}`, text, place, answers: [confirm, takeOut] }]
}
