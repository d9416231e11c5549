import { piston } from './english/piston'

/** The texts about pistons and rings: kept out of what the first page loads. */
export const pistonWords: typeof piston = piston
