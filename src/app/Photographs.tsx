import './photographs.css'
import { type ChangeEvent, type DragEvent, useRef, useState } from 'react'
import type { Photograph } from '../core/measured'
import type { PhotographsProps } from '../pages/bench/photographs-slot'
import { words } from '../words/words'
import { Dialog } from './Dialog'
import { keepPhoto } from './keep-photo'
import { usePhoto } from './use-photo'

/** The photographs of a finding, small, and how to add one: from a file, from the camera, or dropped here. */
export function Photographs({ title, photos, add, remove }: PhotographsProps) {
  const said = words.photographs
  const [doing, setDoing] = useState<{ readonly reading: boolean; readonly refused: readonly string[] }>({
    reading: false,
    refused: [],
  })
  const [large, setLarge] = useState<Photograph>()
  const take = async (files: readonly File[]) => {
    setDoing({ reading: true, refused: [] })
    const refused: string[] = []
    for (const file of files) {
      const kept = await keepPhoto(file)
      const why = kept.ok ? add(kept.photo) : kept.why
      if (why !== undefined) refused.push(why)
    }
    setDoing({ reading: false, refused })
  }
  const drop = (event: DragEvent) => {
    if (event.dataTransfer.files.length === 0) return
    event.preventDefault()
    event.stopPropagation()
    void take([...event.dataTransfer.files])
  }
  return (
    <fieldset className="photographs" aria-label={said.title} onDrop={drop}>
      {photos.length > 0 ? (
        <ul>
          {photos.map((photo) => (
            <li key={photo.hash}>
              <Thumbnail photo={photo} onShow={() => setLarge(photo)} />
              <button
                type="button"
                className="quiet"
                aria-label={said.remove(photo.name)}
                onClick={() => remove(photo.hash)}
              >
                {said.removeShort}
              </button>
            </li>
          ))}
        </ul>
      ) : null}
      <p className="photograph-ways">
        <Chooser label={said.add} onChosen={(files) => void take(files)} />
        {hasTouch() ? <Chooser label={said.camera} camera onChosen={(files) => void take(files)} /> : null}
        {hasTouch() ? null : <span className="aside">{said.drop}</span>}
      </p>
      <p role="status" className="aside">
        {doing.reading ? said.reading : said.kept}
      </p>
      {doing.refused.map((why) => (
        <p key={why} role="alert" className="refusal">
          {why}
        </p>
      ))}
      {large ? <LargePhoto photo={large} finding={title} onClose={() => setLarge(undefined)} /> : null}
    </fieldset>
  )
}

/** A machine with a finger on its screen has a camera beside it more often than not. */
function hasTouch(): boolean {
  return window.matchMedia('(pointer: coarse)').matches
}

function Chooser(props: {
  readonly label: string
  readonly camera?: true
  readonly onChosen: (files: readonly File[]) => void
}) {
  const { label, camera, onChosen } = props
  const input = useRef<HTMLInputElement>(null)
  const choose = (event: ChangeEvent<HTMLInputElement>) => {
    const files = [...(event.target.files ?? [])]
    // So that choosing the same file once more is a choice again.
    event.target.value = ''
    if (files.length > 0) onChosen(files)
  }
  return (
    <>
      <input
        ref={input}
        type="file"
        accept="image/*"
        hidden
        aria-label={label}
        {...(camera ? { capture: 'environment' as const } : { multiple: true })}
        onChange={choose}
      />
      <button type="button" className="button" onClick={() => input.current?.click()}>
        {label}
      </button>
    </>
  )
}

function Thumbnail({ photo, onShow }: { readonly photo: Photograph; readonly onShow: () => void }) {
  const said = words.photographs
  const shown = usePhoto(photo.hash)
  if (shown.kind === 'absent') {
    return (
      <span className="thumbnail is-absent">
        {photo.name}: {shown.why}
      </span>
    )
  }
  return (
    <button type="button" className="thumbnail" aria-label={said.shown(photo.name)} onClick={onShow}>
      {shown.kind === 'shown' ? <img src={shown.url} alt="" /> : null}
    </button>
  )
}

function LargePhoto(props: {
  readonly photo: Photograph
  readonly finding: string
  readonly onClose: () => void
}) {
  const { photo, finding, onClose } = props
  const shown = usePhoto(photo.hash)
  const title = words.photographs.large(photo.name, finding)
  return (
    <Dialog title={title} className="large-photo" onClose={onClose}>
      {shown.kind === 'shown' ? (
        <img src={shown.url} alt={title} width={photo.widthPx} height={photo.heightPx} />
      ) : null}
      {shown.kind === 'absent' ? <p>{shown.why}</p> : null}
    </Dialog>
  )
}
