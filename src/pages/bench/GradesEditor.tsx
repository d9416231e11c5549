import type { ReactNode } from 'react'
import type { Grade, Spec } from '../../core/measured'
import { setSpec } from '../../job/commands'
import { session, setWaiting } from '../../session/session'
import { lengthUnit } from '../../words/length-unit'
import { words } from '../../words/words'
import { sizeMarks } from './marks'
import { NeededNumberField } from './NumberField'
import { attempt, perform, refusalOf } from './perform'
import { Sentence } from './Sentence'
import { type Refusal, TypedField } from './TypedField'
import { useRange } from './use-range'

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'

interface GradesEditorProps {
  readonly spec: Spec
  readonly children: ReactNode
  /** A way to other limits, at the end of the line. */
  readonly more: ReactNode
}

/** The size grades of the manual one after the other, then which of them the bore has. */
export function GradesEditor({ spec, children, more }: GradesEditorProps) {
  const grades = spec.grades ?? []
  const said = words.limits
  return (
    <div className="grades">
      {grades.map((grade, index) => (
        <GradeRow
          key={grade.name}
          grade={grade}
          keep={(next) => attempt(words.changes.limits, withGrades(grades.with(index, next)))}
          remove={() => perform(words.changes.limits, withGrades(grades.filter((_, i) => i !== index)))}
        />
      ))}
      {grades.length > 0 ? <span className="sentence">{children}</span> : null}
      <button
        type="button"
        className="quiet"
        onClick={() => perform(words.changes.limits, withGrades([...grades, nextGrade(spec, grades)]))}
      >
        {said.addGrade}
      </button>
      {more}
    </div>
  )
}

function withGrades(grades: readonly Grade[]) {
  return (job: Parameters<typeof setSpec>[0]) =>
    setSpec(job, { grades: grades.length > 0 ? grades : undefined })
}

const rangeOf = (name: string) => `grade ${name}`

function GradeRow(props: {
  readonly grade: Grade
  readonly keep: (grade: Grade) => ReturnType<typeof attempt>
  readonly remove: () => Refusal
}) {
  const { grade, keep, remove } = props
  const said = words.limits
  const sizes = useRange<never>({
    name: rangeOf(grade.name),
    low: grade.minMm,
    high: grade.maxMm,
    keep: (minMm, maxMm) => keep({ ...grade, minMm, maxMm }),
    written: sizeMarks(lengthUnit()).written,
  })
  const rename = (name: string) => {
    const problems = keep({ ...grade, name })
    if (problems.length === 0) handOn(grade.name, name)
    return refusalOf(problems)
  }
  return (
    <div className="grade">
      <span className="sentence">
        <Sentence
          template={said.grade}
          fields={{
            gradeName: (
              <TypedField
                label={said.labels.gradeName}
                text={grade.name}
                placeholder=""
                numeric={false}
                commit={(name) => rename(name.trim())}
              />
            ),
            gradeMin: <NeededNumberField label={said.labels.gradeMin} size {...sizes.low} />,
            gradeMax: <NeededNumberField label={said.labels.gradeMax} size {...sizes.high} />,
          }}
        />
      </span>
      <button
        type="button"
        className="quiet"
        aria-label={said.removeGrade(grade.name)}
        title={said.removeGrade(grade.name)}
        onClick={() => {
          if (remove() === undefined) setWaiting(rangeOf(grade.name), {})
        }}
      >
        ×
      </button>
    </div>
  )
}

/** What waits in the fields of a grade goes with it to its new name. */
function handOn(from: string, to: string) {
  const waiting = session.getState().waiting[rangeOf(from)]
  if (!waiting || from === to) return
  setWaiting(rangeOf(from), {})
  setWaiting(rangeOf(to), waiting)
}

/** The grade that follows: the next letter, as wide as the last, beginning where it ends. */
function nextGrade(spec: Spec, grades: readonly Grade[]): Grade {
  const last = grades.at(-1)
  const name = [...letters].find((letter) => !grades.some((grade) => grade.name === letter)) ?? '?'
  if (last) return { name, minMm: last.maxMm, maxMm: round(2 * last.maxMm - last.minMm) }
  const minMm = spec.newMinMm ?? 50
  return { name, minMm, maxMm: spec.newMaxMm ?? round(minMm + 0.01) }
}

function round(mm: number): number {
  return Math.round(mm * 1e6) / 1e6
}
