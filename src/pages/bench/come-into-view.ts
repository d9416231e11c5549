import type { SyntheticEvent } from 'react'

/** What opens below the end of its column is brought into view. */
export function comeIntoView({ currentTarget }: SyntheticEvent<HTMLDetailsElement>): void {
  if (currentTarget.open) currentTarget.scrollIntoView({ block: 'nearest' })
}
