import { letterhead } from './english/letterhead'
import { inLanguage } from './language'

/** The texts of the letterhead and of the code on a report: kept out of what the first page loads. */
export const letterheadWords = inLanguage('letterhead', letterhead)
