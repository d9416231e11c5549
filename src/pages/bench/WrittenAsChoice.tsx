import type { Gauge } from '../../core/measured'
import { words } from '../../words/words'
import { ChoiceField } from './ChoiceField'
import { marksOf, type WrittenAs } from './check-marks'

interface WrittenAsChoiceProps {
  readonly label: string
  readonly gauge: Gauge
  readonly value: WrittenAs
  readonly onChoose: (value: WrittenAs) => void
}

/** Whether readings of a check are written down as sizes or as the dial shows them, in the gauge's unit. */
export function WrittenAsChoice({ label, gauge, value, onChoose }: WrittenAsChoiceProps) {
  return (
    <ChoiceField
      label={label}
      value={value}
      options={(['sizesMm', 'dialUm'] as const).map((one) => ({
        value: one,
        text: words.gaugeCheck.written[one](marksOf(one, gauge).unit),
      }))}
      onChoose={(chosen) => onChoose(chosen === 'sizesMm' ? 'sizesMm' : 'dialUm')}
    />
  )
}
