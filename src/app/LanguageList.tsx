import './language-list.css'
import { languages } from '../words/languages'
import { words } from '../words/words'
import { chooseLanguage } from './choose-language'

/** The languages there are, each named in itself; the one in use is marked. */
export function LanguageList() {
  const inUse = document.documentElement.lang
  return (
    <ul className="language-list" aria-label={words.language.title}>
      {languages.map((language) => (
        <li key={language.code}>
          <button
            type="button"
            className="button"
            aria-current={language.code === inUse ? 'true' : undefined}
            onClick={() => void chooseLanguage(language)}
          >
            <span lang={language.code}>{language.name}</span>
            {language.isReviewed ? null : <small> {words.language.unreviewed}</small>}
          </button>
        </li>
      ))}
    </ul>
  )
}
