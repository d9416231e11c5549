import { useStore } from 'zustand'
import { type PageName, session } from '../session/session'
import { words } from '../words/words'
import { goToPage } from './desk'

const pages: readonly PageName[] = ['bench', 'compare']

/** The ways to stand before the job. */
export function PageTabs() {
  const page = useStore(session, (state) => state.page)
  return (
    <nav className="page-tabs" aria-label={words.pages.label}>
      {pages.map((name) => (
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
