import './paper.css'
import { type Language, languages, speakIn } from '../words/languages'
import { languageHere } from './language-here'

const root = document.getElementById('root')
if (!root) throw new Error('The page has no place for the app')

// Texts are taken as modules load, so all of them are loaded after their language.
void speak(languageHere())
  .then(() => import('./start-page'))
  .then(({ startPage }) => startPage(root))

/** A language whose file does not come leaves the page in English, which is worth more than none. */
async function speak(language: Language): Promise<void> {
  const english = languages[0]
  const spoken = await speakIn(language).then(
    () => language,
    () => english,
  )
  document.documentElement.lang = spoken.code
}
