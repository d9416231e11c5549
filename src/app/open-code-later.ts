import { words } from '../words/words'
import { tell } from './questions'

/** A job in the address is opened by a part of the page that is loaded for it. */
export async function openCodeLater(code: string): Promise<boolean> {
  const part = await import('./open-code').catch(() => undefined)
  if (part) return part.openCode(code)
  await tell(words.file.codeNotLoaded)
  return false
}
