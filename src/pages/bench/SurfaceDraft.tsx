import { useEffect, useRef, useState } from 'react'
import { type SurfaceKind, type SurfacePlace, surfaceKinds } from '../../core/measured'
import { inShownUnit } from '../../words/length-unit'
import { words } from '../../words/words'
import { ChoiceField } from './ChoiceField'
import { NumberField } from './NumberField'
import { recordSurface } from './record-surface'
import { Sentence } from './Sentence'
import type { OnBench } from './use-job'

const ends = ['fromDepthMm', 'toDepthMm', 'fromDegrees', 'toDegrees'] as const
type End = (typeof ends)[number]

/** A surface finding whose place is being typed: it is recorded once all of that is there. */
export function SurfaceDraft({ bench, onDone }: { readonly bench: OnBench; readonly onDone: () => void }) {
  const said = words.surface
  const [kind, setKind] = useState<SurfaceKind>('scratch')
  const [place, setPlace] = useState<Partial<SurfacePlace>>({})
  const [refusal, setRefusal] = useState<string>()
  const form = useRef<HTMLDivElement>(null)
  useEffect(() => {
    form.current?.scrollIntoView({ block: 'nearest' })
    form.current?.querySelector('select')?.focus({ preventScroll: true })
  }, [])
  const record = () => {
    const missing = ends.filter((end) => place[end] === undefined)
    const whole = wholePlace(place)
    const why = whole
      ? recordSurface(bench, whole, kind)
      : said.missing(missing.map((end) => inShownUnit(said.labels[end])))
    setRefusal(why)
    if (why === undefined) onDone()
  }
  const field = (end: End) => (
    <NumberField
      label={said.labels[end]}
      length={end === 'fromDepthMm' || end === 'toDepthMm'}
      value={place[end]}
      none={said.ends[end]}
      keep={(value) => {
        setRefusal(undefined)
        setPlace(({ [end]: _, ...others }) => (value === undefined ? others : { ...others, [end]: value }))
        return undefined
      }}
    />
  )
  return (
    <div ref={form} className="panel surface-editor">
      <p className="sentence">
        <Sentence
          template={said.draft}
          fields={{
            kind: (
              <ChoiceField
                label={said.labels.kind}
                value={kind}
                options={surfaceKinds.map((value) => ({ value, text: said.kinds[value] }))}
                onChoose={(value) => setKind(surfaceKinds.find((each) => each === value) ?? kind)}
              />
            ),
            fromDepthMm: field('fromDepthMm'),
            toDepthMm: field('toDepthMm'),
            fromDegrees: field('fromDegrees'),
            toDegrees: field('toDegrees'),
          }}
        />
      </p>
      <p className="aside">{said.angleHelp}</p>
      <p className="aside">{said.drawHelp}</p>
      {refusal === undefined ? null : (
        <p role="alert" className="refusal">
          {refusal}
        </p>
      )}
      <div className="surface-answers">
        <button type="button" className="button" onClick={record}>
          {said.record}
        </button>
        <button type="button" className="quiet" onClick={onDone}>
          {words.app.cancel}
        </button>
      </div>
    </div>
  )
}

function wholePlace({ fromDepthMm, toDepthMm, fromDegrees, toDegrees }: Partial<SurfacePlace>) {
  if (fromDepthMm === undefined || toDepthMm === undefined) return undefined
  if (fromDegrees === undefined || toDegrees === undefined) return undefined
  return { fromDepthMm, toDepthMm, fromDegrees, toDegrees }
}
