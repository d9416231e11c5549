import type { RingGap } from '../../../core/measured'
import { typicalFeelerDoubtUm } from '../../../core/ring/ring-gaps'
import { setSurvey } from '../../../job/commands'
import { addRingGap, removeRingGap, setRingGap } from '../../../job/piston-commands'
import type { SurveyAt } from '../../../job/surface-commands'
import { setWaiting, type WaitingEnds } from '../../../session/session'
import { depth, tenthsOfMicrons } from '../../../words/numbers'
import { pistonWords } from '../../../words/piston-words'
import { words } from '../../../words/words'
import { NeededNumberField, NumberField } from '../NumberField'
import { perform } from '../perform'
import { Sentence } from '../Sentence'
import type { Refusal } from '../TypedField'
import { type OnBench, useSession } from '../use-job'

/** The ring gaps of the survey, a sentence each, and one for another. */
export function RingGapEntries({ bore, survey }: Pick<OnBench, 'bore' | 'survey'>) {
  const said = pistonWords.panel
  const at: SurveyAt = { boreId: bore.id, surveyId: survey.id }
  const gaps = survey.ringGaps ?? []
  return (
    <>
      {gaps.length === 0 ? null : (
        <ul>
          {gaps.map((gap, index) => (
            <KeptGap key={`${survey.id} ${index + 1}`} at={at} gap={gap} index={index} />
          ))}
        </ul>
      )}
      <div className="sentence">
        <NewGap at={at} />{' '}
        <Sentence
          template={said.feeler}
          fields={{
            feeler: (
              <NumberField
                label={said.labels.feeler}
                micron
                none={said.taken(tenthsOfMicrons(typicalFeelerDoubtUm / 1000))}
                value={survey.feelerDoubtUm}
                keep={(feelerDoubtUm) =>
                  perform(words.changes.survey, (job) =>
                    setSurvey(job, bore.id, survey.id, { feelerDoubtUm }),
                  )
                }
              />
            ),
          }}
        />
      </div>
    </>
  )
}

function KeptGap(props: { readonly at: SurveyAt; readonly gap: RingGap; readonly index: number }) {
  const { at, gap, index } = props
  const said = pistonWords.panel
  const keep = (patch: Partial<RingGap>) =>
    perform(pistonWords.changes.gap, (job) => setRingGap(job, at, index, patch))
  return (
    <li className="ring-gap">
      <span className="sentence">
        <Sentence
          template={said.gap}
          fields={{
            depth: (
              <NeededNumberField
                label={said.labels.gapDepth(index + 1)}
                length
                value={gap.depthMm}
                keep={(depthMm) => keep({ depthMm })}
              />
            ),
            gap: (
              <NeededNumberField
                label={said.labels.gap(index + 1)}
                length
                value={gap.gapMm}
                keep={(gapMm) => keep({ gapMm })}
              />
            ),
          }}
        />
      </span>
      <button
        type="button"
        className="quiet"
        aria-label={said.removeGap(depth(gap.depthMm))}
        title={said.removeGap(depth(gap.depthMm))}
        onClick={() => perform(pistonWords.changes.gapRemoved, (job) => removeRingGap(job, at, index))}
      >
        ×
      </button>
    </li>
  )
}

/** Depth and gap of another, kept once both are there: until then what was typed waits in its field. */
function NewGap({ at }: { readonly at: SurveyAt }) {
  const said = pistonWords.panel
  const name = `another ring gap of ${at.surveyId}`
  const { low: depthMm, high: gapMm } = useSession((state) => state.waiting[name]) ?? nothing
  const take = (next: TypedGap): Refusal => {
    const whole = wholeGap(next)
    const refused = whole && perform(pistonWords.changes.gap, (job) => addRingGap(job, at, whole))
    if (refused === undefined) setWaiting(name, whole ? nothing : waitingOf(next))
    return refused
  }
  const waits = (typed: number | undefined, text: string, takeBack: () => void) =>
    typed === undefined ? undefined : { said: text, takeBack }
  return (
    <Sentence
      template={said.newGap}
      fields={{
        depth: (
          <NumberField
            label={said.labels.newDepth}
            length
            none="…"
            value={depthMm}
            waits={waits(depthMm, said.waitsForGap, () => take({ depthMm: undefined, gapMm }))}
            keep={(typed) => take({ depthMm: typed, gapMm })}
          />
        ),
        gap: (
          <NumberField
            label={said.labels.newGap}
            length
            none="…"
            value={gapMm}
            waits={waits(gapMm, said.waitsForDepth, () => take({ depthMm, gapMm: undefined }))}
            keep={(typed) => take({ depthMm, gapMm: typed })}
          />
        ),
      }}
    />
  )
}

const nothing: WaitingEnds = {}

interface TypedGap {
  readonly depthMm: number | undefined
  readonly gapMm: number | undefined
}

function wholeGap({ depthMm, gapMm }: TypedGap): RingGap | undefined {
  return depthMm === undefined || gapMm === undefined ? undefined : { depthMm, gapMm }
}

function waitingOf({ depthMm, gapMm }: TypedGap): WaitingEnds {
  return {
    ...(depthMm === undefined ? {} : { low: depthMm }),
    ...(gapMm === undefined ? {} : { high: gapMm }),
  }
}
