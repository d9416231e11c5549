import { en, type Words } from './en'

/** The texts in use. */
export const words: Words = en
