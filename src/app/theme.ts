import { flushSync } from 'react-dom'
import { createStore } from 'zustand/vanilla'
import { withLocalStorage } from './local-storage'

/** Chosen by the user on this machine; absent: as the system has it. */
export type ChosenTheme = 'light' | 'dark' | undefined

export type Theme = 'light' | 'dark'

const storedUnder = 'borewall-theme'
const dark = window.matchMedia('(prefers-color-scheme: dark)')

interface ThemeState {
  readonly chosen: ChosenTheme
  /** The one that is shown. */
  readonly theme: Theme
}

function stateFor(chosen: ChosenTheme): ThemeState {
  return { chosen, theme: chosen ?? (dark.matches ? 'dark' : 'light') }
}

export const themeStore = createStore<ThemeState>(() => stateFor(stored()))

function stored(): ChosenTheme {
  const text = withLocalStorage((storage) => storage.getItem(storedUnder))
  return text === 'light' || text === 'dark' ? text : undefined
}

/** Where the browser keeps nothing, the choice holds as long as the page. */
export function chooseTheme(chosen: ChosenTheme): void {
  withLocalStorage((storage) => {
    if (chosen === undefined) storage.removeItem(storedUnder)
    else storage.setItem(storedUnder, chosen)
  })
  themeStore.setState(stateFor(chosen))
}

/** Writes the theme to the page, now and at each change. */
export function applyTheme(): void {
  const apply = ({ chosen }: ThemeState) => {
    if (chosen === undefined) delete document.documentElement.dataset.theme
    else document.documentElement.dataset.theme = chosen
  }
  apply(themeStore.getState())
  themeStore.subscribe(apply)
  // Paper is light. A browser prints as soon as it has said that it will: what is drawn has to be light by then.
  window.addEventListener('beforeprint', () => flushSync(() => themeStore.setState({ theme: 'light' })))
  window.addEventListener('afterprint', () => themeStore.setState(stateFor(themeStore.getState().chosen)))
  dark.addEventListener('change', () => themeStore.setState(stateFor(themeStore.getState().chosen)))
}
