import { words } from '../../words/words'
import { dayAndTime } from './day-and-time'
import type { AsideRecord } from './shelf-jobs'

/** Records that were moved out of the way, each to be saved to a file. */
export function AsideList({
  aside,
  isOpen,
}: {
  readonly aside: readonly AsideRecord[]
  readonly isOpen: boolean
}) {
  if (aside.length === 0) return null
  const { kept } = words
  return (
    <details className="shelf-aside" open={isOpen}>
      <summary>
        {kept.setAsideTitle} ({aside.length})
      </summary>
      <p className="soft">{kept.setAsideLead}</p>
      <ul className="kept-list">
        {aside.map(({ key, name, why, setAsideAt, save }) => (
          <li key={key}>
            <span>{name}</span>
            <span className="kept-when">
              {why}, {dayAndTime(setAsideAt)}
            </span>
            <button type="button" className="quiet" onClick={save}>
              {kept.setAsideSave}
            </button>
          </li>
        ))}
      </ul>
    </details>
  )
}
