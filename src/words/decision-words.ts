import { decision } from './english/decision'

/** The texts of decisions: kept out of what the first page loads. */
export const decisionWords: typeof decision = decision
