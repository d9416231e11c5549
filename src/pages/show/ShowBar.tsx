import { useState } from 'react'
import { chooseBore } from '../../session/session'
import { showStep } from '../../session/showing'
import { ownerWords } from '../../words/owner-words'
import { words } from '../../words/words'
import { useLayout } from '../bench/phone/use-layout'
import type { FullScreen } from './use-full-screen'
import type { Talk } from './use-talk'

export interface ShowBarProps {
  readonly talk: Talk
  readonly full: FullScreen | undefined
  /** Opens a window that follows this one; false where the browser opens none. Absent in such a window. */
  readonly otherWindow: (() => boolean) | undefined
  readonly onLeave: () => void
}

/** Whose bore it is, which one, and how the page is shown. */
export function ShowBar({ talk, full, otherWindow, onLeave }: ShowBarProps) {
  const said = ownerWords.show
  const [isBlocked, setIsBlocked] = useState(false)
  // A phone has no other screen to open a window on.
  const hasRoom = useLayout() !== 'one'
  const trouble = isBlocked ? said.otherWindowBlocked : full?.isRefused ? said.fullScreenRefused : undefined
  const { name, invented } = talk.job
  return (
    <header className="show-bar">
      <h1 className="show-job" dir="auto" title={name}>
        {name.trim() === '' ? words.app.untitled : name}
      </h1>
      {invented ? <p className="show-invented">{words.demo.banner}</p> : null}
      {talk.bores.length > 1 ? <Bores talk={talk} /> : null}
      <p className="show-said" role="status">
        {trouble ?? (otherWindow ? null : said.follows)}
      </p>
      <div className="show-ways">
        {otherWindow && hasRoom ? (
          <button type="button" onClick={() => setIsBlocked(!otherWindow())}>
            {said.otherWindow}
          </button>
        ) : null}
        {full ? (
          <button type="button" aria-pressed={full.isOn} onClick={full.toggle}>
            {full.isOn ? said.endFullScreen : said.fullScreen}
          </button>
        ) : null}
        <button type="button" onClick={onLeave}>
          {said.leave}
        </button>
      </div>
    </header>
  )
}

function Bores({ talk: { bores, bore } }: { readonly talk: Talk }) {
  return (
    <label className="show-bores">
      {ownerWords.show.bore}
      <select
        value={bore.id}
        onChange={(event) => {
          chooseBore(event.target.value)
          showStep(0)
        }}
      >
        {bores.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
    </label>
  )
}
