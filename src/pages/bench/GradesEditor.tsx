import type { ReactNode } from 'react'
import type { Grade, Spec } from '../../core/measured'
import { setSpec } from '../../job/commands'
import { words } from '../../words/words'
import { NeededNumberField } from './NumberField'
import { perform } from './perform'
import { Sentence } from './Sentence'
import { TypedField } from './TypedField'

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'

/** The size grades of the manual one after the other, then which of them the bore has. */
export function GradesEditor({ spec, children }: { readonly spec: Spec; readonly children: ReactNode }) {
  const grades = spec.grades ?? []
  const said = words.limits
  const keep = (next: readonly Grade[]) =>
    perform(words.changes.limits, (job) => setSpec(job, { grades: next.length > 0 ? next : undefined }))
  const change = (index: number, patch: Partial<Grade>) =>
    keep(grades.map((grade, i) => (i === index ? { ...grade, ...patch } : grade)))
  return (
    <div className="grades">
      {grades.map((grade, index) => (
        <div key={grade.name} className="grade">
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
                    commit={(name) => change(index, { name: name.trim() })}
                  />
                ),
                gradeMin: (
                  <NeededNumberField
                    label={said.labels.gradeMin}
                    value={grade.minMm}
                    size
                    keep={(minMm) => change(index, { minMm })}
                  />
                ),
                gradeMax: (
                  <NeededNumberField
                    label={said.labels.gradeMax}
                    value={grade.maxMm}
                    size
                    keep={(maxMm) => change(index, { maxMm })}
                  />
                ),
              }}
            />
          </span>
          <button
            type="button"
            className="quiet"
            aria-label={said.removeGrade(grade.name)}
            title={said.removeGrade(grade.name)}
            onClick={() => keep(grades.filter((_, i) => i !== index))}
          >
            ×
          </button>
        </div>
      ))}
      {grades.length > 0 ? <span className="sentence">{children}</span> : null}
      <button type="button" className="quiet" onClick={() => keep([...grades, nextGrade(spec, grades)])}>
        {said.addGrade}
      </button>
    </div>
  )
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
