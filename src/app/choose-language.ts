/** Another language: the page loads anew for it, once everything that was entered is kept. */
import { session } from '../session/session'
import type { Language } from '../words/languages'
import { words } from '../words/words'
import { saveLoop } from './keeping'
import { keepLanguage } from './language-here'
import { tell } from './questions'

/** Changes the language of the page, or says why it cannot be changed just now. */
export async function chooseLanguage(language: Language): Promise<void> {
  if (language.code === document.documentElement.lang) return
  const said = words.language
  if (isTyping()) return tell(said.waiting)
  const { kind } = await saveLoop.settled()
  if (kind === 'failed') return tell(said.notSaved)
  if (!keepLanguage(language)) return tell(said.notKept)
  location.reload()
}

/** Whether something typed is kept in this tab alone. */
function isTyping(): boolean {
  const { entering, notTaken, drafts, waiting } = session.getState()
  return (
    Object.values(entering).some(({ typed }) => typed.trim() !== '') ||
    notTaken.length > 0 ||
    Object.keys(drafts).length > 0 ||
    Object.values(waiting).some(({ low, high }) => low !== undefined || high !== undefined)
  )
}
