import { decision } from './english/decision'
import { inLanguage } from './language'

/** The texts of decisions: kept out of what the first page loads. */
export const decisionWords = inLanguage('decision', decision)
