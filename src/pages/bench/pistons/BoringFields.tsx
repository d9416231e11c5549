import type { Bore, Spec, Wall } from '../../../core/measured'
import { hintedCleanUpMm } from '../../../core/piston/oversize-choice'
import { setBore, setSpec } from '../../../job/commands'
import { plain } from '../../../words/numbers'
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
              none={said.hinted(plain(hintedCleanUpMm, 2))}
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
  const choice = (
    field: 'mayBeBored' | 'mayBeHoned',
    label: string,
    usual: string,
    texts: { readonly yes: string; readonly no: string },
  ) => {
    const { [field]: allowed, ...rest } = wall
    const keep = (value: string) => {
      const next: Wall = value === '' ? rest : { ...rest, [field]: value === 'yes' }
      return perform(words.changes.wall, (job) => setBore(job, boreId, { wall: next }))
    }
    return (
      <ChoiceField
        label={label}
        value={allowed === undefined ? '' : allowed ? 'yes' : 'no'}
        options={[
          { value: '', text: usual },
          { value: 'yes', text: texts.yes },
          { value: 'no', text: texts.no },
        ]}
        onChoose={keep}
      />
    )
  }
  return (
    <Sentence
      template={said.wall}
      fields={{
        bored: choice('mayBeBored', said.labels.bored, said.asUsual.bored, said.mayBeBored),
        honed: choice('mayBeHoned', said.labels.honed, said.asUsual.honed, said.mayBeHoned),
      }}
    />
  )
}
