import './pad.css'
import { words } from '../../../words/words'
import { afterKey, digitKeys, type PadKey } from './pad-keys'

/** Keys for a thumb in a glove: what is typed shows in the field above, not here. */
export function Pad(props: {
  readonly typed: string
  readonly onTyped: (typed: string) => void
  readonly onEnter: () => void
  readonly onAgain: () => void
  readonly isLeftHanded: boolean
  /** No station is in hand. */
  readonly isIdle: boolean
}) {
  const { typed, onTyped, onEnter, onAgain, isLeftHanded, isIdle } = props
  const said = words.phone.pad
  const press = (key: PadKey) => onTyped(afterKey(typed, key))
  return (
    <fieldset className={isLeftHanded ? 'pad is-left-handed' : 'pad'} aria-label={said.label}>
      {digitKeys.map((digit) => (
        <button
          key={digit}
          type="button"
          className={`pad-key is-${digit}`}
          disabled={isIdle}
          onClick={() => press(digit)}
        >
          {digit}
        </button>
      ))}
      <button type="button" className="pad-key is-again" disabled={isIdle} onClick={onAgain}>
        {words.next.again}
      </button>
      <button
        type="button"
        className="pad-key is-delete"
        aria-label={said.delete}
        disabled={isIdle}
        onClick={() => press('delete')}
      >
        <svg viewBox="0 0 28 20" width="28" height="20" aria-hidden="true">
          <path d="M8 2h18v16H8L1 10zM13 6.5l7 7m0-7-7 7" />
        </svg>
      </button>
      <button
        type="button"
        className="pad-key is-sign"
        aria-label={said.sign}
        disabled={isIdle}
        onClick={() => press('sign')}
      >
        {words.next.sign}
      </button>
      <button
        type="button"
        className="pad-key is-point"
        aria-label={said.point}
        disabled={isIdle}
        onClick={() => press('point')}
      >
        , .
      </button>
      <button type="button" className="pad-key is-enter" disabled={isIdle} onClick={onEnter}>
        {words.next.take}
      </button>
    </fieldset>
  )
}
