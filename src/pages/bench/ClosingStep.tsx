import { entryOf } from '../../core/diameter/entry'
import { presetOf } from '../../core/gauge/presets'
import type { SetUp } from '../../core/measured'
import { setSetUp } from '../../job/set-up-commands'
import { words } from '../../words/words'
import { dialMarks, type Marks, sizeMarks } from './marks'
import { NumberField } from './NumberField'
import { perform } from './perform'
import { Sentence } from './Sentence'
import { WithUnit } from './set-up-fields'
import type { OnBench } from './use-job'

/**
 * What is left to do when every station is read: the gauge zeroed in the bore is measured over its contacts, and a
 * gauge that can drift is looked at once more. Nothing where it is done.
 */
export function ClosingStep({ setUp, gauge, standard }: OnBench) {
  const said = words.setUp.closing
  const entry = entryOf(setUp, gauge)
  const { overContactsMm, dialOverContactsUm, zeroCloseUm } = setUp
  const isMeasured = overContactsMm !== undefined && dialOverContactsUm !== undefined
  const canDrift = (gauge.driftHalfWidthUm ?? presetOf(gauge.kind).driftHalfWidthUm) !== undefined
  const fields = {
    standard: words.setUp.standards[standard.kind],
    overContacts: (
      <StepFigure
        label={said.labels.overContacts}
        value={overContactsMm}
        marks={sizeMarks(standard.markedIn)}
        patch={(mm) => ({ overContactsMm: mm })}
        setUp={setUp}
      />
    ),
    dialOverContacts: (
      <StepFigure
        label={said.labels.dialOverContacts}
        value={dialOverContactsUm}
        marks={dialMarks(gauge.markedIn)}
        patch={(um) => ({ dialOverContactsUm: um })}
        setUp={setUp}
      />
    ),
    zeroClose: (
      <StepFigure
        label={said.labels.zeroClose}
        value={zeroCloseUm}
        marks={dialMarks(gauge.markedIn)}
        patch={(um) => ({ zeroCloseUm: um })}
        setUp={setUp}
      />
    ),
  }
  return (
    <>
      {entry === 'reverse' && !isMeasured ? (
        <p>
          <Sentence template={said.overContacts} fields={fields} />
        </p>
      ) : null}
      {canDrift && zeroCloseUm === undefined ? (
        <p>
          <Sentence template={entry === 'size' ? said.deviation : said[entry]} fields={fields} />
        </p>
      ) : null}
    </>
  )
}

function StepFigure(props: {
  readonly label: string
  readonly value: number | undefined
  readonly marks: Marks
  readonly setUp: SetUp
  readonly patch: (value: number | undefined) => Parameters<typeof setSetUp>[2]
}) {
  const { label, value, marks, setUp, patch } = props
  return (
    <WithUnit marks={marks}>
      <NumberField
        label={label}
        value={value}
        marks={marks}
        keep={(figure) => perform(words.changes.setUp, (job) => setSetUp(job, setUp.id, patch(figure)))}
      />
    </WithUnit>
  )
}
