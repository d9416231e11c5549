import { useRef, useState } from 'react'
import type { Letterhead } from '../storage/letterhead'
import { letterheadWords } from '../words/letterhead-words'
import { changeLetterhead, pictureUrl } from './letterhead'

type Picture = NonNullable<Letterhead['picture']>

function setPicture(picture: Picture | undefined): void {
  changeLetterhead(({ picture: _, ...letterhead }) =>
    picture === undefined ? letterhead : { ...letterhead, picture },
  )
}

/** The shop's picture, how to choose it, and a way back after it was removed. */
export function LetterheadPicture({ picture }: { readonly picture: Picture | undefined }) {
  const said = letterheadWords.dialog
  const input = useRef<HTMLInputElement>(null)
  const [reading, setReading] = useState(false)
  const [refusal, setRefusal] = useState<string>()
  const [removed, setRemoved] = useState<Picture>()
  const choose = async (file: File) => {
    setReading(true)
    const { shrinkLogo } = await import('../storage/shrink-logo')
    const shrunk = await shrinkLogo(file)
    setReading(false)
    setRefusal(shrunk === undefined ? said.unreadable(file.name) : undefined)
    if (shrunk === undefined) return
    setRemoved(undefined)
    setPicture(shrunk)
  }
  return (
    <fieldset className="letterhead-picture">
      <legend>{said.picture}</legend>
      {picture ? <img src={pictureUrl(picture)} alt={said.pictureShown} /> : null}
      <div className="letterhead-ways">
        <button type="button" className="button" onClick={() => input.current?.click()}>
          {picture ? said.chooseOther : said.choose}
        </button>
        {picture ? (
          <button
            type="button"
            className="quiet"
            onClick={() => {
              setRemoved(picture)
              setPicture(undefined)
            }}
          >
            {said.remove}
          </button>
        ) : null}
      </div>
      <input
        ref={input}
        type="file"
        accept="image/*"
        hidden
        aria-label={said.choose}
        onChange={(event) => {
          const chosen = event.target.files?.[0]
          if (chosen) void choose(chosen)
          event.target.value = ''
        }}
      />
      <p role="status" className="soft">
        {reading ? said.reading : removed && !picture ? said.removed : said.pictureKept}{' '}
        {removed && !picture ? (
          <button type="button" className="quiet" onClick={() => setPicture(removed)}>
            {said.putBack}
          </button>
        ) : null}
      </p>
      {refusal === undefined ? null : (
        <p role="alert" className="refusal">
          {refusal}
        </p>
      )}
    </fieldset>
  )
}
