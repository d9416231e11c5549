import { type LanguageTable, takeTextsFrom } from './language'

/** A language that the texts are in. */
export interface Language {
  /** As in the language of a page, and behind `--language`. */
  readonly code: string
  /** In itself. */
  readonly name: string
  /** Whether a person who speaks it has read it over; one that nobody has is never chosen for anybody. */
  readonly isReviewed: boolean
  /** Absent for English, which is where the texts are used. */
  readonly load?: () => Promise<LanguageTable>
}

/** Every language there is, English first. */
export const languages: readonly [Language, ...Language[]] = [
  { code: 'en', name: 'English', isReviewed: true },
  {
    code: 'de',
    name: 'Deutsch',
    isReviewed: true,
    load: async () => (await import('./german')).german,
  },
  {
    code: 'es',
    name: 'Español',
    isReviewed: false,
    load: async () => (await import('./spanish')).spanish,
  },
  {
    code: 'fr',
    name: 'Français',
    isReviewed: false,
    load: async () => (await import('./french')).french,
  },
]

/** The language of a code; undefined where there is none. */
export function languageOf(code: string): Language | undefined {
  return languages.find((language) => language.code === code)
}

/** The first of the languages asked for that there is and that somebody has read over, else English. */
export function languageFor(asked: readonly string[]): Language {
  for (const tag of asked) {
    const [code = ''] = tag.toLowerCase().split('-')
    const found = languageOf(code)
    if (found?.isReviewed) return found
  }
  return languages[0]
}

/** Loads a language and takes all texts from it. To be waited for before anything that has texts is loaded. */
export async function speakIn({ load }: Language): Promise<void> {
  takeTextsFrom(await load?.())
}
