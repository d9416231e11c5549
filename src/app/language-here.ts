import { type Language, languageFor, languageOf } from '../words/languages'
import { withLocalStorage } from './local-storage'

const storedUnder = 'borewall-language'

/** The language chosen on this machine, else the first that the browser asks for. */
export function languageHere(): Language {
  const stored = withLocalStorage((storage) => storage.getItem(storedUnder))
  return (stored == null ? undefined : languageOf(stored)) ?? languageFor(navigator.languages)
}

/** Keeps the choice for the next load of the page; false where this browser keeps nothing. */
export function keepLanguage({ code }: Language): boolean {
  return (
    withLocalStorage((storage) => {
      storage.setItem(storedUnder, code)
      return true
    }) ?? false
  )
}

/** Calls when another window of this browser was given another language. */
export function onLanguageElsewhere(changed: () => void): void {
  window.addEventListener('storage', ({ key }) => {
    if (key === storedUnder) changed()
  })
}
