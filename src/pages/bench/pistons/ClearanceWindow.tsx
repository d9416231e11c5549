import { type ClearanceRule, clearanceRules, type Spec } from '../../../core/measured'
import { setSpec } from '../../../job/commands'
import { pistonWords } from '../../../words/piston-words'
import { words } from '../../../words/words'
import { ChoiceField } from '../ChoiceField'
import { writtenLength } from '../marks'
import { NumberField } from '../NumberField'
import { attempt, perform } from '../perform'
import { Sentence } from '../Sentence'
import { useRange } from '../use-range'

const none = words.limits.none

function keepSpec(patch: Parameters<typeof setSpec>[1]) {
  return perform(words.changes.limits, (job) => setSpec(job, patch))
}

/** What the manual says of clearance and where the piston is measured. */
export function ClearanceWindow({ spec }: { readonly spec: Spec }) {
  const said = pistonWords.panel
  const { labels } = said
  const ends = useRange({
    name: 'clearance',
    low: spec.clearanceMinMm,
    high: spec.clearanceMaxMm,
    keep: (clearanceMinMm, clearanceMaxMm) =>
      attempt(words.changes.limits, (job) => setSpec(job, { clearanceMinMm, clearanceMaxMm })),
    written: writtenLength,
  })
  return (
    <Sentence
      template={said.window}
      fields={{
        min: <NumberField label={labels.min} none={none} length {...ends.low} />,
        max: <NumberField label={labels.max} none={none} length {...ends.high} />,
        limit: (
          <NumberField
            label={labels.limit}
            length
            none={none}
            value={spec.clearanceLimitMm}
            keep={(clearanceLimitMm) => keepSpec({ clearanceLimitMm })}
          />
        ),
        rule: <RuleChoice rule={spec.clearanceRule ?? clearanceRules[0]} />,
        atC: (
          <NumberField
            label={labels.atC}
            none={said.taken('20')}
            value={spec.clearanceAtC}
            keep={(clearanceAtC) => keepSpec({ clearanceAtC })}
          />
        ),
        height: (
          <NumberField
            label={labels.manualHeight}
            length
            none={none}
            value={spec.pistonHeightMm}
            keep={(pistonHeightMm) => keepSpec({ pistonHeightMm })}
          />
        ),
      }}
    />
  )
}

/** How the piston moves, for the drawing. */
export function Stroke({ spec }: { readonly spec: Spec }) {
  const { stroke, labels, taken } = pistonWords.panel
  return (
    <Sentence
      template={stroke}
      fields={{
        travel: (
          <NumberField
            label={labels.travel}
            length
            none={none}
            value={spec.travelMm}
            keep={(travelMm) => keepSpec({ travelMm })}
          />
        ),
        crownAtTop: (
          <NumberField
            label={labels.crownAtTop}
            length
            none={taken('0')}
            value={spec.crownAtTopMm}
            keep={(crownAtTopMm) => keepSpec({ crownAtTopMm })}
          />
        ),
      }}
    />
  )
}

function RuleChoice({ rule }: { readonly rule: ClearanceRule }) {
  return (
    <ChoiceField
      label={pistonWords.panel.labels.rule}
      value={rule}
      options={clearanceRules.map((value) => ({ value, text: pistonWords.clearance.rules[value] }))}
      onChoose={(value) => {
        const clearanceRule = clearanceRules.find((known) => known === value)
        if (clearanceRule) keepSpec({ clearanceRule })
      }}
    />
  )
}

/** What the manual says of ring gaps. */
export function GapWindow({ spec }: { readonly spec: Spec }) {
  const said = pistonWords.panel
  const ends = useRange({
    name: 'ring gap',
    low: spec.ringGapMinMm,
    high: spec.ringGapMaxMm,
    keep: (ringGapMinMm, ringGapMaxMm) =>
      attempt(words.changes.limits, (job) => setSpec(job, { ringGapMinMm, ringGapMaxMm })),
    written: writtenLength,
  })
  return (
    <Sentence
      template={said.gapWindow}
      fields={{
        min: <NumberField label={said.labels.gapMin} none={none} length {...ends.low} />,
        max: <NumberField label={said.labels.gapMax} none={none} length {...ends.high} />,
        limit: (
          <NumberField
            label={said.labels.gapLimit}
            length
            none={none}
            value={spec.ringGapLimitMm}
            keep={(ringGapLimitMm) => keepSpec({ ringGapLimitMm })}
          />
        ),
      }}
    />
  )
}
