import { lazy, Suspense, useState } from 'react'
import { words } from '../words/words'

const SendPanel = lazy(async () => {
  const { SendPanel } = await import('./SendPanel')
  return { default: SendPanel }
})

/** Opens the panel from which text and picture are sent. */
export function SendButton({ className = 'bar-button' }: { readonly className?: string }) {
  const [open, setOpen] = useState(false)
  return (
    <>
      <button type="button" className={className} aria-haspopup="dialog" onClick={() => setOpen(true)}>
        {words.send.open}
      </button>
      {open ? (
        <Suspense fallback={null}>
          <SendPanel onClose={() => setOpen(false)} />
        </Suspense>
      ) : null}
    </>
  )
}
