import { useState } from 'react'
import type { Grade, OvalityRule, Spec, TaperRule } from '../../core/measured'
import { ovalityRules, taperRules } from '../../core/measured'
import { setBore, setSpec } from '../../job/commands'
import type { Job } from '../../job/schema'
import { lengthUnit } from '../../words/length-unit'
import { words } from '../../words/words'
import { ChoiceField } from './ChoiceField'
import { GradesEditor } from './GradesEditor'
import { useKeptSpecsSlot } from './kept-specs-slot'
import { sizeMarks } from './marks'
import { NumberField } from './NumberField'
import { Oversizes } from './Oversizes'
import { hasProportions, ProportionalLimits } from './ProportionalLimits'
import { attempt, perform } from './perform'
import { Sentence } from './Sentence'
import { ServiceInterval } from './ServiceInterval'
import type { OnBench } from './use-job'
import { useRange } from './use-range'

type NumberInSpec = 'wearLimitMm' | 'ovalityLimitMm' | 'taperLimitMm'

/** The limits as sentences whose parts are fields, each with the rule it is judged by. */
export function LimitsSentence({ job, bore }: OnBench) {
  const { spec } = job
  const said = words.limits
  const newSize = useRange({
    name: 'new size',
    low: spec.newMinMm,
    high: spec.newMaxMm,
    keep: (newMinMm, newMaxMm) =>
      attempt(words.changes.limits, (next) => setSpec(next, { newMinMm, newMaxMm })),
    written: sizeMarks(lengthUnit()).written,
  })
  const [isOpened, setOpened] = useState(false)
  const KeptSpecs = useKeptSpecsSlot()
  const hasOversizes = isOpened || spec.oversizesMm !== undefined || bore.oversizeMm !== undefined
  const isProportional = isOpened || hasProportions(spec)
  const hasInterval = isOpened || spec.serviceIntervalHours !== undefined
  const rule = spec.ovalityRule ?? ovalityRules[0]
  return (
    <>
      <p className="sentence">
        <Sentence
          template={said.band}
          fields={{
            newMin: <NumberField label={said.labels.newMin} none={said.none} size {...newSize.low} />,
            newMax: <NumberField label={said.labels.newMax} none={said.none} size {...newSize.high} />,
            wearLimit: <SpecNumber spec={spec} field="wearLimitMm" label={said.labels.wearLimit} />,
          }}
        />{' '}
        <Sentence
          template={said.ovality}
          fields={{
            ovalityLimit: <SpecNumber spec={spec} field="ovalityLimitMm" label={said.labels.ovalityLimit} />,
            ovalityRule: <OvalityRuleChoice rule={rule} />,
          }}
        />{' '}
        {rule === 'largest-less-smallest-at-a-level' ? null : <NamedAxes spec={spec} />}
        <Sentence
          template={said.taper}
          fields={{
            taperLimit: <SpecNumber spec={spec} field="taperLimitMm" label={said.labels.taperLimit} />,
            taperRule: <TaperRuleChoice rule={spec.taperRule ?? taperRules[0]} />,
          }}
        />{' '}
        {isProportional ? <ProportionalLimits spec={spec} /> : null}
        {hasOversizes ? <Oversizes spec={spec} bore={bore} /> : null}
        {hasInterval ? <ServiceInterval spec={spec} /> : null}
      </p>
      <GradesEditor
        spec={spec}
        more={
          <>
            {isProportional && hasOversizes && hasInterval ? null : (
              <button type="button" className="quiet" aria-expanded={false} onClick={() => setOpened(true)}>
                {said.more}
              </button>
            )}
            {KeptSpecs ? <KeptSpecs place="limits" /> : null}
          </>
        }
      >
        <BoreGrade grades={spec.grades ?? []} boreId={bore.id} grade={bore.grade} />
      </GradesEditor>
    </>
  )
}

function keepSpec(patch: Parameters<typeof setSpec>[1]) {
  return perform(words.changes.limits, (job: Job) => setSpec(job, patch))
}

function SpecNumber(props: { readonly spec: Spec; readonly field: NumberInSpec; readonly label: string }) {
  const { spec, field, label } = props
  return (
    <NumberField
      label={label}
      value={spec[field]}
      none={words.limits.none}
      size
      keep={(value) => keepSpec({ [field]: value })}
    />
  )
}

function OvalityRuleChoice({ rule }: { readonly rule: OvalityRule }) {
  return (
    <ChoiceField
      label={words.limits.labels.ovalityRule}
      value={rule}
      options={ovalityRules.map((value) => ({ value, text: words.ovalityRules[value] }))}
      onChoose={(value) => {
        const ovalityRule = ovalityRules.find((known) => known === value)
        if (ovalityRule) keepSpec({ ovalityRule })
      }}
    />
  )
}

function TaperRuleChoice({ rule }: { readonly rule: TaperRule }) {
  return (
    <ChoiceField
      label={words.limits.labels.taperRule}
      value={rule}
      options={taperRules.map((value) => ({ value, text: words.taperRules[value] }))}
      onChoose={(value) => {
        const taperRule = taperRules.find((known) => known === value)
        if (taperRule) keepSpec({ taperRule })
      }}
    />
  )
}

/** The two axes stand or fall together: with one cleared, none is named. */
function NamedAxes({ spec }: { readonly spec: Spec }) {
  const said = words.limits
  const axes = spec.ovalityAxesDegrees
  const field = (which: 'x' | 'y', label: string) => (
    <NumberField
      label={label}
      value={axes?.[which]}
      none={words.app.notRecorded}
      keep={(value) => {
        if (value === undefined) return keepSpec({ ovalityAxesDegrees: undefined })
        const other = axes ?? { x: 0, y: 90 }
        return keepSpec({ ovalityAxesDegrees: { ...other, [which]: value } })
      }}
    />
  )
  return (
    <>
      <Sentence
        template={said.ovalityAxes}
        fields={{
          ovalityX: field('x', said.labels.ovalityX),
          ovalityY: field('y', said.labels.ovalityY),
        }}
      />{' '}
    </>
  )
}

function BoreGrade(props: {
  readonly grades: readonly Grade[]
  readonly boreId: string
  readonly grade: string | undefined
}) {
  const said = words.limits
  return (
    <Sentence
      template={said.boreGrade}
      fields={{
        grade: (
          <ChoiceField
            label={said.labels.grade}
            value={props.grade ?? ''}
            options={[
              { value: '', text: said.noGrade },
              ...props.grades.map(({ name }) => ({ value: name, text: name })),
            ]}
            onChoose={(value) =>
              perform(words.changes.bore, (job) =>
                setBore(job, props.boreId, { grade: value === '' ? undefined : value }),
              )
            }
          />
        ),
      }}
    />
  )
}
