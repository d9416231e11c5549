import { useState } from 'react'
import type { Job } from '../../job/schema'
import { words } from '../../words/words'
import { perform } from './perform'

/** Takes an entry out of its list; while it is used, says by what, and that another is to be chosen there first. */
export function RemoveListed(props: {
  readonly called: string
  readonly users: readonly string[]
  readonly remove: (job: Job) => Job
}) {
  const { called, users, remove } = props
  const [isRefused, setIsRefused] = useState(false)
  const said = words.instruments
  const press = () => {
    if (users.length > 0) setIsRefused(true)
    else perform(words.changes.instruments, remove)
  }
  return (
    <>
      <button
        type="button"
        className="quiet"
        aria-label={said.remove(called)}
        title={said.remove(called)}
        onClick={press}
      >
        ×
      </button>
      {isRefused && users.length > 0 ? (
        <span role="alert" className="refusal">
          {said.stillUsed(called, words.app.and(users))}
        </span>
      ) : null}
    </>
  )
}
