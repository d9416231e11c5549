import { whatIf } from './english/what-if'
import { inLanguage } from './language'

/** The texts of trying a decision out: kept out of what the first page loads. */
export const whatIfWords = inLanguage('whatIf', whatIf)
