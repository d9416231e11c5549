import type { KeyboardEvent } from 'react'
import { useStore } from 'zustand'
import { VerdictShape } from '../charts/VerdictShape'
import { verdictPlace } from '../core/conformity/standing'
import type { Bore, Role } from '../core/measured'
import { addBore } from '../job/bore-commands'
import { jobStore } from '../job/job-store'
import { newId } from '../job/new-id'
import { findingOf } from '../job/selectors'
import { chooseBore, session } from '../session/session'
import { verdictSentence } from '../words/verdict'
import { words } from '../words/words'
import { Menu, type MenuItem } from './Menu'

/** The bores of this engine, then those to compare with, and a button for one more. */
export function BoreTabs() {
  const bores = useStore(jobStore, ({ job }) => job.bores)
  const chosen = useChosenBore()
  const ordered = boresInOrder(bores)
  const firstCompared = ordered.find(({ role }) => role === 'for-comparison')
  const onKeyDown = (event: KeyboardEvent) => {
    const next = neighbour(ordered, chosen, event.key)
    if (!next) return
    event.preventDefault()
    chooseBore(next.id)
    document.getElementById(tabId(next))?.focus()
  }
  return (
    <div className="bores">
      <div role="tablist" aria-label={words.bar.bores} onKeyDown={onKeyDown}>
        {ordered.map((bore) => (
          <BoreTab
            key={bore.id}
            bore={bore}
            selected={bore === chosen}
            startsComparison={bore === firstCompared && bore !== ordered[0]}
          />
        ))}
      </div>
      <Menu text="+" label={words.bar.add} items={addBoreItems()} />
    </div>
  )
}

/** The bores of this engine, then those to compare with. */
export function boresInOrder(bores: readonly Bore[]): readonly Bore[] {
  return [
    ...bores.filter(({ role }) => role === 'of-this-engine'),
    ...bores.filter(({ role }) => role === 'for-comparison'),
  ]
}

/** The ways to have one bore more. */
export function addBoreItems(): readonly MenuItem[] {
  return [
    { label: words.bar.addOwn, pick: () => addAndChoose('of-this-engine') },
    { label: words.bar.addComparison, pick: () => addAndChoose('for-comparison', comparisonName()) },
  ]
}

/** The bore on the bench. */
export function useChosenBore(): Bore | undefined {
  const bores = useStore(jobStore, ({ job }) => job.bores)
  const id = useStore(session, ({ boreId }) => boreId)
  return bores.find((bore) => bore.id === id) ?? bores[0]
}

function BoreTab(props: {
  readonly bore: Bore
  readonly selected: boolean
  readonly startsComparison: boolean
}) {
  const { bore, selected, startsComparison } = props
  const finding = useStore(jobStore, ({ job }) => findingOf(job, bore.id))
  const compared = bore.role === 'for-comparison'
  const said = compared
    ? words.bar.comparisonTab(bore.name)
    : words.bar.boreTab(bore.name, finding ? verdictSentence(finding) : '')
  return (
    <button
      type="button"
      role="tab"
      id={tabId(bore)}
      aria-selected={selected}
      aria-label={said}
      title={said}
      tabIndex={selected ? 0 : -1}
      className={startsComparison ? 'bore-tab is-first-comparison' : 'bore-tab'}
      onClick={() => chooseBore(bore.id)}
    >
      {bore.name}
      {finding?.verdict.known && !compared ? <VerdictShape place={verdictPlace(finding.verdict)} /> : null}
    </button>
  )
}

function tabId({ id }: Bore): string {
  return `bore-tab-${id}`
}

function neighbour(bores: readonly Bore[], from: Bore | undefined, key: string): Bore | undefined {
  const index = from ? bores.indexOf(from) : -1
  switch (key) {
    case 'ArrowRight':
      return bores[(index + 1) % bores.length]
    case 'ArrowLeft':
      return bores[(index - 1 + bores.length) % bores.length]
    case 'Home':
      return bores[0]
    case 'End':
      return bores.at(-1)
    default:
      return undefined
  }
}

/** "New", "New 2" and so on. */
function comparisonName(): string {
  const taken = new Set(jobStore.getState().job.bores.map(({ name }) => name))
  const plain = words.bar.comparisonName
  let name: string = plain
  for (let count = 2; taken.has(name); count += 1) name = `${plain} ${count}`
  return name
}

function addAndChoose(role: Role, name?: string) {
  const done = jobStore
    .getState()
    .perform(words.changes.boreAdded, (before) => addBore(before, newId, role, name))
  const added = jobStore.getState().job.bores.at(-1)
  if (done.ok && added) chooseBore(added.id)
}
