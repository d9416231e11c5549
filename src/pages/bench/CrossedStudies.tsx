import { useMemo, useState } from 'react'
import { type CrossedStudyFinding, crossedStudies } from '../../core/gauge/crossed-study'
import type { CrossedStudy, Gauge } from '../../core/measured'
import type { Job } from '../../job/schema'
import { setGauge } from '../../job/set-up-commands'
import { studyReadText, studyRows, studySentences } from '../../words/crossed-study'
import { studyWords } from '../../words/study-words'
import { words } from '../../words/words'
import { CheckReadings } from './CheckReadings'
import { marksOf, type WrittenAs } from './check-marks'
import { perform } from './perform'
import { readCrossedStudy, studyTextOf } from './read-crossed-study'
import { Sentence } from './Sentence'
import { type Refusal, TypedField } from './TypedField'
import { WrittenAsChoice } from './WrittenAsChoice'
import './crossed-studies.css'

interface StudiesProps {
  readonly job: Job
  readonly gauge: Gauge
  readonly called: string
  readonly usual: WrittenAs
}

/** The crossed studies of a gauge: what several people read of several parts, what that shows, and a place for another. */
export function CrossedStudies({ job, gauge, called, usual }: StudiesProps) {
  const said = studyWords
  const studies = gauge.crossedStudies ?? []
  const findings = useMemo(() => crossedStudies(job), [job])
  const keep = (next: readonly CrossedStudy[]) =>
    perform(words.changes.gauge, (before) =>
      setGauge(before, gauge.id, { crossedStudies: next.length > 0 ? next : undefined }),
    )
  return (
    <>
      <p className="aside">{said.help}</p>
      {studies.map((study, index) => (
        <KeptStudy
          key={`${gauge.id} ${index}`}
          gauge={gauge}
          called={called}
          number={index + 1}
          study={study}
          finding={findings.find((one) => one.gaugeId === gauge.id && one.index === index)}
          keep={(next) => keep(next ? studies.with(index, next) : studies.toSpliced(index, 1))}
        />
      ))}
      <NewStudy gauge={gauge} called={called} usual={usual} keep={(study) => keep([...studies, study])} />
    </>
  )
}

function commitStudy(
  typed: string,
  writtenAs: WrittenAs,
  gauge: Gauge,
  keep: (readings: CrossedStudy['readings']) => Refusal,
): Refusal {
  const read = readCrossedStudy(typed)
  if (!read.ok) return read.said
  const { kept } = marksOf(writtenAs, gauge)
  return keep(read.lines.map(({ person, part, values }) => ({ person, part, [writtenAs]: values.map(kept) })))
}

function KeptStudy(props: {
  readonly gauge: Gauge
  readonly called: string
  readonly number: number
  readonly study: CrossedStudy
  readonly finding: CrossedStudyFinding | undefined
  readonly keep: (study: CrossedStudy | undefined) => Refusal
}) {
  const { gauge, called, number, study, finding, keep } = props
  const said = studyWords
  const { date, readings } = study
  const writtenAs = readings.some(({ dialUm }) => dialUm) ? 'dialUm' : 'sizesMm'
  const marks = marksOf(writtenAs, gauge)
  return (
    <div className="gauge-check">
      <p className="sentence">
        <Sentence
          template={said.made}
          fields={{
            date: (
              <TypedField
                label={said.date(called, number)}
                text={date ?? ''}
                placeholder={words.app.notRecorded}
                numeric={false}
                commit={(typed) =>
                  keep(typed.trim() === '' ? { readings } : { date: typed.trim(), readings })
                }
              />
            ),
            unit: words.gaugeCheck.written[writtenAs](marks.unit),
          }}
        />{' '}
        <button
          type="button"
          className="quiet"
          aria-label={said.remove(called, number)}
          title={said.remove(called, number)}
          onClick={() => keep(undefined)}
        >
          ×
        </button>
      </p>
      <CheckReadings
        withNames
        label={said.again(called, number)}
        text={studyTextOf(readings, marks.written)}
        commit={(typed) => commitStudy(typed, writtenAs, gauge, (next) => keep({ ...study, readings: next }))}
      />
      {finding ? <StudyShows finding={finding} /> : null}
    </div>
  )
}

/** What a study shows: its spreads as a table, and what they mean. */
function StudyShows({ finding }: { readonly finding: CrossedStudyFinding }) {
  const { heads } = studyWords
  const rows = studyRows(finding)
  return (
    <>
      <p>{studyReadText(finding)}</p>
      {rows.length === 0 ? null : (
        <table className="study-table">
          <thead>
            <tr>
              <th scope="col">{heads.part}</th>
              <th scope="col">{heads.deviation}</th>
              <th scope="col">{heads.between}</th>
              <th scope="col">{heads.share}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ name, amount, interval, share }) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                <td>{amount}</td>
                <td>{interval}</td>
                <td>{share}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {studySentences(finding).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </>
  )
}

function NewStudy(props: {
  readonly gauge: Gauge
  readonly called: string
  readonly usual: WrittenAs
  readonly keep: (study: CrossedStudy) => Refusal
}) {
  const { gauge, called, usual, keep } = props
  const said = studyWords
  const [chosen, setChosen] = useState<WrittenAs>()
  const writtenAs = chosen ?? usual
  return (
    <div className="gauge-check">
      <p className="sentence">
        <Sentence
          template={said.another}
          fields={{
            writtenAs: (
              <WrittenAsChoice
                label={said.writtenAs(called)}
                gauge={gauge}
                value={writtenAs}
                onChoose={setChosen}
              />
            ),
          }}
        />
      </p>
      <CheckReadings
        withNames
        label={said.field(called)}
        text=""
        button={said.add}
        commit={(typed) => commitStudy(typed, writtenAs, gauge, (readings) => keep({ readings }))}
      />
    </div>
  )
}
