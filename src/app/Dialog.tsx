import './in-front.css'
import { type ReactNode, type RefObject, useEffect, useId, useRef } from 'react'
import { words } from '../words/words'

/** Shows a dialog in front of everything for as long as it is there. */
export function useShown(): RefObject<HTMLDialogElement | null> {
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => {
    const element = dialog.current
    element?.showModal()
    // Enter pressed by habit must not answer for the user.
    element?.querySelector<HTMLElement>('[data-safe]')?.focus()
    return () => element?.close()
  }, [])
  return dialog
}

/** A titled dialog with a button that closes it. */
export function Dialog(props: {
  readonly title: string
  readonly onClose: () => void
  readonly children: ReactNode
  /** Beside `in-front`. */
  readonly className?: string
  /** What was done last, in words, where something is done in this dialog. */
  readonly said?: string
}) {
  const dialog = useShown()
  const id = useId()
  const close = () => dialog.current?.close()
  const onClose = () => {
    // The event comes late: it may be open again by then.
    if (!dialog.current?.open) props.onClose()
  }
  return (
    <dialog
      ref={dialog}
      className={props.className ? `in-front ${props.className}` : 'in-front'}
      aria-labelledby={id}
      onClose={onClose}
    >
      <h2 id={id}>{props.title}</h2>
      {props.children}
      <div className="answers">
        <button type="button" className="button" data-safe onClick={close}>
          {words.app.close}
        </button>
        {props.said === undefined ? null : <p role="status">{props.said}</p>}
      </div>
    </dialog>
  )
}
