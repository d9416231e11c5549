import { handOver } from './english/hand-over'

/** What stands on a page that is handed over: kept out of what the first page loads. */
export const handOverWords: typeof handOver = handOver
