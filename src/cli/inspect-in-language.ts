import { languageOf, languages, speakIn } from '../words/languages'
import type { Outcome } from './job-file'

/**
 * `inspect … [--language CODE]`: takes the language out of what is asked for, and reports in it; English unless asked.
 * What is written for other programs is the same in every language.
 */
export async function inspectInLanguage(parameters: readonly string[], folder: string): Promise<Outcome> {
  const at = parameters.indexOf('--language')
  const code = parameters[at + 1]
  const language = at < 0 ? languages[0] : code === undefined ? undefined : languageOf(code)
  await speakIn(language && !parameters.includes('--json') ? language : languages[0])
  // Texts are taken as modules load, so all of them are loaded after their language.
  const { inspectCommand, usage } = await import('./inspect-command')
  if (language) return inspectCommand(at < 0 ? parameters : parameters.toSpliced(at, 2), folder)
  const { words } = await import('../words/words')
  return usage(words.inspect.languages(languages.map((one) => one.code)))
}
