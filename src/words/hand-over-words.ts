import { handOver } from './english/hand-over'
import { inLanguage } from './language'

/** What stands on a page that is handed over: kept out of what the first page loads. */
export const handOverWords = inLanguage('handOver', handOver)
