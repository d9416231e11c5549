import { piston } from './english/piston'
import { inLanguage } from './language'

/** The texts about pistons and rings: kept out of what the first page loads. */
export const pistonWords = inLanguage('piston', piston)
