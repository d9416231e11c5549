import './aids-choice.css'
import { type KeyboardEvent, useState } from 'react'
import { type PedalAction, pedalActions, session, setAids } from '../../session/session'
import { spoken } from '../../words/spoken'
import { words } from '../../words/words'
import { actionOfPedal, isFreeForPedal } from './use-aids'
import { useSession } from './use-job'
import { say, voice } from './voice'

/** Chooses the voice and what each pedal does. */
export function AidsChoice() {
  const said = words.aids
  const aids = useSession((state) => state.aids)
  return (
    <div className="aids-choice">
      <p>{said.lead}</p>
      {voice() ? (
        <p className="aids-voice">
          <label>
            <input
              type="checkbox"
              checked={aids.spoken}
              onChange={(event) => setAids({ ...aids, spoken: event.target.checked })}
            />{' '}
            {said.voice}
          </label>
          <button type="button" className="quiet" onClick={() => say(spoken(said.trial))}>
            {said.try}
          </button>
        </p>
      ) : (
        <p>{said.noVoice}</p>
      )}
      <p>{said.pedal}</p>
      <ul>
        {pedalActions.map((action) => (
          <Pedal key={action} action={action} />
        ))}
      </ul>
    </div>
  )
}

function Pedal({ action }: { readonly action: PedalAction }) {
  const said = words.aids
  const key = useSession((state) => state.aids.pedals[action])
  const [isWaiting, setWaiting] = useState(false)
  const [refusal, setRefusal] = useState<string>()
  const name = said.actions[action]
  const onKeyDown = (event: KeyboardEvent) => {
    if (!isWaiting || event.key === 'Tab') return
    event.preventDefault()
    event.stopPropagation()
    setWaiting(false)
    if (event.key === 'Escape') return setRefusal(undefined)
    const other = actionOfPedal(event.key)
    if (other !== undefined && other !== action) {
      setRefusal(said.taken(event.key, said.actions[other]))
    } else if (isFreeForPedal(event.key)) {
      setRefusal(undefined)
      keepPedal(action, event.key)
    } else setRefusal(said.typesText(event.key))
  }
  const label = isWaiting ? said.press(name) : key ? said.set(name, key) : said.choose(name)
  return (
    <li>
      <span>{name}</span>
      <button
        type="button"
        className="quiet"
        aria-label={label}
        onClick={() => setWaiting(true)}
        onKeyDown={onKeyDown}
        onBlur={() => setWaiting(false)}
      >
        {isWaiting ? '…' : (key ?? said.none)}
      </button>
      {key === undefined ? null : (
        <button
          type="button"
          className="quiet"
          aria-label={said.remove(name)}
          onClick={() => keepPedal(action, undefined)}
        >
          ×
        </button>
      )}
      {refusal === undefined ? null : <small role="alert">{refusal}</small>}
    </li>
  )
}

function keepPedal(action: PedalAction, key: string | undefined) {
  const { aids } = session.getState()
  const { [action]: _, ...others } = aids.pedals
  setAids({ ...aids, pedals: key === undefined ? others : { ...others, [action]: key } })
}
