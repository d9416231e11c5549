import { paper } from './english/paper'
import { inLanguage } from './language'

/** The texts of the report on paper: kept out of what the first page loads. */
export const paperWords = inLanguage('paper', paper)
