import type { Bore, Spec, Wall } from '../../../core/measured'
import { hintedCleanUpMm } from '../../../core/piston/oversize-choice'
import { setBore, setSpec } from '../../../job/commands'
import { lengthFigure } from '../../../words/numbers'
import { pistonWords } from '../../../words/piston-words'
import { words } from '../../../words/words'
import { ChoiceField } from '../ChoiceField'
import { NumberField } from '../NumberField'
import { perform } from '../perform'
import { Sentence } from '../Sentence'

/** What boring takes off, whether all cylinders go alike, and what the manual says of boring and honing this wall. */
export function BoringFields({ spec, bore }: { readonly spec: Spec; readonly bore: Bore }) {
  const said = pistonWords.panel
  const keep = (patch: Parameters<typeof setSpec>[1]) =>
    perform(words.changes.limits, (job) => setSpec(job, patch))
  return (
    <>
      <Sentence
        template={said.boring}
        fields={{
          cleanUp: (
            <NumberField
              label={said.labels.cleanUp}
              length
              none={said.hinted(lengthFigure(hintedCleanUpMm, 2))}
              value={spec.cleanUpMm}
              keep={(cleanUpMm) => keep({ cleanUpMm })}
            />
          ),
          alike: (
            <ChoiceField
              label={said.labels.alike}
              value={spec.oversizesAlike === false ? 'no' : 'yes'}
              options={(['yes', 'no'] as const).map((value) => ({ value, text: said.alike[value] }))}
              onChoose={(value) => keep({ oversizesAlike: value === 'no' ? false : undefined })}
            />
          ),
        }}
      />{' '}
      {bore.wall ? <WallFields boreId={bore.id} wall={bore.wall} /> : null}
    </>
  )
}

function WallFields({ boreId, wall }: { readonly boreId: string; readonly wall: Wall }) {
  const said = pistonWords.panel
  const keep = (next: Wall) => perform(words.changes.wall, (job) => setBore(job, boreId, { wall: next }))
  const choice = (
    field: 'mayBeBored' | 'mayBeHoned' | 'liner',
    label: string,
    unsaid: string,
    texts: { readonly yes: string; readonly no: string },
  ) => {
    const { [field]: answer, ...rest } = wall
    return (
      <ChoiceField
        label={label}
        value={answer === undefined ? '' : answer ? 'yes' : 'no'}
        options={[
          { value: '', text: unsaid },
          { value: 'yes', text: texts.yes },
          { value: 'no', text: texts.no },
        ]}
        onChoose={(value) => keep(value === '' ? rest : { ...rest, [field]: value === 'yes' })}
      />
    )
  }
  return (
    <Sentence
      template={said.wall}
      fields={{
        bored: choice('mayBeBored', said.labels.bored, said.unsaid.bored, said.mayBeBored),
        honed: choice('mayBeHoned', said.labels.honed, said.unsaid.honed, said.mayBeHoned),
        liner: choice('liner', said.labels.liner, words.app.notRecorded, said.liner),
      }}
    />
  )
}
