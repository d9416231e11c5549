import { type KeyboardEvent, useLayoutEffect, useRef } from 'react'
import type { ListedJob } from '../../job/listed-job'
import { words } from '../../words/words'
import type { ShelfActs } from './shelf-jobs'

interface RowMenuProps {
  readonly job: ListedJob
  readonly button: HTMLElement
  readonly isOnBench: boolean
  readonly acts: ShelfActs
  readonly onClose: () => void
}

/** What can be done with one job, beside the button that asked for it. */
export function RowMenu({ job, button, isOnBench, acts, onClose }: RowMenuProps) {
  const menu = useRef<HTMLDivElement>(null)
  useLayoutEffect(() => {
    const element = menu.current
    if (!element) return
    element.showPopover()
    const at = button.getBoundingClientRect()
    const { width, height } = element.getBoundingClientRect()
    const below = at.bottom + height <= window.innerHeight
    element.style.left = `${Math.max(8, at.right - width)}px`
    element.style.top = `${below ? at.bottom : Math.max(8, at.top - height)}px`
    element.querySelector('button')?.focus()
  }, [button])
  const items = itemsFor(job, isOnBench, acts)
  return (
    <div
      ref={menu}
      popover="auto"
      role="menu"
      className="menu shelf-menu"
      aria-label={words.shelf.more(job.name)}
      onToggle={(event) => {
        if (event.newState === 'closed') onClose()
      }}
    >
      {items.map(({ text, act }) => (
        <button
          key={text}
          type="button"
          role="menuitem"
          onKeyDown={moveFocus}
          onClick={() => {
            menu.current?.hidePopover()
            act(job)
          }}
        >
          {text}
        </button>
      ))}
    </div>
  )
}

interface MenuItem {
  readonly text: string
  readonly act: (job: ListedJob) => void
}

function itemsFor(job: ListedJob, isOnBench: boolean, acts: ShelfActs): MenuItem[] {
  const said = words.shelf.acts
  const open = { text: said.open, act: acts.open }
  if (job.deletedAt !== undefined) return [{ text: said.restore, act: acts.restore }, open]
  const isArchived = job.archivedAt !== undefined
  return [
    open,
    ...(job.unread === undefined ? [{ text: said.duplicate, act: acts.duplicate }] : []),
    {
      text: isArchived ? said.unarchive : said.archive,
      act: (one: ListedJob) => acts.archive(one, !isArchived),
    },
    ...(isOnBench ? [] : [{ text: said.delete, act: acts.remove }]),
  ]
}

function moveFocus(event: KeyboardEvent<HTMLButtonElement>) {
  const step = { ArrowDown: 1, ArrowUp: -1 }[event.key]
  if (step === undefined) return
  event.preventDefault()
  event.stopPropagation()
  const buttons = [...(event.currentTarget.parentElement?.querySelectorAll('button') ?? [])]
  buttons[(buttons.indexOf(event.currentTarget) + step + buttons.length) % buttons.length]?.focus()
}
