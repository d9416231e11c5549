import { useStore } from 'zustand'
import { words } from '../words/words'
import { type ChosenTheme, chooseTheme, themeStore } from './theme'

const after = new Map<ChosenTheme, ChosenTheme>([
  [undefined, 'light'],
  ['light', 'dark'],
  ['dark', undefined],
])

/** The theme chosen, in words, and the step to the next. */
export function useThemeStep(): { readonly text: string; readonly next: () => void } {
  const chosen = useStore(themeStore, (state) => state.chosen)
  const { theme } = words.app
  return {
    text: words.app.themeIs(chosen === undefined ? theme.asSystem : theme[chosen]),
    next: () => chooseTheme(after.get(chosen)),
  }
}
