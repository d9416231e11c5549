import type { KeyboardEvent } from 'react'
import { type ChartName, showChart } from '../../session/session'
import { words } from '../../words/words'

const names: readonly ChartName[] = ['map', 'section', 'profile', 'hours']
const before: readonly string[] = ['ArrowUp', 'ArrowLeft']
const after: readonly string[] = ['ArrowDown', 'ArrowRight']

/** Map, section, profile and course over hours as tabs, one beneath the other beside the view or in a row above it. */
export function FlatTabs({
  shown,
  id,
  isRow,
}: {
  readonly shown: ChartName
  readonly id: string
  readonly isRow: boolean
}) {
  const step = (event: KeyboardEvent) => {
    const way = before.includes(event.key) ? -1 : after.includes(event.key) ? 1 : 0
    const next = way === 0 ? undefined : names[(names.indexOf(shown) + way + names.length) % names.length]
    if (!next) return
    event.preventDefault()
    showChart(next)
    document.getElementById(`${id}-${next}`)?.focus()
  }
  return (
    <div
      className="flat-tabs"
      role="tablist"
      aria-label={words.charts.views.label}
      aria-orientation={isRow ? 'horizontal' : 'vertical'}
      onKeyDown={step}
    >
      {names.map((name) => (
        <button
          key={name}
          id={`${id}-${name}`}
          type="button"
          role="tab"
          aria-selected={name === shown}
          aria-controls={`${id}-panel`}
          tabIndex={name === shown ? 0 : -1}
          onClick={() => showChart(name)}
        >
          {words.charts.views[name]}
        </button>
      ))}
    </div>
  )
}
