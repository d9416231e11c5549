import { en } from './en'
import { inLanguage } from './language'

/** The texts in use. */
export const words = inLanguage('words', en)
