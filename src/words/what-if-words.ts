import { whatIf } from './english/what-if'

/** The texts of trying a decision out: kept out of what the first page loads. */
export const whatIfWords: typeof whatIf = whatIf
