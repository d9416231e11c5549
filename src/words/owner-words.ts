import { owner } from './english/owner'
import { inLanguage } from './language'

/** What an owner is told: kept out of what the first page loads. */
export const ownerWords = inLanguage('owner', owner)
