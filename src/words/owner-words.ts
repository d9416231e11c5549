import { owner } from './english/owner'

/** What an owner is told: kept out of what the first page loads. */
export const ownerWords: typeof owner = owner
