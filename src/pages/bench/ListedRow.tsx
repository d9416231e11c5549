import type { ReactNode } from 'react'
import { words } from '../../words/words'

/** One entry of a list: what it is, what uses it, and the button that takes it out. */
export function ListedRow(props: {
  readonly users: readonly string[]
  readonly remove: ReactNode
  readonly children: ReactNode
  readonly beneath?: ReactNode
}) {
  const said = words.instruments
  const { users, remove, children, beneath } = props
  return (
    <li>
      {children}{' '}
      <span className="aside">{users.length > 0 ? said.usedBy(words.app.and(users)) : said.unused}</span>{' '}
      {remove}
      {beneath}
    </li>
  )
}
