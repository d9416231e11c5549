import { lazy, Suspense, useState } from 'react'
import { isOfSizes } from '../../core/diameter/entry'
import type { GaugeCheckFinding } from '../../core/findings'
import { figuresOfCheck } from '../../core/gauge/gauge-check'
import type { Gauge, GaugeCheck } from '../../core/measured'
import { setUpsUsing } from '../../job/instrument-list'
import { setGauge } from '../../job/set-up-commands'
import { checkSentences, deviationText } from '../../words/gauge-check'
import { gaugeName } from '../../words/instrument-names'
import { readNumbers } from '../../words/read-number'
import { words } from '../../words/words'
import { CheckReadings } from './CheckReadings'
import { marksOf, type WrittenAs } from './check-marks'
import type { Marks } from './marks'
import { perform } from './perform'
import { Sentence } from './Sentence'
import { type Refusal, TypedField } from './TypedField'
import type { OnBench } from './use-job'
import { WrittenAsChoice } from './WrittenAsChoice'

/** Seldom wanted: fetched when somebody opens it. */
const CrossedStudies = lazy(async () => {
  const { CrossedStudies } = await import('./CrossedStudies')
  return { default: CrossedStudies }
})

/** The checks of a gauge: one place read again and again, what that shows, and a place for another. */
export function GaugeChecks({ job, findings, gauge }: OnBench & { readonly gauge: Gauge }) {
  const said = words.gaugeCheck
  const called = gaugeName(gauge, job)
  const checks = gauge.checks ?? []
  const keep = (next: readonly GaugeCheck[]) =>
    perform(words.changes.gauge, (before) =>
      setGauge(before, gauge.id, { checks: next.length > 0 ? next : undefined }),
    )
  return (
    <details className="gauge-checks">
      <summary>{said.title}</summary>
      <p className="aside">{said.help}</p>
      {checks.map((check, index) => {
        const finding = findings.gaugeChecks.find((one) => one.gaugeId === gauge.id && one.index === index)
        return (
          <KeptCheck
            key={`${gauge.id} ${index}`}
            gauge={gauge}
            called={called}
            number={index + 1}
            check={check}
            finding={finding}
            keep={(next) => keep(next ? checks.with(index, next) : checks.toSpliced(index, 1))}
          />
        )
      })}
      <NewCheck
        gauge={gauge}
        called={called}
        usual={usualOf(job, gauge)}
        keep={(check) => keep([...checks, check])}
      />
    </details>
  )
}

/** Several people and several parts, in a place of their own that opens. */
export function GaugeStudies({ job, gauge }: { readonly job: OnBench['job']; readonly gauge: Gauge }) {
  // Once opened it stays, so that closing it loses nothing that was typed.
  const [wasOpened, setWasOpened] = useState(false)
  const said = words.gaugeCheck
  return (
    <details
      className="gauge-checks"
      onToggle={(event) => {
        if (event.currentTarget.open) setWasOpened(true)
      }}
    >
      <summary>{said.studies}</summary>
      {wasOpened ? (
        <Suspense fallback={<p className="aside">{said.studiesLoading}</p>}>
          <CrossedStudies
            job={job}
            gauge={gauge}
            called={gaugeName(gauge, job)}
            usual={usualOf(job, gauge)}
          />
        </Suspense>
      ) : null}
    </details>
  )
}

/** How readings with this gauge are written down elsewhere in the job. */
function usualOf(job: OnBench['job'], gauge: Gauge): WrittenAs {
  const [setUp] = setUpsUsing(job, 'gauges', gauge.id)
  return setUp === undefined || isOfSizes(setUp.entry) ? 'sizesMm' : 'dialUm'
}

function commitReadings(typed: string, marks: Marks, keep: (values: readonly number[]) => Refusal): Refusal {
  const read = readNumbers(typed)
  if (read.ok) return keep(read.values.map(marks.kept))
  const why = words.number.refused[read.why]
  return read.piece === '' ? why : words.gaugeCheck.refused(read.piece, why)
}

function KeptCheck(props: {
  readonly gauge: Gauge
  readonly called: string
  readonly number: number
  readonly check: GaugeCheck
  readonly finding: GaugeCheckFinding | undefined
  readonly keep: (check: GaugeCheck | undefined) => Refusal
}) {
  const { gauge, called, number, check, finding, keep } = props
  const said = words.gaugeCheck
  const { date, ...readings } = check
  const writtenAs = check.sizesMm ? 'sizesMm' : 'dialUm'
  const marks = marksOf(writtenAs, gauge)
  const keepDate = (typed: string) => keep(typed === '' ? readings : { ...readings, date: typed })
  const withDate = date === undefined ? {} : { date }
  return (
    <div className="gauge-check">
      <p className="sentence">
        <Sentence
          template={said.checked}
          fields={{
            date: (
              <TypedField
                label={said.date(called, number)}
                text={date ?? ''}
                placeholder={words.app.notRecorded}
                numeric={false}
                commit={(typed) => keepDate(typed.trim())}
              />
            ),
            unit: said.written[writtenAs](marks.unit),
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
        label={said.again(called, number)}
        text={(check[writtenAs] ?? []).map(marks.written).join(' ')}
        commit={(typed) =>
          commitReadings(typed, marks, (values) => keep({ ...withDate, [writtenAs]: values }))
        }
      />
      {finding ? <CheckShows gauge={gauge} finding={finding} /> : null}
    </div>
  )
}

/** What a check shows, and the touch that takes its figures over. */
function CheckShows({ gauge, finding }: { readonly gauge: Gauge; readonly finding: GaugeCheckFinding }) {
  const said = words.gaugeCheck
  const { scatter, isInUse } = finding
  const take = () => {
    if (scatter) perform(words.changes.gauge, (job) => setGauge(job, gauge.id, figuresOfCheck(scatter)))
  }
  return (
    <>
      {checkSentences(finding).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {isInUse ? <p className="aside">{said.inUse}</p> : null}
      {scatter && !isInUse ? (
        <button type="button" className="button" onClick={take}>
          {said.use(deviationText(scatter), scatter.degreesOfFreedom)}
        </button>
      ) : null}
    </>
  )
}

function NewCheck(props: {
  readonly gauge: Gauge
  readonly called: string
  readonly usual: WrittenAs
  readonly keep: (check: GaugeCheck) => Refusal
}) {
  const { gauge, called, usual, keep } = props
  const said = words.gaugeCheck
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
        label={said.field(called)}
        text=""
        button={said.add}
        commit={(typed) =>
          commitReadings(typed, marksOf(writtenAs, gauge), (values) => keep({ [writtenAs]: values }))
        }
      />
    </div>
  )
}
