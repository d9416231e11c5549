import { words } from '../../words/words'

/** The browser's own voice; undefined where it has none. */
export function voice(): SpeechSynthesis | undefined {
  return typeof window.speechSynthesis === 'undefined' ? undefined : window.speechSynthesis
}

/** Says a text; what is being said already is cut off, for the hands have gone on. */
export function say(text: string): void {
  const speaks = voice()
  if (!speaks || text === '') return
  speaks.cancel()
  const utterance = new SpeechSynthesisUtterance(text)
  utterance.lang = words.language.locale
  speaks.speak(utterance)
}
