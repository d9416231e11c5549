import type { Bore, Spec } from '../../core/measured'
import { setBore, setSpec } from '../../job/commands'
import { inShownUnit, lengthUnit } from '../../words/length-unit'
import { oversizeSentence, oversizeText } from '../../words/oversize'
import { readNumbers } from '../../words/read-number'
import { words } from '../../words/words'
import { ChoiceField } from './ChoiceField'
import { lengthMarks, writtenLength } from './marks'
import { perform } from './perform'
import { Sentence } from './Sentence'
import { type Refusal, TypedField } from './TypedField'

interface OversizesProps {
  readonly spec: Spec
  readonly bore: Bore
}

/** The oversizes that the manual allows, and which of them this bore has, as a sentence. */
export function Oversizes({ spec, bore }: OversizesProps) {
  const said = words.limits
  const offered = spec.oversizesMm ?? []
  const all = [0, ...offered, ...(bore.oversizeMm === undefined ? [] : [bore.oversizeMm])]
  const choices = [...new Set(all)].sort((a, b) => a - b)
  return (
    <>
      <Sentence
        template={said.oversizes}
        fields={{
          oversizes: (
            <TypedField
              label={inShownUnit(said.labels.oversizes)}
              text={offered.map(writtenLength).join(' ')}
              placeholder={said.none}
              commit={keepOffered}
            />
          ),
          oversize: (
            <ChoiceField
              label={said.labels.oversize}
              value={bore.oversizeMm === undefined ? '' : `${bore.oversizeMm}`}
              options={[
                { value: '', text: words.app.notRecorded },
                ...choices.map((mm) => ({ value: `${mm}`, text: oversizeText(mm) })),
              ]}
              onChoose={(value) =>
                perform(words.changes.bore, (job) =>
                  setBore(job, bore.id, { oversizeMm: value === '' ? undefined : Number(value) }),
                )
              }
            />
          ),
        }}
      />{' '}
      {oversizeSentence(bore)}{' '}
    </>
  )
}

function keepOffered(typed: string): Refusal {
  if (typed.trim() === '') return keep(undefined)
  const read = readNumbers(typed)
  if (!read.ok) return words.number.refused[read.why]
  const marks = lengthMarks(lengthUnit())
  const values = marks ? read.values.map(marks.kept) : read.values
  return keep([...new Set(values)].sort((a, b) => a - b))
}

function keep(oversizesMm: readonly number[] | undefined): Refusal {
  return perform(words.changes.limits, (job) => setSpec(job, { oversizesMm }))
}
