import type { Spec } from '../../core/measured'
import { setSpec } from '../../job/commands'
import { inShownUnit } from '../../words/length-unit'
import { words } from '../../words/words'
import { NumberField } from './NumberField'
import { perform } from './perform'
import { Sentence } from './Sentence'

type Proportion = 'ovalityLimitPerMm' | 'taperLimitPerMmOfBore' | 'taperLimitPerMmOfTravel' | 'travelMm'
const proportions: readonly Proportion[] = [
  'ovalityLimitPerMm',
  'taperLimitPerMmOfBore',
  'taperLimitPerMmOfTravel',
]

/** Whether the manual gives limits per mm; the travel alone is given for a piston too. */
export function hasProportions(spec: Spec): boolean {
  return proportions.some((field) => spec[field] !== undefined)
}

/** Limits per mm of bore or of travel, as a sentence. */
export function ProportionalLimits({ spec }: { readonly spec: Spec }) {
  const said = words.limits
  const field = (which: Proportion, label: string) => (
    <NumberField
      label={inShownUnit(label)}
      length={which === 'travelMm'}
      value={spec[which]}
      none={said.none}
      keep={(value) => perform(words.changes.limits, (job) => setSpec(job, { [which]: value }))}
    />
  )
  return (
    <Sentence
      template={said.proportions}
      fields={{
        ovalityPerMm: field('ovalityLimitPerMm', said.labels.ovalityPerMm),
        taperPerMmOfBore: field('taperLimitPerMmOfBore', said.labels.taperPerMmOfBore),
        taperPerMmOfTravel: field('taperLimitPerMmOfTravel', said.labels.taperPerMmOfTravel),
        travel: field('travelMm', said.labels.travel),
      }}
    />
  )
}
