import { type KeyboardEvent, useId, useRef } from 'react'

export interface MenuItem {
  readonly label: string
  readonly pick: () => void
  /** A rule above it. */
  readonly apart?: boolean
}

interface MenuProps {
  /** What stands on its button. */
  readonly text: string
  /** What the button is called where its text does not say it. */
  readonly label?: string
  readonly items: readonly MenuItem[]
}

/** A button that opens a list of things to do; arrow keys go through it. */
export function Menu({ text, label, items }: MenuProps) {
  const id = useId()
  const menu = useRef<HTMLDivElement>(null)
  return (
    <>
      <button
        type="button"
        className="bar-button"
        popoverTarget={id}
        {...(label === undefined ? {} : { 'aria-label': label, title: label })}
      >
        {text}
      </button>
      <div id={id} ref={menu} popover="auto" className="menu">
        <ul>
          {items.map(({ label: item, pick, apart }) => (
            <li key={item} className={apart ? 'is-apart' : undefined}>
              <button
                type="button"
                onKeyDown={moveFocus}
                onClick={() => {
                  menu.current?.hidePopover()
                  pick()
                }}
              >
                {item}
              </button>
            </li>
          ))}
        </ul>
      </div>
    </>
  )
}

function moveFocus(event: KeyboardEvent<HTMLButtonElement>) {
  const buttons = [...(event.currentTarget.closest('ul')?.querySelectorAll('button') ?? [])]
  const step = { ArrowDown: 1, ArrowUp: -1 }[event.key]
  if (step === undefined) return
  event.preventDefault()
  const at = buttons.indexOf(event.currentTarget)
  buttons[(at + step + buttons.length) % buttons.length]?.focus()
}
