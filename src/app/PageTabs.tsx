import { useStore } from 'zustand'
import { pageNames, session } from '../session/session'
import { words } from '../words/words'
import { goToPage } from './desk'

/** The ways to stand before the job. */
export function PageTabs() {
  const page = useStore(session, (state) => state.page)
  return (
    <nav className="page-tabs" aria-label={words.pages.label}>
      {pageNames.map((name) => (
        <button
          key={name}
          type="button"
          aria-current={name === page ? 'page' : undefined}
          onClick={() => goToPage(name)}
        >
          {words.pages[name]}
        </button>
      ))}
    </nav>
  )
}
