import { useEffect, useRef } from 'react'
import type { SurfaceFound, SurfaceLength } from '../../core/findings'
import { type SurfaceFinding, surfaceKinds, surfaceShapes } from '../../core/measured'
import type { Patch } from '../../job/patch'
import { addPhotograph, removePhotograph, setSurfaceFinding } from '../../job/surface-commands'
import { lengthFigure } from '../../words/numbers'
import { words } from '../../words/words'
import { ChoiceField } from './ChoiceField'
import { writtenLength } from './marks'
import { NeededNumberField, NumberField } from './NumberField'
import { attempt, perform, refusalOf } from './perform'
import { usePhotographsSlot } from './photographs-slot'
import { Sentence } from './Sentence'
import { TypedField } from './TypedField'
import type { OnBench } from './use-job'
import { useRange } from './use-range'

interface EditorProps {
  readonly bench: OnBench
  readonly found: SurfaceFound
  readonly title: string
}

/** Everything that is recorded of a surface finding, as a sentence of fields, with its photographs. */
export function SurfaceEditor(props: EditorProps) {
  const { bench, found, title } = props
  const fields = useFields(props)
  const lead = useRef<HTMLDivElement>(null)
  const Photographs = usePhotographsSlot()
  const at = { boreId: bench.bore.id, surveyId: bench.survey.id }
  useEffect(() => {
    const editor = lead.current
    // What was just marked is named next; a row opened from its own button keeps the focus.
    if (!editor?.closest('li')?.contains(document.activeElement))
      editor?.querySelector('select')?.focus({ preventScroll: true })
    editor?.closest('li')?.scrollIntoView({ block: 'nearest' })
  }, [])
  return (
    <div ref={lead}>
      <p className="sentence">
        <Sentence template={words.surface.sentence} fields={fields} />
      </p>
      {Photographs ? (
        <Photographs
          title={title}
          photos={found.photos ?? []}
          add={(photo) =>
            perform(words.surface.changes.photograph, (job) => addPhotograph(job, at, found.id, photo))
          }
          remove={(hash) => {
            perform(words.surface.changes.photographRemoved, (job) =>
              removePhotograph(job, at, found.id, hash),
            )
          }}
        />
      ) : null}
    </div>
  )
}

type Change = Patch<Omit<SurfaceFinding, 'id' | 'photos'>>

function useFields({ bench, found, title }: EditorProps) {
  const said = words.surface
  const at = { boreId: bench.bore.id, surveyId: bench.survey.id }
  const change = (patch: Change) =>
    attempt(said.changes.changed, (job) => setSurfaceFinding(job, at, found.id, patch))
  const keep = (patch: Change) => refusalOf(change(patch))
  const label = (field: keyof typeof said.labels) => `${title}: ${said.labels[field]}`
  const depths = useRange<never>({
    name: `depths of surface finding ${found.id}`,
    low: found.fromDepthMm,
    high: found.toDepthMm,
    keep: (fromDepthMm, toDepthMm) => change({ fromDepthMm, toDepthMm }),
    written: writtenLength,
  })
  const number = (field: 'fromDegrees' | 'toDegrees') => (
    <NeededNumberField
      label={label(field)}
      value={found[field]}
      width={4}
      keep={(degrees) => keep({ [field]: degrees })}
    />
  )
  const lengthOf = (field: 'acrossMm' | 'alongMm', length: SurfaceLength | undefined) => (
    <NumberField
      label={label(field)}
      length
      value={found[field]}
      none={length === undefined ? words.app.notRecorded : said.byPlace(lengthFigure(length.mm, 1))}
      keep={(mm) => keep({ [field]: mm })}
    />
  )
  return {
    kind: (
      <ChoiceField
        label={label('kind')}
        value={found.kind}
        options={surfaceKinds.map((kind) => ({ value: kind, text: said.kinds[kind] }))}
        onChoose={(value) => keep({ kind: surfaceKinds.find((kind) => kind === value) ?? found.kind })}
      />
    ),
    shape: (
      <ChoiceField
        label={label('shape')}
        value={found.shape}
        options={surfaceShapes.map((shape) => ({ value: shape, text: said.shapes[shape] }))}
        onChoose={(value) => keep({ shape: surfaceShapes.find((shape) => shape === value) ?? found.shape })}
      />
    ),
    fromDepthMm: <NeededNumberField label={label('fromDepthMm')} width={4} length {...depths.low} />,
    toDepthMm: <NeededNumberField label={label('toDepthMm')} width={4} length {...depths.high} />,
    fromDegrees: number('fromDegrees'),
    toDegrees: number('toDegrees'),
    nail: (
      <ChoiceField
        label={label('nail')}
        value={found.catchesNail === undefined ? '' : found.catchesNail ? 'yes' : 'no'}
        options={[
          { value: '', text: said.nail.notTried },
          { value: 'yes', text: said.nail.yes },
          { value: 'no', text: said.nail.no },
        ]}
        onChoose={(value) => keep({ catchesNail: value === '' ? undefined : value === 'yes' })}
      />
    ),
    acrossMm: lengthOf('acrossMm', found.acrossMm === undefined ? found.across : undefined),
    alongMm: lengthOf('alongMm', found.alongMm === undefined ? found.along : undefined),
    note: (
      <TypedField
        label={label('note')}
        text={found.note ?? ''}
        placeholder={said.noNote}
        numeric={false}
        commit={(typed) => keep({ note: typed.trim() === '' ? undefined : typed.trim() })}
      />
    ),
  }
}
